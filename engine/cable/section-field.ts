import type { RoundSection } from './section.ts';
import { shapeFactorFinite, solveDipoles, surfaceResponse, termsFor } from './section-finite.ts';

/** The steady temperature field of a cable's section, in the scale of the shape factors. */
export interface SectionField {
  /** u = (θ − θs)/(θc − θs) at a point [m]: 1 in the hottest loaded core, 0 on the mean of the cable's own surface; NaN outside. */
  at(x: number, y: number): number;
  /** (θ − θ_R)·2π/(q ρT) at a point [m]; NaN outside. */
  potential(x: number, y: number): number;
  /** Potential of every conductor [1]. */
  readonly G: Float64Array;
  /** The largest of the loaded conductors' [1]. */
  readonly hottest: number;
  /** Mean potential of the cable's own surface [1]; below 0 where there is a sheath. */
  readonly surface: number;
  /** How far the surface's hottest spot is above its mean, as a share of the mean surface's rise above ambient [1]. */
  readonly hotSpot: number;
}

/**
 * The field that belongs to `shapeFactorFinite`: in the body φ = −Σ_{j loaded} ln|ζ − ζ_j| + Re{ Σ_j p_j/(ζ − ζ_j)
 * + Σ_m Γ_m Ā_m ζ^m }, A_m = Σ_{j loaded} ζ_j^m/m + Σ_j p_j ζ_j^(m−1), lengths in R; in each layer its harmonics
 * r^m and r^−m and the logarithm of the mean; constant in each conductor, at the mean of its perimeter. Dipoles leave the
 * perimeter itself uneven, so that points next to a conductor are off by up to 2 % of θc − θs in a 0.75 mm² cord, 4 % at
 * 4 mm² and 6 % in small cables; no point is given as hotter than the hottest loaded conductor.
 * @param section conductors, body, layers [m], conductivities [W/(m·K)] and h [W/(m²·K)]
 * @param surfaceRadius radius of the cable's own surface [m], where lagging lies outside it; otherwise the outermost
 */
export function prepareField(section: RoundSection, surfaceRadius?: number): SectionField {
  const { G, hottest } = shapeFactorFinite(section);
  const body = bodyPotential(section, G);
  const rings = ringPotentials(section, body);
  const outermost = section.layers.at(-1)?.r1 ?? section.R;
  const rs = surfaceRadius ?? outermost;
  const slack = 1 + 1e-12;

  function potential(x: number, y: number): number {
    const r2 = x * x + y * y;
    if (r2 <= section.R * section.R) return Math.min(body.at(x, y, r2), hottest);
    for (let l = 0; l < rings.length; l++) {
      const ring = rings[l];
      if (r2 <= ring.r1 * ring.r1 * slack) return ring.at(x, y, r2);
    }
    return r2 <= outermost * outermost * slack ? body.at(x, y, r2) : Number.NaN;
  }

  const surface = meanAt(section, rs);
  const span = hottest - surface || 1; // a bare conductor has no span: u is 0 all over
  const rise = surface - meanAt(section, outermost) + (section.loaded.length * section.k) / (section.h * outermost);
  let spot = surface;
  for (let i = 0; i < 360; i++) {
    const angle = (i * Math.PI) / 180;
    spot = Math.max(spot, potential(rs * Math.cos(angle), rs * Math.sin(angle)));
  }
  return {
    at: (x, y) => (potential(x, y) - surface) / span,
    potential,
    G,
    hottest,
    surface,
    hotSpot: rise > 0 ? (spot - surface) / rise : 0,
  };
}

/** The rectangle a picture shows [m]. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/**
 * Paints u at the centre of every pixel, row by row from the top left; NaN outside the cable.
 * @param width number of pixels across
 * @param height number of pixels down
 * @param out takes u [1], width · height of them
 */
export function paint(
  field: SectionField,
  width: number,
  height: number,
  extent: Extent,
  out: Float32Array,
): Float32Array {
  const dx = (extent.right - extent.left) / width;
  const dy = (extent.top - extent.bottom) / height;
  let n = 0;
  for (let row = 0; row < height; row++) {
    const y = extent.top - (row + 0.5) * dy;
    for (let column = 0; column < width; column++) out[n++] = field.at(extent.left + (column + 0.5) * dx, y);
  }
  return out;
}

/** Mean potential of the circle of radius `r` ≥ R [m]: −n Σ (k/k_layer) ln(r1/r0). */
function meanAt({ R, k, layers, loaded }: RoundSection, r: number): number {
  let mean = 0;
  let r0 = R;
  for (const layer of layers) {
    if (r <= r0) break;
    mean -= loaded.length * (k / layer.k) * Math.log(Math.min(r, layer.r1) / r0);
    r0 = layer.r1;
  }
  return mean;
}

interface Body {
  at(x: number, y: number, r2: number): number;
  readonly terms: number;
  /** A_m, re and im in turn, from m = 0 (unused). */
  readonly A: Float64Array;
  readonly gamma: Float64Array;
}

function bodyPotential(section: RoundSection, G: Float64Array): Body {
  const { R, rc, loaded } = section;
  const N = section.x.length;
  const X = Float64Array.from(section.x, (v) => v / R);
  const Y = Float64Array.from(section.y, (v) => v / R);
  const p = solveDipoles(section).p.slice(0, 2 * N);
  const isLoaded = Uint8Array.from(X, (_, i) => (loaded.includes(i) ? 1 : 0));
  const furthest = Math.max(...X.map((v, i) => Math.hypot(v, Y[i])));
  const terms = termsFor(furthest);
  const gamma = new Float64Array(terms + 1);
  surfaceResponse(section, terms, gamma);
  const A = harmonics(X, Y, isLoaded, p, terms);
  const c = A.map((v, i) => v * gamma[i >> 1] * (i & 1 ? -1 : 1)); // Γ_m Ā_m
  const needed = termsWithin(c, terms);
  const core2 = (rc / R) ** 2;

  function at(x: number, y: number, r2: number): number {
    const u = x / R;
    const v = y / R;
    let product = 1;
    let phi = 0;
    for (let j = 0; j < N; j++) {
      const du = u - X[j];
      const dv = v - Y[j];
      const d2 = du * du + dv * dv;
      if (d2 <= core2) return G[j];
      if (isLoaded[j] === 1) product *= d2;
      phi += (p[2 * j] * du + p[2 * j + 1] * dv) / d2;
    }
    let hr = 0; // Horner from the highest harmonic that counts at this radius
    let hi = 0;
    const bin = Math.min(bins - 1, Math.floor((bins * r2) / (R * R)));
    for (let m = needed[bin]; m >= 1; m--) {
      hr += c[2 * m];
      hi += c[2 * m + 1];
      const re = hr * u - hi * v;
      hi = hr * v + hi * u;
      hr = re;
    }
    return phi + hr - 0.5 * Math.log(product);
  }
  return { at, terms, A, gamma };
}

const bins = 64; // of r²/R², by which the harmonics that count are looked up
const smallestHarmonic = 1e-10; // left out of a field, in units of q ρT/2π

/** For each bin of r²/R², the last harmonic whose size there is above the smallest. */
function termsWithin(c: Float64Array, terms: number): Uint16Array {
  return Uint16Array.from({ length: bins }, (_, bin) => {
    const r = Math.sqrt((bin + 1) / bins);
    let m = terms;
    while (m > 0 && Math.hypot(c[2 * m], c[2 * m + 1]) * r ** m < smallestHarmonic) m--;
    return m;
  });
}

/** A_m = Σ_{j loaded} ζ_j^m/m + Σ_j p_j ζ_j^(m−1), re and im in turn. */
function harmonics(
  X: Float64Array,
  Y: Float64Array,
  isLoaded: Uint8Array,
  p: Float64Array,
  terms: number,
): Float64Array {
  const A = new Float64Array(2 * terms + 2);
  for (let j = 0; j < X.length; j++) {
    const xj = X[j];
    const yj = Y[j];
    const pr = p[2 * j];
    const pi = p[2 * j + 1];
    let zr = 1; // ζ_j^(m−1)
    let zi = 0;
    for (let m = 1; m <= terms; m++) {
      A[2 * m] += pr * zr - pi * zi;
      A[2 * m + 1] += pr * zi + pi * zr;
      const re = zr * xj - zi * yj;
      zi = zr * yj + zi * xj;
      zr = re;
      if (isLoaded[j] === 1) {
        A[2 * m] += zr / m;
        A[2 * m + 1] += zi / m;
      }
    }
  }
  return A;
}

interface Ring {
  readonly r1: number;
  at(x: number, y: number, r2: number): number;
}

/**
 * The layers' own expansions. With V_m the harmonic's value at r0 and y1 its admittance at r1, ε = (r0/r1)^2m and
 * t = (1 − ε)/(1 + ε): φ_m = V (1 + y1)(1 + t)/(2(1 + y1 t)) (r0/r)^m + V (1 − y1)/(1 + y1 t) (r0/r1)^m/(1 + ε) (r/r1)^m.
 */
function ringPotentials(section: RoundSection, { A, gamma, terms }: Body): Ring[] {
  const y1 = section.layers.map(() => new Float64Array(terms + 1));
  surfaceResponse(section, terms, new Float64Array(terms + 1), y1);
  let V = A.map((a, i) => a * (1 + gamma[i >> 1]));
  let r0 = section.R;
  return section.layers.map(({ k, r1 }, l) => {
    const inward = V.slice();
    const outward = V.slice();
    const next = V.slice();
    for (let i = 2; i < V.length; i++) {
      const m = i >> 1;
      const y = y1[l]?.[m] ?? 0;
      const shrink = (r0 / r1) ** m;
      const eps = shrink * shrink;
      const t = (1 - eps) / (1 + eps);
      inward[i] *= ((1 + y) * (1 + t)) / (2 * (1 + y * t));
      outward[i] *= ((1 - y) * shrink) / ((1 + y * t) * (1 + eps));
      next[i] = inward[i] * shrink + outward[i];
    }
    const ring = ringPotential(section, k, r0, r1, inward, outward);
    V = next;
    r0 = r1;
    return ring;
  });
}

function ringPotential(
  section: RoundSection,
  kLayer: number,
  r0: number,
  r1: number,
  inward: Float64Array,
  outward: Float64Array,
): Ring {
  const start = meanAt(section, r0);
  const slope = (-0.5 * section.loaded.length * section.k) / kLayer;
  let last = inward.length / 2 - 1;
  const size = (m: number) =>
    Math.hypot(inward[2 * m] ?? 0, inward[2 * m + 1] ?? 0, outward[2 * m] ?? 0, outward[2 * m + 1] ?? 0);
  while (last > 0 && size(last) < smallestHarmonic) last--;

  function at(x: number, y: number, r2: number): number {
    const ar = (r0 * x) / r2; // r0/z
    const ai = (-r0 * y) / r2;
    const br = x / r1; // z/r1
    const bi = y / r1;
    let pr = 0;
    let pi = 0;
    let qr = 0;
    let qi = 0;
    for (let m = last; m >= 1; m--) {
      pr += inward[2 * m];
      pi += inward[2 * m + 1];
      qr += outward[2 * m];
      qi -= outward[2 * m + 1];
      const p = pr * ar - pi * ai;
      pi = pr * ai + pi * ar;
      pr = p;
      const q = qr * br - qi * bi;
      qi = qr * bi + qi * br;
      qr = q;
    }
    return start + slope * Math.log(r2 / (r0 * r0)) + pr + qr;
  }
  return { r1, at };
}

import { within } from '../errors.ts';
import { leastSquares } from './least-squares.ts';
import { checkLoaded } from './section.ts';
import type { SectionField } from './section-field.ts';

/** A flat cable's section: conductors on the x axis in a stadium, a sheath of even thickness round it. */
export interface FlatSection {
  /** Conductor centres on the axis [m], as `flatLayout` gives them. */
  readonly x: ArrayLike<number>;
  /** Radius of every conductor's strand bundle [m]. */
  readonly rc: number;
  /** Indices of the cores that carry current, each once. */
  readonly loaded: readonly number[];
  /** Half the straight run of the body's outline, under the sheath [m]. */
  readonly halfRun: number;
  /** Half the height of the body, under the sheath [m]. */
  readonly halfHeight: number;
  /** Conductivity of the body [W/(m·K)]. */
  readonly k: number;
  /** Sheath: its conductivity [W/(m·K)] and thickness [m]; none for a cable without one. */
  readonly sheath?: { readonly k: number; readonly thickness: number };
  /** Heat transfer coefficient of the outer surface [W/(m²·K)]; Infinity: an isothermal surface. A further layer may be put in as a lesser h. */
  readonly h: number;
}

const orders = 8; // of the multipoles at each conductor
// Lengths in half heights of the body. Chosen so that G agrees with a boundary element solution to 1e-4 at 2 to 7 ms a geometry.
const poleSpacing = 0.35; // along the body's outline
const outward = 0.8; // from the region's outer outline to its outer poles
const inward = 0.4; // radius of the sheath's inner poles
const pointsPerPole = 3; // conditions on each outline

/**
 * The field of a flat cable, a numerical solution of Laplace's equation in body and sheath, found once a geometry.
 * In the body φ = −Σ_{j loaded} ln|z − z_j| + Σ Re a_jl (rc/(z − z_j))^l + poles outside its outline; in the sheath
 * −(k/k_s) Σ_{j loaded} ln|z − z_j| + poles on both sides. The conditions (isothermal conductors, temperature and flow
 * continuous, k_s ∂φ/∂n + h φ = 0) are met at points of the upper half, in the sense of least squares.
 * Potentials are counted from the mean of the body's outline, `surface` is the mean of the outer one.
 */
export function prepareFlatField(section: FlatSection): SectionField {
  check(section);
  const basis = makeBasis(section);
  const rows = conditions(section, basis);
  const { solution } = leastSquares(rows.matrix, rows.rhs, rows.count, basis.unknowns);
  return makeField(section, basis, solution);
}

function check({ x, rc, loaded, halfRun, halfHeight }: FlatSection): void {
  within('conductor radius', rc, [Number.MIN_VALUE, halfHeight], 'm');
  for (let i = 0; i < x.length; i++) {
    within(`distance of core ${i} from the middle`, Math.abs(x[i]), [0, (halfRun + halfHeight - rc) * (1 + 1e-9)], 'm');
    if (i > 0) within(`distance of cores ${i - 1} and ${i}`, Math.abs(x[i] - x[i - 1]), [2 * rc * (1 - 1e-9), 1], 'm');
  }
  checkLoaded(loaded, x.length);
}

/** A point of a stadium's outline and its outward normal. */
interface OutlinePoint {
  readonly x: number;
  readonly y: number;
  readonly nx: number;
  readonly ny: number;
}

/** The point of a stadium at share `s` (0…1) of the upper half of its outline, from the right end to the left. */
function outlineAt(halfRun: number, radius: number, s: number): OutlinePoint {
  const arc = (Math.PI / 2) * radius;
  const along = s * (2 * arc + 2 * halfRun);
  if (along > arc && along < arc + 2 * halfRun) return { x: halfRun - (along - arc), y: radius, nx: 0, ny: 1 };
  const right = along <= arc;
  const angle = right ? along / radius : (along - 2 * halfRun) / radius;
  const nx = Math.cos(angle);
  const ny = Math.sin(angle);
  return { x: (right ? halfRun : -halfRun) + radius * nx, y: radius * ny, nx, ny };
}

/** Pole places on a stadium: x, y in turn [m]. */
function poleCurve(halfRun: number, radius: number, poles: number): Float64Array {
  const places = new Float64Array(2 * poles);
  for (let i = 0; i < poles; i++) {
    const { x, y } = outlineAt(halfRun, radius, (i + 0.5) / poles);
    places[2 * i] = x;
    places[2 * i + 1] = y;
  }
  return places;
}

/** Where the unknowns of each region are found and the places of its poles. */
interface Basis {
  readonly unknowns: number;
  readonly poles: number;
  readonly sheathFrom: number;
  readonly bodyPoles: Float64Array;
  readonly innerPoles: Float64Array;
  readonly outerPoles: Float64Array;
  readonly thickness: number;
  readonly ratio: number;
}

function makeBasis({ x, halfRun, halfHeight, k, sheath }: FlatSection): Basis {
  const N = x.length;
  const b = halfHeight;
  const poles = Math.ceil((Math.PI + (2 * halfRun) / b) / poleSpacing); // half an outline's length over the spacing
  const sheathFrom = N + N * orders + 1 + 2 * poles;
  const thickness = sheath ? sheath.thickness : 0;
  return {
    unknowns: sheathFrom + (sheath ? 1 + 4 * poles : 0),
    poles,
    sheathFrom,
    bodyPoles: poleCurve(halfRun, (1 + outward) * b, poles),
    innerPoles: poleCurve(halfRun, inward * b, poles),
    outerPoles: poleCurve(halfRun, b + thickness + outward * b, poles),
    thickness,
    ratio: sheath ? sheath.k / k : 1,
  };
}

/** Where a region's functions are written: values and normal derivatives by unknown, and the known part of each. */
interface Written {
  readonly value: Float64Array;
  readonly slope: Float64Array;
  known: number;
  knownSlope: number;
}

/** −weight · Σ_{j loaded} ln(|z − z_j|/b). */
function writeSources({ x, loaded, halfHeight }: FlatSection, p: OutlinePoint, weight: number, out: Written): void {
  out.known = 0;
  out.knownSlope = 0;
  for (const j of loaded) {
    const dx = p.x - x[j];
    const r2 = dx * dx + p.y * p.y;
    out.known -= 0.5 * weight * Math.log(r2 / (halfHeight * halfHeight));
    out.knownSlope -= (weight * (dx * p.nx + p.y * p.ny)) / r2;
  }
}

/** Re b/(z − s) and Re i·b/(z − s) with their mirror images in the axis, and their normal derivatives. */
function writePoles(places: Float64Array, b: number, p: OutlinePoint, at: number, { value, slope }: Written): void {
  const poles = places.length / 2;
  for (let i = 0; i < poles; i++) {
    for (let side = 0; side < 2; side++) {
      const sign = side === 0 ? 1 : -1;
      const dx = p.x - places[2 * i];
      const dy = p.y - sign * places[2 * i + 1];
      const r2 = dx * dx + dy * dy;
      const fr = (b * dx) / r2; // f = b/(z − s)
      const fi = (-b * dy) / r2;
      const gr = (-fr * dx - fi * dy) / r2; // f' = −f/(z − s)
      const gi = (-fi * dx + fr * dy) / r2;
      value[at + 2 * i] += fr;
      value[at + 2 * i + 1] -= sign * fi;
      slope[at + 2 * i] += gr * p.nx - gi * p.ny;
      slope[at + 2 * i + 1] -= sign * (gi * p.nx + gr * p.ny);
    }
  }
}

function writeBody(section: FlatSection, basis: Basis, p: OutlinePoint, out: Written): void {
  const { x, rc, halfHeight } = section;
  const N = x.length;
  out.value.fill(0);
  out.slope.fill(0);
  writeSources(section, p, 1, out);
  for (let i = 0; i < N; i++) {
    const dx = p.x - x[i];
    const r2 = dx * dx + p.y * p.y;
    const wr = (rc * dx) / r2; // rc/(z − z_i)
    const wi = (-rc * p.y) / r2;
    let fr = 1;
    let fi = 0;
    for (let l = 1; l <= orders; l++) {
      const re = fr * wr - fi * wi;
      fi = fr * wi + fi * wr;
      fr = re;
      const gr = (-l / rc) * (fr * wr - fi * wi); // f' = −l f · rc/(z − z_i)/rc
      const gi = (-l / rc) * (fr * wi + fi * wr);
      out.value[N + i * orders + l - 1] = fr;
      out.slope[N + i * orders + l - 1] = gr * p.nx - gi * p.ny;
    }
  }
  const at = N + N * orders;
  out.value[at] = 1;
  writePoles(basis.bodyPoles, halfHeight, p, at + 1, out);
}

function writeSheath(section: FlatSection, basis: Basis, p: OutlinePoint, out: Written): void {
  out.value.fill(0);
  out.slope.fill(0);
  writeSources(section, p, 1 / basis.ratio, out);
  out.value[basis.sheathFrom] = 1;
  writePoles(basis.innerPoles, section.halfHeight, p, basis.sheathFrom + 1, out);
  writePoles(basis.outerPoles, section.halfHeight, p, basis.sheathFrom + 1 + 2 * basis.poles, out);
}

interface Conditions {
  /** One row a condition. */
  readonly matrix: Float64Array;
  readonly rhs: Float64Array;
  readonly count: number;
}

function conditions(section: FlatSection, basis: Basis): Conditions {
  const { x, rc, halfRun, halfHeight: b, sheath, k, h } = section;
  const n = basis.unknowns;
  const onOutline = pointsPerPole * basis.poles;
  const onConductor = 3 * orders;
  const count = x.length * onConductor + (sheath ? 3 : 1) * onOutline;
  const matrix = new Float64Array(count * n);
  const rhs = new Float64Array(count);
  const written = (): Written => ({ value: new Float64Array(n), slope: new Float64Array(n), known: 0, knownSlope: 0 });
  const body = written();
  const cover = written();
  let row = 0;
  const add = (a: Float64Array, wa: number, c: Float64Array, wc: number, known: number) => {
    for (let j = 0; j < n; j++) matrix[row * n + j] = wa * a[j] + wc * c[j];
    rhs[row++] = -known;
  };
  for (let i = 0; i < x.length; i++) {
    for (let t = 0; t < onConductor; t++) {
      const nx = Math.cos((Math.PI * (t + 0.5)) / onConductor);
      const ny = Math.sin((Math.PI * (t + 0.5)) / onConductor);
      writeBody(section, basis, { x: x[i] + rc * nx, y: rc * ny, nx, ny }, body);
      body.value[i] = -1;
      add(body.value, 1, body.slope, 0, body.known);
    }
  }
  const Bi = (h * b) / (sheath ? sheath.k : k);
  const held = Bi === Number.POSITIVE_INFINITY ? 1 : Bi / (1 + Bi);
  for (let t = 0; t < onOutline; t++) {
    const s = (t + 0.5) / onOutline;
    const p = outlineAt(halfRun, b, s);
    writeBody(section, basis, p, body);
    if (sheath) {
      writeSheath(section, basis, p, cover);
      add(body.value, 1, cover.value, -1, body.known - cover.known);
      add(body.slope, b, cover.slope, -b * basis.ratio, b * (body.knownSlope - basis.ratio * cover.knownSlope));
      writeSheath(section, basis, outlineAt(halfRun, b + basis.thickness, s), cover);
    }
    const last = sheath ? cover : body;
    const flow = (1 - held) * b;
    add(last.value, held, last.slope, flow, held * last.known + flow * last.knownSlope);
  }
  return { matrix, rhs, count };
}

function makeField(section: FlatSection, basis: Basis, c: Float64Array): SectionField {
  const { x, rc, loaded, halfRun, halfHeight: b, sheath, k, h } = section;
  const N = x.length;
  const reach = b + basis.thickness;
  const poles = basis.poles;
  const isLoaded = Uint8Array.from({ length: N }, (_, i) => (loaded.includes(i) ? 1 : 0));
  const G = c.slice(0, N);
  let base = 0; // mean of the body's outline, taken off once it is known

  /** Square of the distance from the stadium's middle line, by which inside and outside are told. */
  function fromLine(px: number, py: number): number {
    const over = Math.max(0, Math.abs(px) - halfRun);
    return over * over + py * py;
  }
  function sources(px: number, py: number): number {
    let product = 1;
    for (let i = 0; i < N; i++) {
      const dx = px - x[i];
      if (isLoaded[i] === 1) product *= (dx * dx + py * py) / (b * b);
    }
    return -0.5 * Math.log(product);
  }
  function poleSum(places: Float64Array, px: number, py: number, at: number): number {
    let phi = 0;
    for (let i = 0; i < poles; i++) {
      const re = c[at + 2 * i];
      const im = c[at + 2 * i + 1];
      const dx = px - places[2 * i];
      const up = py - places[2 * i + 1];
      const down = py + places[2 * i + 1];
      phi += (re * dx + im * up) / (dx * dx + up * up) + (re * dx - im * down) / (dx * dx + down * down);
    }
    return b * phi;
  }
  function inBody(px: number, py: number): number {
    let phi = sources(px, py);
    for (let i = 0; i < N; i++) {
      const dx = px - x[i];
      const r2 = dx * dx + py * py;
      if (r2 <= rc * rc) return G[i];
      const wr = (rc * dx) / r2;
      const wi = (-rc * py) / r2;
      let sr = 0;
      let si = 0;
      for (let l = orders; l >= 1; l--) {
        sr += c[N + i * orders + l - 1];
        const re = sr * wr - si * wi;
        si = sr * wi + si * wr;
        sr = re;
      }
      phi += sr;
    }
    const at = N + N * orders;
    return phi + c[at] - base + poleSum(basis.bodyPoles, px, py, at + 1);
  }
  function inSheath(px: number, py: number): number {
    const at = basis.sheathFrom;
    const inner = poleSum(basis.innerPoles, px, py, at + 1);
    const outer = poleSum(basis.outerPoles, px, py, at + 1 + 2 * poles);
    return sources(px, py) / basis.ratio + c[at] - base + inner + outer;
  }
  function potential(px: number, py: number): number {
    const d2 = fromLine(px, py);
    if (d2 <= b * b * (1 + 1e-12)) return inBody(px, py);
    return sheath && d2 <= reach * reach * (1 + 1e-12) ? inSheath(px, py) : Number.NaN;
  }
  function along(radius: number, phi: (px: number, py: number) => number): { mean: number; most: number } {
    const points = 200;
    let mean = 0;
    let most = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < points; i++) {
      const p = outlineAt(halfRun, radius, (i + 0.5) / points);
      const value = phi(p.x, p.y);
      mean += value / points;
      most = Math.max(most, value);
    }
    return { mean, most };
  }

  base = along(b, inBody).mean;
  for (let i = 0; i < N; i++) G[i] -= base;
  let hottest = loaded.length === 0 ? 0 : Number.NEGATIVE_INFINITY;
  for (const i of loaded) hottest = Math.max(hottest, G[i]);
  const outline = along(reach, sheath ? inSheath : inBody);
  const rise = (2 * Math.PI * loaded.length * k) / (h * (4 * halfRun + 2 * Math.PI * reach));
  const span = hottest - outline.mean || 1;
  return {
    at: (px, py) => (potential(px, py) - outline.mean) / span,
    potential,
    G,
    hottest,
    surface: outline.mean,
    hotSpot: rise > 0 ? (outline.most - outline.mean) / rise : 0,
  };
}

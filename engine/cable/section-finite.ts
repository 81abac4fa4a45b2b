import { checkSection, type RoundSection, type ShapeFactor, shapeFactor } from './section.ts';

const mostTerms = 200; // of the sums over harmonics m
const smallestTerm = 1e-12; // where they stop, relative

/**
 * Shape factors with finite conductors and a real surface. Each conductor is isothermal to first order: a line source
 * where it is loaded and a dipole p_k everywhere; the surface answers harmonic m by Γ_m (see `surfaceResponse`):
 *
 * p_k = −rc² conj( Σ_{j loaded} g_k^(j) + Σ_j { −[j≠k] p_j/(z_k − z_j)² + p̄_j Σ_m m Γ_m R^−2 (z_k z̄_j/R²)^(m−1) } ),
 * g_k^(j) = −[j≠k]/(z_k − z_j) + Σ_m Γ_m (z̄_j/R²)(z_k z̄_j/R²)^(m−1),
 * G_i = [i loaded] ln(R/rc) + Σ_{j≠i, loaded} ln(R/|z_i − z_j|) + Σ_{j loaded} Σ_m (Γ_m/m) Re (z_i z̄_j/R²)^m
 *       + Σ_j Re{ [j≠i] p_j/(z_i − z_j) + p̄_j (z_i/R²) Σ_m Γ_m (z_i z̄_j/R²)^(m−1) }.
 *
 * Within 1 % of an exact solution for cords and 2.1 % for small cables.
 * @param section conductors, body, layers [m], conductivities [W/(m·K)] and h [W/(m²·K)]
 * @returns G of every core [1] and the hottest loaded core's
 */
export function shapeFactorFinite(section: RoundSection): ShapeFactor {
  const N = section.x.length;
  const { p } = solveDipoles(section);
  const G = new Float64Array(N);
  for (let i = 0; i < N; i++) G[i] = potentialOf(i, section, p);
  return shapeFactor(G, section.loaded);
}

/** Work arrays, grown with the number of cores and used again by every call; nothing in them outlives a call. */
const work = {
  cores: 0,
  isLoaded: new Uint8Array(0),
  sums: new Float64Array(0), // S0, S1, S2 of each ordered pair, re and im
  field: new Float64Array(0), // right-hand side, then the dipoles p, re and im
  matrix: new Float64Array(0), // 2N × 2N, by rows
  gamma: new Float64Array(mostTerms + 1),
};

function growTo(N: number): void {
  if (N <= work.cores) return;
  work.cores = N;
  work.isLoaded = new Uint8Array(N);
  work.sums = new Float64Array(6 * N * N);
  work.field = new Float64Array(2 * N);
  work.matrix = new Float64Array(4 * N * N);
}

/**
 * Dipoles of all conductors and the number of harmonics in use; scaled by R, so that lengths are z/R.
 * @returns p, re and im of p_k/R in turn [1] (a work array: copy what must last), and terms
 */
export function solveDipoles(section: RoundSection): { p: Float64Array; terms: number } {
  checkSection(section, section.rc);
  const { x, y, R } = section;
  const N = x.length;
  growTo(N);
  work.isLoaded.fill(0);
  for (let n = 0; n < section.loaded.length; n++) work.isLoaded[section.loaded[n]] = 1;
  let furthest = 0;
  for (let i = 0; i < N; i++) furthest = Math.max(furthest, x[i] ** 2 + y[i] ** 2);
  const terms = termsFor(furthest / (R * R));
  surfaceResponse(section, terms, work.gamma);
  for (let k = 0; k < N; k++) for (let j = 0; j <= k; j++) sumPair(k, j, section, terms);
  for (let k = 0; k < N; k++) equationsOf(k, section);
  solveSymmetric(work.matrix, work.field, 2 * N);
  return { p: work.field, terms };
}

/** The number of terms after which m w^(m−1) has fallen below the smallest term. */
export function termsFor(w: number): number {
  let power = 1;
  let m = 1;
  while (m < mostTerms && m * power > smallestTerm) {
    power *= w;
    m++;
  }
  return m;
}

/**
 * The surface's answer to harmonic m, seen from R: Γ_m = (1 − Y_m)/(1 + Y_m). Y_m starts outside as y = h r_out/(k_out m)
 * and passes each layer r0…r1 inward by t = tanh(m ln(r1/r0)), y ← (y + t)/(1 + y t), then y ← y · k_layer/k_inside.
 * An isothermal surface at R gives −1, an insulated one +1.
 * @param terms harmonics wanted, 1…terms
 * @param gamma takes Γ_m at index m [1]
 * @param outer takes, where given, each layer's y at its outer side, layer by layer, at index m [1]
 */
export function surfaceResponse(
  { R, k, layers, h }: RoundSection,
  terms: number,
  gamma: Float64Array,
  outer?: readonly Float64Array[],
): void {
  const last = layers.length - 1;
  const rOut = last < 0 ? R : (layers[last]?.r1 ?? R);
  const kOut = last < 0 ? k : (layers[last]?.k ?? k);
  const first = Math.min((h * rOut) / kOut, 1e200);
  for (let m = 1; m <= terms; m++) gamma[m] = first / m;
  for (let l = last; l >= 0; l--) {
    const layer = layers[l];
    const inner = l > 0 ? (layers[l - 1]?.r1 ?? R) : R;
    const inside = l > 0 ? (layers[l - 1]?.k ?? k) : k;
    const square = (inner / layer.r1) ** 2;
    outer?.[l]?.set(gamma.subarray(0, terms + 1));
    let power = 1; // (r0/r1)^2m, so that tanh(m ln(r1/r0)) = (1 − power)/(1 + power)
    for (let m = 1; m <= terms; m++) {
      power *= square;
      const t = (1 - power) / (1 + power);
      const Y = gamma[m];
      gamma[m] = (((Y + t) / (1 + Y * t)) * layer.k) / inside;
    }
  }
  for (let m = 1; m <= terms; m++) gamma[m] = (1 - gamma[m]) / (1 + gamma[m]);
}

/** S0 = Σ (Γ_m/m) w^m, S1 = Σ Γ_m w^(m−1), S2 = Σ m Γ_m w^(m−1) at w = z_k z̄_j/R², kept for (k, j) and conjugate for (j, k). */
function sumPair(k: number, j: number, { x, y, R }: RoundSection, terms: number): void {
  const { sums, gamma } = work;
  const xk = x[k];
  const yk = y[k];
  const xj = x[j];
  const yj = y[j];
  const wr = (xk * xj + yk * yj) / (R * R);
  const wi = (yk * xj - xk * yj) / (R * R);
  let pr = 1; // w^(m−1)
  let pi = 0;
  let a = 0;
  let s1r = 0;
  let s1i = 0;
  let s2r = 0;
  let s2i = 0;
  for (let m = 1; m <= terms; m++) {
    const g = gamma[m];
    const gr = g * pr;
    const gi = g * pi;
    s1r += gr;
    s1i += gi;
    s2r += m * gr;
    s2i += m * gi;
    a += (gr * wr - gi * wi) / m; // only the real part is wanted
    const next = pr * wr - pi * wi;
    pi = pr * wi + pi * wr;
    pr = next;
  }
  const N = x.length;
  let at = 6 * (k * N + j);
  for (let side = 0; side < 2; side++) {
    const sign = side === 0 ? 1 : -1;
    sums[at] = a;
    sums[at + 1] = s1r;
    sums[at + 2] = sign * s1i;
    sums[at + 3] = s2r;
    sums[at + 4] = sign * s2i;
    at = 6 * (j * N + k);
  }
}

/** The two real rows of conductor k: p_k + rc² Σ_j (B̄_kj p_j + Ā_kj p̄_j) = −rc² conj(g_k), lengths in R. */
function equationsOf(k: number, { x, y, rc, R }: RoundSection): void {
  const { sums, matrix, field, isLoaded } = work;
  const N = x.length;
  const c = (rc / R) ** 2;
  const row = 2 * k * 2 * N;
  let gr = 0;
  let gi = 0;
  for (let j = 0; j < N; j++) {
    const at = 6 * (k * N + j);
    const xj = x[j] / R;
    const yj = y[j] / R;
    const s1r = sums[at + 1];
    const s1i = sums[at + 2];
    let ar = 0; // A = −1/(z_k − z_j)²
    let ai = 0;
    let er = xj * s1r + yj * s1i; // z̄_j S1
    let ei = xj * s1i - yj * s1r;
    if (j !== k) {
      const dx = x[k] / R - xj;
      const dy = y[k] / R - yj;
      const d2 = dx * dx + dy * dy;
      const ur = dx / d2; // 1/(z_k − z_j)
      const ui = -dy / d2;
      ar = ui * ui - ur * ur;
      ai = -2 * ur * ui;
      er -= ur;
      ei -= ui;
    }
    if (isLoaded[j] === 1) {
      gr += er;
      gi += ei;
    }
    const br = sums[at + 3];
    const bi = sums[at + 4];
    const own = j === k ? 1 : 0;
    matrix[row + 2 * j] = own + c * (br + ar);
    matrix[row + 2 * j + 1] = c * (bi - ai);
    matrix[row + 2 * N + 2 * j] = c * (-bi - ai);
    matrix[row + 2 * N + 2 * j + 1] = own + c * (br - ar);
  }
  field[2 * k] = -c * gr;
  field[2 * k + 1] = c * gi;
}

/**
 * Solves the symmetric, positive definite system by A = L D Lᵀ, in place; only the lower triangle is read. A bare conductor
 * that is its own isothermal surface leaves a 0 on the diagonal, and any dipole will do: 0.
 */
function solveSymmetric(A: Float64Array, b: Float64Array, n: number): void {
  for (let j = 0; j < n; j++) {
    const d = A[j * n + j];
    if (d === 0) continue;
    for (let i = j + 1; i < n; i++) {
      const f = A[i * n + j] / d;
      for (let c = j + 1; c <= i; c++) A[i * n + c] -= f * A[c * n + j];
      b[i] -= f * b[j];
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let s = b[i];
    for (let j = i + 1; j < n; j++) s -= A[j * n + i] * b[j];
    const d = A[i * n + i];
    b[i] = d === 0 ? 0 : s / d;
  }
}

/** G_i from the sums and the dipoles; the ln of all sources is taken once, of their product. */
function potentialOf(i: number, { x, y, rc, R }: RoundSection, p: Float64Array): number {
  const { sums, isLoaded } = work;
  const N = x.length;
  const xi = x[i] / R;
  const yi = y[i] / R;
  let product = 1;
  let G = 0;
  for (let j = 0; j < N; j++) {
    const at = 6 * (i * N + j);
    const dx = xi - x[j] / R;
    const dy = yi - y[j] / R;
    const d2 = dx * dx + dy * dy;
    if (isLoaded[j] === 1) {
      product *= j === i ? (rc / R) ** 2 : d2;
      G += sums[at];
    }
    const pr = p[2 * j];
    const pi = p[2 * j + 1];
    if (j !== i) G += (pr * dx + pi * dy) / d2;
    const s1r = sums[at + 1];
    const s1i = sums[at + 2];
    G += (pr * xi + pi * yi) * s1r - (pr * yi - pi * xi) * s1i; // Re p̄_j z_i S1
  }
  return G - 0.5 * Math.log(product);
}

/**
 * A second solution of the section's steady conduction, for the tests alone. It shares no formula with the engine: no
 * images, no surface answer Γ, no 2 × 2 dipole blocks. Every region has its own harmonic functions (multipoles at each
 * conductor, powers of r in the body, powers of r and 1/r in each layer) and all conditions are asked for at points:
 * conductors isothermal at unknown potentials, temperature and heat flow continuous, k ∂φ/∂n + hφ = 0 outside.
 * Solved in the sense of least squares by Householder reflections.
 */
export interface ReferenceCase {
  x: ArrayLike<number>;
  y: ArrayLike<number>;
  rc: number;
  R: number;
  loaded: readonly number[];
  k: number;
  layers: readonly { k: number; r1: number }[];
  h: number;
}

/** `G` as the engine defines it and the potential in the body, at multipole order `L` and `M` harmonics. */
export function referenceSolution(
  c: ReferenceCase,
  L = 8,
  M = 32,
): { G: number[]; residual: number; at: (x: number, y: number) => number } {
  const N = c.x.length;
  const X = Array.from(c.x, (v) => v / c.R);
  const Y = Array.from(c.y, (v) => v / c.R);
  const rc = c.rc / c.R;
  const perLayer = 2 + 4 * M;
  const regular = N + 2 * L * N;
  const sheath = regular + 1 + 2 * M;
  const unknowns = sheath + perLayer * c.layers.length;
  const rows: { row: Float64Array; rhs: number }[] = [];

  // The body's functions at a point: value and gradient, each as coefficients of the unknowns plus a known part.
  const bodyAt = (px: number, py: number) => {
    const v = new Float64Array(unknowns);
    const gx = new Float64Array(unknowns);
    const gy = new Float64Array(unknowns);
    let known = 0;
    let kx = 0;
    let ky = 0;
    for (let i = 0; i < N; i++) {
      const dx = px - X[i];
      const dy = py - Y[i];
      const r2 = dx * dx + dy * dy;
      if (c.loaded.includes(i)) {
        known -= 0.5 * Math.log(r2);
        kx -= dx / r2;
        ky -= dy / r2;
      }
      const r = Math.sqrt(r2);
      const t = Math.atan2(dy, dx);
      for (let l = 1; l <= L; l++) {
        const s = (rc / r) ** l;
        const at = N + 2 * (i * L + l - 1);
        const C = Math.cos(l * t);
        const S = Math.sin(l * t);
        polar(v, gx, gy, at, s * C, (-l / r) * s * C, (-l / r) * s * S, t);
        polar(v, gx, gy, at + 1, s * S, (-l / r) * s * S, (l / r) * s * C, t);
      }
    }
    const r = Math.hypot(px, py);
    const t = Math.atan2(py, px);
    v[regular] = 1;
    for (let m = 1; m <= M; m++) {
      const s = r ** m;
      const g = m * r ** (m - 1);
      const C = Math.cos(m * t);
      const S = Math.sin(m * t);
      polar(v, gx, gy, regular + 2 * m - 1, s * C, g * C, -g * S, t);
      polar(v, gx, gy, regular + 2 * m, s * S, g * S, g * C, t);
    }
    return { v, gx, gy, known, kx, ky };
  };

  // A layer's functions at radius r [R] and angle t: value and radial derivative.
  const layerAt = (l: number, r: number, t: number) => {
    const r0 = l === 0 ? 1 : c.layers[l - 1].r1 / c.R;
    const r1 = c.layers[l].r1 / c.R;
    const v = new Float64Array(unknowns);
    const g = new Float64Array(unknowns);
    let at = sheath + perLayer * l;
    v[at++] = 1;
    v[at] = Math.log(r / r0);
    g[at++] = 1 / r;
    for (let m = 1; m <= M; m++) {
      for (const [s, d] of [
        [(r0 / r) ** m, (-m / r) * (r0 / r) ** m],
        [(r / r1) ** m, (m / r) * (r / r1) ** m],
      ] as const) {
        for (const trig of [Math.cos(m * t), Math.sin(m * t)]) {
          v[at] = s * trig;
          g[at++] = d * trig;
        }
      }
    }
    return { v, g, known: 0, kg: 0 };
  };

  for (let i = 0; i < N; i++) {
    for (let n = 0; n < 4 * L; n++) {
      const t = (2 * Math.PI * (n + 0.3)) / (4 * L);
      const { v, known } = bodyAt(X[i] + rc * Math.cos(t), Y[i] + rc * Math.sin(t));
      v[i] = -1;
      rows.push({ row: v, rhs: -known });
    }
  }
  const points = 3 * M;
  for (let n = 0; n < points; n++) {
    const t = (2 * Math.PI * (n + 0.4)) / points;
    const b = bodyAt(Math.cos(t), Math.sin(t));
    let inner = {
      v: b.v,
      g: b.gx.map((gx, i) => gx * Math.cos(t) + b.gy[i] * Math.sin(t)),
      known: b.known,
      kg: b.kx * Math.cos(t) + b.ky * Math.sin(t),
    };
    let k = c.k;
    let r = 1;
    for (let l = 0; l < c.layers.length; l++) {
      const outer = layerAt(l, r, t);
      const ratio = c.layers[l].k / k;
      rows.push({ row: inner.v.map((a, i) => a - outer.v[i]), rhs: -inner.known });
      rows.push({ row: inner.g.map((a, i) => (a - ratio * outer.g[i]) / M), rhs: -inner.kg / M });
      k = c.layers[l].k;
      r = c.layers[l].r1 / c.R;
      inner = layerAt(l, r, t);
    }
    const Bi = Number.isFinite(c.h) ? (c.h * c.R) / k : 1;
    const flow = Number.isFinite(c.h) ? 1 : 0;
    const scale = 1 / (Bi + flow);
    rows.push({
      row: inner.v.map((a, i) => (Bi * a + flow * inner.g[i]) * scale),
      rhs: -(Bi * inner.known + flow * inner.kg) * scale,
    });
  }

  const { solution, residual } = leastSquares(rows, unknowns);
  const dot = (v: Float64Array) => v.reduce((s, a, i) => s + a * solution[i], 0);
  let mean = 0;
  for (let n = 0; n < 720; n++) {
    const { v, known } = bodyAt(Math.cos((n * Math.PI) / 360), Math.sin((n * Math.PI) / 360));
    mean += (dot(v) + known) / 720;
  }
  const at = (x: number, y: number) => {
    const { v, known } = bodyAt(x / c.R, y / c.R);
    return dot(v) + known - mean;
  };
  return { G: Array.from({ length: N }, (_, i) => solution[i] - mean), residual, at };
}

function polar(
  v: Float64Array,
  gx: Float64Array,
  gy: Float64Array,
  at: number,
  value: number,
  radial: number,
  across: number,
  t: number,
): void {
  v[at] = value;
  gx[at] = radial * Math.cos(t) - across * Math.sin(t);
  gy[at] = radial * Math.sin(t) + across * Math.cos(t);
}

/** Minimises |A x − b| by Householder reflections; gives x and the root mean square residual. */
export function leastSquares(
  rows: { row: Float64Array; rhs: number }[],
  n: number,
): { solution: Float64Array; residual: number } {
  const m = rows.length;
  const A = Array.from({ length: n }, (_, j) => Float64Array.from(rows, ({ row }) => row[j]));
  const b = Float64Array.from(rows, ({ rhs }) => rhs);
  const scales = A.map((column) => {
    const size = Math.hypot(...column) || 1;
    for (let i = 0; i < m; i++) column[i] /= size;
    return size;
  });
  const diagonal = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    const column = A[j];
    let size = 0;
    for (let i = j; i < m; i++) size += column[i] ** 2;
    const alpha = column[j] > 0 ? -Math.sqrt(size) : Math.sqrt(size);
    const beta = 1 / (alpha * (column[j] - alpha));
    column[j] -= alpha;
    diagonal[j] = alpha;
    for (const other of [...A.slice(j + 1), b]) {
      let s = 0;
      for (let i = j; i < m; i++) s += column[i] * other[i];
      s *= beta;
      for (let i = j; i < m; i++) other[i] += s * column[i];
    }
  }
  const x = new Float64Array(n);
  for (let j = n - 1; j >= 0; j--) {
    let s = b[j];
    for (let i = j + 1; i < n; i++) s -= A[i][j] * x[i];
    x[j] = s / diagonal[j];
  }
  const residual = Math.sqrt(b.subarray(n).reduce((s, v) => s + v * v, 0) / m);
  return { solution: x.map((v, j) => v / scales[j]), residual };
}

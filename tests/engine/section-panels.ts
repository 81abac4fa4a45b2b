/**
 * A flat cable's section by boundary elements, for the tests alone: Green's identity on straight panels, each with one
 * value of potential and flow, in body and sheath apart. No multipoles, no poles, no images. Lengths in half heights.
 */
export interface PanelCase {
  x: ArrayLike<number>;
  rc: number;
  loaded: readonly number[];
  halfRun: number;
  halfHeight: number;
  k: number;
  sheath?: { k: number; thickness: number };
  h: number;
}

interface Panel {
  ax: number;
  ay: number;
  bx: number;
  by: number;
}

/** G of every conductor and the mean potential of the outer outline, both counted from the mean of the body's outline. */
export function panelSolution(c: PanelCase, n: number): { G: number[]; surface: number } {
  const unit = c.halfHeight / 4; // well away from the outline whose logarithmic capacity is 1
  const N = c.x.length;
  const conductors = Array.from({ length: N }, (_, i) => polygon(circle(c.x[i] / unit, c.rc / unit, n)).map(turned));
  const body = polygon(stadium(c.halfRun / unit, c.halfHeight / unit, 4 * n));
  const outer = c.sheath ? polygon(stadium(c.halfRun / unit, (c.halfHeight + c.sheath.thickness) / unit, 4 * n)) : [];
  const metal = conductors.flat();
  const nM = metal.length;
  const nB = body.length;
  const nO = outer.length;
  // unknowns: flow at metal, potential of each conductor, potential at the body's outline, flow there (sheathed), potential outside
  const atU = nM;
  const atB = atU + N;
  const atQ = atB + nB;
  const atO = atQ + (c.sheath ? nB : 0);
  const size = atO + nO;
  const A: Float64Array[] = [];
  const b: number[] = [];
  const Bi = (c.h * unit) / (c.sheath ? c.sheath.k : c.k);
  for (const [p, from] of [...metal.map((p, i) => [p, i] as const), ...body.map((p, i) => [p, nM + i] as const)]) {
    const row = new Float64Array(size);
    const px = (p.ax + p.bx) / 2;
    const py = (p.ay + p.by) / 2;
    metal.forEach((panel, j) => {
      const { single, angle } = integrals(panel, px, py, from === j);
      row[j] += single;
      row[atU + Math.floor(j / n)] += from === j ? -Math.PI : angle;
    });
    body.forEach((panel, j) => {
      const { single, angle } = integrals(panel, px, py, from === nM + j);
      row[atB + j] += from === nM + j ? -Math.PI : angle;
      if (c.sheath) row[atQ + j] += single;
      else row[atB + j] -= Bi * single;
    });
    A.push(row);
    b.push(0);
  }
  for (let i = 0; i < N; i++) {
    const row = new Float64Array(size);
    conductors[i].forEach((p, j) => {
      row[i * n + j] = Math.hypot(p.bx - p.ax, p.by - p.ay);
    });
    A.push(row);
    b.push(c.loaded.includes(i) ? 2 * Math.PI : 0);
  }
  if (c.sheath) {
    const ratio = c.sheath.k / c.k;
    const inner = body.map(turned);
    for (const [p, from] of [...inner.map((p, i) => [p, i] as const), ...outer.map((p, i) => [p, nB + i] as const)]) {
      const row = new Float64Array(size);
      const px = (p.ax + p.bx) / 2;
      const py = (p.ay + p.by) / 2;
      inner.forEach((panel, j) => {
        const { single, angle } = integrals(panel, px, py, from === j);
        row[atQ + j] -= single / ratio;
        row[atB + j] += from === j ? -Math.PI : angle;
      });
      outer.forEach((panel, j) => {
        const { single, angle } = integrals(panel, px, py, from === nB + j);
        row[atO + j] += (from === nB + j ? -Math.PI : angle) - Bi * single;
      });
      A.push(row);
      b.push(0);
    }
  }
  const u = solve(A, b);
  const mean = (panels: Panel[], at: number) => {
    const lengths = panels.map((p) => Math.hypot(p.bx - p.ax, p.by - p.ay));
    return lengths.reduce((s, l, i) => s + l * u[at + i], 0) / lengths.reduce((s, l) => s + l, 0);
  };
  const base = mean(body, atB);
  return {
    G: Array.from({ length: N }, (_, i) => u[atU + i] - base),
    surface: c.sheath ? mean(outer, atO) - base : 0,
  };
}

/** Over a panel: ∫ ln(1/r) ds and the angle ∫ ∂ln(r)/∂n ds with the normal to the right of a → b (outward when counterclockwise). */
function integrals({ ax, ay, bx, by }: Panel, px: number, py: number, own: boolean): { single: number; angle: number } {
  const length = Math.hypot(bx - ax, by - ay);
  const tx = (bx - ax) / length;
  const ty = (by - ay) / length;
  const s0 = (ax - px) * tx + (ay - py) * ty;
  const s1 = s0 + length;
  const d = own ? 0 : (ax - px) * ty - (ay - py) * tx;
  const angle = own ? 0 : Math.atan2(s1, d) - Math.atan2(s0, d);
  const wrapped = angle > Math.PI ? angle - 2 * Math.PI : angle < -Math.PI ? angle + 2 * Math.PI : angle;
  const part = (s: number) => (s === 0 ? 0 : s * (0.5 * Math.log(s * s + d * d) - 1));
  return { single: -(part(s1) - part(s0) + d * wrapped), angle: wrapped };
}

function turned({ ax, ay, bx, by }: Panel): Panel {
  return { ax: bx, ay: by, bx: ax, by: ay };
}

function polygon(points: [number, number][]): Panel[] {
  return points.map(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length];
    return { ax, ay, bx, by };
  });
}

/** Corners of a regular polygon that has the circle's area. */
function circle(x: number, r: number, n: number): [number, number][] {
  const R = r * Math.sqrt((2 * Math.PI) / (n * Math.sin((2 * Math.PI) / n)));
  return Array.from({ length: n }, (_, i) => [
    x + R * Math.cos((2 * Math.PI * i) / n),
    R * Math.sin((2 * Math.PI * i) / n),
  ]);
}

function stadium(halfRun: number, r: number, n: number): [number, number][] {
  const P = 4 * halfRun + 2 * Math.PI * r;
  const onArc = Math.max(8, Math.round((n * Math.PI * r) / P));
  const onRun = halfRun === 0 ? 1 : Math.max(4, Math.round((n * 2 * halfRun) / P));
  const points: [number, number][] = [];
  for (const side of [1, -1]) {
    for (let i = 0; i < onArc; i++) {
      const t = -Math.PI / 2 + (Math.PI * i) / onArc;
      points.push([side * (halfRun + r * Math.cos(t)), side * r * Math.sin(t)]);
    }
    if (halfRun > 0) for (let i = 0; i < onRun; i++) points.push([side * halfRun * (1 - (2 * i) / onRun), side * r]);
  }
  return points;
}

/** Gaussian elimination with row exchanges. */
function solve(A: Float64Array[], b: number[]): number[] {
  const n = b.length;
  for (let j = 0; j < n; j++) {
    let pivot = j;
    for (let i = j + 1; i < n; i++) if (Math.abs(A[i][j]) > Math.abs(A[pivot][j])) pivot = i;
    [A[j], A[pivot]] = [A[pivot], A[j]];
    [b[j], b[pivot]] = [b[pivot], b[j]];
    const top = A[j];
    for (let i = j + 1; i < n; i++) {
      const row = A[i];
      const f = row[j] / top[j];
      if (f === 0) continue;
      for (let c = j; c < n; c++) row[c] -= f * top[c];
      b[i] -= f * b[j];
    }
  }
  for (let j = n - 1; j >= 0; j--) {
    let s = b[j];
    for (let c = j + 1; c < n; c++) s -= A[j][c] * b[c];
    b[j] = s / A[j][j];
  }
  return b;
}

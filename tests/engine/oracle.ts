// The heat model written out a second time, plainly and slowly, from its formulas alone; nothing here comes from the engine.

/** One ring of solid round the equivalent conductor: radii [m], conductivity [W/(m·K)], heat capacity [J/(m³·K)]. */
export interface PlainRing {
  r0: number;
  r1: number;
  k: number;
  rhoC: number;
}

/** A problem in plain numbers; temperatures in K. */
export interface PlainProblem {
  rings: PlainRing[];
  /** Heat capacity of the loaded conductors [J/(m·K)]. */
  capacity: number;
  /** Heat made per metre at a conductor temperature and a time [W/m]. */
  heat(T: number, t: number): number;
  /** Heat shed per metre at a surface temperature [W/m]. */
  shed(T: number): number;
  T0: number;
}

/** Kuehn and Goldstein's still air round a horizontal cylinder, with radiation [W/m]. */
export function stillAirShed(
  D: number,
  emissivity: number,
  Ta: number,
  T: number,
  extra = (free: number) => free,
): number {
  const Tf = (T + Ta) / 2;
  const mu = (1.716e-5 * (Tf / 273.15) ** 1.5 * (273.15 + 110.4)) / (Tf + 110.4);
  const k = (0.0241 * (Tf / 273.15) ** 1.5 * (273.15 + 194)) / (Tf + 194);
  const rho = 101_325 / (287.05 * Tf);
  const nu = mu / rho;
  const a = k / (rho * 1007);
  const Pr = nu / a;
  const Ra = ((9.80665 / Tf) * Math.abs(T - Ta) * D ** 3) / (nu * a);
  const laminar = 0.518 * Ra ** 0.25 * (1 + (0.559 / Pr) ** 0.6) ** (-5 / 12);
  const b = (laminar ** 15 + (0.1 * Ra ** (1 / 3)) ** 15) ** (1 / 15);
  const Nu = extra(b > 0 ? 2 / Math.log(1 + 2 / b) : 0);
  return Math.PI * D * (((Nu * k) / D) * (T - Ta) + emissivity * 5.670374419e-8 * (T ** 4 - Ta ** 4));
}

/** Churchill and Bernstein's draught, joined to free convection by fourth powers [W/m]. */
export function draughtShed(D: number, emissivity: number, Ta: number, speed: number, T: number): number {
  const Tf = (T + Ta) / 2;
  const mu = (1.716e-5 * (Tf / 273.15) ** 1.5 * (273.15 + 110.4)) / (Tf + 110.4);
  const k = (0.0241 * (Tf / 273.15) ** 1.5 * (273.15 + 194)) / (Tf + 194);
  const nu = mu / (101_325 / (287.05 * Tf));
  const Pr = (mu * 1007) / k;
  const Re = (speed * D) / nu;
  const forced =
    0.3 +
    ((0.62 * Re ** 0.5 * Pr ** (1 / 3)) / (1 + (0.4 / Pr) ** (2 / 3)) ** 0.25) * (1 + (Re / 282_000) ** 0.625) ** 0.8;
  return stillAirShed(D, emissivity, Ta, T, (free) => (forced ** 4 + free ** 4) ** 0.25);
}

type Complex = readonly [number, number];
const plus = (a: Complex, b: Complex): Complex => [a[0] + b[0], a[1] + b[1]];
const minus = (a: Complex, b: Complex): Complex => [a[0] - b[0], a[1] - b[1]];
const times = (a: Complex, b: Complex): Complex => [a[0] * b[0] - a[1] * b[1], a[0] * b[1] + a[1] * b[0]];
const over = (a: Complex, b: Complex): Complex => {
  const size = b[0] ** 2 + b[1] ** 2;
  return [(a[0] * b[0] + a[1] * b[1]) / size, (a[1] * b[0] - a[0] * b[1]) / size];
};
const bar = (a: Complex): Complex => [a[0], -a[1]];
const scaled = (a: Complex, s: number): Complex => [a[0] * s, a[1] * s];
const size = (a: Complex) => Math.hypot(a[0], a[1]);
const power = (a: Complex, n: number): Complex => {
  let p: Complex = [1, 0];
  for (let i = 0; i < n; i++) p = times(p, a);
  return p;
};

/** Shape factor by line sources and images, of core i among the `loaded` ones. */
export function lineSourceG(z: Complex[], rc: number, R: number, loaded: number[], i: number): number {
  const zi = z[i] as Complex;
  let G = Math.log((R * R - size(zi) ** 2) / (R * rc));
  for (const j of loaded) {
    if (j === i) continue;
    const zj = z[j] as Complex;
    G += Math.log(size(minus([R * R, 0], times(zi, bar(zj)))) / (R * size(minus(zi, zj))));
  }
  return G;
}

/** Solves a full linear system by elimination with the greatest pivot. */
function solved(A: number[][], b: number[]): number[] {
  const n = b.length;
  const M = A.map((row, i) => [...row, b[i] as number]);
  for (let c = 0; c < n; c++) {
    let best = c;
    for (let r = c; r < n; r++) if (Math.abs(M[r]?.[c] as number) > Math.abs(M[best]?.[c] as number)) best = r;
    [M[c], M[best]] = [M[best] as number[], M[c] as number[]];
    const top = M[c] as number[];
    for (let r = 0; r < n; r++) {
      if (r === c) continue;
      const row = M[r] as number[];
      const f = (row[c] as number) / (top[c] as number);
      for (let k = c; k <= n; k++) row[k] = (row[k] as number) - f * (top[k] as number);
    }
  }
  return M.map((row, i) => (row[n] as number) / (row[i] as number));
}

/**
 * Shape factor with finite conductors and a real surface, of core i: dipoles on every conductor, the surface's answer to
 * harmonic m by `gamma(m)`.
 */
export function finiteG(
  z: Complex[],
  rc: number,
  R: number,
  loaded: number[],
  i: number,
  gamma: (m: number) => number,
): number {
  const orders = Array.from({ length: 60 }, (_, m) => m + 1);
  const N = z.length;
  const at = (k: number) => z[k] as Complex;
  const ratio = (k: number, j: number) => scaled(times(at(k), bar(at(j))), 1 / (R * R));
  const series = (k: number, j: number, weight: (m: number) => number) =>
    orders.reduce<Complex>((sum, m) => plus(sum, scaled(power(ratio(k, j), m - 1), gamma(m) * weight(m))), [0, 0]);
  // p_k + rc² conj(Σ_j {−[j≠k] p_j/(z_k − z_j)² + p̄_j S_kj}) = −rc² conj(Σ g), real and imaginary parts apart
  const A: number[][] = Array.from({ length: 2 * N }, () => new Array<number>(2 * N).fill(0));
  const b = new Array<number>(2 * N).fill(0);
  for (let k = 0; k < N; k++) {
    let g: Complex = [0, 0];
    for (const j of loaded) {
      if (j !== k) g = minus(g, over([1, 0], minus(at(k), at(j))));
      g = plus(
        g,
        times(
          scaled(bar(at(j)), 1 / (R * R)),
          series(k, j, () => 1),
        ),
      );
    }
    const right = scaled(bar(g), -rc * rc);
    [b[2 * k], b[2 * k + 1]] = [right[0], right[1]];
    for (let j = 0; j < N; j++) {
      for (const part of [0, 1] as const) {
        const p: Complex = part === 0 ? [1, 0] : [0, 1];
        let field = times(
          bar(p),
          scaled(
            series(k, j, (m) => m),
            1 / (R * R),
          ),
        );
        if (j !== k) field = minus(field, over(p, power(minus(at(k), at(j)), 2)));
        const column = plus(j === k ? p : [0, 0], scaled(bar(field), rc * rc));
        (A[2 * k] as number[])[2 * j + part] = column[0];
        (A[2 * k + 1] as number[])[2 * j + part] = column[1];
      }
    }
  }
  const x = solved(A, b);
  let G = Math.log(R / rc);
  for (const j of loaded) {
    if (j !== i) G += Math.log(R / size(minus(at(i), at(j))));
    for (const m of orders) G += (gamma(m) / m) * power(ratio(i, j), m)[0];
  }
  for (let j = 0; j < N; j++) {
    const p: Complex = [x[2 * j] as number, x[2 * j + 1] as number];
    if (j !== i) G += over(p, minus(at(i), at(j)))[0];
    G += times(
      times(bar(p), scaled(at(i), 1 / (R * R))),
      series(i, j, () => 1),
    )[0];
  }
  return G;
}

/** Γ_m of a body of conductivity k under one sheath r0 to r1 of conductivity kSheath, shedding h [W/(m²·K)]. */
export function surfaceGamma(m: number, k: number, r0: number, r1: number, kSheath: number, h: number): number {
  const t = Math.tanh(m * Math.log(r1 / r0));
  const outside = (h * r1) / (kSheath * m);
  const Y = (((outside + t) / (1 + outside * t)) * kSheath) / k;
  return (1 - Y) / (1 + Y);
}

/** Temperatures over time: conductor and outermost surface at each whole `every` seconds up to `end`. */
export function plainRun(
  of: PlainProblem,
  cells: number,
  end: number,
  every: number,
): { t: number; conductor: number; surface: number }[] {
  const width = of.rings.reduce((sum, { r0, r1 }) => sum + r1 - r0, 0);
  const parts = of.rings.flatMap((ring) => {
    const n = Math.max(4, Math.round((cells * (ring.r1 - ring.r0)) / width));
    const d = (ring.r1 - ring.r0) / n;
    return Array.from({ length: n }, (_, i) => ({ ...ring, r0: ring.r0 + i * d, r1: ring.r0 + (i + 1) * d }));
  });
  const wall = (a: number, b: number, k: number) => Math.log(b / a) / (2 * Math.PI * k);
  const inner = parts.map(({ r0, r1, k }) => wall(r0, (r0 + r1) / 2, k));
  const outer = parts.map(({ r0, r1, k }) => wall((r0 + r1) / 2, r1, k));
  const C = [of.capacity, ...parts.map(({ r0, r1, rhoC }) => Math.PI * (r1 ** 2 - r0 ** 2) * rhoC)];
  const R = parts.map((_, i) => (inner[i] as number) + (i > 0 ? (outer[i - 1] as number) : 0)); // from node i to node i + 1
  const last = parts.length;
  const edge = outer.at(-1) ?? 0;
  let surface = of.T0;

  /** Surface temperature behind the last half cell, by Newton's method from where it was. */
  function surfaceOf(T: number): number {
    if (edge === 0) return T;
    let x = surface;
    for (let i = 0; i < 50; i++) {
      const f = (y: number) => (T - y) / edge - of.shed(y);
      const step = f(x) / ((f(x + 1e-4) - f(x)) / 1e-4);
      x -= step;
      if (Math.abs(step) < 1e-9) break;
    }
    return x;
  }

  function rates(y: Float64Array, t: number, out: Float64Array): void {
    let into = of.heat(y[0] as number, t);
    for (let i = 0; i <= last; i++) {
      if (i === last) surface = surfaceOf(y[i] as number);
      const away = i < last ? ((y[i] as number) - (y[i + 1] as number)) / (R[i] as number) : of.shed(surface);
      out[i] = (into - away) / (C[i] as number);
      into = away;
    }
  }

  const n = last + 1;
  const y = new Float64Array(n).fill(of.T0);
  const [k1, k2, k3, k4, mid] = [1, 2, 3, 4, 5].map(() => new Float64Array(n)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  // Runge and Kutta's steps, below the bound at which the fastest cell would grow
  const fastest = Math.max(
    ...C.map((c, i) => ((i > 0 ? 1 / (R[i - 1] as number) : 0) + (i < last ? 1 / (R[i] as number) : 0)) / c),
  );
  const steps = Math.ceil((every * Math.max(fastest * 2, 40 / every)) / 2.2);
  const h = every / steps;
  const list = [{ t: 0, conductor: of.T0, surface: of.T0 }];
  for (let mark = 1; mark * every <= end + 1e-9; mark++) {
    for (let s = 0; s < steps; s++) {
      const t = (mark - 1) * every + s * h;
      rates(y, t, k1);
      for (let i = 0; i < n; i++) mid[i] = (y[i] as number) + 0.5 * h * (k1[i] as number);
      rates(mid, t + h / 2, k2);
      for (let i = 0; i < n; i++) mid[i] = (y[i] as number) + 0.5 * h * (k2[i] as number);
      rates(mid, t + h / 2, k3);
      for (let i = 0; i < n; i++) mid[i] = (y[i] as number) + h * (k3[i] as number);
      rates(mid, t + h, k4);
      for (let i = 0; i < n; i++) {
        y[i] =
          (y[i] as number) +
          (h / 6) * ((k1[i] as number) + 2 * (k2[i] as number) + 2 * (k3[i] as number) + (k4[i] as number));
      }
    }
    list.push({ t: mark * every, conductor: y[0] as number, surface: surfaceOf(y[last] as number) });
  }
  return list;
}

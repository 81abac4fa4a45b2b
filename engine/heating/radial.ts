import type { SurfaceLaw } from '../surroundings/law.ts';
import type { Mesh } from './mesh.ts';
import { a, c, d, gamma } from './rodas.ts';

/** The radial problem while one supply lasts. */
export interface Radial {
  /** Temperatures at the nodes [K]; node 0 is the conductor. Changed by `accept` alone. */
  readonly y: Float64Array;
  /** Heat made and heat shed since the start [J/m]. */
  readonly account: { made: number; lost: number };
  /** Heat made per metre as a function of conductor temperature [W/m], until it is set again. */
  setHeat(heat: (T: number) => number): void;
  /** Tries a step of `h` [s]; returns the greatest error estimate over the nodes [K]. Nothing changes before `accept`. */
  attempt(h: number): number;
  /** Takes the step just tried. */
  accept(): void;
  /** Takes the step just tried as far as its part `s` (0 to 1), on the dense output. */
  acceptPart(s: number): void;
  /** Writes y0, y1 and the two shape terms of the dense output at `node` into `out` at `at`, for the step just tried. */
  dense(node: number, out: Float64Array, at: number): void;
  /** Rate of the conductor's temperature now [K/s]. */
  rate(): number;
}

/**
 * The heat equation of a mesh, M y' = f(y): conduction between nodes, heat made in node 0, heat shed from the last.
 * The interior is linear; the two ends enter by their slopes, taken by guarded differences. No array or object is made in a step.
 */
export function radialOf(mesh: Mesh, flow: SurfaceLaw, start: Float64Array): Radial {
  const n = mesh.r.length;
  const last = n - 1;
  const { K, lower, diagonal, upper } = mesh;
  const array = () => new Float64Array(n);
  const y = Float64Array.from(start);
  const trial = array();
  const arg = array();
  const carry = array();
  const [u1, u2, u3, u4, u5, u6] = [array(), array(), array(), array(), array(), array()];
  const over = array(); // −l_i of the factors
  const under = array(); // −u_i/d_i
  const inverse = array(); // 1/d_i
  const account = { made: 0, lost: 0 };
  // stages of the two accounts, and what the step just tried would add
  const made = new Float64Array(8);
  const lost = new Float64Array(8);
  let heat: (T: number) => number = () => 0;
  let slopeHeat = 0;
  let slopeFlow = 0;
  let flowNow = 0;
  let heatNow = 0;
  let step = 0;

  function slopes(): void {
    const Tc = y[0] as number;
    const Ts = y[last] as number;
    heatNow = heat(Tc);
    flowNow = flow(Ts);
    slopeHeat = (heat(Tc + 0.01) - heatNow) * 100;
    const gap = 1e-3 + 1e-4 * Math.abs(flowNow);
    slopeFlow = (flow(Ts + gap) - flowNow) / gap;
  }

  function factor(h: number): void {
    const scale = 1 / (h * gamma);
    let before = 0; // K of the node before
    let u = 0; // upper entry of the row before
    let inv = 0;
    for (let i = 0; i < n; i++) {
      const after = i < last ? (K[i] as number) : 0;
      let pivot = (diagonal[i] as number) * scale + before + after;
      if (i === 0) pivot -= slopeHeat;
      if (i === last) pivot += slopeFlow;
      const l = ((lower[i] as number) * scale - before) * inv;
      pivot -= l * u;
      inv = 1 / pivot;
      u = (upper[i] as number) * scale - after;
      over[i] = -l;
      under[i] = -u * inv;
      inverse[i] = inv;
      before = after;
    }
  }

  /** Solves for one stage: right side f(arg) + M carry, result in `out`. */
  function solve(out: Float64Array, shed: number, supplied: number): void {
    let into = supplied;
    let here = arg[0] as number;
    let cBefore = 0;
    let cHere = carry[0] as number;
    let x = 0;
    for (let i = 0; i < last; i++) {
      const next = arg[i + 1] as number;
      const cNext = carry[i + 1] as number;
      const away = (K[i] as number) * (here - next);
      const stored = (lower[i] as number) * cBefore + (diagonal[i] as number) * cHere + (upper[i] as number) * cNext;
      x = into - away + stored + (over[i] as number) * x;
      out[i] = x;
      into = away;
      here = next;
      cBefore = cHere;
      cHere = cNext;
    }
    x =
      into - shed + (lower[last] as number) * cBefore + (diagonal[last] as number) * cHere + (over[last] as number) * x;
    x *= inverse[last] as number;
    out[last] = x;
    for (let i = last - 1; i >= 0; i--) {
      x = (out[i] as number) * (inverse[i] as number) + (under[i] as number) * x;
      out[i] = x;
    }
  }

  /** One stage of the method, with the stage of both accounts, whose own carries are `cm` and `cl`. */
  function stage(out: Float64Array, k: number, cm: number, cl: number): void {
    const supplied = k === 1 ? heatNow : heat(arg[0] as number);
    const shed = k === 1 ? flowNow : flow(arg[last] as number);
    solve(out, shed, supplied);
    made[k] = step * gamma * (supplied + slopeHeat * (out[0] as number) + cm);
    lost[k] = step * gamma * (shed + slopeFlow * (out[last] as number) + cl);
  }

  /** Σ c_kj/h of an account's stages so far. */
  function carried(v: Float64Array, k1: number, k2: number, k3: number, k4: number, k5: number): number {
    return (
      k1 * (v[1] as number) +
      k2 * (v[2] as number) +
      k3 * (v[3] as number) +
      k4 * (v[4] as number) +
      k5 * (v[5] as number)
    );
  }

  function attempt(h: number): number {
    step = h;
    const ih = 1 / h;
    made.fill(0); // a rejected step may have left what is not a number, which times nothing is still not a number
    lost.fill(0);
    slopes();
    factor(h);
    for (let i = 0; i < n; i++) {
      arg[i] = y[i] as number;
      carry[i] = 0;
    }
    stage(u1, 1, 0, 0);
    const c21 = c.c21 * ih;
    for (let i = 0; i < n; i++) {
      const p = u1[i] as number;
      arg[i] = (y[i] as number) + a.a21 * p;
      carry[i] = c21 * p;
    }
    stage(u2, 2, carried(made, c21, 0, 0, 0, 0), carried(lost, c21, 0, 0, 0, 0));
    const c31 = c.c31 * ih;
    const c32 = c.c32 * ih;
    for (let i = 0; i < n; i++) {
      const p = u1[i] as number;
      const q = u2[i] as number;
      arg[i] = (y[i] as number) + a.a31 * p + a.a32 * q;
      carry[i] = c31 * p + c32 * q;
    }
    stage(u3, 3, carried(made, c31, c32, 0, 0, 0), carried(lost, c31, c32, 0, 0, 0));
    const c41 = c.c41 * ih;
    const c42 = c.c42 * ih;
    const c43 = c.c43 * ih;
    for (let i = 0; i < n; i++) {
      const p = u1[i] as number;
      const q = u2[i] as number;
      const r = u3[i] as number;
      arg[i] = (y[i] as number) + a.a41 * p + a.a42 * q + a.a43 * r;
      carry[i] = c41 * p + c42 * q + c43 * r;
    }
    stage(u4, 4, carried(made, c41, c42, c43, 0, 0), carried(lost, c41, c42, c43, 0, 0));
    const c51 = c.c51 * ih;
    const c52 = c.c52 * ih;
    const c53 = c.c53 * ih;
    const c54 = c.c54 * ih;
    for (let i = 0; i < n; i++) {
      const p = u1[i] as number;
      const q = u2[i] as number;
      const r = u3[i] as number;
      const t = u4[i] as number;
      arg[i] = (y[i] as number) + a.a51 * p + a.a52 * q + a.a53 * r + a.a54 * t;
      carry[i] = c51 * p + c52 * q + c53 * r + c54 * t;
    }
    stage(u5, 5, carried(made, c51, c52, c53, c54, 0), carried(lost, c51, c52, c53, c54, 0));
    const c61 = c.c61 * ih;
    const c62 = c.c62 * ih;
    const c63 = c.c63 * ih;
    const c64 = c.c64 * ih;
    const c65 = c.c65 * ih;
    for (let i = 0; i < n; i++) {
      const e = u5[i] as number;
      arg[i] = (arg[i] as number) + e;
      carry[i] =
        c61 * (u1[i] as number) + c62 * (u2[i] as number) + c63 * (u3[i] as number) + c64 * (u4[i] as number) + c65 * e;
    }
    stage(u6, 6, carried(made, c61, c62, c63, c64, c65), carried(lost, c61, c62, c63, c64, c65));
    let worst = 0;
    for (let i = 0; i < n; i++) {
      const error = u6[i] as number;
      trial[i] = (arg[i] as number) + error;
      const size = Math.abs(error);
      if (!(size <= worst)) worst = size;
    }
    return worst;
  }

  const sum = (v: Float64Array) =>
    a.a51 * (v[1] as number) +
    a.a52 * (v[2] as number) +
    a.a53 * (v[3] as number) +
    a.a54 * (v[4] as number) +
    (v[5] as number) +
    (v[6] as number);

  function shape(v: (k: number) => number, third: boolean): number {
    return third
      ? d.d31 * v(1) + d.d32 * v(2) + d.d33 * v(3) + d.d34 * v(4) + d.d35 * v(5)
      : d.d21 * v(1) + d.d22 * v(2) + d.d23 * v(3) + d.d24 * v(4) + d.d25 * v(5);
  }

  function accept(): void {
    y.set(trial);
    account.made += sum(made);
    account.lost += sum(lost);
  }

  function acceptPart(s: number): void {
    const stages = [u1, u1, u2, u3, u4, u5];
    const blend = (y0: number, y1: number, v: (k: number) => number) =>
      (1 - s) * y0 + s * (y1 + (1 - s) * (shape(v, false) + s * shape(v, true)));
    for (let i = 0; i < n; i++) {
      y[i] = blend(y[i] as number, trial[i] as number, (k) => (stages[k] as Float64Array)[i] as number);
    }
    account.made += blend(0, sum(made), (k) => made[k] as number);
    account.lost += blend(0, sum(lost), (k) => lost[k] as number);
  }

  function dense(node: number, out: Float64Array, at: number): void {
    const p = u1[node] as number;
    const q = u2[node] as number;
    const r = u3[node] as number;
    const t = u4[node] as number;
    const e = u5[node] as number;
    out[at] = y[node] as number;
    out[at + 1] = trial[node] as number;
    out[at + 2] = d.d21 * p + d.d22 * q + d.d23 * r + d.d24 * t + d.d25 * e;
    out[at + 3] = d.d31 * p + d.d32 * q + d.d33 * r + d.d34 * t + d.d35 * e;
  }

  return {
    y,
    account,
    setHeat: (next) => {
      heat = next;
    },
    attempt,
    accept,
    acceptPart,
    dense,
    rate: () => {
      const away = last === 0 ? flow(y[0] as number) : (K[0] as number) * ((y[0] as number) - (y[1] as number));
      return (heat(y[0] as number) - away) / (mesh.diagonal[0] as number);
    },
  };
}

/** A value of the dense output at part `s` (0 to 1) of a step, from the four numbers `dense` wrote at `at`. */
export function denseAt(out: Float64Array, at: number, s: number): number {
  const r = 1 - s;
  return (
    r * (out[at] as number) +
    s * ((out[at + 1] as number) + r * ((out[at + 2] as number) + s * (out[at + 3] as number)))
  );
}

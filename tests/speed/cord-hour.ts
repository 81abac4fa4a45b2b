// One hour of a three-core 0.75 mm² cord, two loaded, 13 A from 20 °C, still air, 24 cells: time and error of the engine's
// solver, beside a general extrapolation solver (odex) on the same right-hand side.
import { createRequire } from 'node:module';
import { buildCase, conductorResistance, type Scenario } from '#engine';
import { type March, marchOf } from '#engine/heating/march.ts';
import { denseAt } from '#engine/heating/radial.ts';
import { calibration, line, microseconds } from './clock.ts';

/** The part of odex that is used; the package brings no declarations. */
interface Extrapolation {
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  solve(
    f: (t: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { y: number[]; nEval: number };
}
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => Extrapolation };

const scenario: Scenario = {
  cable: { table: 'H05VV-F', cores: 3, size_mm2: 0.75, loaded: 2 },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: [{ kind: 'current', I_A: 13 }],
};
const of = buildCase(scenario);
const hour = 3600;
const current = () => 13;
/** Where the usual compiled variable-order BDF library was measured for this very run. */
const compiledBdf = { microseconds: 183, steps: 79, allowed_mK: 6.5 };

function march(tolerance: number): March {
  const run = marchOf(of, 13, 24, tolerance);
  run.setCurrent(current);
  return run;
}

interface Piece {
  readonly t: number;
  readonly h: number;
  readonly dense: Float64Array;
}

function pieces(tolerance: number): { list: Piece[]; steps: number } {
  const list: Piece[] = [];
  const run = march(tolerance);
  run.to(hour, (t, h, dense) => {
    list.push({ t, h, dense: dense.slice(0, 4) });
    return 1;
  });
  return { list, steps: run.count.steps };
}

function reader(list: readonly Piece[]) {
  let i = 0;
  return (t: number) => {
    while (i < list.length - 1 && (list[i] as Piece).t + (list[i] as Piece).h < t) i++;
    const { t: t0, h, dense } = list[i] as Piece;
    return denseAt(dense, 0, (t - t0) / h);
  };
}

/** Greatest error of the conductor [mK] at `times`, for values that `read` gives in rising order of time. */
function error(read: (t: number) => number, exact: readonly number[], times: readonly number[]): number {
  return 1000 * times.reduce((worst, t, i) => Math.max(worst, Math.abs(read(t) - (exact[i] as number))), 0);
}

/** The same right-hand side for a general solver: the storage matrix is solved, then the two ends are added. */
function rightHandSide() {
  const { mesh } = march(0.03);
  const { K, lower, diagonal, upper, r } = mesh;
  const n = r.length;
  const d = new Float64Array(n);
  const f = new Float64Array(n);
  return {
    n,
    derivative(y: readonly number[]): number[] {
      f.fill(0);
      for (let i = 0; i < n - 1; i++) {
        const flow = (K[i] as number) * ((y[i] as number) - (y[i + 1] as number));
        f[i] = (f[i] as number) - flow;
        f[i + 1] = (f[i + 1] as number) + flow;
      }
      const Tc = y[0] as number;
      f[0] = (f[0] as number) + of.n * 169 * conductorResistance(of, Tc);
      f[n - 1] = (f[n - 1] as number) - of.outside.flow(y[n - 1] as number);
      let pivot = diagonal[0] as number;
      d[0] = pivot;
      for (let i = 1; i < n; i++) {
        const l = (lower[i] as number) / pivot;
        pivot = (diagonal[i] as number) - l * (upper[i - 1] as number);
        d[i] = pivot;
        f[i] = (f[i] as number) - l * (f[i - 1] as number);
      }
      const out = new Array<number>(n);
      out[n - 1] = (f[n - 1] as number) / (d[n - 1] as number);
      for (let i = n - 2; i >= 0; i--) {
        out[i] = ((f[i] as number) - (upper[i] as number) * (out[i + 1] as number)) / (d[i] as number);
      }
      return out;
    },
  };
}

/** One hour by odex, stopping at `times`; the conductor there, and how often it asked for the right-hand side. */
function byOdex(tolerance: number, times: readonly number[]): { values: number[]; calls: number } {
  const { n, derivative } = rightHandSide();
  const solver = new Solver(n);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = 1e-12;
  solver.maxSteps = 1_000_000;
  let y: number[] = new Array<number>(n).fill(of.T0);
  let from = 0;
  let calls = 0;
  const values = times.map((t) => {
    const part = solver.solve((_t, now) => derivative(now), from, y, t);
    y = part.y;
    calls += part.nEval;
    from = t;
    return y[0] as number;
  });
  return { values, calls };
}

/** Prints the figures. */
export function cordHour(): void {
  const times = Array.from({ length: 720 }, (_, i) => 0.05 * 1.0157 ** i).filter((t) => t < hour);
  const converged = reader(pieces(1e-4).list);
  const exact = times.map(converged);
  const base = calibration();
  line('calibration loop', `${base.toFixed(3)} µs`);
  for (const tolerance of [0.1, 0.05, 0.03, 0.01]) {
    const { list, steps } = pieces(tolerance);
    const worst = error(reader(list), exact, times);
    const time = microseconds(() => march(tolerance).to(hour), 400);
    const share = time / compiledBdf.microseconds;
    line(
      `cord for an hour, tolerance ${tolerance} K`,
      `${time.toFixed(1)} µs, ${steps} steps, ${worst.toFixed(2)} mK, ${(time / base).toFixed(1)} loops, ${share.toFixed(2)} of 183 µs`,
    );
  }
  const sparse = times.filter((_, i) => i % 90 === 89);
  const sparseExact = sparse.map(reader(pieces(1e-4).list));
  const own = microseconds(() => march(0.05).to(hour), 400);
  for (const tolerance of [1e-2, 1e-3]) {
    const { values, calls } = byOdex(tolerance, sparse);
    const worst = 1000 * values.reduce((w, v, i) => Math.max(w, Math.abs(v - (sparseExact[i] as number))), 0);
    const time = microseconds(() => byOdex(tolerance, [hour]), 1, 3);
    line(
      `the same by odex, tolerance ${tolerance} K`,
      `${time.toFixed(0)} µs, ${calls} calls, ${worst.toFixed(2)} mK, ${(time / own).toFixed(0)} times as long`,
    );
  }
}

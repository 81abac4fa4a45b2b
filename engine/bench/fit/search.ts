import { levenbergMarquardt } from 'ml-levenberg-marquardt';

/** A weighted least-squares problem: readings and model over their standard uncertainties. */
export interface Search {
  readonly measured: Float64Array;
  /** Not numbers where the model has no answer. */
  readonly model: (p: readonly number[]) => Float64Array;
  readonly start: readonly number[];
  readonly bounds: readonly (readonly [number, number])[];
  /** Steps of the difference quotients. */
  readonly steps: readonly number[];
}

/** How a search ended. */
export type SearchEnd = 'converged' | 'no better step' | 'ran out of steps' | 'stopped';

/** Where a search is, or has ended. */
export interface SearchState {
  readonly p: readonly number[];
  readonly chiSquare: number;
  readonly iteration: number;
  readonly evaluations: number;
}

/** Rows of difference quotients, one for each parameter: ∂model/∂p_j at every reading. */
export type Slopes = readonly Float64Array[];

const mostIterations = 60;
const firstDamping = 1e-2;
const leastDamping = 1e-7;
const mostDamping = 1e7;
/** Share of chi-square whose loss no longer counts, and steps in units of a parameter's own uncertainty. */
const settledShare = 1e-7;
const settledStep = 1e-3;

/** Sum of squares of measured less model. */
export const chiSquareOf = (measured: Float64Array, model: Float64Array): number =>
  measured.reduce((sum, y, i) => sum + (y - model[i]) ** 2, 0);

/** Difference quotients of a model about `p`, forward, or backward where forward leaves the bounds or has no answer. */
export function slopesOf({ model, bounds, steps }: Search, p: readonly number[], at: Float64Array): Slopes {
  return p.map((value, j) => {
    const quotient = (step: number) => {
      const moved = model(p.map((old, i) => (i === j ? old + step : old)));
      return moved.map((f, i) => (f - at[i]) / step);
    };
    const forward = value + steps[j] <= bounds[j][1];
    const first = quotient(forward ? steps[j] : -steps[j]);
    return forward && first.some(Number.isNaN) ? quotient(-steps[j]) : first;
  });
}

const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, x, i) => sum + x * b[i], 0);

/**
 * Levenberg and Marquardt's search, one step at a time: it yields after each and stops when `false` comes back. Each step is
 * the library's own, with each parameter measured by what it moves; damping, acceptance and the end are decided here, since the
 * library ends by a count alone and goes on from a worse point. A parameter at a bound that would leave rests for that step.
 */
export function* searching(
  search: Search,
): Generator<SearchState, SearchState & { end: SearchEnd }, boolean | undefined> {
  let evaluations = 0;
  const model = (p: readonly number[]) => {
    evaluations++;
    return search.model(p);
  };
  let p = search.start;
  let at = model(p);
  let chiSquare = chiSquareOf(search.measured, at);
  let damping = firstDamping;
  let slopes: Slopes | null = null;
  const state = (iteration: number) => ({ p, chiSquare, iteration, evaluations });
  for (let iteration = 1; iteration <= mostIterations; iteration++) {
    slopes ??= slopesOf({ ...search, model }, p, at);
    const free = movable(search, p, slopes, at);
    if (free.length === 0) return { ...state(iteration), end: 'converged' };
    const next = stepped(search, p, at, slopes, free, damping, model);
    const gain = chiSquare - next.chiSquare;
    const moved = Math.max(...free.map((j) => Math.abs(next.p[j] - p[j]) * Math.sqrt(dot(slopes![j], slopes![j]))));
    const small = (moved < settledStep && damping <= 1) || Math.abs(gain) <= settledShare * chiSquare;
    if (gain > 0) {
      ({ p, at, chiSquare } = next);
      slopes = null;
      damping = Math.max(leastDamping, damping / 9);
    } else damping *= 11;
    if (small) return { ...state(iteration), end: 'converged' };
    if (damping > mostDamping) return { ...state(iteration), end: 'no better step' };
    if ((yield state(iteration)) === false) return { ...state(iteration), end: 'stopped' };
  }
  return { ...state(mostIterations), end: 'ran out of steps' };
}

/** Parameters that move anything, but for those at a bound that the fit would push beyond it. */
function movable({ measured, bounds }: Search, p: readonly number[], slopes: Slopes, at: Float64Array): number[] {
  const left = measured.map((y, i) => y - at[i]);
  return [...p.keys()].filter((j) => {
    const pull = dot(slopes[j], left); // chi-square falls with p_j where this is positive
    if (!(dot(slopes[j], slopes[j]) > 0)) return false;
    return pull > 0 ? p[j] < bounds[j][1] : p[j] > bounds[j][0];
  });
}

/** A value that rounding has moved off a bound, back on it. */
function onBound(value: number, [least, most]: readonly [number, number]): number {
  const rounding = 1e-12 * (most - least);
  if (value >= most - rounding) return most;
  return value <= least + rounding ? least : value;
}

/** One step of the library from `p` in the parameters `free`; the better of the two points it knows. */
function stepped(
  { measured, bounds }: Search,
  p: readonly number[],
  at: Float64Array,
  slopes: Slopes,
  free: readonly number[],
  damping: number,
  model: (p: readonly number[]) => Float64Array,
): { p: readonly number[]; at: Float64Array; chiSquare: number } {
  const size = free.map((j) => Math.sqrt(dot(slopes[j], slopes[j])));
  const here = free.map((j, i) => p[j] * size[i]);
  let last = { p, at, key: here.join() };
  const modelAt = (x: number[]) => {
    const key = x.join();
    if (key === here.join()) return at;
    if (key !== last.key) {
      const moved = [...p];
      free.forEach((j, i) => {
        moved[j] = onBound(x[i] / size[i], bounds[j]);
      });
      last = { p: moved, at: model(moved), key };
    }
    return last.at;
  };
  levenbergMarquardt(
    { x: Float64Array.from(measured.keys()), y: measured },
    (x) => {
      const f = modelAt(x);
      return (i) => f[i];
    },
    {
      initialValues: here,
      damping,
      maxIterations: 1,
      minValues: free.map((j, i) => bounds[j][0] * size[i]),
      maxValues: free.map((j, i) => bounds[j][1] * size[i]),
      jacobianFunction: () => (i) => free.map((j, n) => slopes[j][i] / size[n]),
    },
  );
  const chiSquare = chiSquareOf(measured, last.at);
  return { p: last.p, at: last.at, chiSquare: Number.isNaN(chiSquare) ? Number.POSITIVE_INFINITY : chiSquare };
}

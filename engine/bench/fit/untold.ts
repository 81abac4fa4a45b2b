import { astray, type Covariance, covarianceOf } from './covariance.ts';
import type { FitParameterId, FitValues } from './parameters.ts';
import type { Weighed } from './readings.ts';
import type { Untold } from './result.ts';
import type { Slopes } from './search.ts';

/** Correlation from which two parameters count as bound together, and conditioning below which a blend moves nothing. */
const tightCorrelation = 0.95;
const leastConditioning = 1e-5;
/** Share in the weakest blend from which a parameter belongs to it. */
const ofBlend = 0.1;

/** A parameter that a log does not tell, to be held at its start. */
export type ToHold = Untold & { readonly held: FitParameterId };

/** How well each free parameter is told at the optimum. */
export interface Telling {
  readonly free: readonly FitParameterId[];
  readonly slopes: Slopes;
  readonly covariance: Covariance;
  /** Half of each one's 95 % interval over half of its bounds; and, the model's own errors added, over what is of use. */
  readonly ofBounds: readonly number[];
  readonly ofUse: readonly number[];
}

/** How well the parameters `free` are told at the optimum `values`; `t` is Student's, `widened` the scatter over its due. */
export function tellingOf(
  readings: Weighed,
  free: readonly FitParameterId[],
  values: FitValues,
  t: number,
  widened: number,
): Telling {
  const { parameters } = readings;
  const slopes = readings.slopes(free, values);
  const covariance = covarianceOf(slopes);
  const off = astray(slopes, covariance, readings.modelErrors(values));
  const half = (j: number) => t * widened * Math.sqrt(covariance.matrix[j][j]);
  return {
    free,
    slopes,
    covariance,
    ofBounds: free.map((id, j) => (2 * half(j)) / (parameters[id].bounds[1] - parameters[id].bounds[0])),
    ofUse: free.map((id, j) => Math.hypot(half(j), t * off[j]) / parameters[id].useful),
  };
}

/**
 * The next parameter to hold, the plainest reason first: it moves nothing; its interval is wider than its bounds; it belongs to
 * a blend that moves nothing; or it is bound to another and its interval is longer than is of use. Pairs in `kept` are passed over.
 */
export function nextToHold(telling: Telling, kept: readonly (readonly FitParameterId[])[]): ToHold | null {
  const { free, slopes, covariance, ofBounds, ofUse } = telling;
  const all = free.map((_, j) => j);
  const others = (list: readonly number[], j: number) => list.filter((i) => i !== j).map((i) => free[i]);
  const still = all.find((j) => !slopes[j].some((x) => x !== 0));
  if (still !== undefined) return { held: free[still], from: [], why: 'moves nothing' };
  const wide = greatest(all, ofBounds);
  if (ofBounds[wide] > 1) {
    const bound = all.filter((i) => Math.abs(covariance.correlation[i][wide]) > tightCorrelation);
    return { held: free[wide], from: others(bound, wide), why: 'interval wider than its bounds' };
  }
  if (covariance.conditioning < leastConditioning) {
    const blend = all.filter((j) => covariance.weakest[j] > ofBlend);
    const j = greatest(blend, ofUse);
    return { held: free[j], from: others(blend, j), why: 'singular' };
  }
  for (const pair of boundPairs(telling)) {
    const j = greatest(pair, ofUse);
    const passed = kept.some((ids) => pair.every((i) => ids.includes(free[i])));
    if (ofUse[j] > 1 && !passed) return { held: free[j], from: others(pair, j), why: 'correlated' };
  }
  return null;
}

/** Pairs that the log binds together and that stay free: their intervals are of use, or the log needs both. */
export function boundTogether(telling: Telling): Untold[] {
  return boundPairs(telling).map((pair) => ({ held: null, from: pair.map((j) => telling.free[j]), why: 'correlated' }));
}

const greatest = (list: readonly number[], of: readonly number[]) => list.reduce((a, b) => (of[b] > of[a] ? b : a));

/** Pairs of tight correlation, the tightest first. */
function boundPairs({ free, covariance: { correlation } }: Telling): (readonly [number, number])[] {
  const pairs = free.flatMap((_, i) => free.slice(i + 1).map((_, k) => [i, i + 1 + k] as const));
  const tightness = ([i, j]: readonly [number, number]) => Math.abs(correlation[i][j]);
  return pairs.filter((pair) => tightness(pair) > tightCorrelation).sort((a, b) => tightness(b) - tightness(a));
}

/** Parameters that lie on one of their bounds. */
export function atBounds(
  { parameters }: Weighed,
  free: readonly FitParameterId[],
  values: FitValues,
): FitParameterId[] {
  return free.filter((id) => parameters[id].bounds.includes(values[id]));
}

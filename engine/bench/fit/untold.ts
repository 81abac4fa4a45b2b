import { type Covariance, covarianceOf } from './covariance.ts';
import type { FitParameterId, FitValues } from './parameters.ts';
import type { Weighed } from './readings.ts';
import type { Untold } from './result.ts';
import type { Slopes } from './search.ts';

/** Correlation from which two parameters count as not told apart, and conditioning below which a blend moves nothing. */
const tightCorrelation = 0.95;
const leastConditioning = 1e-5;
/** Share in the weakest blend from which a parameter belongs to it. */
const ofBlend = 0.1;

/** The next parameter that a log does not tell, seen from the slopes at the optimum; null when all is told. */
export function nextUntold(
  { parameters }: Weighed,
  free: readonly FitParameterId[],
  slopes: Slopes,
  t: number,
  widened: number,
  kept: readonly (readonly FitParameterId[])[],
): (Untold & { readonly held: FitParameterId }) | null {
  const still = free.find((_, j) => !slopes[j].some((x) => x !== 0));
  if (still) return { held: still, from: [], why: 'moves nothing' };
  if (free.length === 0) return null;
  const cov = covarianceOf(slopes);
  const span = (j: number) => parameters[free[j]].bounds[1] - parameters[free[j]].bounds[0];
  const width = free.map((_, j) => (2 * t * widened * Math.sqrt(cov.matrix[j][j])) / span(j));
  const widest = (list: readonly number[]) => list.reduce((a, b) => (width[b] > width[a] ? b : a));
  const all = free.map((_, j) => j);
  const near = (j: number) => all.filter((i) => i !== j && Math.abs(cov.correlation[i][j]) > tightCorrelation);
  const named = (list: readonly number[]) => list.map((j) => free[j]);
  if (width[widest(all)] > 1) {
    const j = widest(all);
    return { held: free[j], from: named(near(j)), why: 'interval wider than its bounds' };
  }
  if (cov.conditioning < leastConditioning) {
    const blend = all.filter((j) => cov.weakest[j] > ofBlend);
    const j = widest(blend);
    return { held: free[j], from: named(blend.filter((i) => i !== j)), why: 'singular' };
  }
  const pair = tightestPair(cov, free, kept);
  if (!pair) return null;
  const j = widest(pair);
  return { held: free[j], from: named(pair.filter((i) => i !== j)), why: 'correlated' };
}

function tightestPair(
  { correlation }: Covariance,
  free: readonly FitParameterId[],
  kept: readonly (readonly FitParameterId[])[],
): [number, number] | null {
  let best: [number, number] | null = null;
  let most = tightCorrelation;
  for (let i = 0; i < free.length; i++) {
    for (let j = i + 1; j < free.length; j++) {
      if (kept.some((pair) => pair.includes(free[i]) && pair.includes(free[j]))) continue;
      if (Math.abs(correlation[i][j]) <= most) continue;
      most = Math.abs(correlation[i][j]);
      best = [i, j];
    }
  }
  return best;
}

/** Parameters that lie on one of their bounds. */
export function atBounds(
  { parameters }: Weighed,
  free: readonly FitParameterId[],
  values: FitValues,
): FitParameterId[] {
  return free.filter((id) => parameters[id].bounds.includes(values[id]));
}

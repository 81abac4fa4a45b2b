import { within } from '../errors.ts';
import type { Measured } from './measured.ts';
import { belowStudent, studentQuantile } from './uncertainty/student.ts';

/** What a measured value says of a greatest value allowed. */
export type AgainstLimit = 'below the limit' | 'not shown to fail' | 'above the limit';

/** A measured value held against a greatest value allowed, with the rule it was decided by. */
export interface Conformity {
  readonly verdict: AgainstLimit;
  /** Probability that the true value lies above the limit. */
  readonly above: number;
  /** Guard band: only a value farther than this from the limit decides, in the unit of the value. */
  readonly guard: number;
  readonly share: number;
}

/**
 * Decides between a measured value and a greatest value allowed: above, or below, only where the true value lies there with
 * probability `share` (0.5 to 0.999; 0.95 unless given); in between the value is not shown to fail, nor shown to conform. The
 * guard band is the one-sided quantile times u, as in guarded acceptance and rejection of JCGM 106 (from memory). The
 * probability knows only of this measurement, nothing of how often leads are bad.
 */
export function againstGreatest(
  { value, u, dof = Number.POSITIVE_INFINITY }: Measured,
  limit: number,
  share = 0.95,
): Conformity {
  within('probability to decide at', share, [0.5, 0.999], '');
  within('standard uncertainty', u, [0, Number.MAX_VALUE], '');
  const guard = studentQuantile(2 * share - 1, dof) * u;
  const above = u > 0 ? belowStudent((value - limit) / u, dof) : Number(value > limit);
  const verdict = above >= share ? 'above the limit' : above <= 1 - share ? 'below the limit' : 'not shown to fail';
  return { verdict, above, guard, share };
}

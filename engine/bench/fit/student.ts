import { within } from '../../errors.ts';

/** More degrees of freedom than these count as these: the quantile no longer changes in four figures. */
const mostDof = 4000;

/**
 * Probability that a Student t of `dof` whole degrees of freedom lies within ±`t`: the finite sums in θ = atan(t/√ν) of
 * Abramowitz & Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (from memory; tests hold them to printed
 * quantiles). Dimensionless.
 */
export function withinStudent(t: number, dof: number): number {
  const nu = Math.min(mostDof, Math.floor(dof));
  const theta = Math.atan(Math.abs(t) / Math.sqrt(nu));
  const cos2 = Math.cos(theta) ** 2;
  const odd = nu % 2 === 1;
  let term = odd ? Math.cos(theta) : 1;
  let sum = nu === 1 ? 0 : term;
  for (let j = odd ? 3 : 2; j <= nu - 2; j += 2) {
    term *= (cos2 * (j - 1)) / j;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
}

/** The t that a Student variable of `dof` ≥ 1 degrees of freedom stays within, on both sides, with probability `share` (0 to 1). */
export function studentQuantile(share: number, dof: number): number {
  within('share', share, [0, 0.9999], '');
  within('degrees of freedom', dof, [1, Number.POSITIVE_INFINITY], '');
  let low = 0;
  let high = 1;
  while (withinStudent(high, dof) < share) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (withinStudent(middle, dof) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

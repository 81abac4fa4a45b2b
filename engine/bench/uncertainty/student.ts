import { within } from '../../errors.ts';

// Closed sums rather than a package: those that hold these quantiles weigh 18 to 52 kB, gzip, for what is said here in a page.

/** Above these degrees of freedom Student's t is taken as normal: the quantile of 95 % is then 1.9602, not 1.9600. */
const mostDof = 10_000;

/** Probability that a normal deviate lies within ±z: Abramowitz & Stegun 26.2.11, a series of positive terms (from memory). */
function withinNormal(z: number): number {
  if (z > 9) return 1;
  let term = z;
  let sum = z;
  for (let j = 3; term > 1e-17 * sum; j += 2) {
    term *= (z * z) / j;
    sum += term;
  }
  return Math.min(1, sum * Math.sqrt(2 / Math.PI) * Math.exp((-z * z) / 2));
}

/** Probability within ±`t` of Student's t of `nu` whole degrees: finite sums of Abramowitz & Stegun 26.7.3, 26.7.4 (from memory). */
function withinWhole(t: number, nu: number): number {
  const theta = Math.atan(t / Math.sqrt(nu));
  const square = Math.cos(theta) ** 2;
  const odd = nu % 2;
  let term = odd ? Math.cos(theta) : 1;
  let sum = nu === 1 ? 0 : term;
  for (let j = 2 + odd; j <= nu - 2; j += 2) {
    term *= (square * (j - 1)) / j;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
}

/**
 * Probability that Student's t of `dof` degrees of freedom lies within ±`t`; the normal probability where `dof` is infinite.
 * Between whole degrees it is taken straight in 1/dof, as JCGM 100, G.4.1 allows. Dimensionless.
 */
export function withinStudent(t: number, dof: number): number {
  within('degrees of freedom', dof, [1, Number.POSITIVE_INFINITY], '');
  const size = Math.abs(t);
  if (dof > mostDof) return withinNormal(size);
  const nu = Math.floor(dof);
  const fewer = withinWhole(size, nu);
  if (nu === dof) return fewer;
  return fewer + (withinWhole(size, nu + 1) - fewer) * (nu + 1) * (1 - nu / dof);
}

/** Probability that Student's t of `dof` degrees of freedom is less than `t`; dimensionless. */
export function belowStudent(t: number, dof: number): number {
  return (1 + Math.sign(t) * withinStudent(t, dof)) / 2;
}

/** The t that Student's variable of `dof` degrees of freedom stays within, on both sides, with probability `share` (0 to 0.9999). */
export function studentQuantile(share: number, dof: number): number {
  within('probability', share, [0, 0.9999], '');
  let [low, high] = [0, 1];
  while (withinStudent(high, dof) < share) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (withinStudent(middle, dof) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

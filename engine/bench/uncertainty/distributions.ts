import { within } from '../../errors.ts';
import { belowStudent, studentQuantile } from './student.ts';

/** How an input's possible values lie about its estimate. */
export type Distribution = 'normal' | 'rectangular' | 'triangular' | 'U-shaped' | 'Student t';

/** A distribution told by limits that hold all its values. */
export type Limited = Exclude<Distribution, 'normal' | 'Student t'>;

const divisors = { rectangular: Math.sqrt(3), triangular: Math.sqrt(6), 'U-shaped': Math.SQRT2 } as const;

/**
 * Standard uncertainty of a quantity known to lie within ±`limit`, in the unit of the limit: limit/√3 where every value is
 * alike likely (JCGM 100, 4.3.7), /√6 where the middle is likelier (4.3.9), /√2 where it swings from end to end (H.1.3.4).
 */
export function fromLimit(limit: number, shape: Limited = 'rectangular'): number {
  within('limit', limit, [0, Number.MAX_VALUE], '');
  return limit / divisors[shape];
}

/** Standard uncertainty of a quantity given as ±`U` at the normal probability `share`, as certificates do (JCGM 100, 4.3.4). */
export function fromInterval(U: number, share: number): number {
  within('half-width', U, [0, Number.MAX_VALUE], '');
  within('probability', share, [0.01, 0.9999], '');
  return U / studentQuantile(share, Number.POSITIVE_INFINITY);
}

/** Standard uncertainty of what is lost by reading in steps of `step`: step/√12 (JCGM 100, F.2.2.1). */
export const fromStep = (step: number): number => fromLimit(step / 2);

/** A deviate of mean 0 and standard deviation 1, of shape `shape`, at the probability `p` below it (0 to 1). */
export function deviateAt(shape: Limited, p: number): number {
  const side = Math.sign(p - 0.5);
  const unit =
    shape === 'rectangular'
      ? 2 * p - 1
      : shape === 'triangular'
        ? side * (1 - Math.sqrt(2 * Math.min(p, 1 - p)))
        : Math.sin(Math.PI * (p - 0.5));
  return divisors[shape] * unit;
}

/** Probability of a normal deviate below `z`. */
export const belowNormal = (z: number): number => belowStudent(z, Number.POSITIVE_INFINITY);

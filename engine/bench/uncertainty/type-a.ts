import { within } from '../../errors.ts';
import type { Measured } from '../measured.ts';

/** What repeated readings say: `value` is their mean, `u` its standard uncertainty s/√n, `dof` n − 1. */
export interface Repeated extends Measured {
  readonly dof: number;
  /** Standard deviation of one reading. */
  readonly s: number;
  readonly n: number;
}

const meanOf = (x: readonly number[]) => x.reduce((sum, v) => sum + v, 0) / x.length;

/** Sum of the products of two rows' deviations from their means. */
function codeviation(x: readonly number[], y: readonly number[]): number {
  const [mx, my] = [meanOf(x), meanOf(y)];
  return x.reduce((sum, v, i) => sum + (v - mx) * ((y[i] as number) - my), 0);
}

/** Mean, standard deviation and standard uncertainty of at least two readings of one quantity (JCGM 100, 4.2). */
export function repeated(readings: readonly number[]): Repeated {
  const n = readings.length;
  within('number of readings', n, [2, Number.POSITIVE_INFINITY], '');
  const s = Math.sqrt(codeviation(readings, readings) / (n - 1));
  return { value: meanOf(readings), u: s / Math.sqrt(n), dof: n - 1, s, n };
}

/** Correlation coefficient of the means of two quantities read together, row by row (JCGM 100, 5.2.3 and C.3.6); 0 where one never moved. */
export function correlationOf(x: readonly number[], y: readonly number[]): number {
  within('number of readings of the second quantity', y.length, [x.length, x.length], '');
  within('number of readings', x.length, [2, Number.POSITIVE_INFINITY], '');
  const spread = Math.sqrt(codeviation(x, x) * codeviation(y, y));
  return spread === 0 ? 0 : codeviation(x, y) / spread;
}

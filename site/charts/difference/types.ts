import type { MarkShape } from '../types.ts';

/** What one thermometer read less what was computed for it: times [s], differences [K]. */
export interface DifferenceSeries {
  id: string;
  name: string;
  shape: MarkShape;
  t: ArrayLike<number>;
  difference: ArrayLike<number>;
}

/** A difference that is told with its band: from, to [s], mean and half the band [K]. */
export interface DifferenceBand {
  id: string;
  from: number;
  to: number;
  mean: number;
  half: number;
  /** Where its bar stands between `from` and `to`, 0 to 1, and the mark of its thermometer. */
  place: number;
  shape: MarkShape;
}

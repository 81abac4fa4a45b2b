import type { Scale } from './types.ts';

/** A linear scale: `from` is mapped to `to`, also beyond their ends. */
export function linearScale([a, b]: readonly [number, number], [p, q]: readonly [number, number]): Scale {
  const slope = b === a ? 0 : (q - p) / (b - a);
  return (value) => p + (value - a) * slope;
}

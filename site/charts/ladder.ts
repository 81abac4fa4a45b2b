import type { Limit, Weight } from './types.ts';

/** A limit on the ladder. It turns bold once passed: as said, or when a pointer of its place stands at or above it. */
export interface LadderLimit extends Limit {
  place?: Weight;
  passed?: boolean;
}

/** What is reached now, `T` in °C: filled for the conductor, hollow for the surface. */
export interface Pointer {
  id: string;
  name: string;
  T: number;
  kind: Weight;
}

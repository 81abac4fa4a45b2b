import type { LimitStyle } from '../types.ts';

/** A limit on the thermometer: its range [°C], its words, and whether the held temperature has reached it. */
export interface ScaleLimit {
  readonly id: string;
  readonly name: string;
  /** Where it is taken and for how long. */
  readonly more: string;
  readonly low: number;
  readonly high: number;
  readonly style: LimitStyle;
  readonly passed: boolean;
}

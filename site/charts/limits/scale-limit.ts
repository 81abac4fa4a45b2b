import type { LimitStyle } from '../types.ts';

/** A row of the thermometer: a limit with its range [°C], or a report of slow harm; its words, and whether it is reached. */
export interface ScaleLimit {
  readonly id: string;
  /** What it is, with its figures: 'Softens 80 to 120 °C'. */
  readonly name: string;
  /** The same figures in another unit, where there is room: '(176 to 248 °F)'. */
  readonly also?: string;
  /** For how long it is meant. */
  readonly more: string;
  readonly low: number;
  readonly high: number;
  /** Its line; 'report' is a hollow dot. */
  readonly style: LimitStyle | 'report';
  readonly reached: boolean;
}

/** A mark of the scale of life: a temperature [°C] and how long the insulation lasts at it. */
export interface LifeMark {
  readonly T: number;
  readonly text: string;
}

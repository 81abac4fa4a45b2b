import type { Curve, Limit } from '../types.ts';

/** A limit as a line across the conductor's lane. */
export interface RaceLimit extends Limit {
  /** When it was passed [s]; infinite where it was not. */
  readonly passed: number;
  /** What is said of it then, or of the race's own limit at the end: 'passed at 2 min 40 s', 'never reached'. */
  readonly said: string;
  /** The one that the race is about. */
  readonly goal: boolean;
}

/** What the two lanes draw: all of a race, of which only what has come to pass is shown. */
export interface DrawnRace {
  /** The conductor's temperature, as far as the current flows. */
  readonly curve: Pick<Curve, 't' | 'T'>;
  readonly limits: readonly RaceLimit[];
  /** When the device may act and must have acted [s]; infinite for never. */
  readonly fastest: number;
  readonly slowest: number;
  /** End of the time axis [s]. */
  readonly end: number;
  /** Names of the lanes, with their units. */
  readonly names: { readonly conductor: string; readonly device: string };
  /** Words in the device's lane: before its fast edge, from it on, and at its slow edge. */
  readonly says: { readonly hold: string; readonly may: string; readonly sure: string };
}

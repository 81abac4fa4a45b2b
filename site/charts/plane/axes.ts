import { roundOff } from '../log-scale.ts';

/** Ends of the plane: current [A] and time [s]. */
export interface PlaneAxes {
  readonly low: number;
  readonly high: number;
  readonly short: number;
  readonly long: number;
}

/** What the plane must hold. */
export interface PlaneNeeds {
  /** Currents to be in sight [A]; those at or below 0 or infinite are left out. */
  readonly currents: readonly number[];
  /** Times before which the device must not act, and by which it must [s]. */
  readonly times: readonly number[];
  readonly by: readonly number[];
}

const sides = [0.72, 1.45] as const; // room left and right of the outermost currents
const usualShort = 0.1; // s

/** Ends at round currents and whole decades of time, none shorter than 1 ms; below the last time it must act by there is room. */
export function planeAxes({ currents, times, by }: PlaneNeeds): PlaneAxes {
  const known = currents.filter((I) => I > 0 && Number.isFinite(I));
  const low = roundOff(sides[0] * Math.min(...known), 'down');
  const high = Math.max(roundOff(sides[1] * Math.max(...known), 'up'), roundOff(5 * low, 'up'));
  const decade = (t: number, round: (x: number) => number) => Number(`1e${round(Math.log10(t))}`);
  return {
    low,
    high,
    short: Math.max(
      1e-3,
      decade(Math.min(usualShort, ...times, ...by.map((t) => t / 1.5)), (x) => Math.floor(x + 1e-9)),
    ),
    long: decade(Math.max(1000, 1.6 * Math.max(0, ...times, ...by)), Math.ceil),
  };
}

/** Currents [A] above `Iz`, thick near it, at which a curve that is upright at `Iz` is drawn up to `high`. */
export function currentsAbove(Iz: number, high: number, count = 44): number[] {
  const first = Math.log(1e-3 * (Iz > 0 ? Iz : high));
  const last = Math.log(high - Iz);
  if (!(high > Iz) || !(last > first)) return [];
  return Array.from({ length: count }, (_, i) => Iz + Math.exp(first + ((last - first) * i) / (count - 1)));
}

/** Currents evenly spaced by ratio from `low` to `high` [A], with those of `also` that lie between. */
export function currentsAcross(low: number, high: number, also: readonly number[], count = 60): number[] {
  const even = Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)));
  return [...even, ...also.filter((I) => I > low && I < high)].sort((a, b) => a - b);
}

/** Times that are told on the right, in the unit one would say them in. */
export const saidTimes: readonly (readonly [t: number, text: string])[] = [
  [0.001, '1 ms'],
  [0.01, '10 ms'],
  [0.1, '0.1 s'],
  [1, '1 s'],
  [10, '10 s'],
  [60, '1 min'],
  [600, '10 min'],
  [3600, '1 h'],
  [36_000, '10 h'],
  [86_400, '1 day'],
];

import type { Statement } from '../heating/validity.ts';

/** How a time must be judged: by the device's let-through, by k, or by the warm-up model. */
export type ShortRange = 'let-through' | 'adiabatic' | 'warm-up';

/** Bounds of the formula t = k²S²/I² [s]: IEC 60364-4-43 434.5.2 (BS 7671 434.5.2). */
export const adiabaticFrom = 0.1;
export const adiabaticTo = 5;

const statements: Readonly<Record<ShortRange, Statement>> = {
  'let-through': {
    id: 'below 0.1 s',
    text: 'Below 0.1 s this time says too little. Compare the I²t that the device lets through with k²S².',
  },
  adiabatic: { id: 'within range', text: 'From 0.1 to 5 s almost no heat leaves the core. The formula holds.' },
  'warm-up': {
    id: 'above 5 s',
    text: 'Above 5 s heat leaves the core while it warms. Use the warm-up model instead.',
  },
};

/** Which range a time [s] lies in. Its edges belong to the formula. */
export const shortRange = (t: number): ShortRange =>
  t < adiabaticFrom ? 'let-through' : t > adiabaticTo ? 'warm-up' : 'adiabatic';

/** What the conductor stands, k²S² [A²s], for `k` [A·s^½/m²] and area `S` [m²]. */
export const withstand = (k: number, S: number): number => (k * S) ** 2;

/** A time or an area from the adiabatic formula, with how far it holds. */
export interface Adiabatic {
  /** A time [s] or an area [m²], as the function says. */
  readonly value: number;
  readonly range: ShortRange;
  /** True where the formula itself gives the verdict. */
  readonly sound: boolean;
  readonly statement: Statement;
}

function judged(value: number, t: number): Adiabatic {
  const range = shortRange(t);
  return { value, range, sound: range === 'adiabatic', statement: statements[range] };
}

/**
 * Time [s] that a current `I` [A] may last, t = k²S²/I² (IEC 60364-4-43 434.5.2), `k` [A·s^½/m²], `S` [m²]. Infinite without
 * current. The time is given in every range; only from 0.1 to 5 s is it the verdict.
 */
export function allowedTime(k: number, S: number, I: number): Adiabatic {
  const t = I > 0 ? withstand(k, S) / I ** 2 : Number.POSITIVE_INFINITY;
  return judged(t, t);
}

/**
 * Least area [m²] that stands `I` [A] for `t` [s], S = I √t/k (IEC 60364-5-54 543.1.2). Above 5 s it is too large, since heat
 * leaves; below 0.1 s it is too small, since the first half-wave may be higher.
 */
export const leastArea = (k: number, I: number, t: number): Adiabatic => judged((I * Math.sqrt(t)) / k, t);

/** Least area [m²] that stands an energy `I2t` [A²s] let through, S = √(I²t)/k. */
export const leastAreaForEnergy = (k: number, I2t: number): number => Math.sqrt(I2t) / k;

/** A device's let-through against what the conductor stands. */
export interface EnergyTest {
  readonly holds: boolean;
  /** Let-through and withstand [A²s], and the first over the second [1]. */
  readonly letThrough: number;
  readonly stands: number;
  readonly share: number;
  readonly leastArea: number;
}

/** Whether k²S² is at least the energy `I2t` [A²s] let through, in less than 0.1 s: IEC 60364-4-43 434.5.2. */
export function energyTest(k: number, S: number, I2t: number): EnergyTest {
  const stands = withstand(k, S);
  return { holds: I2t <= stands, letThrough: I2t, stands, share: I2t / stands, leastArea: leastAreaForEnergy(k, I2t) };
}

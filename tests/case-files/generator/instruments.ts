import type { Chance } from './chance.ts';

/** A meter: a gain and an offset that stay, noise that does not, and digits. */
export interface Meter {
  readonly gain: number;
  readonly offset: number;
  readonly noise: number;
  readonly digit: number;
}

/** A meter whose gain is off by up to `share`, drawn once. */
export const meterOf = (chance: Chance, share: number, noise: number, digit: number): Meter => ({
  gain: 1 + share * (2 * chance.even() - 1),
  offset: digit * (2 * chance.even() - 1),
  noise,
  digit,
});

/** What a meter shows, rounded to its digit. */
export function shown({ gain, offset, noise, digit }: Meter, value: number, chance: Chance): number {
  return Math.round((value * gain + offset + noise * chance.normal()) / digit) * digit;
}

/** A thermometer that follows with a lag [s]. */
export interface LaggingProbe {
  step(T: number, dt: number): void;
  T(): number;
}

export function probeOf(lag: number, start: number): LaggingProbe {
  let T = start;
  return {
    step(target, dt) {
      T += (target - T) * -Math.expm1(-dt / lag);
    },
    T: () => T,
  };
}

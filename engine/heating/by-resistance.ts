import type { Conductor } from '../conductor/conductor.ts';
import { T20 } from '../material/resistivity.ts';
import type { ThermalCase } from './thermal-case.ts';

/**
 * Conductor temperature [K] by the resistance of the lead's conductors in series round the loop, `R` [Ω], contacts left out:
 * the root near 20 °C of R/R20 = 1 + α20 (θ − 20) + β20 (θ − 20)². It is the mean over the length. Null where the resistance
 * names no temperature: no positive figure, a metal that does not change, or a resistance that its law never takes.
 */
export function conductorByResistance(of: ThermalCase, R: number): number | null {
  const { conductor } = of.cable;
  return conductorByRatio(conductor, R / (of.lead.inSeries * of.lead.length * conductor.R20));
}

/** Conductor temperature [K] by the ratio of its resistance to that at 20 °C; null where the ratio names none, as above. */
export function conductorByRatio(
  { alpha20, beta20 }: Pick<Conductor, 'alpha20' | 'beta20'>,
  ratio: number,
): number | null {
  const rise = ratio - 1;
  const root = alpha20 ** 2 + 4 * beta20 * rise;
  if (!(ratio > 0) || !Number.isFinite(ratio) || !(root >= 0)) return null;
  const below = alpha20 + (alpha20 < 0 ? -1 : 1) * Math.sqrt(root); // 2c/(b ± √…) keeps its figures where β20 is 0
  return below === 0 ? null : T20 + (2 * rise) / below;
}

/** What a voltmeter across the lead and an ammeter say together. */
export interface ResistanceReading {
  /** Resistance of the conductors in series round the loop [Ω]. */
  readonly R: number;
  /** Mean conductor temperature by that resistance [K]; null where it names none. */
  readonly T: number | null;
}

/** Resistance U/I, and the conductor's temperature by it, of `U` [V] across the lead at `I` [A]; null without a current. */
export function readByResistance(of: ThermalCase, U: number, I: number): ResistanceReading | null {
  if (!(I > 0) || !(U > 0)) return null;
  const R = U / I;
  return { R, T: conductorByResistance(of, R) };
}

import type { Conductor } from '../conductor/conductor.ts';
import { within } from '../errors.ts';
import { conductorByRatio, readByResistance } from '../heating/by-resistance.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import { resistanceRatio } from '../material/resistivity.ts';
import type { BenchLog } from './log.ts';

/** A column worked out from a log, one figure a row, SI; NaN where it cannot be had. */
export interface DerivedColumn {
  readonly values: Float64Array;
  /** Standard uncertainties of the values; null where they were not worked out. */
  readonly u: Float64Array | null;
}

const column = (log: BenchLog, value: (i: number) => number): DerivedColumn => ({
  values: log.t.map((_, i) => value(i)),
  u: null,
});

/** Power into the lead, U·I [W]; a wattmeter's figure where the volts are missing. */
export function power(log: BenchLog): DerivedColumn {
  return column(log, (i) => {
    const P = (log.U[i] as number) * (log.I[i] as number);
    return Number.isNaN(P) ? (log.P?.[i] ?? Number.NaN) : P;
  });
}

/** Resistance of the lead, U/I [Ω], where current flows and volts are positive; an ohmmeter's figure elsewhere. */
export function resistance(log: BenchLog): DerivedColumn {
  return column(log, (i) => {
    const [U, I] = [log.U[i] as number, log.I[i] as number];
    return U > 0 && I > 0 ? U / I : (log.R?.[i] ?? Number.NaN);
  });
}

/** Energy over a log, and how much of its time it stands for. */
export interface LogEnergy {
  /** Energy into the lead [J]. */
  readonly E: number;
  /** Time that was summed over [s]. */
  readonly over: number;
  /** Time that was left out, since readings were further apart than allowed or none stood at an end [s]. */
  readonly leftOut: number;
}

/**
 * Energy ∫ U·I dt by the trapezoid rule between rows that were read. Readings further apart than `widest` [s] are not bridged: that
 * time is told as left out.
 */
export function energy(log: BenchLog, widest: number): LogEnergy {
  within('widest gap to bridge', widest, [0, Number.POSITIVE_INFINITY], 's');
  const P = power(log).values;
  const rows = [...log.t.keys()].filter((i) => !Number.isNaN(P[i] as number));
  let [E, over] = [0, 0];
  for (let k = 1; k < rows.length; k++) {
    const [a, b] = [rows[k - 1] as number, rows[k] as number];
    const dt = (log.t[b] as number) - (log.t[a] as number);
    if (dt > widest) continue;
    E += ((P[a] as number) + (P[b] as number)) * 0.5 * dt;
    over += dt;
  }
  const whole = log.t.length > 0 ? (log.t.at(-1) as number) - (log.t[0] as number) : 0;
  return { E, over, leftOut: whole - over };
}

/** Median time from row to row [s]; NaN for fewer than two rows. Five of them are a gap that one may bridge (our choice). */
export function usualInterval({ t }: BenchLog): number {
  const steps = t
    .slice(1)
    .map((now, i) => now - (t[i] as number))
    .sort();
  return steps[steps.length >> 1] ?? Number.NaN;
}

/** A resistance of the lead while its temperature was known: before the current was put on. */
export interface ColdReading {
  /** [Ω] */
  readonly R: number;
  /** [K] */
  readonly T: number;
}

/** Mean conductor temperature over the length [K] by U and I, from the length and the metal of a case, as the live bench reads it. */
export function conductorTemperature(log: BenchLog, of: ThermalCase): DerivedColumn {
  return column(log, (i) => readByResistance(of, log.U[i] as number, log.I[i] as number)?.T ?? Number.NaN);
}

/**
 * Mean conductor temperature [K] by the rise of resistance over a cold reading of the same lead: its length and size are not
 * needed, only how the metal changes. Contacts between the voltage taps and the metal count as if they were metal.
 */
export function conductorTemperatureByRise(
  log: BenchLog,
  metal: Pick<Conductor, 'alpha20' | 'beta20'>,
  cold: ColdReading,
): DerivedColumn {
  within('resistance of the cold reading', cold.R, [Number.MIN_VALUE, Number.MAX_VALUE], 'Ω');
  within('temperature of the cold reading', cold.T, [200, 400], 'K');
  const R20 = cold.R / resistanceRatio(metal.alpha20, metal.beta20, cold.T);
  const R = resistance(log).values;
  return column(log, (i) => conductorByRatio(metal, (R[i] as number) / R20) ?? Number.NaN);
}

import { celsius, type LiveState, type LogLine, readByResistance, type ThermalCase } from '#engine';

/** What the instruments show: rounded as their displays round. */
export interface Shown {
  /** Ammeter [A], to 0.01. */
  readonly I: number;
  /** Voltmeter across the lead [V], to 0.001. */
  readonly U: number;
  /** Thermometer on the sheath [°C], to 0.1. */
  readonly sheath_degC: number;
  /** Resistance from the two readings [Ω]; null without a current. */
  readonly R: number | null;
  /** Conductor by that resistance [°C]. */
  readonly byR_degC: number | null;
}

const rounded = (value: number, places: number): number => Number(value.toFixed(places));

/** Decimals of the instruments. */
export const places = { A: 2, V: 3, degC: 1 } as const;

/** What the instruments show of a state; resistance and conductor temperature follow from what they show, as at a real bench. */
export function shownBy(of: ThermalCase, { lead, surface }: LiveState): Shown {
  const I = rounded(lead.I, places.A);
  const U = rounded(lead.U, places.V);
  const reading = readByResistance(of, U, I);
  const T = reading?.T ?? null;
  return {
    I,
    U,
    sheath_degC: rounded(celsius(surface), places.degC),
    R: reading?.R ?? null,
    byR_degC: T === null ? null : celsius(T),
  };
}

/** One line of the log. */
export interface LogRow extends Shown {
  readonly id: number;
  /** When it was written down, ISO 8601. */
  readonly at: string;
  /** Simulated time since the start [s]. */
  readonly t: number;
  /** How many settings of the supply have been run, this one with them. */
  readonly step: number;
  /** Setting of the knob [A]. */
  readonly set_A: number;
  readonly ambient_degC: number;
  /** Conductor as the model has it [°C]. */
  readonly computed_degC: number;
  /** What happened at that moment; empty for a reading taken by hand. */
  readonly event: string;
  /** What the reader wrote. */
  readonly note: string;
}

const figure = (value: number | null, decimals: number): number | null =>
  value === null ? null : rounded(value, decimals);

/** A line of the log as a bench log writes it; that the run was simulated stands in it, so that it is never taken for a test. */
const lineOf = (row: LogRow): LogLine => ({
  at: row.at,
  elapsed_s: figure(row.t, 2),
  step: row.step,
  set_A: row.set_A,
  I_A: row.I,
  U_V: row.U,
  R_ohm: figure(row.R, 6),
  byR_degC: figure(row.byR_degC, 2),
  probes_degC: [row.sheath_degC],
  ambients_degC: [figure(row.ambient_degC, 1)],
  predicted_degC: figure(row.computed_degC, 2),
  difference_K: figure(row.byR_degC === null ? null : row.byR_degC - row.computed_degC, 2),
  remark: [row.event, row.note].filter(Boolean).join('; '),
  origin: 'simulated',
});

/** The log as CSV in the columns of a bench log, oldest first. */
export async function logCsv(rows: readonly LogRow[]): Promise<string> {
  const { linesToCsv, usualProbe } = await import('./log-file.ts');
  const lines = rows.toSorted((a, b) => a.id - b.id).map(lineOf);
  return linesToCsv(lines, { probes: [usualProbe], ambients: 1 });
}

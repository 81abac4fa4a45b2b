import type { BenchLog } from './log.ts';

/** A stretch of a log over which the supply was left alone. */
export interface SupplyPlateau {
  /** First and last row of it. */
  readonly first: number;
  readonly last: number;
  /** Times of those rows [s]. */
  readonly from: number;
  readonly to: number;
  /** Mean current [A] and mean volts across the lead [V] of its rows; NaN volts where none were read. */
  readonly I: number;
  readonly U: number;
  /** How many rows the mean current was taken over: outliers and gaps are not among them. */
  readonly n: number;
}

export interface PlateauOptions {
  /** Change of current that is none [A]; found from the noise of the log where it is left out. */
  readonly band?: number;
  /** Rows in a row beyond the band that make a new step; fewer are outliers. */
  readonly confirm?: number;
}

/** Rows that the level of a plateau is taken over, so that a slow drift, as of a supply that holds its volts, is no step. */
const memory = 16;

/**
 * Plateaus of the current. A step is a change beyond the band that `confirm` rows (3) agree on; rows on the way between two levels
 * belong to neither. The band is 6 standard deviations of the noise between neighbouring rows, by its median absolute value, no
 * less than 1.5 places of the figures and 0.5 % of the greatest current (our choice, after the resolution of bench meters). A ramp
 * slower than a band in 16 rows is taken for drift.
 */
export function plateaus(log: BenchLog, options: PlateauOptions = {}): SupplyPlateau[] {
  const { confirm = 3, band = bandOf(log.I) } = options;
  const found: number[][] = [];
  let rows: number[] = []; // of the plateau that goes on
  let away: number[] = []; // rows beyond its band, which agree with each other
  for (let i = 0; i < log.I.length; i++) {
    const I = log.I[i] as number;
    if (Number.isNaN(I)) continue;
    if (rows.length > 0 && Math.abs(I - level(log.I, rows)) <= band) {
      rows.push(i);
      away = [];
      continue;
    }
    if (away.length > 0 && Math.abs(I - level(log.I, away)) > band) away = [];
    away.push(i);
    if (away.length < confirm) continue;
    if (rows.length >= confirm) found.push(rows);
    rows = away;
    away = [];
  }
  if (rows.length >= confirm) found.push(rows);
  return found.map((of) => plateauOf(log, of));
}

/** Mean of the last few rows [A]. */
function level(I: Float64Array, rows: readonly number[]): number {
  const last = rows.slice(-memory);
  return last.reduce((sum, i) => sum + (I[i] as number), 0) / last.length;
}

function plateauOf({ t, I, U }: BenchLog, rows: readonly number[]): SupplyPlateau {
  const [first, last] = [rows[0] as number, rows.at(-1) as number];
  const volts = rows.map((i) => U[i] as number).filter((value) => !Number.isNaN(value));
  return {
    first,
    last,
    from: t[first] as number,
    to: t[last] as number,
    I: mean(rows.map((i) => I[i] as number)),
    U: mean(volts),
    n: rows.length,
  };
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** The change of current that is noise [A]. */
function bandOf(I: Float64Array): number {
  const read = I.filter((value) => !Number.isNaN(value));
  const changes = read.slice(1).map((value, i) => Math.abs(value - (read[i] as number)));
  const greatest = read.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const sigma = (1.4826 * median(changes)) / Math.SQRT2; // of one row, where the noise is normal
  return Math.max(6 * sigma, 1.5 * smallestPlace(changes), 0.005 * greatest);
}

/** The smallest change that is more than rounding of binary figures: one place of the meter, where it has few. */
function smallestPlace(changes: Float64Array): number {
  const real = changes.filter((change) => change > 1e-9);
  const least = real.reduce((small, change) => Math.min(small, change), Number.POSITIVE_INFINITY);
  const whole = real.filter((change) => Math.abs(change / least - Math.round(change / least)) < 0.02).length;
  return real.length > 0 && whole > 0.9 * real.length ? least : 0;
}

function median(values: Float64Array): number {
  if (values.length === 0) return 0;
  const sorted = values.slice().sort();
  return ((sorted[(sorted.length - 1) >> 1] as number) + (sorted[sorted.length >> 1] as number)) / 2;
}

import { within } from '../errors.ts';
import type { ColumnUncertainty } from './fit/drive.ts';
import type { BenchLog } from './log.ts';

/** What instruments may be off by at most, as their data sheets give it. */
export interface Instruments {
  /** Volts and current: per cent of the reading, and a number of last digits of so many volts or amperes each. */
  readonly volts_percent: number;
  readonly volts_digits: number;
  readonly volts_digit: number;
  readonly amps_percent: number;
  readonly amps_digits: number;
  readonly amps_digit: number;
  /** Thermometers on the sheath and in the air [K]. */
  readonly probe_K: number;
  readonly air_K: number;
}

/** Hand-held instruments of a usual bench: common practice, no source. */
export const handHeld: Instruments = {
  ...{ volts_percent: 0.5, volts_digits: 2, volts_digit: 0.001 },
  ...{ amps_percent: 1, amps_digits: 2, amps_digit: 0.01 },
  ...{ probe_K: 1, air_K: 0.5 },
};

const percent = 0.01;

/**
 * Standard uncertainties of a log's columns: greatest errors, all between them alike likely, over √3 (GUM 4.3.7). Volts and amperes
 * are taken at the root mean square of what the log read.
 */
export function uncertaintyBy(instruments: Instruments, { I, U }: Pick<BenchLog, 'I' | 'U'>): ColumnUncertainty {
  for (const [name, value] of Object.entries(instruments)) within(name, value, [0, 1000], '');
  const { volts_percent, volts_digits, volts_digit, amps_percent, amps_digits, amps_digit } = instruments;
  const over = (most: number, least: number) => Math.max(least, most / Math.sqrt(3));
  return {
    U: over(volts_percent * percent * rootMeanSquare(U) + volts_digits * volts_digit, 1e-9),
    I: over(amps_percent * percent * rootMeanSquare(I) + amps_digits * amps_digit, 0),
    probe: over(instruments.probe_K, 1e-6),
    ambient: over(instruments.air_K, 0),
  };
}

function rootMeanSquare(column: Float64Array): number {
  const read = column.filter(Number.isFinite);
  return read.length === 0 ? 0 : Math.sqrt(read.reduce((sum, x) => sum + x * x, 0) / read.length);
}

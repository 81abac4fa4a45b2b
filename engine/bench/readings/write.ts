import Papa from 'papaparse';
import { celsius, kelvin } from '../../quantity.ts';
import type { BenchLog, Remark } from '../log.ts';
import { ownHeaders, probeHeader } from './own-log.ts';
import { isoOf, stampOf } from './times.ts';

/** One line of a log as it is written: figures in the units of the headers, already rounded as they are to stand; null is empty. */
export interface LogLine {
  /** ISO 8601; empty where no date is known. */
  readonly at: string;
  readonly elapsed_s: number | null;
  readonly step: number | null;
  readonly set_A: number | null;
  readonly I_A: number | null;
  readonly U_V: number | null;
  readonly R_ohm: number | null;
  readonly byR_degC: number | null;
  readonly probes_degC: readonly (number | null)[];
  readonly ambients_degC: readonly (number | null)[];
  readonly predicted_degC: number | null;
  readonly difference_K: number | null;
  readonly remark: string;
  readonly origin: 'simulated' | 'measured';
  /** An ohmmeter's and a wattmeter's own figures, where the log has them. */
  readonly meter?: { readonly R_ohm?: number | null; readonly P_W?: number | null };
}

/** What the columns of a log are. */
export interface LogHeads {
  /** Headers of the probes, by `probeHeader`. */
  readonly probes: readonly string[];
  readonly ambients: number;
  readonly meterR?: boolean;
  readonly meterP?: boolean;
  /** A column for the initials of whoever read it, to be filled in by hand. */
  readonly initials?: boolean;
}

/**
 * Lines as CSV: one header row with units, decimal points, CR LF. The last column says whether the run was simulated, so that it
 * is never taken for a test. A remark that begins like a formula is kept from being one, by an apostrophe that reading takes off.
 */
export function linesToCsv(lines: readonly LogLine[], heads: LogHeads): string {
  const { at, t, step, set, I, U, R, byR, predicted, difference, meterR, meterP, remark, initials, origin } =
    ownHeaders;
  const ambients = Array.from({ length: heads.ambients }, (_, i) => `theta_ambient_${i + 1}_degC`);
  const meters = [...(heads.meterR ? [meterR] : []), ...(heads.meterP ? [meterP] : [])];
  const temperatures = [byR, ...heads.probes, ...ambients, predicted, difference];
  const ends = [...meters, remark, ...(heads.initials ? [initials] : []), origin];
  const data = lines.map((line) => [
    line.at,
    ...[line.elapsed_s, line.step, line.set_A, line.I_A, line.U_V, line.R_ohm, line.byR_degC].map(figure),
    ...[...line.probes_degC, ...line.ambients_degC, line.predicted_degC, line.difference_K].map(figure),
    ...(heads.meterR ? [figure(line.meter?.R_ohm)] : []),
    ...(heads.meterP ? [figure(line.meter?.P_W)] : []),
    line.remark.replace(/^(?='*[=+\-@\t\r])/, "'"),
    ...(heads.initials ? [''] : []),
    line.origin,
  ]);
  return Papa.unparse({ fields: [at, t, step, set, I, U, R, ...temperatures, ...ends], data }, { newline: '\r\n' });
}

const figure = (value: number | null | undefined): number | string => value ?? '';

/**
 * A log as CSV in the columns of our own logs: reading it again gives the very same log, each figure to its last bit (so long as
 * temperatures lie from −130 °C up, and line ends in a remark are LF). Resistance is U/I; predictions are left open.
 */
export function writeLog(log: BenchLog): string {
  const heads: LogHeads = {
    probes: log.probes.map(({ name, place }, i) => probeHeader(i + 1, name, place)),
    ambients: log.ambient ? 1 : 0,
    meterR: log.R !== undefined,
    meterP: log.P !== undefined,
    initials: true,
  };
  return `${linesToCsv(linesOf(log), heads)}\r\n`;
}

/** Rows in order of time, each with its first remark; further remarks, and those between rows, stand in lines of their own. */
function linesOf(log: BenchLog): LogLine[] {
  const at = momentsOf(log.startedAt);
  const lines: LogLine[] = [];
  let next = 0;
  const alone = (before: (remark: Remark) => boolean): void => {
    for (; next < log.remarks.length && before(log.remarks[next] as Remark); next++) {
      const { t, text } = log.remarks[next] as Remark;
      lines.push({ ...emptyLine(log), at: at(t), elapsed_s: t + (log.before ?? 0), remark: text });
    }
  };
  for (let i = 0; i < log.t.length; i++) {
    const t = log.t[i] as number;
    alone((remark) => remark.t < t);
    const own = log.remarks[next]?.t === t ? (log.remarks[next++] as Remark).text : '';
    lines.push({ ...lineOf(log, i), at: at(t), remark: own });
    if (log.t[i + 1] !== t) alone((remark) => remark.t === t);
  }
  alone(() => true);
  return lines;
}

const read = (value: number | undefined): number | null => (value === undefined || Number.isNaN(value) ? null : value);

function emptyLine(log: BenchLog): LogLine {
  return {
    at: '',
    elapsed_s: null,
    step: null,
    set_A: null,
    I_A: null,
    U_V: null,
    R_ohm: null,
    byR_degC: null,
    probes_degC: log.probes.map(() => null),
    ambients_degC: log.ambient ? [null] : [],
    predicted_degC: null,
    difference_K: null,
    remark: '',
    origin: log.simulated ? 'simulated' : 'measured',
  };
}

/** A row of readings; one in which nothing was read says NaN for its current, so that it is a row and no remark. */
function lineOf(log: BenchLog, i: number): LogLine {
  const [I, U] = [read(log.I[i]), read(log.U[i])];
  const line = {
    ...emptyLine(log),
    elapsed_s: (log.t[i] as number) + (log.before ?? 0),
    step: read(log.step?.[i]),
    set_A: read(log.set?.[i]),
    I_A: I,
    U_V: U,
    R_ohm: I !== null && U !== null && I > 0 && U > 0 ? Number((U / I).toPrecision(9)) : null,
    probes_degC: log.probes.map(({ T }) => degrees(T[i])),
    ambients_degC: log.ambient ? [degrees(log.ambient[i])] : [],
    meter: { R_ohm: read(log.R?.[i]), P_W: read(log.P?.[i]) },
  };
  const figures = [
    I,
    U,
    line.step,
    line.set_A,
    line.meter.R_ohm,
    line.meter.P_W,
    ...line.probes_degC,
    ...line.ambients_degC,
  ];
  return figures.every((value) => value === null) ? { ...line, I_A: Number.NaN } : line;
}

/** The shortest figure in °C that is read back as exactly this temperature [K]. */
function degrees(T: number | undefined): number | null {
  if (T === undefined || Number.isNaN(T)) return null;
  const full = celsius(T);
  for (const places of [1, 2, 3, 4, 6, 8, 10, 12]) {
    const short = Number(full.toFixed(places));
    if (kelvin(short) === T) return short;
  }
  return full;
}

/** Time of day at a moment of the log [s], in the zone of its start; the start itself as it was given. */
function momentsOf(startedAt: string | null): (t: number) => string {
  const stamp = startedAt === null ? undefined : stampOf(startedAt, 'ymd');
  if (startedAt === null || !stamp) return () => startedAt ?? '';
  return (t) => (t === 0 ? startedAt : isoOf(stamp.days, stamp.seconds + t, stamp.zone));
}

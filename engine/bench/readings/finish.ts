import type { BenchLog, Probe, Remark } from '../log.ts';
import type { TimeForm } from './types.ts';

/** A remark with the row it stands in, or the rows before it. */
export interface RawRemark {
  /** Time on the scale of the file [s]. */
  readonly t: number;
  readonly text: string;
  /** Index of the row of readings that it stands in; of the one before it where it stands alone (−1: before all). */
  readonly row: number;
  readonly alone: boolean;
}

/** Everything that was read, in the order of the file. Columns are as long as `t`. */
export interface RawLog {
  readonly t: Float64Array;
  readonly form: TimeForm | null;
  readonly I: Float64Array | null;
  readonly U: Float64Array | null;
  readonly set: Float64Array | null;
  readonly step: Float64Array | null;
  readonly R: Float64Array | null;
  readonly P: Float64Array | null;
  readonly probes: readonly Probe[];
  readonly ambients: readonly Float64Array[];
  readonly remarks: readonly RawRemark[];
  readonly startedAt: string | null;
  readonly simulated: boolean;
}

/** A log in order of time, and what had to be done for it. */
export interface Finished {
  readonly log: BenchLog;
  readonly outOfOrder: number;
  readonly repeatedTimes: number;
  readonly notes: readonly string[];
}

/** Puts what was read in order of time, from 0 at the first row; rows of one time stay as they stood. */
export function finish(raw: RawLog): Finished {
  const t = raw.form === 'clock' ? acrossMidnight(raw.t) : raw.t;
  const moved = raw.form === 'clock' ? (i: number) => (t[i] as number) - (raw.t[i] as number) : () => 0;
  const outOfOrder = descents(t);
  const order = outOfOrder > 0 ? inOrder(t) : null;
  const sorted = (values: Float64Array): Float64Array =>
    order ? Float64Array.from(order, (i) => values[i] as number) : values;
  const from = t.length > 0 ? (sorted(t)[0] as number) : 0;
  const rise = riseFrom(from, raw.form);
  const elapsed = sorted(t).map(rise);
  const blank = () => new Float64Array(t.length).fill(Number.NaN);
  const before = goneBefore(raw.form, from, elapsed);
  const log: BenchLog = {
    t: elapsed,
    ...(before > 0 ? { before } : {}),
    I: raw.I ? sorted(raw.I) : blank(),
    U: raw.U ? sorted(raw.U) : blank(),
    probes: raw.probes.map((probe) => ({ ...probe, T: sorted(probe.T) })),
    ambient: raw.ambients.length > 0 ? sorted(mean(raw.ambients)) : null,
    ...(raw.set ? { set: sorted(raw.set) } : {}),
    ...(raw.step ? { step: sorted(raw.step) } : {}),
    ...(raw.R ? { R: sorted(raw.R) } : {}),
    ...(raw.P ? { P: sorted(raw.P) } : {}),
    remarks: remarksOf(raw, t, moved, rise),
    startedAt: raw.startedAt,
    simulated: raw.simulated,
  };
  const repeatedTimes = repeats(elapsed);
  return { log, outOfOrder, repeatedTimes, notes: notesOf(raw, t, from, before, outOfOrder, repeatedTimes) };
}

/** Time that a run had gone on before its first row [s]: its count of elapsed time, unless that is longer than the log, as an instrument's own clock is. */
const goneBefore = (form: TimeForm | null, from: number, elapsed: Float64Array): number =>
  form === 'elapsed' && from > 0 && from <= (elapsed.at(-1) ?? 0) ? from : 0;

/** Time since the first row; what subtraction leaves below a nanosecond, or a microsecond of a date, is no reading. */
function riseFrom(from: number, form: TimeForm | null): (t: number) => number {
  if (from === 0) return (t) => t;
  const grain = form === 'elapsed' ? 1e9 : 1e6;
  return (t) => Math.round((t - from) * grain) / grain;
}

const half = 43_200;

/**
 * Times of day made to rise across midnight: a fall of more than half a day is a new day. A leap of more than half a day that the
 * next row takes back is a row of the day before; one that lasts is a pause.
 */
function acrossMidnight(clock: Float64Array): Float64Array {
  let days = 0;
  return clock.map((now, i) => {
    const before = clock[i - 1] ?? now;
    const after = clock[i + 1] ?? now;
    if (now < before - half) days += 1;
    else if (now > before + half && after < now - half) days -= 1;
    return now + days * 2 * half;
  });
}

function descents(t: Float64Array): number {
  let count = 0;
  for (let i = 1; i < t.length; i++) if ((t[i] as number) < (t[i - 1] as number)) count += 1;
  return count;
}

function repeats(t: Float64Array): number {
  let count = 0;
  for (let i = 1; i < t.length; i++) if (t[i] === t[i - 1]) count += 1;
  return count;
}

const inOrder = (t: Float64Array): Uint32Array =>
  Uint32Array.from(t, (_, i) => i).sort((a, b) => (t[a] as number) - (t[b] as number) || a - b);

/** Mean of the thermometers that read something. */
function mean(columns: readonly Float64Array[]): Float64Array {
  const [first] = columns as [Float64Array];
  if (columns.length === 1) return first;
  return first.map((_, i) => {
    const read = columns.map((column) => column[i] as number).filter((T) => !Number.isNaN(T));
    return read.reduce((sum, T) => sum + T, 0) / read.length;
  });
}

function remarksOf(raw: RawLog, t: Float64Array, moved: (i: number) => number, rise: (t: number) => number): Remark[] {
  const timed = raw.remarks.map(({ t: at, text, row, alone }) => {
    if (!alone) return { t: rise(t[row] as number), text };
    const near = row >= 0 ? at + moved(row) : at;
    const past = raw.form === 'clock' && row >= 0 && near < (t[row] as number) - half;
    return { t: rise(past ? near + 2 * half : near), text };
  });
  return timed.sort((a, b) => a.t - b.t);
}

function notesOf(
  raw: RawLog,
  t: Float64Array,
  from: number,
  before: number,
  outOfOrder: number,
  repeated: number,
): string[] {
  const rows = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`;
  const notes: string[] = [];
  if (raw.form === 'elapsed' && from !== 0)
    notes.push(
      before > 0
        ? `Elapsed time begins at ${from} s in the file; what the first row shows is taken to have gone on for so long.`
        : `Elapsed time begins at ${from} s in the file; it is counted from there.`,
    );
  if (outOfOrder > 0)
    notes.push(`${rows(outOfOrder, 'row stands', 'rows stand')} after a later one; all were put in order of time.`);
  if (repeated > 0)
    notes.push(`${rows(repeated, 'row has', 'rows have')} the very time of the row before; all are kept.`);
  if (startsAgain(t)) notes.push('The time begins again on the way. Perhaps the file holds two runs; read them apart.');
  if (raw.t.length > 0 && !raw.I) notes.push('No column was read as current.');
  return notes;
}

/** Whether time falls back to its first quarter and goes on from there. */
function startsAgain(t: Float64Array): boolean {
  let most = t[0] ?? 0;
  for (let i = 1; i + 2 < t.length; i++) {
    const now = t[i] as number;
    const early = (t[0] as number) + 0.25 * (most - (t[0] as number));
    if (i > 4 && now < early && (t[i + 1] as number) < early && (t[i + 2] as number) < most) return true;
    if (now > most) most = now;
  }
  return false;
}

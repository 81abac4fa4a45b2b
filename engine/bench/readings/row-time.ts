import { plainNumber, readCell } from './numbers.ts';
import { clockOf, clockSeconds, daysOf, isoOf, isoSeconds, type Stamp, spanSeconds, stampOf } from './times.ts';
import type { LogColumn, LogMapping, TimeForm } from './types.ts';
import { inSI } from './units.ts';

/** Tells the time of rows, each by its own column or columns. */
export interface RowTime {
  /** What it goes by; null counts the rows. */
  readonly form: TimeForm | null;
  /** Time of a row [s] on a scale of the file's own; NaN where it tells none. `count` is the number of rows before it. */
  seconds(cells: readonly string[], count: number): number;
  /** Date and time of a row, ISO 8601; null where the file tells no date. */
  moment(cells: readonly string[]): string | null;
}

const day = 86_400;

/**
 * The time of rows by a mapping: elapsed time before date and time, those before a clock alone, and that before sample numbers,
 * since a counter of elapsed time is the finer and knows no change of clocks.
 */
export function rowTime(mapping: LogMapping): RowTime {
  const { decimal, interval } = mapping.dialect;
  const columns = mapping.columns.filter(({ quantity }) => quantity === 'time');
  const of = (form: TimeForm) => columns.find((column) => column.form === form);
  const moment = momentOf(mapping, of);
  const elapsed = of('elapsed');
  if (elapsed)
    return {
      form: 'elapsed',
      seconds: (cells) => elapsedSeconds(cells[elapsed.index], elapsed, decimal),
      moment: moment.iso,
    };
  if (moment.form) return { form: moment.form, seconds: moment.seconds, moment: moment.iso };
  const clock = of('clock');
  const none = () => null;
  if (clock) return { form: 'clock', seconds: (cells) => clockSeconds(cells[clock.index] ?? ''), moment: none };
  const sample = of('sample');
  const step = interval ?? 1;
  if (!sample) return { form: null, seconds: (_, count) => count * step, moment: none };
  return {
    form: 'sample',
    seconds: (cells) => plainNumber((cells[sample.index] ?? '').trim(), decimal) * step,
    moment: none,
  };
}

function elapsedSeconds(cell: string | undefined, column: LogColumn, decimal: '.' | ','): number {
  if (cell === undefined) return Number.NaN;
  const plain = plainNumber(cell, decimal);
  if (Math.abs(plain) < 1e15) return inSI(plain, column);
  const reading = readCell(cell, decimal);
  if (typeof reading === 'object') return inSI(reading.value, reading.unit?.kind === 'time' ? reading.unit : column);
  return spanSeconds(cell);
}

type FormColumn = (form: TimeForm) => LogColumn | undefined;

/** Reads date and time of a row, counted from the day of the first one, so that seconds keep their decimals. */
function momentOf({ dialect }: LogMapping, of: FormColumn) {
  const stamp = of('date-time');
  const date = of('date');
  const clock = of('clock');
  const epoch = of('epoch');
  const { dateOrder, decimal } = dialect;
  let from: number | null = null;

  const ofStamp = (cells: readonly string[], { index }: LogColumn): Stamp | undefined =>
    stampOf(cells[index] ?? '', dateOrder);
  let shown = '';
  let days = Number.NaN;
  /** A date that is left out is that of the row before. */
  const ofPair = (cells: readonly string[], dated: LogColumn, timed: LogColumn | undefined): Stamp | undefined => {
    const text = (cells[dated.index] ?? '').trim();
    if (text !== '' && text !== shown) {
      shown = text;
      days = daysOf(text, dateOrder);
    }
    const time = timed ? clockOf(cells[timed.index] ?? '') : { seconds: 0, zone: null };
    return time && !Number.isNaN(days) ? { days, ...time } : undefined;
  };
  const ofEpoch = (cells: readonly string[], column: LogColumn): Stamp | undefined => {
    const seconds = inSI(plainNumber((cells[column.index] ?? '').trim(), decimal), column);
    const whole = Math.floor(seconds / day);
    return Math.abs(seconds) < 1e11
      ? { days: whole, seconds: Math.round((seconds - whole * day) * 1e6) / 1e6, zone: 0 }
      : undefined;
  };

  const form: TimeForm | null = stamp ? 'date-time' : date ? 'date' : epoch ? 'epoch' : null;
  const read = (cells: readonly string[]): Stamp | undefined =>
    stamp ? ofStamp(cells, stamp) : date ? ofPair(cells, date, clock) : epoch ? ofEpoch(cells, epoch) : undefined;

  const iso = (cells: readonly string[]): string | null => {
    const text = stamp ? (cells[stamp.index] ?? '').trim() : '';
    if (/^\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d+)?)?(?:Z|[+-]\d\d:\d\d)?$/.test(text)) return text;
    const found = read(cells);
    return found ? isoOf(found.days, found.seconds, found.zone) : null;
  };

  const seconds = (cells: readonly string[]): number => {
    if (stamp && from !== null) {
      const quick = isoSeconds(cells[stamp.index] ?? '', from);
      if (!Number.isNaN(quick)) return quick;
    }
    const found = read(cells);
    if (!found) return Number.NaN;
    from ??= found.days;
    return (found.days - from) * day + found.seconds;
  };
  return { form, seconds, iso };
}

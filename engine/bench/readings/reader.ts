import { decoderOf } from './encoding.ts';
import { faultList } from './fault-list.ts';
import { finish, type RawRemark } from './finish.ts';
import { beyondReading, plainNumber, readCell } from './numbers.ts';
import { type Records, recordsOf } from './records.ts';
import { rowTime } from './row-time.ts';
import type { GapKind, LogColumn, LogMapping, ReadLog } from './types.ts';
import { inSI } from './units.ts';

/** How much is kept of what went wrong. */
export interface ReadOptions {
  /** Faults kept in full; more are counted. */
  readonly mostFaults?: number;
}

/** Reads a log that comes in pieces of text. */
export interface LogReader {
  push(piece: string): void;
  end(): ReadLog;
}

/** Reads a whole file by a mapping. Bytes are decoded by its encoding; every row is read, counted as blank, or among the faults. */
export function readLog(source: Uint8Array | string, mapping: LogMapping, options: ReadOptions = {}): ReadLog {
  const reader = logReader(mapping, options);
  const text =
    typeof source === 'string' ? source.replace(/^\uFEFF/, '') : decoderOf(mapping.dialect.encoding).decode(source);
  for (let at = 0; at < text.length; at += piece) reader.push(text.slice(at, at + piece));
  return reader.end();
}

const piece = 1 << 18;

/** A column that is read into numbers. */
interface Channel {
  readonly column: LogColumn;
  readonly index: number;
  values: Float64Array<ArrayBuffer>;
}

/** The first cell of a row that means nothing, and how many others mean something. */
interface Strange {
  readonly cell: string;
  readonly header: string;
  readonly known: number;
}

const gapKinds: readonly GapKind[] = ['empty', 'missing', 'dashes', 'overload', 'not a number', 'error'];

/** A reader by a mapping, to be fed piece by piece. */
export function logReader(mapping: LogMapping, { mostFaults = 200 }: ReadOptions = {}): LogReader {
  const { delimiter, decimal, firstRow, width } = mapping.dialect;
  const time = rowTime(mapping);
  const read = ['I', 'U', 'R', 'P', 'probe', 'ambient', 'step', 'set current'];
  const channels: Channel[] = mapping.columns
    .filter(({ quantity }) => read.includes(quantity))
    .map((column) => ({ column, index: column.index, values: new Float64Array(1024) }));
  const remarkColumns = mapping.columns.filter(({ quantity }) => quantity === 'remark');
  const origin = mapping.columns.find(({ quantity }) => quantity === 'origin')?.index ?? -1;
  const faults = faultList(mapping, mostFaults);
  const gaps = Object.fromEntries(gapKinds.map((kind) => [kind, 0])) as Record<GapKind, number>;
  const counts = { rows: 0, head: 0, blank: 0, read: 0, remarks: 0 };
  const remarks: RawRemark[] = [];
  let times = new Float64Array(1024);
  let n = 0;
  let earliest = Number.POSITIVE_INFINITY;
  let startedAt: string | null = null;
  let simulated = mapping.preamble.some((text) => /\bsimulated\b/i.test(text));
  /** A row that is too short waits for the next: at the end of a file it may have been cut off in mid-figure. */
  let short: { cells: string[]; line: number; text: string } | null = null;
  const now = new Float64Array(channels.length);
  const gapNow: (GapKind | null)[] = channels.map(() => null);

  const records: Records = recordsOf(delimiter, (cells, line, text) => {
    if (short) takeShort(short);
    short = null;
    counts.rows += 1;
    if (isBlank(text, delimiter)) counts.blank += 1;
    else if (line < firstRow) counts.head += 1;
    else if (cells.length < width) short = { cells, line, text };
    else row(cells, line, text);
  });

  const takeShort = ({ cells, line, text }: NonNullable<typeof short>): void => row(cells, line, text);

  function row(cells: string[], line: number, text: string): void {
    const t = time.seconds(cells, n);
    if (cells.length > width && cells.slice(width).some((cell) => cell.trim() !== '')) {
      const what = `${cells.length} cells stand where the header has ${width}`;
      faults.unread(cells, line, text, 'too many cells', what);
    } else if (Math.abs(t) < 1e13) timed(t, cells, line, text);
    else faults.untimed(cells, line, text);
  }

  function timed(t: number, cells: string[], line: number, text: string): void {
    const strange = readings(cells);
    const remark = remarkOf(cells);
    const alone = remark !== '' && channels.length > 0 && gapNow.every((gap) => gap === 'empty' || gap === 'missing');
    if (strange?.known === 0) {
      const what = `'${strange.cell}' is no figure, nor is anything beside it`;
      faults.unread(cells, line, text, 'not readings', what);
      return;
    }
    if (strange && cells.length < width) {
      const what = `${cells.length} cells stand where the header has ${width}, and '${strange.cell}' is no figure`;
      faults.unread(cells, line, text, 'too few cells', what);
      return;
    }
    if (remark !== '') remarks.push({ t, text: remark, row: alone ? n - 1 : n, alone });
    if (alone) counts.remarks += 1;
    else {
      faultsOfCells(strange, cells.length, line, text);
      store(t, cells);
    }
  }

  function faultsOfCells(strange: Strange | null, length: number, line: number, text: string): void {
    const missing = channels.some(({ index }) => index >= length);
    if (strange)
      faults.kept(line, text, 'cell not understood', `'${strange.cell}' in '${strange.header}' is no figure`);
    else if (missing) faults.kept(line, text, 'too few cells', `${length} cells stand where the header has ${width}`);
  }

  /** Reads the channels of a row into `now`; answers with the first cell that means nothing, and how many others mean something. */
  function readings(cells: readonly string[]): Strange | null {
    let strange: { cell: string; header: string } | null = null;
    let known = 0;
    for (let k = 0; k < channels.length; k++) {
      const { column, index } = channels[k] as Channel;
      const cell = cells[index];
      const plain = cell === undefined ? Number.NaN : plainNumber(cell, decimal);
      if (Math.abs(plain) < beyondReading) {
        now[k] = inSI(plain, column);
        gapNow[k] = null;
        known += 1;
        continue;
      }
      const reading = cell === undefined ? 'missing' : readCell(cell, decimal);
      now[k] = typeof reading === 'object' ? inSI(reading.value, reading.unit ?? column) : Number.NaN;
      gapNow[k] = typeof reading === 'string' ? reading : null;
      if (reading === undefined) strange ??= { cell: cell as string, header: column.header };
      else if (reading !== 'empty' && reading !== 'missing') known += 1;
    }
    return strange && { ...(strange as { cell: string; header: string }), known };
  }

  function remarkOf(cells: readonly string[]): string {
    if (remarkColumns.length === 0) return '';
    const texts = remarkColumns.map(({ index }) => cells[index] ?? '');
    if (!mapping.own)
      return texts
        .map((text) => text.trim())
        .filter(Boolean)
        .join('; ');
    return texts.join('; ').replace(/^'(?='*[=+\-@\t\r])/, '');
  }

  function store(t: number, cells: readonly string[]): void {
    if (n === times.length) {
      times = grown(times);
      for (const channel of channels) channel.values = grown(channel.values);
    }
    times[n] = t;
    for (let k = 0; k < channels.length; k++) {
      (channels[k] as Channel).values[n] = now[k] as number;
      const gap = gapNow[k];
      if (gap) gaps[gap] += 1;
    }
    n += 1;
    counts.read += 1;
    if (t < earliest) {
      earliest = t;
      startedAt = time.moment(cells);
    }
    if (origin >= 0 && !simulated) simulated = /^simulated$/i.test((cells[origin] ?? '').trim());
  }

  function end(): ReadLog {
    const clean = records.end();
    const last = short as { cells: string[]; line: number; text: string } | null;
    if (last && clean) takeShort(last);
    else if (last) faults.cut(last.cells, last.line, last.text);
    const column = (quantity: string) =>
      channels.find((channel) => channel.column.quantity === quantity)?.values.slice(0, n) ?? null;
    const all = (quantity: string) => channels.filter((channel) => channel.column.quantity === quantity);
    const { log, outOfOrder, repeatedTimes, notes } = finish({
      t: times.slice(0, n),
      form: time.form,
      I: column('I'),
      U: column('U'),
      set: column('set current'),
      step: column('step'),
      R: column('R'),
      P: column('P'),
      probes: all('probe').map(({ column: { name, header, place }, values }) => ({
        name: name || header,
        place: place ?? 'other',
        T: values.slice(0, n),
      })),
      ambients: all('ambient').map(({ values }) => values.slice(0, n)),
      remarks,
      startedAt,
      simulated,
    });
    const said = time.form === null || time.form === 'sample' ? [intervalNote(mapping)] : [];
    const { list, setAside, byKind } = faults;
    return {
      log,
      faults: list,
      counts: {
        ...counts,
        setAside: setAside(),
        faults: byKind,
        gaps,
        outOfOrder,
        repeatedTimes,
        looked: records.looked(),
      },
      notes: [...said, ...notes],
    };
  }

  return { push: records.push, end };
}

function intervalNote({ dialect: { interval } }: LogMapping): string {
  if (interval === null) return 'No interval is given. A sample is taken for 1 s; give the interval.';
  return `Samples are ${interval} s apart.`;
}

/** Nothing but spaces, quotes and delimiters. */
function isBlank(text: string, delimiter: string): boolean {
  if (text === '') return true;
  const first = text.charCodeAt(0);
  const maybe = first <= 32 || first > 127 || first === 34 || text.startsWith(delimiter);
  return maybe && text.replaceAll(delimiter, '').replaceAll('"', '').trim() === '';
}

function grown(values: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const more = new Float64Array(2 * values.length);
  more.set(values);
  return more;
}

import { contentsOf, guessColumns } from './columns.ts';
import { decoderOf, type Encoding, encodingOf } from './encoding.ts';
import { evidenceOf } from './evidence.ts';
import { type HeadRow, type Layout, layoutOf } from './layout.ts';
import { plainNumber } from './numbers.ts';
import { isOwnHeader } from './own-log.ts';
import { spanSeconds } from './times.ts';
import type { ColumnQuantity, LogColumn, LogMapping } from './types.ts';
import { inSI, unitOf } from './units.ts';

/** What a person knows beforehand. */
export interface GuessOptions {
  /** The encoding, where it is known from the bytes of the whole file. */
  readonly encoding?: Encoding;
  /** How to read a date that nothing in the file settles; day first unless told. */
  readonly dateOrder?: 'dmy' | 'mdy';
  /** Seconds from sample to sample. */
  readonly interval?: number;
}

/**
 * What a file of readings seems to be, from its bytes or its text: dialect, columns, and why. Never throws on what a file
 * holds; where it finds no readings, there are no columns and a note says so. A person corrects it with `correctColumn`.
 */
export function guessMapping(source: Uint8Array | string, options: GuessOptions = {}): LogMapping {
  const encoding = options.encoding ?? (typeof source === 'string' ? 'utf-8' : encodingOf(source));
  const text = typeof source === 'string' ? source.replace(/^\uFEFF/, '') : decoderOf(encoding).decode(source);
  const layout = layoutOf(text);
  const said = encoding === 'windows-1252' ? ['The bytes are no UTF-8; the file is read as Windows-1252.'] : [];
  return layout
    ? mappingOf(text, layout, encoding, options, said)
    : nothing(encoding, [...said, 'No row of readings was found.']);
}

const nothing = (encoding: Encoding, notes: string[]): LogMapping => ({
  dialect: {
    encoding,
    delimiter: ',',
    decimal: '.',
    dateOrder: 'ymd',
    firstRow: 1,
    header: [],
    width: 0,
    interval: null,
  },
  columns: [],
  preamble: [],
  own: false,
  notes,
});

function mappingOf(
  text: string,
  layout: Layout,
  encoding: Encoding,
  options: GuessOptions,
  said: string[],
): LogMapping {
  const own = isOwnHeader(layout.header.at(-1)?.cells.map((cell) => cell.trim()) ?? []);
  const evidence = evidenceOf(text, layout, contentsOf(layout), options.dateOrder ?? 'dmy');
  const { columns, notes } = settle(guessColumns(layout, own));
  const header = layout.header.at(-1);
  const first = header ? header.line + 1 : (layout.body[0]?.line ?? 1);
  return {
    dialect: {
      encoding,
      delimiter: layout.delimiter,
      decimal: evidence.decimal,
      dateOrder: evidence.dateOrder,
      firstRow: first,
      header: layout.header.map(({ cells }) => [...cells]),
      width: layout.width,
      interval: options.interval ?? intervalOf(layout.preamble),
    },
    columns,
    preamble: layout.preamble.map((row) => row.text),
    own,
    notes: [...said, ...(layout.header.length === 0 ? ['The file has no header.'] : []), ...evidence.notes, ...notes],
  };
}

/** One current and one voltage, and no more ways to tell time than are needed; what is left out says why. */
function settle(guesses: LogColumn[]): { columns: LogColumn[]; notes: string[] } {
  const notes: string[] = [];
  let columns = guesses;
  for (const quantity of ['I', 'U', 'R', 'P', 'set current', 'step'] as const) {
    const rivals = columns.filter((column) => column.quantity === quantity);
    if (rivals.length < 2) continue;
    const best = rivals.reduce((a, b) => (rank(b) > rank(a) ? b : a));
    notes.push(`${rivals.length} columns could be ${quantity}; '${best.header}' is taken.`);
    columns = columns.map((column) =>
      rivals.includes(column) && column !== best
        ? ignored(column, `'${best.header}' is taken for ${quantity}`)
        : column,
    );
  }
  const times = columns.filter(({ quantity }) => quantity === 'time');
  if (times.some(({ form }) => form !== 'sample'))
    columns = columns.map((column) =>
      column.form === 'sample' ? ignored(column, 'another column tells the time') : column,
    );
  if (times.length === 0) notes.push('No column tells the time; rows are counted.');
  return { columns, notes: [...notes, ...assumptions(columns)] };
}

/** The lead's own volts before those of the supply. */
const rank = ({ confidence, name }: LogColumn): number =>
  confidence + (/lead|sense|drop|sample/i.test(name) ? 0.2 : 0) - (/supply|source|psu|set|limit/i.test(name) ? 0.2 : 0);

function ignored({ form: _, place: __, ...column }: LogColumn, why: string): LogColumn {
  return { ...column, quantity: 'ignored', why };
}

const assumptions = (columns: readonly LogColumn[]): string[] =>
  columns.filter(({ why }) => why.includes('no unit')).map(({ header, why }) => `'${header}': ${why}.`);

const intervalWords =
  /(?:interval|period|sampl\w*|log ?rate|intervall|takt|every)[^\d]*?([\d.,]+(?::\d{2})*(?:[.,]\d+)?)[";,\t ]*([a-zµ]+)?/i;

/** The interval that a line above the header names [s]: 'Interval: 2 s', 'Sample rate,10 Hz', 'Interval;00:00:05'. */
function intervalOf(preamble: readonly HeadRow[]): number | null {
  for (const { text } of preamble) {
    const [, figure, unit = 's'] = intervalWords.exec(text.slice(0, 200)) ?? [];
    if (figure === undefined) continue;
    const size = figure.includes(':') ? spanSeconds(figure) : plainNumber(figure.replace(',', '.'), '.');
    const known = unitOf(unit);
    const seconds = /^hz$/i.test(unit) ? 1 / size : known?.kind === 'time' ? inSI(size, known) : Number.NaN;
    if (seconds > 0 && Number.isFinite(seconds)) return seconds;
  }
  return null;
}

/** What a person says of a column: another quantity, unit, place, form of time, or a scale of its own, as of a shunt. */
export type Correction = Partial<Pick<LogColumn, 'quantity' | 'form' | 'place' | 'scale' | 'offset' | 'name'>> & {
  readonly unit?: string;
};

/** A mapping with one column corrected; a unit brings its scale. A unit that is none throws. */
export function correctColumn(mapping: LogMapping, index: number, { unit, ...said }: Correction): LogMapping {
  const known = unit === undefined || unit === '' ? undefined : unitOf(unit);
  if (unit && !known) throw new Error(`'${unit}' is no unit that a log is read in; write one like mA, V, Ω, °C or min`);
  const scaled = known ? { unit: known.symbol, scale: known.scale, offset: known.offset } : {};
  const columns = mapping.columns.map((column) =>
    column.index === index
      ? { ...usualScale(column, said.quantity), ...scaled, ...said, confidence: 1, why: 'a person said so' }
      : column,
  );
  return { ...mapping, columns };
}

/** A column without a unit that becomes a thermometer is read in °C. */
function usualScale(column: LogColumn, quantity: ColumnQuantity | undefined): LogColumn {
  const degrees = quantity === 'probe' || quantity === 'ambient' ? unitOf('°C') : undefined;
  if (!degrees || column.unit !== '') return column;
  return { ...column, unit: degrees.symbol, scale: degrees.scale, offset: degrees.offset };
}

import type { CellKind } from './cell-kind.ts';
import type { ColumnContent } from './evidence.ts';
import { headerParts, type NamedQuantity, namedQuantity, placeOf, quantityOfUnit, suits } from './header.ts';
import { bareUnit, type Layout } from './layout.ts';
import { plainNumber } from './numbers.ts';
import { ownColumn } from './own-log.ts';
import type { ColumnQuantity, LogColumn, TimeForm } from './types.ts';
import { type LogUnit, unitOf } from './units.ts';

/** What is known of one column before it is guessed. */
interface Seen {
  readonly index: number;
  readonly header: string;
  readonly name: string;
  readonly unit: LogUnit | undefined;
  /** The look of most of its cells that are filled. */
  readonly kind: CellKind;
  readonly samples: readonly string[];
}

/** Guesses every column of a layout by itself; `own` logs say what they are. */
export function guessColumns(layout: Layout, own: boolean): LogColumn[] {
  return Array.from({ length: layout.width }, (_, index) => guessColumn(seen(layout, index), own));
}

function seen({ header, unitsRow, body }: Layout, index: number): Seen {
  const texts = header.map(({ cells }) => (cells[index] ?? '').trim());
  const words = (unitsRow ? texts.slice(0, -1) : texts).filter(
    (text, i, all) => text !== '' && all.indexOf(text) === i,
  );
  const parts = headerParts(words.at(-1) ?? '');
  const above = unitsRow ? unitOf(bareUnit(texts.at(-1) ?? '')) : undefined;
  const cells = body.map((row) => (row.cells[index] ?? '').trim()).filter(Boolean);
  return {
    index,
    header: texts.filter(Boolean).join(' '),
    name: [...words.slice(0, -1), parts.name].filter(Boolean).join(' '),
    unit: above ?? parts.unit ?? unitInCells(cells),
    kind: commonKind(body.map(({ kinds }) => kinds[index] ?? 'empty')),
    samples: cells.slice(0, 5),
  };
}

/** The unit that every figure of a column carries with it. */
function unitInCells(cells: readonly string[]): LogUnit | undefined {
  const units = cells.slice(0, 20).map((cell) => unitOf(/\d\s*([^\d\s.,][^\d]*)$/.exec(cell)?.[1] ?? ''));
  const [first] = units;
  return units.every((unit) => unit?.kind === first?.kind) ? first : undefined;
}

function commonKind(kinds: readonly CellKind[]): CellKind {
  const counts = new Map<CellKind, number>();
  for (const kind of kinds)
    if (kind !== 'empty') counts.set(kind, (counts.get(kind) ?? 0) + (kind === 'gap' ? 0.01 : 1));
  return [...counts].reduce<[CellKind, number]>((a, b) => (b[1] > a[1] ? b : a), ['empty', 0])[0];
}

function guessColumn(column: Seen, own: boolean): LogColumn {
  const known = own ? ownColumn(column.header) : undefined;
  if (known) {
    const why =
      known.quantity === 'ignored'
        ? 'it is computed from other columns of the log'
        : 'the header is that of our own log';
    return columnOf({ ...column, name: known.name }, known.quantity, 1, why, unitOf(known.unit), known);
  }
  const form = timeForm(column);
  const named = namedQuantity(column.name);
  if (form !== null && isTime(form, named, column)) return timeColumn(column, form, named);
  return readingColumn(column, named);
}

/** A date or a clock is time whatever its name; figures are time by their unit, or by name where the unit does not object. */
function isTime(form: TimeForm, named: NamedQuantity | undefined, { unit, kind, name }: Seen): boolean {
  if (named?.quantity === 'ignored' || named?.quantity === 'remark') return false;
  if (kind !== 'number' && kind !== 'gap') return true;
  return unit ? unit.kind === 'time' : named?.quantity === 'time' || (name === '' && form === 'epoch');
}

function timeForm({ kind, samples, name, unit }: Seen): TimeForm | null {
  if (kind === 'date-time' || kind === 'date') return kind;
  const elapsed = /elapsed|duration|rel|run ?time|since|laufzeit|dauer/i.test(name);
  if (kind === 'span') return 'elapsed';
  if (kind === 'clock') return elapsed || /^0?0:00(:00)?(\.0*)?$/.test(samples[0] ?? '') ? 'elapsed' : 'clock';
  if (kind !== 'number') return null;
  const first = Math.abs(plainNumber(samples[0] ?? '', '.'));
  if ((first > 8e8 && first < 5e9) || (first > 8e11 && first < 5e12)) return 'epoch';
  if (unit) return 'elapsed';
  return /^(?:sample|scan|index|record|reading|row|no\.?|nr\.?|number|n|#)|(?:no|nr|number|index|#)\.?$/i.test(name)
    ? 'sample'
    : 'elapsed';
}

const formWords: Readonly<Record<TimeForm, string>> = {
  'date-time': 'its cells are dates with a time of day',
  date: 'its cells are dates',
  clock: 'its cells are times of day',
  elapsed: 'its cells are times since a start',
  epoch: 'its figures are seconds or milliseconds since 1970',
  sample: 'its figures number the rows',
};

function timeColumn(column: Seen, form: TimeForm, named: NamedQuantity | undefined): LogColumn {
  const epochUnit = Math.abs(plainNumber(column.samples[0] ?? '', '.')) > 8e11 ? unitOf('ms') : unitOf('s');
  const unit =
    form === 'epoch'
      ? epochUnit
      : form === 'elapsed' && column.kind === 'number'
        ? (column.unit ?? unitOf('s'))
        : undefined;
  const sure = form === 'date-time' || form === 'date' ? 0.95 : named?.quantity === 'time' && column.unit ? 0.95 : 0.7;
  const bare = form === 'elapsed' && column.kind === 'number' && !column.unit;
  const why = bare ? `${named?.why ?? formWords[form]}; no unit, read as seconds` : formWords[form];
  return columnOf(column, 'time', bare ? 0.5 : sure, why, unit?.kind === 'time' ? unit : undefined, { form });
}

function readingColumn(column: Seen, named: NamedQuantity | undefined): LogColumn {
  const { unit, kind } = column;
  if (named?.quantity === 'ignored' || named?.quantity === 'origin' || named?.quantity === 'remark')
    return columnOf(column, named.quantity, 0.8, named.why, unit);
  if (kind === 'text')
    return columnOf(column, 'ignored', 0.5, 'its cells are words and its name is not one we know', unit);
  if (unit && (!named || !suits(unit.kind, named.quantity))) return byUnit(column, unit, named);
  if (!named || named.quantity === 'time')
    return columnOf(
      column,
      'ignored',
      0.2,
      column.header ? `neither '${column.header}' nor a unit tells what it is` : 'it has no header',
      unit,
    );
  const assumed = unit ?? unitOf(assumedUnit[named.quantity] ?? '');
  const bare = !unit && assumed;
  const why = bare
    ? `${named.why}; no unit, read as ${assumed.symbol}`
    : `${named.why}${unit ? ` and its unit ${unit.symbol}` : ''}`;
  return columnOf(column, named.quantity, bare ? 0.5 : 0.95, why, assumed);
}

function byUnit(column: Seen, unit: LogUnit, named: NamedQuantity | undefined): LogColumn {
  const against = named && named.quantity !== 'time' && named.quantity !== 'step';
  const why = against
    ? `its unit is ${unit.symbol}, though ${named.why}; a shunt or a transducer needs its scale`
    : `its unit is ${unit.symbol}`;
  return columnOf(column, quantityOfUnit[unit.kind], against ? 0.4 : 0.75, why, unit);
}

const assumedUnit: Partial<Record<ColumnQuantity, string>> = {
  I: 'A',
  U: 'V',
  R: 'Ω',
  P: 'W',
  probe: '°C',
  ambient: '°C',
  'set current': 'A',
};

function columnOf(
  { index, header, name, samples }: Seen,
  quantity: ColumnQuantity,
  confidence: number,
  why: string,
  unit: LogUnit | undefined,
  more: Pick<LogColumn, 'form' | 'place'> = {},
): LogColumn {
  const place = quantity === 'probe' ? { place: more.place ?? placeOf(name) } : {};
  const form = more.form ? { form: more.form } : {};
  const { symbol = '', scale = 1, offset = 0 } = unit ?? {};
  return { index, header, name, unit: symbol, quantity, ...form, scale, offset, ...place, confidence, samples, why };
}

/** What each column holds, as far as the evidence of marks and dates looks at it. */
export function contentsOf(layout: Layout): ColumnContent[] {
  return Array.from({ length: layout.width }, (_, index) => {
    const kind = commonKind(layout.body.map(({ kinds }) => kinds[index] ?? 'empty'));
    if (kind === 'date' || kind === 'date-time') return 'dates';
    return kind === 'number' || kind === 'gap' ? 'figures' : 'other';
  });
}

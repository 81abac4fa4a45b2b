import { readdirSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { sources } from '#engine';
import { furtherSources } from './further-sources.ts';

/** One printed number: where it stands, how it is printed, and how far a computed one may lie from it. */
export interface Row {
  readonly id: string;
  readonly quantity: string;
  /** As printed; 'a to b' where the print gives a range. */
  readonly published: string;
  readonly unit: string;
  /** Terms joined by ' + ', or a band 'a % to b %'; see `allowed`. */
  readonly tolerance: string;
  readonly why: string;
  /** A key of the engine's bibliography or of `furtherSources`. */
  readonly source: string;
  readonly where: string;
  readonly confidence: string;
  /** The table's own columns, as text; '' where a row leaves one out. */
  readonly inputs: Readonly<Record<string, string>>;
}

const own = ['id', 'quantity', 'published', 'unit', 'tolerance', 'why', 'source', 'where', 'confidence'];
const folder = new URL('.', import.meta.url);

/** How sure the transcription is, from strongest to weakest. */
export const confidences = ['seen', 'computed', 'from memory'] as const;

/** The bibliography of the checks. */
export const bibliography: Readonly<Record<string, { title: string }>> = { ...sources, ...furtherSources };

/** Names of all tables of this folder. */
export const tableNames = (): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.csv'))
    .sort();

/** Reads a table; throws where it is malformed, lacks a column, or cites what is in no bibliography. */
export function readTable(name: string): Row[] {
  const text = readFileSync(new URL(name, folder), 'utf8');
  const { data, errors, meta } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
  if (errors.length > 0) throw new Error(`${name}: ${errors[0].message} in row ${errors[0].row}`);
  const missing = own.filter((column) => !meta.fields?.includes(column));
  if (missing.length > 0) throw new Error(`${name} has no column ${missing.join(', ')}`);
  return data.map((cells) => {
    const inputs = Object.fromEntries(Object.entries(cells).filter(([column]) => !own.includes(column)));
    const row = { ...cells, inputs } as unknown as Row;
    checkRow(name, row);
    return row;
  });
}

function checkRow(name: string, { id, quantity, unit, why, source, confidence }: Row): void {
  const at = `${name}, ${id || 'a row without id'}:`;
  if (!id || !quantity || !unit || !why) throw new Error(`${at} id, quantity, unit and why must be filled in`);
  if (!(source in bibliography)) throw new Error(`${at} the source '${source}' is in no bibliography`);
  if (!(confidences as readonly string[]).includes(confidence)) throw new Error(`${at} confidence '${confidence}'`);
}

/** A numeric input of a row. */
export function num(row: Row, column: string): number {
  const text = row.inputs[column];
  const value = Number(text);
  if (!text || !Number.isFinite(value)) throw new Error(`${row.id}: '${text}' in ${column} is no number`);
  return value;
}

/** An input of a row as text. */
export function text(row: Row, column: string): string {
  const value = row.inputs[column];
  if (!value) throw new Error(`${row.id}: nothing in ${column}`);
  return value;
}

/** Half a unit of the last printed place: 0.05 for '36.0', 500 for '1.234e6'. */
export function halfUnit(printed: string): number {
  const match = printed.match(/^-?\d+(?:\.(\d+))?(?:e(-?\d+))?$/);
  if (!match) throw new Error(`'${printed}' is not a plain printed number`);
  return 0.5 * 10 ** (Number(match[2] ?? 0) - (match[1]?.length ?? 0));
}

/**
 * The lowest and highest value that a row allows. Its tolerance is 'as printed' (equal), 'inside' (a printed range), a band
 * 'a % to b %' about the printed value, or a sum of terms: 'print' (half a unit of the last printed place), 'x %', or a
 * number in the row's unit.
 */
export function allowed({ id, published, tolerance }: Row): readonly [number, number] {
  const [low, high = low] = published.split(' to ').map(Number);
  if (![low, high].every(Number.isFinite)) throw new Error(`${id}: '${published}' is no printed number or range`);
  const rounding = 1e-12 * Math.max(Math.abs(low), Math.abs(high));
  if (tolerance === 'as printed' || tolerance === 'inside') return [low - rounding, high + rounding];
  const band = tolerance.match(/^(-?[\d.]+) % to (-?[\d.]+) %$/);
  if (band) return [low * (1 + Number(band[1]) / 100), high * (1 + Number(band[2]) / 100)];
  const half = tolerance.split(' + ').reduce((sum, term) => sum + termOf(id, term, published, high), 0);
  return [low - half - rounding, high + half + rounding];
}

function termOf(id: string, term: string, published: string, value: number): number {
  if (term === 'print') return halfUnit(published);
  const percent = term.match(/^([\d.e-]+) %$/);
  const size = percent ? (Number(percent[1]) / 100) * Math.abs(value) : Number(term);
  if (!(size > 0)) throw new Error(`${id}: the tolerance has a term '${term}'`);
  return size;
}

/** What a test of the row is called. */
export function titleOf({ id, quantity, published, unit, source, where, confidence }: Row): string {
  const place = where ? `${source}, ${where}` : source;
  const mark = confidence === 'seen' ? '' : ` (${confidence})`;
  return `${id}: ${quantity} is ${published}${unit === '1' ? '' : ` ${unit}`} by ${place}${mark}`;
}

/** Fails unless `value` lies where the row allows. */
export function expectAllowed(row: Row, value: number): void {
  const [low, high] = allowed(row);
  const words = `${value} against ${row.published} ${row.unit}, allowed ${low} to ${high}: ${row.why}`;
  expect(value >= low && value <= high, words).toBe(true);
}

/** One test a row of a table: `quantities` says how each quantity is computed, in the row's unit. */
export function checkTable(name: string, quantities: Readonly<Record<string, (row: Row) => number>>): void {
  const rows = readTable(name);
  describe(name, () => {
    it('has no two rows of one id, and only quantities that are computed here', () => {
      expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
      expect([...new Set(rows.map(({ quantity }) => quantity))].sort()).toEqual(Object.keys(quantities).sort());
    });
    for (const row of rows) it(titleOf(row), () => expectAllowed(row, quantities[row.quantity](row)));
  });
}

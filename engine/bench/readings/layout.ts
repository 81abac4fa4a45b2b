import { type CellKind, cellKind, isDatum } from './cell-kind.ts';
import { isOwnHeader } from './own-log.ts';
import { recordsOf } from './records.ts';
import { unitOf } from './units.ts';

/** One row of the head of a file. */
export interface HeadRow {
  readonly cells: readonly string[];
  readonly line: number;
  readonly text: string;
  readonly kinds: readonly CellKind[];
}

/** Where things stand in a file. */
export interface Layout {
  readonly delimiter: string;
  readonly width: number;
  /** Rows above the header that are not blank. */
  readonly preamble: readonly HeadRow[];
  /** Header rows from the top, the row of units last where there is one. */
  readonly header: readonly HeadRow[];
  /** Whether the last header row holds only units. */
  readonly unitsRow: boolean;
  /** The first rows of readings, and what stands among them. */
  readonly body: readonly HeadRow[];
}

const delimiters = [',', ';', '\t'] as const;
const mostRows = 400;
const mostLetters = 200_000;

/** Finds delimiter, header and readings from the head of a file's text; null where nothing looks like a row of readings. */
export function layoutOf(text: string): Layout | null {
  const head = text.slice(0, mostLetters);
  const candidates = delimiters.map((delimiter) => ({ delimiter, ...bodyOf(headRows(head, delimiter)) }));
  const best = candidates.reduce((a, b) => (b.score > a.score ? b : a));
  if (best.from < 0) return headerAlone(candidates);
  const { delimiter, rows, from, width } = best;
  const { header, unitsRow } = headerOf(rows, from, width);
  const top = header.at(-1) ?? rows[from];
  const above = rows
    .slice(0, top ? rows.indexOf(top) : from)
    .filter((row) => !header.includes(row) && row.text.trim() !== '');
  return { delimiter, width, preamble: above, header, unitsRow, body: rows.slice(from) };
}

/** A log of our own that nothing was written into yet. */
function headerAlone(candidates: readonly { delimiter: string; rows: HeadRow[] }[]): Layout | null {
  for (const { delimiter, rows } of candidates) {
    const at = rows.findIndex(({ cells }) => isOwnHeader(cells));
    const row = rows[at];
    if (row)
      return {
        delimiter,
        width: row.cells.length,
        preamble: rows.slice(0, at),
        header: [row],
        unitsRow: false,
        body: [],
      };
  }
  return null;
}

function headRows(head: string, delimiter: string): HeadRow[] {
  const rows: HeadRow[] = [];
  const records = recordsOf(delimiter, (cells, line, text) => {
    if (rows.length < mostRows) rows.push({ cells, line, text, kinds: cells.slice(0, 200).map(cellKind) });
  });
  records.push(head.split(/(?<=\n|\r)/, 4 * mostRows).join(''));
  records.end();
  return rows;
}

/** The rows that are mostly readings: how wide they are, where they begin, and how well the delimiter explains them. */
function bodyOf(rows: HeadRow[]) {
  const data = rows.filter(isDataRow);
  const widths = new Map<number, number>();
  for (const { kinds } of data) widths.set(kinds.length, (widths.get(kinds.length) ?? 0) + 1);
  const [width, agreeing] = [...widths].reduce((a, b) => (b[1] > a[1] ? b : a), [0, 0]);
  // a row of two or three cells may stand above the header: the body begins where rows of the full width do
  const from = rows.findIndex((row) => isDataRow(row) && isAsWide(row, width));
  const understood = data.reduce((sum, { kinds }) => sum + kinds.filter(isDatum).length / kinds.length, 0);
  const filled = rows.filter(({ text }) => text.trim() !== '').length;
  const score =
    (agreeing / Math.max(1, filled)) * (understood / Math.max(1, data.length)) * (width > 1 ? 1 + width / 1000 : 0.5);
  return { rows, width, from, score };
}

/** As wide as the others, give or take a cell; delimiters at the end of a row count for nothing. */
const isAsWide = ({ kinds }: HeadRow, width: number): boolean =>
  kinds.length >= width - 1 && kinds.slice(width + 1).every((kind) => kind === 'empty');

/** At least half of what is filled is figures or times, and one of them is no gap. */
function isDataRow({ kinds }: HeadRow): boolean {
  const filled = kinds.filter((kind) => kind !== 'empty').length;
  const known = kinds.filter(isDatum).length;
  return known > 0 && 2 * known >= filled && kinds.some((kind) => isDatum(kind) && kind !== 'gap');
}

const mostHeaderRows = 4;

/** Rows between the header and the first row of readings that may be broken or be a ruled line. */
const mostBroken = 4;

/** The rows of words right above the readings; a units row is the last of them, and rows above it may be headings of groups. */
function headerOf(rows: HeadRow[], from: number, width: number): { header: HeadRow[]; unitsRow: boolean } {
  const header: HeadRow[] = [];
  for (let i = from - 1; i >= 0 && header.length < mostHeaderRows; i--) {
    const row = rows[i] as HeadRow;
    if (row.text.trim() === '') {
      if (header.length > 0 && !isUnitsRow(header[0] as HeadRow)) break;
      continue;
    }
    if (isHeaderRow(row, width, header.length)) header.unshift(row);
    else if (
      header.length > 0 ||
      from - i > mostBroken ||
      !rows.slice(0, i).some((above) => isHeaderRow(above, width, 0))
    )
      break;
  }
  const last = header.at(-1);
  return { header, unitsRow: header.length > 1 && last !== undefined && isUnitsRow(last) };
}

function isHeaderRow({ cells, kinds }: HeadRow, width: number, below: number): boolean {
  const filled = cells.filter((cell) => cell.trim() !== '').length;
  const words = kinds.filter((kind) => kind === 'text' || kind === 'gap').length;
  const enough = below === 0 ? Math.max(1, width / 2) : Math.max(2, width / 2);
  return filled >= enough && words >= 0.6 * filled && Math.abs(cells.length - width) <= Math.max(1, width / 2);
}

/** Units, in brackets or bare, and nothing else. */
export function isUnitsRow({ cells }: { readonly cells: readonly string[] }): boolean {
  const filled = cells.map(bareUnit).filter(Boolean);
  const units = filled.filter(
    (cell) => unitOf(cell) || /^(?:hh?:mm(?::ss)?|iso ?8601|-+|1|%|yyyy\S*|dd\S*)$/i.test(cell),
  );
  return units.length > 0 && units.length === filled.length && filled.some((cell) => unitOf(cell));
}

/** A cell of a units row without its brackets. */
export const bareUnit = (cell: string): string => cell.trim().replace(/^[[(<{]\s*(.*?)\s*[\])>}]$/, '$1');

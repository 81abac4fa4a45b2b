import { cellKind, isDatum } from './cell-kind.ts';
import type { LogMapping, RowFault, RowFaultKind } from './types.ts';

const kinds: readonly RowFaultKind[] = [
  'header again',
  'not readings',
  'no time',
  'too many cells',
  'too few cells',
  'cut short',
  'cell not understood',
];

/** Gathers what is wrong with rows: the first `most` in full, all by kind. */
export function faultList(mapping: LogMapping, most: number) {
  const list: RowFault[] = [];
  const byKind = Object.fromEntries(kinds.map((kind) => [kind, 0])) as Record<RowFaultKind, number>;
  const headers = new Set(mapping.dialect.header.map(joined));
  let setAside = 0;

  function add(row: number, kind: RowFaultKind, what: string, text: string, kept: boolean): void {
    byKind[kind] += 1;
    if (!kept) setAside += 1;
    if (list.length < most) list.push({ row, kind, what, text, kept });
  }

  /** A row that is not read; one that is the header says so. */
  function unread(cells: readonly string[], row: number, text: string, kind: RowFaultKind, what: string): void {
    if (headers.has(joined(cells))) add(row, 'header again', 'the header stands here again', text, false);
    else add(row, kind, what, text, false);
  }

  return {
    list,
    byKind,
    setAside: () => setAside,
    unread,
    /** A row whose time cannot be read: a footer or a remark of the logger, or readings with a broken time. */
    untimed(cells: readonly string[], row: number, text: string): void {
      const known = cells.slice(0, 200).filter((cell) => isDatum(cellKind(cell))).length;
      if (known > 1 && 2 * known >= mapping.columns.filter(({ quantity }) => quantity !== 'ignored').length)
        unread(cells, row, text, 'no time', 'no time can be read in it');
      else unread(cells, row, text, 'not readings', 'it holds no time and hardly any figures');
    },
    /** The last row, too short and without an end of line. */
    cut(cells: readonly string[], row: number, text: string): void {
      const what = `the file ends in the midst of this row, after ${cells.length} of ${mapping.dialect.width} cells`;
      unread(cells, row, text, 'cut short', what);
    },
    /** A row that was read all the same. */
    kept: (row: number, text: string, kind: RowFaultKind, what: string): void => add(row, kind, what, text, true),
  };
}

const joined = (cells: readonly string[]): string =>
  cells
    .map((cell) => cell.trim())
    .join('\t')
    .trimEnd();

import type { GapKind, ReadLog, RowFaultKind } from '#engine';
import { fixed } from '../../../lib/format.ts';

const gaps: Readonly<Record<GapKind, string>> = {
  empty: 'empty',
  missing: 'marked missing',
  dashes: 'with dashes only',
  overload: 'over range',
  'not a number': 'not a number',
  error: 'with an error',
};

const faults: Readonly<Record<RowFaultKind, readonly [one: string, more: string]>> = {
  'header again': ['row repeats the header', 'rows repeat the header'],
  'not readings': ['row holds no readings', 'rows hold no readings'],
  'no time': ['row has no time', 'rows have no time'],
  'too many cells': ['row has too many cells', 'rows have too many cells'],
  'too few cells': ['row has too few cells', 'rows have too few cells'],
  'cut short': ['row is cut short', 'rows are cut short'],
  'cell not understood': ['row has a cell that was not understood', 'rows have cells that were not understood'],
};

const many = (n: number, one: string, more: string) => `${fixed(n, 0)} ${n === 1 ? one : more}`;

/** What was read, in a sentence or two. */
export function countWords({ counts }: Pick<ReadLog, 'counts'>): string {
  const missing = Object.entries(counts.gaps).filter(([, n]) => n > 0) as [GapKind, number][];
  const total = missing.reduce((sum, [, n]) => sum + n, 0);
  const kinds = missing.map(([kind, n]) => `${fixed(n, 0)} ${gaps[kind]}`).join(', ');
  const rows = `${many(counts.read, 'row', 'rows')} read of ${many(counts.rows, 'row', 'rows')} in the file.`;
  const remarks = counts.remarks > 0 ? ` ${many(counts.remarks, 'row holds a remark', 'rows hold remarks')} only.` : '';
  const cells =
    total === 0 ? ' No cell without a reading.' : ` ${many(total, 'cell', 'cells')} without a reading: ${kinds}.`;
  const aside =
    counts.setAside === 0 ? ' Nothing set aside.' : ` ${many(counts.setAside, 'row', 'rows')} set aside, listed below.`;
  return rows + remarks + cells + aside;
}

/** What is said where not every row is kept. */
export function thinWords(rows: number, every: number): string[] {
  if (every <= 1) return [];
  const kept = Math.ceil(rows / every);
  return [
    `The log is long: of ${fixed(rows, 0)} rows one in ${fixed(every, 0)} is kept and compared, about ${fixed(kept, 0)}.`,
  ];
}

/** Faults by kind, in words. */
export function faultWords({ counts }: Pick<ReadLog, 'counts'>): string[] {
  return (Object.entries(counts.faults) as [RowFaultKind, number][])
    .filter(([, n]) => n > 0)
    .map(([kind, n]) => many(n, ...faults[kind]));
}

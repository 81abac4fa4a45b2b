import { gapOf, readCell } from './numbers.ts';
import { clockOf, daysOf, spanSeconds, stampOf } from './times.ts';

/** What a cell looks like before anything is known of its column. */
export type CellKind = 'empty' | 'number' | 'gap' | 'date-time' | 'date' | 'clock' | 'span' | 'text';

/** The look of a cell; numbers count with either decimal mark, dates with either order. */
export function cellKind(cell: string): CellKind {
  const text = cell.trim().replace(/^"|"$/g, ''); // a quote that nothing closed
  if (text === '') return 'empty';
  if (!/\d/.test(text)) return gapOf(text) ? 'gap' : 'text';
  const known = [readCell(text, '.'), readCell(text, ',')];
  if (known.some((reading) => typeof reading === 'object')) return isBasicDate(text) ? 'date-time' : 'number';
  if (known.some((reading) => typeof reading === 'string')) return 'gap';
  return timeKind(text);
}

const isBasicDate = (text: string): boolean =>
  /^(19|20)\d{6}T?\d{4,6}/.test(text) && stampOf(text, 'ymd') !== undefined;

function timeKind(text: string): CellKind {
  if (stampOf(text, 'dmy') || stampOf(text, 'mdy')) return 'date-time';
  if (!Number.isNaN(daysOf(text, 'dmy')) || !Number.isNaN(daysOf(text, 'mdy'))) return 'date';
  if (clockOf(text)) return 'clock';
  return Number.isNaN(spanSeconds(text)) ? 'text' : 'span';
}

/** Whether a cell could be a reading or a time. */
export const isDatum = (kind: CellKind): boolean => kind !== 'text' && kind !== 'empty';

import { type LogScale, logScale, roundOff } from '../log-scale.ts';
import { textWidth } from '../text-width.ts';
import type { HoldMark, HoldRow } from './types.ts';

/** Ends of the current axis [A] that holds every point of the rows, and `also`. */
export function holdEnds(rows: readonly HoldRow[], also: readonly number[]): [low: number, high: number] {
  const known = [...rows.flatMap(({ hold, marks }) => [hold, ...marks.map(({ I }) => I)]), ...also].filter(
    (I) => I > 0 && Number.isFinite(I),
  );
  const low = roundOff(0.5 * Math.min(...known), 'down');
  return [low, Math.max(roundOff(1.3 * Math.max(...known), 'up'), roundOff(5 * low, 'up'))];
}

/** A mark with its place: text in the middle at `x`, in the row `line` below its bar. */
export interface PlacedMark extends HoldMark {
  readonly at: number;
  readonly x: number;
  readonly line: number;
}

/** Marks in as few lines as keep their texts apart. */
export function placedMarks(marks: readonly HoldMark[], scale: LogScale, width: number): PlacedMark[] {
  const ends: number[] = [];
  return marks.map((mark) => {
    const half = textWidth(mark.text) / 2;
    const at = scale(mark.I);
    const x = Math.min(width - half, Math.max(half, at));
    const free = ends.findIndex((end) => x - half > end + 10);
    const line = free < 0 ? ends.length : free;
    ends[line] = x + half;
    return { ...mark, at, x, line };
  });
}

export const bar = 26; // px
export const markLine = 17; // px
const over = 60; // px: name, and two lines of words, above a bar
const gap = 18; // px between rows

/** Left and right end of the axis in a picture `width` wide [px]. */
export const sides = (width: number): [number, number] => [1, width - 8];

/** Where each row's bar begins, and how tall the whole picture is with its axis [px]. */
export function holdRows(rows: readonly HoldRow[], ends: readonly [number, number], width: number) {
  const scale = logScale(ends, sides(width));
  let y = 0;
  const placed = rows.map((row) => {
    const marks = placedMarks(row.marks, scale, width);
    const lines = Math.max(0, ...marks.map(({ line }) => line + 1));
    const top = y + (Number.isFinite(row.hold) ? over : 24);
    y = top + bar + 6 + lines * markLine + gap;
    return { ...row, marks, top };
  });
  return { scale, rows: placed, axis: y + 2, height: y + 46 };
}

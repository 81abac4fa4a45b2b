import { spread } from './spread.ts';
import { textWidth } from './text-width.ts';

/** An event with its dot's place [px] and the words of its pennant. */
export interface Flagged {
  id: string;
  x: number;
  y: number;
  time: string;
  text: string;
}

/** A pennant: which row from the top, which way it flies, how wide it is [px]. */
export interface Pennant extends Flagged {
  row: number;
  flies: 1 | -1;
  width: number;
}

/** Pennants with the earliest on top; one that would leave the sheet at `right` [px] flies to the left. */
export function pennants(events: readonly Flagged[], left: number, right: number): Pennant[] {
  return [...events]
    .sort((a, b) => a.x - b.x)
    .map((event, row) => {
      const width = textWidth(event.time, 13, true) + textWidth(event.text) + 34;
      const flies = event.x + width > right && event.x - width > left ? -1 : 1;
      return { ...event, row, flies, width };
    });
}

/** Numbered discs along the top, at least 25 px apart, in order of time. */
export function discs(events: readonly Flagged[], left: number, right: number): (Flagged & { at: number })[] {
  const sorted = [...events].sort((a, b) => a.x - b.x);
  const at = spread(
    sorted.map(({ x }) => x),
    Math.min(25, (right - left) / Math.max(1, sorted.length - 1)),
    left,
    right,
  );
  return sorted.map((event, i) => ({ ...event, at: at[i] ?? event.x }));
}

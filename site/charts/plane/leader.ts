import { textWidth } from '../text-width.ts';

/** Text broken into lines no wider than `wide` pixels at `size`. */
export function wrapped(text: string, wide: number, size: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= wide) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** A sentence with its place; a line may lead from `from` to a point of the picture. */
export interface Leader {
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly from: readonly [x: number, y: number];
}

/** The prose face at 15 px is as wide as the sheets' at this size. */
const asWide = 16.4;
export const leaderLine = 20; // px

/**
 * Places a sentence above and to the right of the slow edge, where a plane is empty: near its top, as far left as the edge (its
 * points in px) lets it. Undefined where there is no room to read it.
 */
export function placeLeader(
  text: string,
  edge: readonly (readonly [number, number])[],
  { left, right, top, bottom }: { left: number; right: number; top: number; bottom: number },
): Leader | undefined {
  const widest = Math.min(250, textWidth(text, asWide) + 4);
  const first = top + 30;
  let rows = 1;
  // lower text has the edge further right, so rows are counted again once it is known how wide they may be
  for (let round = 0; round < 6; round++) {
    const foot = first + rows * leaderLine;
    const beside = Math.max(left, ...edge.filter(([, y]) => y <= foot).map(([x]) => x));
    const x = beside + 34;
    const wide = Math.min(widest, right - x - 6);
    if (wide < 88 || foot > bottom) return undefined;
    const lines = wrapped(text, wide, asWide);
    if (lines.length <= rows) return { lines, x, y: first, wide, from: [x - 6, first - 5] };
    rows = lines.length;
  }
  return undefined;
}

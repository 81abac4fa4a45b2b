import { bisector } from 'd3-array';
import type { Box } from '../name-curves.ts';
import { textWidth } from '../text-width.ts';

/** Words set between the two curves, each line centred on `x`, the first at `y` [px]. */
export interface RegionWords {
  lines: readonly string[];
  x: number;
  y: number;
  box: Box;
}

type Points = readonly (readonly [number, number])[];

const place = bisector(([px]: readonly [number, number]) => px).left;
const line = 16; // px
const air = 7; // px above and below the words
const crossed = 1000; // px of gap that words may lose to stand clear of a line

/**
 * Where the words stand best between `upper` and `lower`, curves over the same x [px], from `from` to `to`: where the gap is
 * widest for the whole width of the words, and no upright of `avoid` runs through them if that can be. Undefined where there is
 * no room.
 */
export function wordsBetween(
  lines: readonly string[],
  upper: Points,
  lower: Points,
  [from, to]: readonly [number, number],
  [top, bottom]: readonly [number, number],
  avoid: readonly number[] = [],
): RegionWords | undefined {
  const half = Math.max(...lines.map((text) => textWidth(text))) / 2 + 6;
  const tall = lines.length * line + 2 * air;
  let best: { x: number; high: number; low: number; worth: number } | undefined;
  for (let x = from + half; x <= to - half; x += 6) {
    const across = [x - half, x, x + half];
    const high = Math.max(top, ...across.map((at) => heightAt(upper, at)));
    const low = Math.min(bottom, ...across.map((at) => heightAt(lower, at)));
    if (low - high < tall) continue;
    const worth = low - high - (avoid.some((at) => Math.abs(at - x) < half) ? crossed : 0);
    if (!best || worth > best.worth) best = { x, high, low, worth };
  }
  if (!best) return undefined;
  const y = (best.high + best.low) / 2 - ((lines.length - 1) * line) / 2 + 4.5;
  const box = {
    x0: best.x - half,
    x1: best.x + half,
    y0: y - 13,
    y1: y + (lines.length - 1) * line + 5,
  };
  return { lines, x: best.x, y, box };
}

/** Height [px] of a curve at `x`, straight between its points, held at the ends. */
export function heightAt(points: Points, x: number): number {
  const after = place(points, x);
  if (after >= points.length) return points.at(-1)?.[1] ?? 0;
  const [x1, y1] = points[after] ?? [0, 0];
  const [x0, y0] = points[after - 1] ?? [x1, y1];
  return x1 > x0 ? y0 + ((y1 - y0) * (x - x0)) / (x1 - x0) : y1;
}

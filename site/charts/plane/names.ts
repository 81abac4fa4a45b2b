import { textWidth } from '../text-width.ts';

type Point = readonly [x: number, y: number];

/** A box [px] that something fills. */
export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** The name of a falling curve, with its place. */
export interface CurveName {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'end';
  readonly text: string;
}

interface Wanted {
  readonly text: string;
  readonly points: readonly Point[];
  readonly bold?: boolean;
}

/** Puts the name of each falling curve above it to the right or below it to the left, where it crosses least. */
export function nameFalling(
  curves: readonly Wanted[],
  lines: readonly (readonly Point[])[],
  taken: readonly Box[],
  area: Box,
): CurveName[] {
  const filled = [...taken];
  return curves.flatMap(({ text, points, bold = false }) => {
    const wide = textWidth(text, 13, bold);
    let best: { name: CurveName; box: Box; cost: number } | undefined;
    for (const [x, y] of between(points)) {
      for (const right of [true, false]) {
        const u = right ? x + 9 : x - 9 - wide;
        const v = right ? y - 6 : y + 17;
        const box = { x0: u - 2, x1: u + wide + 2, y0: v - 12, y1: v + 4 };
        if (box.x0 < area.x0 + 3 || box.x1 > area.x1 - 3 || box.y0 < area.y0 + 3 || box.y1 > area.y1 - 3) continue;
        const crossed = lines.reduce((sum, line) => sum + crossings(line, box), 0);
        const covered = filled.filter((one) => overlap(one, box)).length;
        const cost = 10 * crossed + 40 * covered + (right ? 0 : 1);
        const name = { x: right ? u : u + wide, y: v, anchor: right ? ('start' as const) : ('end' as const), text };
        if (!best || cost < best.cost) best = { name, box, cost };
      }
    }
    if (!best) return [];
    filled.push(best.box);
    return [best.name];
  });
}

const overlap = (a: Box, b: Box): boolean => a.x0 < b.x1 && a.x1 > b.x0 && a.y0 < b.y1 && a.y1 > b.y0;

/** Points along a line, about 12 px apart, from its far end back. */
function between(points: readonly Point[]): Point[] {
  const list: Point[] = [];
  for (let i = points.length - 1; i > 0; i--) {
    const [[x1, y1], [x0, y0]] = [points[i] as Point, points[i - 1] as Point];
    const parts = Math.max(1, Math.round(Math.hypot(x1 - x0, y1 - y0) / 12));
    for (let k = 0; k < parts; k++) list.push([x1 + ((x0 - x1) * k) / parts, y1 + ((y0 - y1) * k) / parts]);
  }
  return list;
}

/** How many of a line's stretches run through a box. */
function crossings(line: readonly Point[], box: Box): number {
  let sum = 0;
  for (let i = 1; i < line.length; i++) if (runsThrough(line[i - 1] as Point, line[i] as Point, box)) sum++;
  return sum;
}

/** Whether the straight line between two points touches a box (Liang and Barsky's clipping). */
function runsThrough([x0, y0]: Point, [x1, y1]: Point, box: Box): boolean {
  let [enter, leave] = [0, 1];
  for (const [along, from, low, high] of [
    [x1 - x0, x0, box.x0, box.x1],
    [y1 - y0, y0, box.y0, box.y1],
  ] as const) {
    if (along === 0) {
      if (from < low || from > high) return false;
      continue;
    }
    const [a, b] = [(low - from) / along, (high - from) / along];
    enter = Math.max(enter, Math.min(a, b));
    leave = Math.min(leave, Math.max(a, b));
  }
  return enter <= leave;
}

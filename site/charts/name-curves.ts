import { textWidth } from './text-width.ts';

/** A box [px] that something already fills. */
export interface Box {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

/** A name placed beside its curve. */
export interface Named {
  x: number;
  y: number;
  anchor: 'start' | 'end';
  text: string;
}

interface Wanted {
  text: string;
  points: [number, number][];
}

const high = 15; // px, height of a line of text
const off = 9; // px, between curve and text

/** Places each curve's name along it, above to the left or below to the right, where it covers least. */
export function nameCurves(
  curves: readonly Wanted[],
  lines: readonly number[],
  taken: readonly Box[],
  area: Box,
): Named[] {
  const filled = [...taken];
  return curves.map(({ text, points }) => {
    let best: (Named & { box: Box; cost: number }) | undefined;
    for (const candidate of candidates(text, points)) {
      const cost = costOf(candidate.box, curves, lines, filled, area) + candidate.cost;
      if (!best || cost < best.cost) best = { ...candidate, cost };
    }
    if (!best) return { x: area.x0, y: area.y0, anchor: 'start', text: '' };
    filled.push(best.box);
    return { x: best.x, y: best.y, anchor: best.anchor, text };
  });
}

function* candidates(text: string, points: [number, number][]): Generator<Named & { box: Box; cost: number }> {
  const width = textWidth(text, 13, true);
  const [left, right] = [points[0]?.[0] ?? 0, points.at(-1)?.[0] ?? 0];
  for (let part = 0.98; part > 0.1; part -= 0.03) {
    const x = left + part * (right - left);
    const y = heightAt(points, x);
    if (!Number.isFinite(y)) continue;
    const away = Math.abs(part - 0.7) * 10;
    yield {
      x: x - 4,
      y: y - off,
      anchor: 'end',
      text,
      cost: away,
      box: { x0: x - 4 - width, x1: x - 4, y0: y - off - high + 3, y1: y - off + 4 },
    };
    yield {
      x: x + 4,
      y: y + off + 9,
      anchor: 'start',
      text,
      cost: away + 1,
      box: { x0: x + 4, x1: x + 4 + width, y0: y + off - 4, y1: y + off + 13 },
    };
  }
}

function costOf(
  box: Box,
  curves: readonly Wanted[],
  lines: readonly number[],
  taken: readonly Box[],
  area: Box,
): number {
  let cost = 0;
  if (box.x0 < area.x0 + 4 || box.x1 > area.x1 - 2 || box.y0 < area.y0 || box.y1 > area.y1 - 2) cost += 1000;
  for (const y of lines) if (y > box.y0 - 2 && y < box.y1 + 2) cost += 40;
  for (const other of taken)
    if (other.x0 < box.x1 + 4 && other.x1 > box.x0 - 4 && other.y0 < box.y1 + 2 && other.y1 > box.y0 - 2) cost += 400;
  for (const { points } of curves) {
    for (let i = 0; i <= 6; i++) {
      const x = box.x0 + (i / 6) * (box.x1 - box.x0);
      const y = heightAt(points, x);
      if (y > box.y0 - 2 && y < box.y1 + 2) cost += 60;
    }
  }
  return cost;
}

function heightAt(points: [number, number][], x: number): number {
  let low = 0;
  let highest = points.length - 1;
  if (highest < 0 || x < (points[0]?.[0] ?? 0) || x > (points[highest]?.[0] ?? 0)) return Number.NaN;
  while (highest - low > 1) {
    const middle = (low + highest) >> 1;
    if ((points[middle]?.[0] ?? 0) <= x) low = middle;
    else highest = middle;
  }
  const [x0, y0] = points[low] ?? [0, 0];
  const [x1, y1] = points[highest] ?? [0, 0];
  return x1 > x0 ? y0 + ((y1 - y0) * (x - x0)) / (x1 - x0) : y1;
}

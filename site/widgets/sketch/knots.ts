import { type SketchKnot, sketchAt } from '#engine';
import type { PadAxis } from './axis.ts';

/** Least and greatest number of knots of a sketch that is locked in. */
export const fewestKnots = 5;
export const mostKnots = 9;

const nearest = 0.02; // of the time axis: no two knots are nearer
const edge = 0.05; // of the time axis: what ends this near to an edge was meant to reach it
const fine = 0.012; // of the value axis: a stroke is followed as closely as this

// Knots here have values in the unit that is shown, so that a pad can be laid out in round figures.

/** A knot at `t` [s] in place of whatever is too near to it. An end of the axis is kept exactly. */
export function withKnot(knots: readonly SketchKnot[], knot: SketchKnot, { end }: PadAxis): SketchKnot[] {
  const t = knot.t < nearest * end ? 0 : knot.t > (1 - nearest) * end ? end : knot.t;
  const kept = knots.filter((other) => Math.abs(other.t - t) >= nearest * end);
  return [...kept, { t, value: knot.value }].sort((a, b) => a.t - b.t);
}

/** The knot at index `i` moved, as far as its neighbours and the axes let it; the first and last keep their times at the edges. */
export function movedKnot(knots: readonly SketchKnot[], i: number, to: SketchKnot, axis: PadAxis): SketchKnot[] {
  const { end, low, high } = axis;
  const [before, here, after] = [knots[i - 1], knots[i], knots[i + 1]];
  if (!here) return [...knots];
  const least = before ? before.t + nearest * end : 0;
  const greatest = after ? after.t - nearest * end : end;
  const fixed = here.t === 0 || here.t === end;
  const t = fixed ? here.t : Math.min(greatest, Math.max(least, to.t));
  return knots.with(i, { t, value: Math.min(high, Math.max(low, to.value)) });
}

/** The sketch with one knot more, in the middle of the gap behind knot `i` (or before the last one), on the curve as it is. */
export function withOneMore(knots: readonly SketchKnot[], i: number): { knots: SketchKnot[]; at: number } {
  const left = Math.min(Math.max(0, i), knots.length - 2);
  const [a, b] = [knots[left], knots[left + 1]];
  if (!a || !b) return { knots: [...knots], at: i };
  const t = (a.t + b.t) / 2;
  return { knots: knots.toSpliced(left + 1, 0, { t, value: sketchAt(knots, t) }), at: left + 1 };
}

/** The sketch with knots added on its own curve, in its widest gaps, until there are enough of them. */
export function filledUp(knots: readonly SketchKnot[]): SketchKnot[] {
  let filled = [...knots];
  while (filled.length > 1 && filled.length < fewestKnots) filled = withOneMore(filled, widestGap(filled)).knots;
  return filled;
}

function widestGap(knots: readonly SketchKnot[]): number {
  const gap = (i: number) => (knots[i + 1]?.t ?? 0) - (knots[i]?.t ?? 0);
  let best = 0;
  for (let i = 1; i < knots.length - 1; i++) if (gap(i) > gap(best)) best = i;
  return best;
}

/** A stroke as it is drawn: each point goes to its end; going back in time rubs out what was drawn there. */
export function strokeTo(stroke: readonly SketchKnot[], point: SketchKnot): SketchKnot[] {
  const kept = stroke.filter(({ t }) => t < point.t);
  return [...kept, point];
}

/** The old sketch with a stroke drawn over it, as five to nine knots that a curve through them follows. */
export function drawnOver(knots: readonly SketchKnot[], stroke: readonly SketchKnot[], axis: PadAxis): SketchKnot[] {
  const { end } = axis;
  const [first, last] = [stroke[0], stroke.at(-1)];
  if (!first || !last) return [...knots];
  const from = first.t < edge * end ? 0 : first.t;
  const to = last.t > (1 - edge) * end ? end : last.t;
  const reached = [
    { t: from, value: first.value },
    ...stroke.filter(({ t }) => t > from && t < to),
    { ...last, t: to },
  ];
  const beside = nearest * end;
  const old = sampled(knots, end).filter(({ t }) => t < from - beside || t > to + beside);
  return thinned(
    [...old, ...reached].sort((a, b) => a.t - b.t),
    axis,
  );
}

/** The old curve at even steps, and at its own knots. */
function sampled(knots: readonly SketchKnot[], end: number): SketchKnot[] {
  const [first, last] = [knots[0], knots.at(-1)];
  if (!first || !last || knots.length < 2) return [...knots];
  const even = Array.from({ length: 65 }, (_, i) => (i * end) / 64).filter((t) => t > first.t && t < last.t);
  return [...even.map((t) => ({ t, value: sketchAt(knots, t) })), ...knots];
}

/** Of many points as few knots as follow them closely enough: each new one where the curve so far is farthest off. */
function thinned(points: readonly SketchKnot[], { end, low, high }: PadAxis): SketchKnot[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || last.t - first.t < nearest * end) return last ? [last] : [];
  let knots = [first, last];
  while (knots.length < mostKnots) {
    const [worst, off] = farthest(points, knots, nearest * end);
    if (!worst || (off < fine * (high - low) && knots.length >= fewestKnots)) break;
    knots = [...knots, worst].sort((a, b) => a.t - b.t);
  }
  return filledUp(knots).map(({ t, value }) => ({ t: rounded(t), value: Number(value.toFixed(2)) }));
}

function farthest(points: readonly SketchKnot[], knots: readonly SketchKnot[], apart: number) {
  let worst: SketchKnot | undefined;
  let off = -1;
  for (const point of points) {
    if (knots.some(({ t }) => Math.abs(t - point.t) < apart)) continue;
    const error = Math.abs(point.value - sketchAt(knots, point.t));
    if (error > off) [worst, off] = [point, error];
  }
  return [worst, off] as const;
}

/** Times to four figures: finer than any finger. */
const rounded = (t: number): number => Number(t.toPrecision(4));

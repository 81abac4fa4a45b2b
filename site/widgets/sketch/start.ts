import type { SketchKnot } from '#engine';
import { fixed } from '../../lib/format.ts';
import { shareOfRise } from '../ember/facts.ts';
import type { PadAxis } from './axis.ts';
import { filledUp } from './knots.ts';

/** The facts that a sketch can be given by, in the unit shown; times in seconds. */
export interface PadFacts {
  readonly start: number;
  readonly minute: number;
  readonly end: number;
  readonly share: number;
  /** At the end of a rest after the on-time; none where there is no rest. */
  readonly rest?: number;
}

const minute = 60; // s

/** Times [s] worth a point: the start, one minute, where the curve bends, the end of the on-time and of the rest after it. */
export function startTimes(on: number, end: number): number[] {
  const soon = minute <= on / 6 ? minute : on / 12;
  const first = [0, soon, on / 6, on / 2, on];
  return on < end ? [...first, on + (end - on) / 4, end] : first;
}

/** A level line of points to begin with, at `value`. */
export const levelKnots = (on: number, end: number, value: number): SketchKnot[] =>
  startTimes(on, end).map((t) => ({ t, value }));

/** A sketch through facts that were typed, or what stands against it. */
export function knotsOfFacts(facts: PadFacts, on: number, { end, low, high }: PadAxis, unit: string) {
  const { start, minute: early, end: final, share, rest } = facts;
  if (!(share > 0 && share < on)) return { says: 'The time must lie within the on-time.' };
  const outside = [start, early, final, ...(rest === undefined ? [] : [rest])].find((v) => v < low || v > high);
  if (outside !== undefined)
    return {
      says: `${fixed(outside, 0)}\u00A0${unit} is off the axis. It runs from ${fixed(low, 0)} to ${fixed(high, 0)}\u00A0${unit}.`,
    };
  const points = [
    { t: 0, value: start },
    { t: Math.min(minute, on / 2), value: early },
    { t: share, value: start + (shareOfRise / 100) * (final - start) },
    { t: on, value: final },
    ...(rest === undefined ? [] : [{ t: end, value: rest }]),
  ].sort((a, b) => a.t - b.t);
  // two facts of nearly the same time say the same
  const apart = points.filter(({ t }, i) => i === 0 || t - (points[i - 1]?.t ?? 0) > on / 200);
  return { knots: filledUp(apart) };
}

import type { Limit, Place } from '../material/limits.ts';
import { denseAt } from './radial.ts';
import type { ThermalCase } from './thermal-case.ts';

/** A limit first crossed. Where a limit is a range, one event tells of its low end and one of its high end. */
export interface HeatEvent {
  /** Time since the start [s]. */
  readonly t: number;
  readonly limit: Limit;
  /** Which end of the limit's range; 'low' where it has one value. */
  readonly end: 'low' | 'high';
  /** The temperature crossed [K]. */
  readonly T: number;
  /** Whether it was past already when the run began (t is 0 then). */
  readonly already: boolean;
}

/** Where a place's four dense numbers begin. */
export const placeAt: Record<Place, number> = { conductor: 0, surface: 4, outside: 8 };

/** The temperature of the node that stands for `place` when the place itself is at `T` [K]; they differ for the outside of a coil. */
export function nodeTemperature(of: ThermalCase, place: Place, T: number): number {
  return place === 'outside' ? T + of.outside.law(T) * of.outside.series : T;
}

/** Part of a step (0 to 1) at which the dense output crosses `T` [K], rising or falling; undefined when it does not. */
export function crossing(dense: Float64Array, at: number, T: number, falling = false): number | undefined {
  const y0 = dense[at] as number;
  const y1 = dense[at + 1] as number;
  const crosses = falling ? y0 > T && y1 <= T : y0 < T && y1 >= T;
  if (!crosses) return undefined;
  let a = 0;
  let b = 1;
  for (let i = 0; i < 60 && b - a > 1e-12; i++) {
    const middle = (a + b) / 2;
    const past = falling ? denseAt(dense, at, middle) <= T : denseAt(dense, at, middle) >= T;
    if (past) b = middle;
    else a = middle;
  }
  return b;
}

interface Pending {
  readonly limit: Limit;
  readonly end: 'low' | 'high';
  readonly T: number;
  readonly node: number;
  readonly at: number;
  done: boolean;
}

/** Watches a run for the first crossing of every limit. */
export function eventWatch(of: ThermalCase, start: (place: Place) => number) {
  const events: HeatEvent[] = [];
  const pending = of.limits.flatMap((limit): Pending[] => {
    const ends = limit.high > limit.low ? (['low', 'high'] as const) : (['low'] as const);
    return ends.map((end) => {
      const T = limit[end];
      return { limit, end, T, node: nodeTemperature(of, limit.place, T), at: placeAt[limit.place], done: false };
    });
  });
  for (const p of pending) {
    if (start(p.limit.place) < p.node) continue;
    p.done = true;
    events.push({ t: 0, limit: p.limit, end: p.end, T: p.T, already: true });
  }
  return {
    events,
    /** Looks at a step of which `part` (0 to 1) is taken. */
    look(t: number, h: number, dense: Float64Array, part: number): void {
      for (const p of pending) {
        if (p.done) continue;
        const s = crossing(dense, p.at, p.node);
        if (s === undefined || s > part + 1e-9) continue;
        p.done = true;
        events.push({ t: t + s * h, limit: p.limit, end: p.end, T: p.T, already: false });
      }
    },
  };
}

import { crossing, nodeTemperature, placeAt } from '../heating/events.ts';
import { marchOf } from '../heating/march.ts';
import type { Start } from '../heating/start.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import type { Limit } from '../material/limits.ts';

/** Greatest error estimate of one step [K]: with `cells`, times to a limit come out within a few parts in ten thousand. */
const tolerance = 0.3;
/** Cells about the cable; fewer than a run has, since only the conductor is asked for. */
const cells = 16;

/** Time [s] a held current [A] needs to bring a cable to a limit; infinite beyond the longest time asked about. */
export type TimeToLimit = (I: number) => number;

/**
 * The time to the lower end of `limit` at a held current in each loaded core, by the radial solver from `start`, looked up
 * where it was asked before. 0 where the start is past the limit already. Beyond `longest` [s] it answers infinity.
 */
export function timeToLimit(of: ThermalCase, limit: Limit, start: Start, longest: number): TimeToLimit {
  const known = new Map<number, number>();
  const node = nodeTemperature(of, limit.place, limit.low);
  return (I) => {
    const before = known.get(I);
    if (before !== undefined) return before;
    const t = timeAt(of, limit, node, start, longest, I);
    known.set(I, t);
    return t;
  };
}

function timeAt(of: ThermalCase, { place }: Limit, node: number, start: Start, longest: number, I: number): number {
  const march = marchOf(of, I, cells, tolerance, start);
  const { radial, mesh } = march;
  const at = { conductor: 0, surface: mesh.surface, outside: mesh.r.length - 1 }[place];
  if ((radial.y[at] as number) >= node) return 0;
  if (I <= 0) return Number.POSITIVE_INFINITY;
  march.setCurrent(() => I);
  const melt = of.cable.conductor.metal.melting.value;
  let t = Number.POSITIVE_INFINITY;
  march.to(longest, (from, h, dense) => {
    const s = crossing(dense, placeAt[place], node);
    const melted = crossing(dense, 0, melt);
    const part = Math.min(s ?? 1, melted ?? 1);
    // a place that lags so far that the metal melts first counts as past its limit then
    if (s !== undefined || melted !== undefined) t = from + part * h;
    return part;
  });
  return t;
}

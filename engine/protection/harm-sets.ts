import type { Start } from '../heating/start.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import type { Limit } from '../material/limits.ts';
import type { Device } from './device.ts';
import { type HarmQuestion, type HarmSet, harmSetFrom, harmStart } from './harm-set.ts';
import { type TimeToLimit, timeToLimit } from './time-to-limit.ts';

/** Width of the table's steps in ln(I − Iz), in which ln t is nearly straight at both ends. */
const step = 0.27;
/** How near Iz the table begins: this share of it above [1]. */
const nearest = 1e-4;
/** How far beyond the longest time asked about the table reaches, so that it can be read at that time itself. */
const beyond = 3;

/**
 * Times to a limit of the conductor read from a table of some fifty runs, cubic in ln t over ln(I − Iz): within two parts in a
 * thousand of the runs themselves. Worth its cost from four devices on.
 */
export function tabledTime(f: TimeToLimit, Iz: number, prospective: number): TimeToLimit {
  const first = Math.log(Iz > 0 ? nearest * Iz : nearest * prospective);
  const last = Math.log(Math.max(prospective - Iz, nearest * prospective));
  const count = Math.max(4, Math.ceil((last - first) / step) + 1);
  const width = (last - first) / (count - 1);
  const y = Float64Array.from({ length: count }, (_, i) => Math.log(f(Iz + Math.exp(first + i * width))));
  const finite = y.findIndex((value) => value < Number.POSITIVE_INFINITY);
  return (I) => {
    const x = (Math.log(I - Iz) - first) / width;
    if (finite < 0 || !(x >= finite)) return Number.POSITIVE_INFINITY;
    if (y[finite] === Number.NEGATIVE_INFINITY) return 0;
    const i = Math.max(finite, Math.min(count - 4, Math.floor(x) - 1));
    return Math.exp(i + 3 < count ? cubic(y, i, x - i) : (y[Math.min(count - 1, Math.round(x))] as number));
  };
}

/** The cubic through four equidistant values from `i` on, at `s` steps from the first. */
function cubic(y: Float64Array, i: number, s: number): number {
  const [a, b, c, d] = [y[i], y[i + 1], y[i + 2], y[i + 3]] as [number, number, number, number];
  return (
    (-(s - 1) * (s - 2) * (s - 3) * a) / 6 +
    (s * (s - 2) * (s - 3) * b) / 2 -
    (s * (s - 1) * (s - 3) * c) / 2 +
    (s * (s - 1) * (s - 2) * d) / 6
  );
}

/** The harm sets of one cable behind each of `devices`, which share its times to the limit: for matrices of many cases. */
export function harmSets(of: ThermalCase, devices: readonly Device[], limit: Limit, question: HarmQuestion): HarmSet[] {
  const start = harmStart(of, limit, question);
  const longest = beyond * Math.max(0, ...devices.map(({ by }) => by[0]?.t ?? 0));
  const time = (from: Start) => {
    const f = timeToLimit(of, limit, from, longest);
    // at other places the metal may melt first, and there the times have a kink that a cubic would miss
    return limit.place === 'conductor' ? tabledTime(f, start.Iz, question.prospective) : f;
  };
  const cold = time(start.cold);
  const loaded = start.loaded && time(start.loaded);
  return devices.map((device) => harmSetFrom(device, limit, question, start, cold, loaded));
}

import { denseAt } from '../heating/radial.ts';
import type { Supply } from '../heating/supply.ts';
import { fastest, slowest } from './band.ts';
import type { Device } from './device.ts';

/** When a device in series acts [s since the start]; null where it does not within the run. */
export interface Operation {
  readonly device: Device;
  /** From here on it may have acted: the fast edge, guaranteed. */
  readonly mayFrom: number | null;
  /** By here it has surely acted: the slow edge, guaranteed. The run ends here. */
  readonly surelyBy: number | null;
  /** The same if the device's curve is straight between its points. */
  readonly assumed: { readonly mayFrom: number | null; readonly surelyBy: number | null };
}

/** One edge under a varying current: the sum ∫ dt/t_op(I(t)), and when it came to 1. */
interface Edge {
  readonly time: (I: number) => number;
  /** The slow edge starts again from zero where it would hold for ever; the fast edge forgets nothing. */
  readonly forgets: boolean;
  sum: number;
  at: number | null;
}

/** Panels a step is cut into where the current changes along it. */
const panels = 8;

/** Current [A] along a step of the solver, at its part `s` (0 to 1). */
type CurrentAlong = (s: number) => number;

/** The sum after the part `upTo` of a step of `h` [s], and the part at which it came to 1 (2 where it does not). */
function advance(edge: Edge, h: number, upTo: number, I: CurrentAlong, many: number): { sum: number; part: number } {
  let { sum } = edge;
  const width = upTo / many;
  for (let i = 0; i < many; i++) {
    const t = edge.time(I((i + 0.5) * width));
    if (t === Number.POSITIVE_INFINITY) {
      if (edge.forgets) sum = 0;
      continue;
    }
    const more = t > 0 ? (width * h) / t : Number.POSITIVE_INFINITY;
    if (sum + more >= 1)
      return { sum: 1, part: i * width + (more < Number.POSITIVE_INFINITY ? ((1 - sum) / more) * width : 0) };
    sum += more;
  }
  return { sum, part: 2 };
}

/** A device in series with a run: told of every step, it keeps its sums and says where it has surely opened. */
export interface InSeries {
  /** The part of a step of `h` [s] at which it has surely opened; 2 where it has not by its end. */
  opens(h: number, dense: Float64Array, supply: Supply): number;
  /** Takes the part `part` of the step from `t` [s]. */
  take(t: number, h: number, part: number, dense: Float64Array, supply: Supply): void;
  operation(): Operation;
}

/**
 * Puts a device in series with a run. For each edge ∫ dt/t_op(I(t)) = 1, with t_op infinite below the conventional currents.
 * Fast edge: the device does not cool. Slow edge: the sum starts again from zero whenever the current falls below the
 * conventional operating current.
 */
export function inSeries(device: Device): InSeries {
  const edge = (time: (I: number) => number, forgets: boolean): Edge => ({ time, forgets, sum: 0, at: null });
  const slow = edge((I) => slowest(device, I, 'guaranteed'), true);
  const fast = edge((I) => fastest(device, I, 'guaranteed'), false);
  const slowLine = edge((I) => slowest(device, I, 'assumed') ?? slowest(device, I, 'guaranteed'), true);
  const fastLine = edge((I) => fastest(device, I, 'assumed') ?? fastest(device, I, 'guaranteed'), false);
  const along = (dense: Float64Array, supply: Supply): [CurrentAlong, number] => {
    const I0 = supply.current(dense[0] as number);
    const steady = I0 === supply.current(dense[1] as number);
    return steady ? [() => I0, 1] : [(s) => supply.current(denseAt(dense, 0, s)), panels];
  };
  return {
    opens(h, dense, supply) {
      const [I, many] = along(dense, supply);
      return advance(slow, h, 1, I, many).part;
    },
    take(t, h, part, dense, supply) {
      const [I, many] = along(dense, supply);
      for (const one of [slow, fast, slowLine, fastLine]) {
        if (one.at !== null) continue;
        // the slow sum is brought to 1 at the very part where the step was cut
        const next = advance(one, h, part, I, many);
        one.sum = next.sum;
        if (next.part <= part) one.at = t + next.part * h;
        else if (one.sum > 1 - 1e-9) one.at = t + part * h;
      }
    },
    operation: () => ({
      device,
      mayFrom: fast.at,
      surelyBy: slow.at,
      assumed: { mayFrom: fastLine.at, surelyBy: slowLine.at },
    }),
  };
}

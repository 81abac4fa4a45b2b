import { slowest } from '../../protection/band.ts';
import { cite } from '../../protection/cited.ts';
import { type Clearing, clearsInTime } from '../../protection/clearing.ts';
import { deviceOf } from '../../protection/devices.ts';
import { disconnectionTime, type TimeLimit } from '../../protection/disconnection.ts';
import { leastVoltageFactor, loopOf } from '../../protection/loop.ts';
import { kelvin } from '../../quantity.ts';
import type { DeviceSpec } from '../../scenario/schema.ts';
import type { Practice } from '../types.ts';
import { unitSpace } from '../words.ts';

// A breaker on a fault to earth or ground, as questions ask for it.

/** A breaker, and the loop that it is to clear. */
export interface FaultCase {
  readonly In: number;
  /** The type of an IEC breaker; in `na` the current from which its maker states that the magnet surely acts [A]. */
  readonly type: 'B' | 'C' | 'D' | null;
  readonly level_A: number;
  /** The loop with its conductors warm, in hundredths of an ohm. */
  readonly Zs: number;
}

/** Times the rating at which the magnet of a type surely acts. */
export const magnets = { B: 5, C: 10, D: 20 } as const;
/** Time within which a maker's level holds [s]. */
const atOnce = 0.1;

/** Nominal volts to earth or ground [V]. */
export const volts: Readonly<Record<Practice, number>> = { iec: 230, na: 120 };
/** Least volts over the nominal: British rules have a factor, American ones have none. */
export const leastShare: Readonly<Record<Practice, number>> = { iec: leastVoltageFactor.value, na: 1 };

/** The breaker of a case. */
export function breakerOf({ In, type, level_A }: Pick<FaultCase, 'In' | 'type' | 'level_A'>): DeviceSpec {
  if (type) return { family: type, rating_A: In };
  return { name: `${In}${unitSpace}A breaker`, rating_A: In, breaker: true, slow: [[level_A, atOnce]] };
}

/** The time to clear in: by the rules, or in `na` the one that belongs to the maker's level, since the code names none. */
export function timeToClear(practice: Practice): TimeLimit {
  const found = practice === 'iec' ? disconnectionTime(volts.iec) : null;
  return found ?? { t: atOnce, words: 'the maker’s level', ...cite('user', 'the maker’s sheet', 'our choice') };
}

/** Whether the breaker clears the fault in that time. */
export function clearingOf(drawn: FaultCase, practice: Practice): Clearing {
  const loop = loopOf({
    U0: volts[practice],
    Ze: drawn.Zs / 100,
    parts: [],
    T: kelvin(70),
    Cmin: leastShare[practice],
  });
  const of = deviceOf(breakerOf(drawn));
  return clearsInTime(loop, (I) => slowest(of, I, 'guaranteed'), timeToClear(practice));
}

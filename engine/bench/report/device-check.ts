import type { ThermalCase } from '../../heating/thermal-case.ts';
import type { Limit } from '../../material/limits.ts';
import { deviceOf } from '../../protection/devices.ts';
import { harmWords } from '../../protection/harm-words.ts';
import { type Judged, mend } from '../../protection/mend.ts';
import type { DeviceSpec } from '../../scenario/schema.ts';

/** A device before the sample, judged both ways. */
export interface DeviceCheck {
  readonly judged: Judged;
  readonly limit: Limit;
  /** Load it is judged with [A], the greatest of the test, and the greatest current that was looked at [A]. */
  readonly Ib: number;
  readonly prospective: number;
  /** The gap in sentences. */
  readonly words: readonly string[];
  /** What can be done: each way in a sentence, and all of them as one text. */
  readonly ways: readonly string[];
  readonly instead: string;
}

/** What a socket far from its transformer can give [A] (our choice). */
const usualProspective = 1000;

/** Judges a device before a lead for the rating of its insulation, in the place of the case. Null for a lead without a rating. */
export function deviceCheck(of: ThermalCase, spec: DeviceSpec, Ib: number, practice: 'iec' | 'na'): DeviceCheck | null {
  const limit = of.limits.find(({ kind }) => kind === 'rating');
  if (!limit) return null;
  const prospective = usualProspective;
  const { now, ways, words: instead } = mend(of, deviceOf(spec), limit, { prospective, Ib });
  return {
    ...{ judged: now, limit, Ib, prospective, instead },
    words: harmWords(now.harm, practice).map(({ text }) => text),
    ways: ways.map(({ words }) => words),
  };
}

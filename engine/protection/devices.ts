import { ScenarioFault } from '../scenario/fault.ts';
import type { DeviceSpec } from '../scenario/schema.ts';
import type { Device, DeviceFamily } from './device.ts';
import { gGFuse, gGRatings } from './gg-fuse.ts';
import { iecBreaker, iecBreakerRatings } from './iec-breaker.ts';
import { miniatureFuse, miniatureRatings } from './miniature-fuse.ts';
import { ownCurve } from './own-curve.ts';
import { plugFuse, plugFuseRatings } from './plug-fuse.ts';
import { rewirableFuse, rewirableRatings } from './rewirable-fuse.ts';
import { ulBreaker, ulBreakerRatings } from './ul-breaker.ts';
import { ulFuse, ulFuseRatings } from './ul-fuse.ts';

/** A family of devices: its name in words, where it is met, its standard ratings [A] and how one is made. */
export interface FamilyEntry {
  readonly id: DeviceFamily;
  readonly words: string;
  readonly practice: 'iec' | 'na';
  readonly ratings: readonly number[];
  readonly make: (In: number) => Device;
}

const miniature = (id: Parameters<typeof miniatureFuse>[0], words: string): FamilyEntry => ({
  id,
  words,
  practice: 'iec',
  ratings: miniatureRatings(id),
  make: (In) => miniatureFuse(id, In),
});
const ul = (id: Parameters<typeof ulFuse>[0], words: string): FamilyEntry => ({
  id,
  words,
  practice: 'na',
  ratings: ulFuseRatings(id),
  make: (In) => ulFuse(id, In),
});
const breaker = (id: 'B' | 'C' | 'D'): FamilyEntry => ({
  id,
  words: `circuit-breaker type ${id} (IEC 60898-1)`,
  practice: 'iec',
  ratings: iecBreakerRatings,
  make: (In) => iecBreaker(id, In),
});

/** Every family that is tabled. */
export const deviceFamilies: readonly FamilyEntry[] = [
  { id: 'bs1362', words: 'plug fuse (BS 1362)', practice: 'iec', ratings: plugFuseRatings, make: plugFuse },
  { id: 'gG', words: 'general-purpose fuse gG (IEC 60269)', practice: 'iec', ratings: gGRatings, make: gGFuse },
  breaker('B'),
  breaker('C'),
  breaker('D'),
  { id: 'bs3036', words: 'rewirable fuse (BS 3036)', practice: 'iec', ratings: rewirableRatings, make: rewirableFuse },
  miniature('iec60127F', 'miniature fuse F (IEC 60127-2)'),
  miniature('iec60127T', 'miniature fuse T (IEC 60127-2)'),
  miniature('iec60127F high', 'miniature fuse F, high breaking (IEC 60127-2)'),
  miniature('iec60127T high', 'miniature fuse T, high breaking (IEC 60127-2)'),
  { id: 'ul489', words: 'circuit-breaker (UL 489)', practice: 'na', ratings: ulBreakerRatings, make: ulBreaker },
  ul('ul248', 'fuse (UL 248)'),
  ul('ul248 delay', 'time-delay fuse, class J or R (UL 248)'),
  ul('ul248 CC', 'time-delay fuse, class CC (UL 248)'),
  ul('ul248-14', 'supplementary fuse (UL 248-14)'),
  ul('ul248-14 delay', 'miniature fuse, time-delay (UL 248-14)'),
];

const entryOf = (family: DeviceFamily) => deviceFamilies.find(({ id }) => id === family) as FamilyEntry;

/** Standard ratings of a family [A], rising. */
export const standardRatings = (family: DeviceFamily): readonly number[] => entryOf(family).ratings;

/** The device of a family at a standard rating `In` [A], or undefined where the family has no such rating. */
export function device(family: DeviceFamily, In: number): Device | undefined {
  const { ratings, make } = entryOf(family);
  return ratings.includes(In) ? make(In) : undefined;
}

/** The device a scenario names, by family and rating or by its own curve. Throws `ScenarioFault` where there is no such rating. */
export function deviceOf(spec: DeviceSpec): Device {
  if (!('family' in spec)) return ownCurve(spec);
  const { family, rating_A } = spec;
  const found = device(family, rating_A);
  if (found) return found;
  throw new ScenarioFault(
    'device.rating_A',
    `is ${rating_A} A; a ${entryOf(family).words} is made for: ${standardRatings(family).join(', ')} A`,
  );
}

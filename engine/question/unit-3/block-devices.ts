import { bandAt } from '../../protection/band.ts';
import type { Device } from '../../protection/device.ts';
import { plugFuse } from '../../protection/plug-fuse.ts';
import { ulBreaker } from '../../protection/ul-breaker.ts';
import { type Cord, cordsOf } from '../cords.ts';
import { timeText } from '../figures.ts';
import type { Practice } from '../types.ts';

// Blocks of outlets: what stands before them, and what that must do at a current held.

/** What a device does at a current that is held: hold, open or hold, or open within its conventional time. */
export type Act = 'holds' | 'may' | 'opens';

/** What a device does at `I` [A], by the points of its standard. */
export function actAt(of: Device, I: number): Act {
  const { fastest, slowest } = bandAt(of, I);
  if (fastest === Number.POSITIVE_INFINITY) return 'holds';
  return slowest === Number.POSITIVE_INFINITY ? 'may' : 'opens';
}

/** What stands before leads in a practice: a plug fuse, or a branch breaker. */
export const deviceOf = (practice: Practice, In: number): Device => (practice === 'iec' ? plugFuse(In) : ulBreaker(In));

/** The device as a sentence calls it. */
export const deviceName = { iec: 'fuse', na: 'breaker' } as const satisfies Record<Practice, string>;

/** The times a standard tests with, in words: how long it must hold at one current, and by when it must open at another. */
export const testTimes = (of: Device) => ({
  hold: timeText(of.hold.t),
  open: timeText(of.by[0]?.t ?? 0),
});

/** Cords that blocks are made with. */
export const blockCords = (practice: Practice): readonly Cord[] =>
  cordsOf(practice).filter(({ rating }) => rating >= 10);

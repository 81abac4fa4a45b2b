import type { Device } from './device.ts';
import { gatesOf, minute, type PrintedGate, seen } from './gates.ts';

/** Ratings that BS 1362 permits [A]; 3 and 13 A are the preferred ones, and the only two with a published zone. */
export const plugFuseRatings = [1, 2, 3, 5, 7, 10, 13] as const;

/** Time/current zones in ampere: as quoted by secondary pages, which share one origin. */
const zones: Record<number, { notBefore: readonly PrintedGate[]; by: readonly PrintedGate[] }> = {
  3: {
    notBefore: [[9, 0.02, seen]],
    by: [
      [9, 80, seen],
      [20, 0.1, seen],
      [30, 0.03, seen],
    ],
  },
  13: {
    notBefore: [
      [30, 1, seen],
      [50, 0.1, seen],
      [100, 0.01, seen],
    ],
    by: [
      [30, 400, seen],
      [50, 20, seen],
      [100, 0.2, seen],
    ],
  },
};

/**
 * A plug fuse of BS 1362: carries 1.6 In for half an hour at least, opens at 1.9 In within half an hour; then the zone of
 * its rating, which is published for 3 and 13 A alone.
 */
export function plugFuse(In: number): Device {
  const zone = zones[In];
  const [hold] = gatesOf(In, [[1.6, 30 * minute, seen]]) as [Device['hold']];
  const operate = gatesOf(In, [[1.9, 30 * minute, seen]]);
  return {
    family: 'bs1362',
    kind: 'fuse',
    In,
    name: `${In}\u00A0A plug fuse`,
    hold,
    notBefore: gatesOf(1, zone?.notBefore ?? []),
    by: [...operate, ...gatesOf(1, zone?.by ?? [])],
    agreed: true,
    I2: 1.9 * In,
    source: 'bs1362',
    where: 'time/current zones, as quoted by secondary pages',
    silent: zone
      ? `BS 1362 has no point above ${zone.by.at(-1)?.[0]} A.`
      : 'BS 1362 draws a zone for 3 A and 13 A alone; for this rating only 1.6 and 1.9 times its current are known.',
  };
}

import type { Device, DeviceFamily, Gate } from './device.ts';
import { gatesOf, hour, memory, minute, type PrintedGate, seen } from './gates.ts';

/** Standard ratings of NFPA 70 240.6(A) up to 600 A, with the small ones of fuses [A]. */
const standard = [
  1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400,
  450, 500, 600,
];

/** Greatest rating, and minutes at 135 % and at 200 %, of UL 248-1 Table 4. */
const table: readonly (readonly [upTo: number, at135_min: number, at200_min: number])[] = [
  [30, 60, 2],
  [60, 60, 4],
  [100, 120, 6],
  [200, 120, 8],
  [400, 120, 10],
  [600, 120, 12],
];

type UlFuseFamily = Extract<DeviceFamily, `ul248${string}`>;

/** What sets one family of UL 248 apart from the next. */
interface UlFuseKind {
  readonly words: string;
  readonly ratings: readonly number[];
  /** Carried for ever, times the rating, and how long the test lasts [s]. */
  readonly hold: PrintedGate;
  readonly delay: (In: number) => readonly PrintedGate[];
  /** Whether the opening times were seen for this rating. */
  readonly seen: (In: number) => boolean;
  readonly where: string;
}

const upTo = (most: number, ratings: readonly number[] = standard) => ratings.filter((x) => x <= most);
const smallDelay = [0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4];

const kinds: Record<UlFuseFamily, UlFuseKind> = {
  ul248: {
    words: 'fuse (UL 248)',
    ratings: standard,
    hold: [1.1, 15 * minute, seen],
    delay: () => [],
    seen: () => false,
    where: 'Part 1 Table 4; carry test of Parts 2 and 9',
  },
  'ul248 delay': {
    words: 'time-delay fuse (UL 248 class J or R)',
    ratings: standard,
    hold: [1.1, 15 * minute, seen],
    // 10 s but for 250 V links up to 30 A, which may have 8 s
    delay: (In) => [[5, In <= 30 ? 8 : 10, In <= 30 ? seen : memory]],
    seen: () => false,
    where: 'Part 1 Table 4, Parts 8 and 12',
  },
  'ul248 CC': {
    words: 'time-delay fuse (UL 248 class CC)',
    ratings: upTo(30),
    hold: [1.1, 15 * minute, seen],
    delay: () => [[2, 12, seen]],
    seen: () => false,
    where: 'Part 1 Table 4, Part 4',
  },
  'ul248-14': {
    words: 'supplementary fuse (UL 248-14)',
    ratings: upTo(60),
    hold: [1, hour, seen],
    delay: () => [],
    seen: (In) => In <= 30 || In >= 35,
    where: 'Part 14',
  },
  'ul248-14 delay': {
    words: 'time-delay miniature fuse (UL 248-14)',
    ratings: smallDelay,
    hold: [1.1, 15 * minute, seen],
    delay: () => [[2, 5, seen]],
    seen: () => true,
    where: 'Part 14, 5 × 20 mm time-delay',
  },
};

/** Ratings of one family of UL 248 [A]. */
export const ulFuseRatings = (family: UlFuseFamily): readonly number[] => kinds[family].ratings;

/**
 * A fuse of UL 248: carries its hold current, opens at 135 % within one or two hours and at 200 % within 2 to 12 minutes.
 * Above 200 % only the maker's curve says more.
 */
export function ulFuse(family: UlFuseFamily, In: number): Device {
  const { words, hold, delay, seen: known, where } = kinds[family];
  const [, at135, at200] = table.find(([most]) => In <= most) as (typeof table)[number];
  const how = known(In) ? seen : memory;
  const longer: PrintedGate = In > 200 && hold[0] > 1 ? [hold[0], 30 * minute, hold[2]] : hold;
  return {
    family,
    kind: 'fuse',
    In,
    name: `${In}\u00A0A ${words}`,
    hold: gatesOf(In, [longer])[0] as Gate,
    notBefore: gatesOf(In, delay(In)),
    by: gatesOf(In, [
      [1.35, at135 * minute, how],
      [2, at200 * minute, how],
    ]),
    agreed: true,
    I2: 1.35 * In,
    source: 'ul248',
    where,
    silent: 'UL 248 has no point above 200 % by which a fuse must open; the maker’s curve has.',
  };
}

import { cableOf } from '../cable/cable.ts';
import { cordRating } from '../cable/cord-ratings.ts';
import { type CastKey, cast } from '../examples/cast.ts';
import type { Practice } from './types.ts';
import { unitSpace } from './words.ts';

/** One cord that questions are about: a member of the standing cast, three cores, two of them loaded. */
export interface Cord {
  readonly key: CastKey;
  readonly practice: Practice;
  /** 'a three-core 1.5 mm² cord'. */
  readonly words: string;
  /** What the practice's table allows this cord [A]; far below free-air physics, since a cord is also coiled, covered and gripped. */
  readonly rating: number;
}

// 1.25 mm² has no row in the construction table; this rating is as published in trade tables, from memory
const trade = 13;

function cord(key: CastKey, practice: Practice): Cord {
  const cable = cableOf(cast[key]);
  const words = `a three-core ${cable.conductor.marked.replace(' ', unitSpace)} cord`;
  return { key, practice, words, rating: cordRating(cable)?.I ?? trade };
}

/** The copper cords of the standing cast. */
export const cords: readonly Cord[] = [
  ...(['C075', 'C100', 'C125', 'C150'] as const).map((key) => cord(key, 'iec')),
  ...(['A18', 'A16', 'A14'] as const).map((key) => cord(key, 'na')),
];

/** The cords of a practice. */
export const cordsOf = (practice: Practice): readonly Cord[] => cords.filter((cord) => cord.practice === practice);

/** The cord of a key. */
export function cordOf(key: CastKey): Cord {
  const found = cords.find((cord) => cord.key === key);
  if (!found) throw new Error(`there is no cord ${key}`);
  return found;
}

/** Hazard, what it does, what to do, when `I` [A] is more than the cord's table allows; none otherwise. */
export function overloadCaution({ rating }: Cord, I: number): string[] {
  if (I <= rating) return [];
  const allows = `this cord's table rating is ${rating}${unitSpace}A`;
  return [
    `Overload: ${allows}. Too hot, insulation softens and fails. Simulate only; never load a lead above its marking.`,
  ];
}

/** Why the table allows less than a cord in free air would carry. */
export function ratingNote({ rating }: Cord): string {
  return `Its table rating is ${rating}${unitSpace}A, because a cord is also coiled, covered, gripped and touched.`;
}

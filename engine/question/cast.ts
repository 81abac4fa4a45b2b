import type { CableSpec } from '../scenario/schema.ts';
import type { SourceId } from '../sources.ts';
import type { Practice } from './types.ts';
import { unitSpace } from './words.ts';

/** One cord that questions are about: three cores, two of them loaded. */
export interface Cord {
  readonly key: string;
  readonly practice: Practice;
  /** 'a three-core 1.5 mm² cord'. */
  readonly words: string;
  readonly cable: CableSpec;
  /** What the practice's table allows this cord [A]; far below free-air physics, since a cord is also coiled, covered and gripped. */
  readonly rating: number;
  readonly source: SourceId;
}

const metric = (key: string, size_mm2: number, rating: number, cable?: CableSpec): Cord => ({
  key,
  practice: 'iec',
  words: `a three-core ${size_mm2}${unitSpace}mm² cord`,
  cable: cable ?? { table: 'H05VV-F', cores: 3, size_mm2 },
  rating,
  source: 'bs7671',
});

const gauge = (key: string, size_AWG: number, rating: number): Cord => ({
  key,
  practice: 'na',
  words: `a three-core ${size_AWG}${unitSpace}AWG cord`,
  cable: { table: 'SJT', cores: 3, size_AWG },
  rating,
  source: 'nfpa70',
});

// 1.25 mm² has no row in the construction table: its walls, and its rating as published in trade tables, are from memory.
const c125: CableSpec = {
  layout: 'round',
  cores: 3,
  conductor: { metal: 'copper', class: 5, size_mm2: 1.25 },
  insulation: { material: 'pvc70', thickness_mm: 0.65 },
  sheath: { material: 'pvc70', thickness_mm: 0.85 },
};

/** The standing cast. Ratings: BS 7671 Table 4F3A (60 °C cords, 30 °C) and NFPA 70 Table 400.5(A)(1), two loaded cores. */
export const cords: readonly Cord[] = [
  metric('C075', 0.75, 6),
  metric('C100', 1, 10),
  metric('C125', 1.25, 13, c125),
  metric('C150', 1.5, 16),
  gauge('A18', 18, 10),
  gauge('A16', 16, 13),
  gauge('A14', 14, 18),
];

/** The cords of a practice. */
export const cordsOf = (practice: Practice): readonly Cord[] => cords.filter((cord) => cord.practice === practice);

/** The cord of a key. */
export function cordOf(key: string): Cord {
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

import { type MisconceptionId, misconceptions } from '../misconceptions.ts';
import type { Practice } from '../types.ts';
import { type Listed, serving } from './catalogue.ts';
import type { Memory, Review } from './review.ts';

/** What mastery asks for (curriculum, section 5). */
export const mastery = { days: 3, templates: 2, difficulty: 2, S: 21, recent: 5 } as const;

/** How far an objective is from being mastered. */
export interface Standing {
  readonly mastered: boolean;
  /** Days with a right answer since the last wrong one. */
  readonly rightDays: number;
  /** Sorts of question answered rightly since then, and how many are wanted. */
  readonly sorts: number;
  readonly sortsWanted: number;
  /** One of them was of the difficulty that is wanted. */
  readonly hardEnough: boolean;
  /** It keeps for the days that are wanted. */
  readonly keeps: boolean;
  /** No mistake was recognised in the last five answers. */
  readonly clear: boolean;
}

/**
 * How an objective stands: mastered when it was right (grade 3 or 4) on three different days, from two templates, one of difficulty 2, keeps for
 * 21 days, and none of the last five answers was tagged. Only what came after the last wrong answer counts, so that a lapse takes mastery
 * back. Of an objective that the course serves with less (one template, none of difficulty 2), what it has is asked for.
 */
export function standingOf(memory: Memory, catalogue: readonly Listed[], practice: Practice): Standing {
  const { objective, reviews, S } = memory;
  const served = serving(catalogue, objective, practice);
  const right = sinceLapse(reviews).filter(({ grade }) => grade >= 3);
  const sorts = new Set(right.map(({ template }) => template)).size;
  const sortsWanted = Math.max(1, Math.min(mastery.templates, served.length));
  const hardest = Math.min(mastery.difficulty, Math.max(1, ...served.map(({ difficulty }) => difficulty)));
  const facts = {
    rightDays: new Set(right.map(({ day }) => day)).size,
    sorts,
    sortsWanted,
    hardEnough: right.some(({ difficulty }) => difficulty >= hardest),
    keeps: S >= mastery.S,
    clear: reviews.slice(-mastery.recent).every(({ tags }) => tags.length === 0),
  };
  const enough = facts.rightDays >= mastery.days && sorts >= sortsWanted;
  return { ...facts, mastered: enough && facts.hardEnough && facts.keeps && facts.clear };
}

function sinceLapse(reviews: readonly Review[]): readonly Review[] {
  return reviews.slice(reviews.findLastIndex(({ grade }) => grade === 1) + 1);
}

/** A mistake that came more than once. */
export interface Recurring {
  readonly id: MisconceptionId;
  /** Answers it was recognised in, among the last five to each objective. */
  readonly times: number;
  /** The day of the last one. */
  readonly day: number;
  /** The lesson that deals with it. */
  readonly lesson: string;
}

/** Mistakes recognised at least twice in the last five answers to each objective, the most frequent first. */
export function recurringMistakes(memories: readonly Memory[]): Recurring[] {
  const recent = memories.flatMap(({ reviews }) => reviews.slice(-mastery.recent));
  // a question that serves two objectives is one answer
  const answers = new Map(recent.map((review) => [`${review.template} ${review.seed} ${review.day}`, review]));
  const found = new Map<MisconceptionId, { times: number; day: number }>();
  for (const { tags, day } of answers.values()) {
    for (const id of tags) {
      const before = found.get(id);
      found.set(id, { times: (before?.times ?? 0) + 1, day: Math.max(day, before?.day ?? day) });
    }
  }
  return [...found]
    .filter(([, { times }]) => times >= 2)
    .map(([id, seen]) => ({ id, ...seen, lesson: misconceptions[id].lesson }))
    .sort((a, b) => b.times - a.times || b.day - a.day || a.id.localeCompare(b.id));
}

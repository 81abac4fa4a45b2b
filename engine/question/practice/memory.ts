import { FSRSAlgorithm, type FSRSParameters } from 'ts-fsrs';
import { within } from '../../errors.ts';
import type { Grade } from './grade.ts';
import {
  type Memory,
  type MemoryState,
  mostReviews,
  type PracticeSettings,
  type Review,
  retentions,
} from './review.ts';
import { weights } from './weights.ts';

/**
 * The library's algorithm. Its steps within a day are off: the schedule here counts whole days, so a second right answer on the same
 * day leaves S as it is and cramming lengthens nothing.
 */
const algorithm = (more: Partial<FSRSParameters> = {}) =>
  new FSRSAlgorithm({ w: weights.w, enable_short_term: false, enable_fuzz: false, ...more });

/**
 * The memory of an objective after a review; `memory` is undefined before the first. Another try at the same question on the same day takes
 * the place of the first: right on a second try is grade 2 at most, and a right answer given again to the same numbers changes nothing.
 * A day before the last is taken as the last, since clocks can be put back.
 */
export function reviewed(objective: string, memory: Memory | undefined, review: Review): Memory {
  const day = Math.max(review.day, memory?.day ?? review.day);
  const last = memory?.reviews.at(-1);
  const same = last?.day === day && last.template === review.template && last.seed === review.seed;
  if (memory && same && last.grade > 1) return memory;
  const grade = same ? (Math.min(review.grade, 2) as Grade) : review.grade;
  const tags = same ? [...new Set([...last.tags, ...review.tags])] : review.tags;
  const before = same ? (memory?.before ?? null) : memory ? { D: memory.D, S: memory.S, day: memory.day } : null;
  const earlier = (same ? memory?.reviews.slice(0, -1) : memory?.reviews) ?? [];
  const reviews = [...earlier, { ...review, day, grade, tags }].slice(-mostReviews);
  return { objective, ...nextState(before, day, grade), before, reviews };
}

function nextState(before: MemoryState | null, day: number, grade: Grade): MemoryState {
  const known = before && { difficulty: before.D, stability: before.S };
  const { difficulty, stability } = algorithm().next_state(known, before ? day - before.day : 0, grade);
  return { D: difficulty, S: stability, day };
}

/** The chance of a right answer on `today`, 0 to 1. */
export function chanceOf({ S, day }: MemoryState, today: number): number {
  return algorithm().forgetting_curve(Math.max(0, today - day), S);
}

/**
 * The day on which it is to be asked again: when the chance of a right answer has fallen to `retention` (0.8 to 0.95), never before the day
 * after the last. An exam to come caps the gap at a quarter of the days that were left to it.
 */
export function dueDay({ S, day }: MemoryState, { retention, examDay }: PracticeSettings): number {
  within('the share that is to be kept', retention, [retentions.least, retentions.most], '1');
  const gap = algorithm({ request_retention: retention }).next_interval(S, 0);
  if (examDay === undefined || examDay <= day) return day + gap;
  return day + Math.max(1, Math.min(gap, Math.floor((examDay - day) / 4)));
}

/** For about how many days from the last review it keeps: whole days, at least 1, until nine answers in ten would still be right. */
export const keepsFor = ({ S }: MemoryState): number => Math.max(1, Math.round(S));

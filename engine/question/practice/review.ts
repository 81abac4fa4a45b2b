import type { MisconceptionId } from '../misconceptions.ts';
import type { Difficulty } from '../types.ts';
import type { Grade } from './grade.ts';

// What is kept, apart from what computes it: a page that only opens the notebook fetches no scheduler.

/** How well a thing is remembered. */
export interface MemoryState {
  /** How hard it is for this learner, 1 to 10. */
  readonly D: number;
  /** Stability: days until the chance of a right answer has fallen to nine in ten. */
  readonly S: number;
  /** The last day it was asked. A day is counted from 1970-01-01 in the learner's own calendar. */
  readonly day: number;
}

/** One question answered. */
export interface Review {
  readonly day: number;
  readonly template: string;
  readonly seed: string;
  readonly difficulty: Difficulty;
  readonly grade: Grade;
  /** The mistakes that were recognised on the way. */
  readonly tags: readonly MisconceptionId[];
}

/** What is remembered of one objective. */
export interface Memory extends MemoryState {
  readonly objective: string;
  /** As it was before the last review, which a second try at the same question takes the place of; null when there was none. */
  readonly before: MemoryState | null;
  /** The latest, oldest first; at most `mostReviews`. */
  readonly reviews: readonly Review[];
}

/** What a learner has chosen for practice. */
export interface PracticeSettings {
  /** The chance of a right answer at which a question comes back, 0.8 to 0.95. */
  readonly retention: number;
  /** The day of an exam. */
  readonly examDay?: number | undefined;
}

/** The reviews that a memory keeps. */
export const mostReviews = 16;

/** Retention as it can be chosen: the ends, and what stands when nothing is chosen. */
export const retentions = { least: 0.8, usual: 0.9, most: 0.95 } as const;

import { lessonOf } from '../question/practice/catalogue.ts';
import { dayNumber } from '../question/practice/days.ts';
import { reviewed } from '../question/practice/memory.ts';
import type { Memory, PracticeSettings, Review } from '../question/practice/review.ts';
import type { MemoryEntry, Notebook } from './document.ts';
import { entryOf, withEntry } from './edit.ts';

/** What the notebook remembers, objective by objective. */
export function memoriesOf({ entries }: Notebook): Memory[] {
  return entries.filter((entry): entry is MemoryEntry => entry.kind === 'memory').map(({ memory }) => memory);
}

/** The notebook after a review of a question that serves these objectives. `at` is when it was answered. */
export function withReview(notebook: Notebook, objectives: readonly string[], review: Review, at: string): Notebook {
  return objectives.reduce((kept, objective) => {
    const lesson = lessonOf(objective);
    const before = entryOf(kept, 'memory', lesson, objective)?.memory;
    return withEntry(kept, { kind: 'memory', id: objective, lesson, at, memory: reviewed(objective, before, review) });
  }, notebook);
}

/** Numbers of the lessons a reader has been in, in their order. */
export function lessonsBegun({ entries, places }: Notebook): string[] {
  const made = entries.map((entry) => (typeof entry.lesson === 'string' ? entry.lesson : ''));
  return [...new Set([...Object.keys(places), ...made])].filter((lesson) => lesson !== '').sort();
}

/** The settings as the schedule wants them. */
export function practiceSettings({ settings }: Notebook): PracticeSettings {
  const { retention, exam } = settings;
  return { retention, examDay: exam === undefined ? undefined : dayNumber(exam) };
}

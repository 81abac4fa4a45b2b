import type { Template } from './types.ts';

/** The list of each lesson, fetched when it is asked for. */
const lists: Readonly<Record<string, () => Promise<readonly Template[]>>> = {
  '1.1': async () => (await import('./lesson-1-1.ts')).questions11,
  '1.2': async () => (await import('./lesson-1-2.ts')).questions12,
  '1.3': async () => (await import('./lesson-1-3.ts')).questions13,
  '1.4': async () => (await import('./lesson-1-4.ts')).questions14,
  '2.1': async () => (await import('./lesson-2-1.ts')).questions21,
  '2.2': async () => (await import('./lesson-2-2.ts')).questions22,
  '2.3': async () => (await import('./lesson-2-3.ts')).questions23,
  '2.4': async () => (await import('./lesson-2-4.ts')).questions24,
  '3.1': async () => (await import('./lesson-3-1.ts')).questions31,
  '3.2': async () => (await import('./lesson-3-2.ts')).questions32,
  '3.3': async () => (await import('./lesson-3-3.ts')).questions33,
  '4.1': async () => (await import('./lesson-4-1.ts')).questions41,
  '4.2': async () => (await import('./lesson-4-2.ts')).questions42,
  '4.3': async () => (await import('./lesson-4-3.ts')).questions43,
  '4.4': async () => (await import('./lesson-4-4.ts')).questions44,
  '4.5': async () => (await import('./lesson-4-5.ts')).questions45,
  '5.1': async () => (await import('./lesson-5-1.ts')).questions51,
  '5.2': async () => (await import('./lesson-5-2.ts')).questions52,
  '5.3': async () => (await import('./lesson-5-3.ts')).questions53,
  '5.4': async () => (await import('./lesson-5-4.ts')).questions54,
};

/**
 * The templates of a lesson, '4.5', fetched without those of any other; for a page that asks questions of many lessons. Rejects where they
 * cannot be fetched, or where there is no such lesson.
 */
export async function fetchTemplates(lesson: string): Promise<readonly Template[]> {
  const list = lists[lesson];
  if (!list) throw new Error(`there is no lesson ${lesson}`);
  return list();
}

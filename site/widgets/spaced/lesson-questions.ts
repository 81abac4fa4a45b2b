import type { Component } from 'svelte';
import type { Asked } from '../question/asked.ts';

type Loader = () => Promise<{ default: Component<Asked> }>;
const files = import.meta.glob('../question/of-lesson/*.svelte') as Record<string, Loader>;

/** Fetches what asks the questions of a lesson, '4.5', with its templates and no others; rejects where it cannot be fetched. */
export async function questionsOf(lesson: string): Promise<Component<Asked>> {
  const load = files[`../question/of-lesson/Lesson${lesson.replace('.', '')}.svelte`];
  if (!load) throw new Error(`lesson ${lesson} has no questions`);
  return (await load()).default;
}

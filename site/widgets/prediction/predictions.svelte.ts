import { entryOf, type Notebook, withEntry, withoutEntry } from '#engine';
import type { Practice } from '../../lib/practice.ts';
import { changeNotebook, keptNotebook, lessonHere, moment } from '../../store/notebook.ts';
import { type ByPractice, type Locked, readKept } from './locked.ts';
import { lockedEvent } from './names.ts';

const locked = $state<Record<string, ByPractice>>({});
const known = new Set<string>();

/** What is locked in under `id` for the case of `practice`, if it is of that kind; undefined until it is locked in or recalled. */
export function predictionOf<K extends Locked['kind']>(
  id: string,
  practice: Practice,
  kind: K,
): Extract<Locked, { kind: K }> | undefined {
  const found = locked[id]?.[practice];
  return found?.kind === kind ? (found as Extract<Locked, { kind: K }>) : undefined;
}

/** Reads what the notebook of this device has under `id`, once a page; to be called in the browser only. */
export function recallPrediction(id: string): void {
  if (known.has(id)) return;
  known.add(id);
  const notebook = keptNotebook();
  const entry = notebook && entryOf(notebook, 'prediction', lessonHere(), id);
  if (entry) locked[id] = readKept(entry.said);
}

/** Locks a prediction in. False when the browser keeps nothing, so that it lasts only as long as the page. */
export function lockPrediction(id: string, practice: Practice, prediction: Locked): boolean {
  recallPrediction(id);
  const all = { ...locked[id], [practice]: prediction };
  locked[id] = all;
  document.dispatchEvent(new CustomEvent(lockedEvent, { detail: id }));
  return changeNotebook((notebook) => withPrediction(notebook, id, all));
}

/** Forgets the prediction of one practice, here and in the notebook. */
export function forgetPrediction(id: string, practice: Practice): void {
  const { [practice]: _, ...others } = locked[id] ?? {};
  locked[id] = others;
  changeNotebook((notebook) =>
    Object.keys(others).length > 0
      ? withPrediction(notebook, id, others)
      : withoutEntry(notebook, 'prediction', lessonHere(), id),
  );
}

function withPrediction(notebook: Notebook, id: string, said: ByPractice): Notebook {
  return withEntry(notebook, { kind: 'prediction', id, lesson: lessonHere(), at: moment(), said });
}

import { entryOf, type Given, type QuestionRef, refToText, withEntry } from '#engine';
import { changeNotebook, lessonHere, moment } from '../../store/notebook.ts';

/** Keeps an answer that counted as a try in the notebook, after those given before to the same numbers. No mark is kept. */
export function recordAnswer(id: string, ref: QuestionRef, given: Given): void {
  const lesson = lessonHere();
  changeNotebook((notebook) => {
    const before = entryOf(notebook, 'question', lesson, id);
    const same = before !== undefined && refToText(before.ref) === refToText(ref);
    const all = same ? [...before.given, given] : [given];
    return withEntry(notebook, { kind: 'question', id, lesson, at: moment(), ref, given: all });
  });
}

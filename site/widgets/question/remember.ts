// What is remembered of a question's objectives; fetched when an answer has been marked, so that a lesson does not wait for it.
import { gradeOf, type Notebook, withReview } from '#engine';
import { changeNotebook, moment } from '../../store/notebook.ts';
import { today } from '../../store/today.ts';
import type { CountedAnswer } from './asked.ts';

/** The notebook after an answer, remembered today. What was copied from the working changes nothing. */
export function afterAnswer(notebook: Notebook, answer: CountedAnswer): Notebook {
  const { question, tags, copied } = answer;
  if (copied) return notebook;
  const { ref, difficulty, objectives } = question;
  const review = { day: today(), template: ref.id, seed: ref.seed, difficulty, grade: gradeOf(answer), tags };
  return withReview(notebook, objectives, review, moment());
}

/** Keeps what an answer says of its objectives. False when this browser keeps nothing. */
export const remember = (answer: CountedAnswer): boolean => changeNotebook((notebook) => afterAnswer(notebook, answer));

import { type Question, type QuestionFault, type QuestionRef, questionFrom, refFromText, templates } from '#engine';
import type { Practice } from '../../lib/format.ts';

/** The seed after `seed`: 'lesson', 'lesson-2', 'lesson-3' and so on, so that a tutor can say which. */
export function nextSeed(seed: string): string {
  const [, stem, count] = /^(.*)-(\d{1,6})$/.exec(seed) ?? [];
  return stem !== undefined && count !== undefined ? `${stem}-${Number(count) + 1}` : `${seed}-2`;
}

/** The ref of a template in its present version. Throws when there is no such template: a page asks for what exists. */
export function refOf(template: string, seed: string, practice: Practice): QuestionRef {
  const found = templates[template];
  if (!found) throw new Error(`there is no question ${template}`);
  return { id: template, version: found.version, practice, seed };
}

/** The ref that an address holds for a question of `template`, or in words why it cannot be used; undefined without any. */
export function refFromAddress(text: string | undefined, template: string): QuestionRef | QuestionFault | undefined {
  if (text === undefined) return undefined;
  const ref = refFromText(text);
  if (ref?.id !== template) return { fault: 'The numbers of this link could not be read.' };
  const question = questionFrom(ref);
  return 'fault' in question ? question : ref;
}

/** The question of a ref that is known to be good. */
export function questionOf(ref: QuestionRef): Question {
  const question = questionFrom(ref);
  if ('fault' in question) throw new Error(question.fault);
  return question;
}

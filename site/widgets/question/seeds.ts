import { type Question, type QuestionFault, type QuestionRef, questionOf, refFromText, type Template } from '#engine';
import type { Practice } from '../../lib/format.ts';

/** The seed after `seed`: 'lesson', 'lesson-2', 'lesson-3' and so on, so that a tutor can say which. */
export function nextSeed(seed: string): string {
  const [, stem, count] = /^(.*)-(\d{1,6})$/.exec(seed) ?? [];
  return stem !== undefined && count !== undefined ? `${stem}-${Number(count) + 1}` : `${seed}-2`;
}

/**
 * The ref of a template in its present version, in the practice asked for, or in the template's own where it has but one.
 * Throws when there is no such template: a page asks for what exists.
 */
export function refOf(template: Template | undefined, seed: string, practice: Practice): QuestionRef {
  if (!template) throw new Error('a page asks a question that its list does not have');
  const has = template.practices.includes(practice) ? practice : (template.practices[0] ?? practice);
  return { id: template.id, version: template.version, practice: has, seed };
}

/** The ref that an address holds for a question of `template`, or in words why it cannot be used; undefined without any. */
export function refFromAddress(text: string | undefined, template: Template): QuestionRef | QuestionFault | undefined {
  if (text === undefined) return undefined;
  const ref = refFromText(text);
  if (ref?.id !== template.id) return { fault: 'The numbers of this link could not be read.' };
  const question = questionOf(ref, [template]);
  return 'fault' in question ? question : ref;
}

/** The question of a ref that is known to be good. */
export function goodQuestion(ref: QuestionRef, template: Template): Question {
  const question = questionOf(ref, [template]);
  if ('fault' in question) throw new Error(question.fault);
  return question;
}

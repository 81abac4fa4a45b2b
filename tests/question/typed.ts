import type { Practice, Question, Template, TypedQuestion } from '#engine/question/types.ts';

/** Whether a question's answer is typed. */
export const isTyped = (question: Question): question is TypedQuestion =>
  question.kind === 'number' || question.kind === 'read';

/** A template's question of a seed, where its answer is known to be typed. */
export function typedQuestion(template: Template, seed: string, practice: Practice): TypedQuestion {
  const question = template.question(seed, practice);
  if (!isTyped(question)) throw new Error(`${template.id} is not typed`);
  return question;
}

import { markChoice } from './mark-choice.ts';
import { markOrder } from './mark-order.ts';
import { markTyped } from './mark-typed.ts';
import type { Feedback, Given, Question, Verdict } from './types.ts';

/**
 * Marks what a learner gave for a question. `before` holds the verdicts on earlier tries at the same question, in order: an
 * amount of the wrong kind comes back once without loss. What does not fit the question's kind is taken as not given.
 * The same arguments give the same feedback.
 */
export function mark(question: Question, given: Given, before: readonly Verdict[] = []): Feedback {
  switch (question.kind) {
    case 'number':
    case 'read':
      return markTyped(question, typeof given === 'string' ? given : '', before);
    case 'choose':
      return markChoice(question, typeof given === 'object' && given.kind === 'choice' ? given.chosen : {}, before);
    case 'order':
      return markOrder(question, typeof given === 'object' && given.kind === 'order' ? given.ids : [], before);
  }
}

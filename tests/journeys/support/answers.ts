import assert from 'node:assert/strict';
import { celsius, type Feedback, type Given, mark, type Question } from '#engine';

/** An answer to give, and what the engine says to it. */
export interface Answer {
  given: Given;
  said: Feedback;
}

/** The right answer of a question, as the engine has it. */
export function rightAnswer(question: Question): Answer {
  const answer = answered(question, rightGiven(question));
  assert.equal(answer.said.marks, 1, `${question.ref.id}: its own answer is not taken for right`);
  return answer;
}

/** An answer that a known idea leads to, or else one that is plainly off. */
export function wrongAnswer(question: Question): Answer {
  const found = wrongGiven(question)
    .map((given) => answered(question, given))
    .find(({ said }) => said.verdict === 'not yet');
  assert.ok(found, `${question.ref.id}: no wrong answer is found`);
  return found;
}

const answered = (question: Question, given: Given): Answer => ({ given, said: mark(question, given) });
/** 62 °C (144 °F) is typed as 62 °C. */
const plain = (text: string): string => text.replace(/ \(.*/, '');

function rightGiven(question: Question): Given {
  switch (question.kind) {
    case 'number':
    case 'read':
      return plain(question.answer.text);
    case 'choose':
      return { kind: 'choice', chosen: Object.fromEntries(question.parts.map(({ id, right }) => [id, right])) };
    case 'order':
      return { kind: 'order', ids: question.answer.order };
  }
}

function wrongGiven(question: Question): Given[] {
  switch (question.kind) {
    case 'number':
    case 'read': {
      const { value, kind, text } = question.answer;
      const unit = plain(text).replace(/^[\d.\s]+/, '');
      const number = Number.parseFloat(text);
      const typed = (at: number): string =>
        kind === 'temperature' ? `${celsius(at).toFixed(0)} °C` : `${((number * at) / value).toPrecision(3)} ${unit}`;
      const slips = question.wrong.filter(({ onlyIn }) => onlyIn === undefined).map((slip) => typed(slip.value));
      return [...slips, typed(kind === 'temperature' ? value + 60 : value * 7)];
    }
    case 'choose':
      return question.parts.flatMap((part) =>
        part.options.map(({ id }) => {
          const right = question.parts.map((one) => [one.id, one.right]);
          return { kind: 'choice', chosen: { ...Object.fromEntries(right), [part.id]: id } } as const;
        }),
      );
    case 'order':
      return [...question.wrong.map(({ order }) => order), question.answer.order.toReversed()].map((ids) => ({
        kind: 'order',
        ids,
      }));
  }
}

import { expect, it } from 'vitest';
import { mark } from '#engine/question/mark.ts';
import { templates } from '#engine/question/templates.ts';
import type { NumberQuestion, Template, Verdict, WrongValue } from '#engine/question/types.ts';

const question = (templates.Q29 as Template).question('marking', 'iec') as NumberQuestion;
const { answer } = question;
const slip = question.wrong[0] as WrongValue;
const typed = (value: number, figures = 3) => `${value.toPrecision(figures)} A`;

it('says of a right answer what the engine gives', () => {
  expect(mark(question, typed(answer.value))).toMatchObject({
    verdict: 'right',
    marks: 1,
    headline: `Right: the engine gives ${answer.text}`,
    solutionOpen: true,
  });
});

it('gives full marks to six figures and more, and says that nobody can know them', () => {
  expect(mark(question, typed(answer.value, 5)).verdict).toBe('right');
  const feedback = mark(question, typed(answer.value, 7));
  expect(feedback).toMatchObject({ verdict: 'right, over-precise', marks: 1 });
  expect(feedback.whyNot).toContain('Three figures are as many as this lead');
});

it('names the slip: what the answer is true of, why not here, what would make one notice, where to look', () => {
  const feedback = mark(question, typed(slip.value));
  expect(feedback).toMatchObject({
    verdict: 'not yet',
    marks: 0,
    tags: ['M47'],
    misconception: { id: 'M47', thinks: 'Average the current over on and off.' },
    trueOf: `${typed(slip.value).replace(' ', '\u00A0')} is the average of the current itself.`,
    notice: 'At twice the current, how many times the heat is made in one second?',
    look: { scenario: 0 },
    good: 'It is a current, as asked.',
    solutionOpen: true,
  });
  expect(feedback.headline).toBe(`Not yet: ${feedback.trueOf}`);
  expect(feedback.whyNot).toContain('Heat goes with current squared.');
});

it('shows no name where two slips fit, only what is said of the more common', () => {
  const other: WrongValue = { id: 'M18', value: slip.value * 1.001, trueOf: 'is rarer.', ask: 'Rarer?' };
  const feedback = mark({ ...question, wrong: [other, slip] }, typed(slip.value));
  expect(feedback.tags).toEqual(['M47', 'M18']);
  expect(feedback.misconception).toBeUndefined();
  expect(feedback.trueOf).toContain('is the average of the current itself.');
});

it('hands back an answer that cannot be marked, without loss', () => {
  const free = { marks: null, tags: [], solutionOpen: false };
  expect(mark(question, '')).toMatchObject({ verdict: 'unreadable', ...free });
  expect(mark(question, 'ten amps')).toMatchObject({ verdict: 'unreadable', ...free });
  expect(mark(question, '10.4')).toMatchObject({ verdict: 'unit missing', readAs: '10.4 of what?', ...free });
  expect(mark(question, '10.4 V')).toMatchObject({ verdict: 'wrong kind', readAs: 'read as 10.4\u00A0V', ...free });
});

it('a wrong kind of unit is handed back once; the second one counts', () => {
  const before: Verdict[] = ['wrong kind'];
  expect(mark(question, '10.4 V', ['not yet'])).toMatchObject({ marks: null, solutionOpen: true });
  expect(mark(question, '10.4 V', before)).toMatchObject({ verdict: 'wrong kind', marks: 0, solutionOpen: true });
});

it('notices the right figures with the wrong unit', () => {
  const feedback = mark(question, `${answer.value.toPrecision(3)} mA`);
  expect(feedback).toMatchObject({ verdict: 'not yet', tags: [] });
  expect(feedback.whyNot).toContain('Check the unit');
});

it('takes an unclear comma as it makes sense', () => {
  const thousand: NumberQuestion = {
    ...question,
    answer: { ...answer, value: 1234, kind: 'power', unit: 'W' },
    wrong: [],
  };
  expect(mark(thousand, '1,234 W')).toMatchObject({ marks: 1, readAs: 'read as 1234\u00A0W' });
  const one: NumberQuestion = { ...thousand, answer: { ...thousand.answer, value: 1.234 } };
  expect(mark(one, '1,234 W')).toMatchObject({
    marks: 1,
    readAs: 'read as 1.234\u00A0W, the comma as a decimal point',
  });
});

it('marks the same answer the same way every time', () => {
  expect(mark(question, typed(slip.value))).toEqual(mark(question, typed(slip.value)));
});

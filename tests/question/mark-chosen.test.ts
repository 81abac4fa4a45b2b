import { expect, it } from 'vitest';
import { mark } from '#engine/question/mark.ts';
import type { ChooseQuestion, OrderQuestion, QuestionBase } from '#engine/question/types.ts';

const base: QuestionBase = {
  ref: { id: 'Q00', version: 1, practice: 'iec', seed: 'a' },
  lesson: '1.1',
  difficulty: 1,
  objectives: [],
  fallback: false,
  title: 'Trial',
  stem: [],
  ask: 'Choose.',
  scenarios: [],
  hints: [],
  solution: [],
  look: 'Look at the case.',
  cautions: [],
};

const way = (id: string, text: string, said?: ChooseQuestion['parts'][0]['options'][0]['said']) =>
  said ? { id, text, said } : { id, text };

const choice: ChooseQuestion = {
  ...base,
  kind: 'choose',
  answer: { text: 'the heat goes up, the temperature stays.' },
  parts: [
    {
      id: 'heat',
      label: 'Heat',
      right: 'up',
      options: [
        way('up', 'goes up'),
        way('same', 'stays', { trueOf: 'of a metre it is.', whyNot: 'Sum.', ask: 'Sum?' }),
      ],
    },
    {
      id: 'T',
      label: 'Temperature',
      right: 'same',
      options: [way('up', 'goes up', { id: 'M05', trueOf: 'the heat does.', ask: 'One metre?' }), way('same', 'stays')],
    },
  ],
};
const chosen = (heat?: string, T?: string) => ({
  kind: 'choice' as const,
  chosen: { ...(heat ? { heat } : {}), ...(T ? { T } : {}) },
});

const order: OrderQuestion = {
  ...base,
  kind: 'order',
  items: ['c', 'a', 'd', 'b'].map((id) => ({ id, name: `wire ${id}` })),
  ends: ['thinnest', 'thickest'],
  answer: { order: ['a', 'b', 'c', 'd'], text: 'a, b, c, d.' },
  wrong: [
    { id: 'M08', order: ['a', 'c', 'b', 'd'], trueOf: 'the number grows.', ask: 'Which is drawn more often?' },
    { id: 'M05', order: ['b', 'a', 'c', 'd'], trueOf: 'length.', whyNot: 'Not here.', ask: 'One metre?' },
  ],
};
const put = (...ids: string[]) => ({ kind: 'order' as const, ids });

it('marks a choice in parts right only when every part is', () => {
  expect(mark(choice, chosen('up', 'same'))).toMatchObject({
    verdict: 'right',
    marks: 1,
    headline: 'Right: the heat goes up, the temperature stays.',
    readAs: 'read as goes up, stays',
    parts: { heat: true, T: true },
    solutionOpen: true,
  });
});

it('says which parts stand, names the idea behind the other, and asks what makes one notice', () => {
  expect(mark(choice, chosen('up', 'up'))).toMatchObject({
    verdict: 'not yet',
    marks: 0,
    headline: 'Not yet: the heat does.',
    tags: ['M05'],
    misconception: { id: 'M05', thinks: 'The longer the lead, the hotter it gets.' },
    good: 'Right already: ‘Heat’.',
    notice: 'Temperature: One metre?',
    parts: { heat: true, T: false },
    look: { words: 'Look at the case.', scenario: 0 },
  });
});

it('speaks of one part at a time, the first with a known idea', () => {
  const feedback = mark(choice, chosen('same', 'up'));
  expect(feedback).toMatchObject({ headline: 'Not yet: the heat does.', tags: ['M05'], misconception: { id: 'M05' } });
  expect(feedback.good).toBeUndefined();
  expect(mark(choice, chosen('same', 'same'))).toMatchObject({
    headline: 'Not yet: of a metre it is.',
    whyNot: 'Sum.',
    tags: [],
  });
});

it('hands a choice back while a part is open, and says which', () => {
  const free = { verdict: 'unreadable', marks: null, tags: [], solutionOpen: false };
  expect(mark(choice, chosen('up'))).toMatchObject({
    ...free,
    whyNot: 'Choose in every part. Still open: ‘Temperature’.',
  });
  expect(mark(choice, chosen('up', 'nonsense'))).toMatchObject(free);
  expect(mark({ ...choice, parts: choice.parts.slice(0, 1) }, chosen())).toMatchObject({
    ...free,
    whyNot: 'Choose one of the answers first.',
  });
  expect(mark(choice, chosen('up'), ['not yet']).solutionOpen).toBe(true);
});

it('marks an order right, and says it in words', () => {
  expect(mark(order, put('a', 'b', 'c', 'd'))).toMatchObject({
    verdict: 'right',
    marks: 1,
    readAs: 'read as from thinnest to thickest: wire a, wire b, wire c, wire d',
  });
});

it.each([
  ['as it is', ['a', 'c', 'b', 'd']],
  ['turned round', ['d', 'b', 'c', 'a']],
])('knows the order of an idea %s', (_how, ids) => {
  expect(mark(order, put(...ids))).toMatchObject({
    verdict: 'not yet',
    tags: ['M08'],
    misconception: { id: 'M08' },
    headline: 'Not yet: the number grows.',
    notice: 'Which is drawn more often?',
  });
});

it('tells a right order that runs the other way, and accuses of nothing', () => {
  expect(mark(order, put('d', 'c', 'b', 'a'))).toMatchObject({
    verdict: 'not yet',
    marks: 0,
    tags: [],
    headline: 'Not yet: this runs from thickest to thinnest.',
    good: 'The steps between are right.',
  });
});

it('says how many of any other order stand, and which two to compare', () => {
  expect(mark(order, put('a', 'b', 'd', 'c'))).toMatchObject({
    verdict: 'not yet',
    tags: [],
    headline: 'Not yet',
    good: '2 of 4 stand in their place.',
    notice: 'Which should come first: ‘wire d’ or ‘wire c’?',
  });
});

it('hands an order back that was not moved, or is none', () => {
  for (const ids of [[], ['a', 'b', 'c'], ['a', 'a', 'c', 'd'], ['a', 'b', 'c', 'x']])
    expect(mark(order, put(...ids))).toMatchObject({ verdict: 'unreadable', marks: null, tags: [] });
});

it('takes an answer of another kind as not given', () => {
  expect(mark(choice, 'goes up')).toMatchObject({ verdict: 'unreadable', marks: null });
  expect(mark(choice, put('a'))).toMatchObject({ verdict: 'unreadable', marks: null });
  expect(mark(order, chosen('up', 'same'))).toMatchObject({ verdict: 'unreadable', marks: null });
});

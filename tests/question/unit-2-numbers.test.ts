// The numeric questions of lessons 2.1, 2.3 and 2.4. What is right and what is wrong is worked out in unit-2-slips.ts from the
// words of the stem; the engine is asked again, by way of `predict`, for what each answer says of its case.
import { expect, it } from 'vitest';
import { kelvin, predict, type Scenario } from '#engine';
import { templatesOfLesson } from '#engine/question/templates.ts';
import type { TemplateSpec } from '#engine/question/types.ts';
import { copperBehindSheathSpec } from '#engine/question/unit-2/copper-behind-sheath.ts';
import { factorsTogetherSpec } from '#engine/question/unit-2/factors-together.ts';
import { inADraughtSpec } from '#engine/question/unit-2/in-a-draught.ts';
import { mostOnAReelSpec } from '#engine/question/unit-2/most-on-a-reel.ts';
import { shareOfLifeSpec } from '#engine/question/unit-2/share-of-life.ts';
import { timeToSoftenSpec } from '#engine/question/unit-2/time-to-soften.ts';
import { underLaggingSpec } from '#engine/question/unit-2/under-lagging.ts';
import { warmerDaySpec } from '#engine/question/unit-2/warmer-day.ts';
import { firstCase, settled, some, testNumbers, testSpecs } from './number-templates.ts';
import { stemOf } from './stem.ts';
import { works2 } from './unit-2-slips.ts';

it('lessons 2.1, 2.3 and 2.4 ask these numbers, in the order of the curriculum', () => {
  const inOrder = (lesson: string) =>
    templatesOfLesson(lesson)
      .map(({ id }) => id)
      .filter((id) => id.startsWith('Q'));
  for (const lesson of ['2.1', '2.3', '2.4']) expect(inOrder(lesson)).toEqual([...inOrder(lesson)].sort());
  const all = ['2.1', '2.3', '2.4'].flatMap(inOrder);
  expect(all).toEqual(expect.arrayContaining(Object.keys(works2)));
});

testNumbers({ works: works2, accused: 0.03, mayTell: ['Q36'] });

it('Q20, Q21, Q21b and Q37b answer with the engine’s own steady state', () => {
  for (const question of some('Q20')) {
    expect(Math.abs(settled(firstCase(question)).conductor - question.answer.value)).toBeLessThan(0.5);
  }
  for (const id of ['Q21', 'Q37b']) {
    for (const question of some(id))
      expect(settled(firstCase(question)).conductor).toBeCloseTo(question.answer.value, 6);
  }
  for (const question of some('Q21b'))
    expect(settled(firstCase(question)).surface).toBeCloseTo(question.answer.value, 6);
});

it('the bench counts the life that Q33 asks for', () => {
  for (const question of some('Q33')) {
    const { lifeUsed } = predict(firstCase(question)).run;
    expect(Math.abs((lifeUsed as number) / question.answer.value - 1)).toBeLessThan(0.06); // the current is told to 0.1 A
  }
});

it('the answer to Q34 is the event on its own case', () => {
  for (const question of some('Q34')) {
    const event = predict(firstCase(question)).run.events.find(({ limit }) => limit.id === 'own 1');
    expect((event as { t: number }).t / question.answer.value).toBeCloseTo(1, 3);
  }
});

it('what the tables leave in Q36 keeps a cable, alone in that air, below its limit', () => {
  for (const question of some('Q36')) {
    const limit = Number(/for conductors at (\d+) °C/.exec(stemOf(question))?.[1]);
    expect(settled(firstCase(question)).conductor).toBeLessThan(kelvin(limit));
  }
});

it('the reel of Q37 ends at the rating of its insulation, the same cord hung free far below', () => {
  for (const question of some('Q37')) {
    const [reel, free] = question.scenarios.map(({ scenario }) => ({
      ...scenario,
      supply: [{ kind: 'current' as const, I_A: question.answer.value }],
    })) as [Scenario, Scenario];
    expect(settled(reel).conductor).toBeCloseTo(kelvin(70), 4);
    expect(settled(free).conductor).toBeLessThan(kelvin(60));
  }
});

const specs: readonly TemplateSpec<never>[] = [
  copperBehindSheathSpec,
  warmerDaySpec,
  inADraughtSpec,
  shareOfLifeSpec,
  timeToSoftenSpec,
  factorsTogetherSpec,
  mostOnAReelSpec,
  underLaggingSpec,
] as unknown as TemplateSpec<never>[];

testSpecs(specs);

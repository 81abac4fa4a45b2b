// The numeric questions of lessons 4.1, 4.3, 4.4 and 4.5. What is right and what is wrong is worked out in unit-4-slips.ts from
// the words of the stem; the engine is asked again, by way of `predict`, for what each answer says of its case; and print has
// the last word.
import { expect, it } from 'vitest';
import { kelvin, predict } from '#engine';
import { templatesOfLesson } from '#engine/question/templates.ts';
import type { NumberAnswer, Practice, TemplateSpec } from '#engine/question/types.ts';
import { allowedTimeSpec } from '#engine/question/unit-4/allowed-time.ts';
import { endOfLeadSpec } from '#engine/question/unit-4/end-of-lead.ts';
import { gapBeginsSpec } from '#engine/question/unit-4/gap-begins.ts';
import { heatAllowedSpec } from '#engine/question/unit-4/heat-allowed.ts';
import { loopWhenWarmSpec } from '#engine/question/unit-4/loop-when-warm.ts';
import { unitOf } from '#engine/question/units.ts';
import { firstCase, practices, questions, settled, some, testNumbers, testSpecs } from './number-templates.ts';
import { number, stemOf } from './stem.ts';
import { works4 } from './unit-4-slips.ts';

it('lessons 4.1 to 4.5 ask these numbers, in the order of the curriculum', () => {
  const all = ['4.1', '4.2', '4.3', '4.4', '4.5'].flatMap((lesson) => templatesOfLesson(lesson).map(({ id }) => id));
  expect(all.filter((id) => id in works4)).toEqual(Object.keys(works4));
});

testNumbers({ works: works4, accused: 0.03, faults: ['Q58'] });

const told = ({ value, unit }: NumberAnswer) => {
  const { factor, offset } = unitOf(unit) as NonNullable<ReturnType<typeof unitOf>>;
  return (value - offset) / factor;
};

it.each<[string, Record<Practice, readonly [number, number]>]>([
  ['Q52', { iec: [2, 40], na: [0.6, 12] }],
  ['Q55', { iec: [8, 28], na: [8, 33] }],
  ['Q58', { iec: [0.1, 5], na: [0.1, 5] }],
  ['Q59', { iec: [40, 1200], na: [30, 1400] }],
  ['Q63', { iec: [0.3, 6], na: [0.3, 6] }],
])('%s has answers of a size that circuits have', (id, range) => {
  for (const practice of practices) {
    const values = questions(id, practice).map(({ answer }) => told(answer));
    const [least, most] = range[practice];
    expect(Math.min(...values)).toBeGreaterThanOrEqual(least);
    expect(Math.max(...values)).toBeLessThanOrEqual(most);
    expect(Math.max(...values) / Math.min(...values)).toBeGreaterThan(1.5);
  }
});

it('Q52 and Q55 answer with the engine’s own steady state', () => {
  for (const question of some('Q52')) {
    const { thermal } = predict({ ...firstCase(question), run: { duration_s: 1 } }, { samplesPerStep: 1 });
    const { R20, alpha20 } = thermal.cable.conductor;
    const I = (firstCase(question).supply[0] as { I_A: number }).I_A;
    const { conductor } = settled(firstCase(question));
    const made = 2 * I * I * R20 * (1 + alpha20 * (conductor - kelvin(20)));
    expect(made / question.answer.value).toBeCloseTo(1, 1.9);
  }
  for (const question of some('Q55')) {
    const limit = kelvin(number(stemOf(question), /rated (\d+) °C/));
    expect(Math.abs(settled(firstCase(question)).conductor - limit)).toBeLessThan(0.5);
  }
});

it('the cores of Q58 come to their limit in the time that is asked for, by the engine, but for the heat that leaves', () => {
  for (const question of some('Q58').filter(({ scenarios }) => scenarios.length > 0)) {
    const { run } = predict(firstCase(question));
    const [from, to] = [70, 160].map(kelvin) as [number, number];
    const end = run.curves.conductor.at(-1) as number;
    expect(end).toBeLessThanOrEqual(to + 1);
    expect((end - from) / (to - from)).toBeGreaterThan(0.6);
  }
});

it('the lead of Q59 draws the current that is asked for, by the engine', () => {
  for (const question of some('Q59')) {
    const { run } = predict(firstCase(question));
    const first = run.curves.I[0] as number;
    expect(first / question.answer.value).toBeGreaterThan(0.99);
    expect(first / question.answer.value).toBeLessThan(1.01);
  }
});

/** The answer to a case of our choice, in its own unit. */
function answered<C>(spec: TemplateSpec<C>, drawn: C, practice: Practice): number {
  const built = spec.build(drawn, practice);
  if (built.kind !== 'number') throw new Error(`${spec.id} asks for a number`);
  return told(built.answer);
}

const place = 'On a farm a cable is cut';
const load = 'A pump on a farm';
const copper = { metal: 'copper', plastic: 'pvc70' } as const;

// what print or a textbook's arithmetic says, and how far its own rounding reaches
it.each<[string, number, number, number]>([
  [
    'Q58: copper in PVC carries 1150 A in 10 mm² for one second (k 115, IEC 60364-5-54 Annex A, seen)',
    answered(allowedTimeSpec, { place, core: copper, size: 10, If_A: 1150 }, 'iec'),
    1,
    0.001,
  ],
  [
    'Q58: copper in XLPE carries 1430 A in 10 mm² for one second (k 143, IEC 60364-5-54 Annex A, seen)',
    answered(allowedTimeSpec, { place, core: { metal: 'copper', plastic: 'xlpe' }, size: 10, If_A: 1430 }, 'iec'),
    1,
    0.001,
  ],
  [
    'Q58: copper in rubber rated 60 °C carries 1410 A in 10 mm² for one second (k 141, BS 7671 Table 43.1, seen)',
    answered(allowedTimeSpec, { place, core: { metal: 'copper', plastic: 'rubber60' }, size: 10, If_A: 1410 }, 'iec'),
    1,
    0.001,
  ],
  [
    'Q58: aluminium in PVC carries 1216 A in 16 mm² for one second (k 76, IEC 60364-5-54 Annex A, seen)',
    answered(allowedTimeSpec, { place, core: { metal: 'aluminium', plastic: 'pvc70' }, size: 16, If_A: 1216 }, 'iec'),
    1,
    0.001,
  ],
  [
    'Q58: 172.3 A in 1.5 mm² from 70 to 160 °C for one second (IEC 60949 clause 3, recomputed); k 115 is 0.15 % high',
    answered(allowedTimeSpec, { place, core: copper, size: 1.5, If_A: 172.3 }, 'iec'),
    1,
    0.004,
  ],
  [
    'Q59: 230 V behind 0.23 Ω and 20 m of 1.5 mm², 13.3 Ω/km (IEC 60228 Table 3, class 5, seen)',
    answered(endOfLeadSpec, { load, metal: 'copper', size: 1.5, count: 20, source: 0.23 }, 'iec'),
    230 / (0.23 + 2 * 20 * 13.3e-3),
    0.001,
  ],
  [
    'Q63: 1.20 times at 70 °C (IET On-Site Guide, seen): 0.35 Ω and 0.80 Ω cold make 1.31 Ω',
    answered(loopWhenWarmSpec, { load, Ze: 35, R1: 40, R2: 40 }, 'iec'),
    0.35 + 0.8 * 1.2,
    0.001,
  ],
  [
    'Q52: a 13 A plug fuse holds 20.8 A (BS 1362, as secondary pages quote it, seen), 13.3 Ω/km, 1.20 times at 70 °C',
    answered(heatAllowedSpec, { family: 'bs1362', In: 13, cord: 'C150', around: 'stillAir', ambient_degC: 29 }, 'iec'),
    2 * 20.8 ** 2 * 13.3e-3 * 1.2,
    0.004,
  ],
])('%s', (_what, ours, print, part) => {
  expect(Math.abs(ours / print - 1)).toBeLessThanOrEqual(part);
});

testSpecs([
  heatAllowedSpec,
  gapBeginsSpec,
  allowedTimeSpec,
  endOfLeadSpec,
  loopWhenWarmSpec,
] as unknown as TemplateSpec<never>[]);

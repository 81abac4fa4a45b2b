// The numeric questions of lessons 1.1 to 1.4. What is right and what is wrong is worked out in unit-1-slips.ts from the words
// of the stem; where a template has a case, the engine is asked again by way of `predict`; and print has the last word.
import { expect, it } from 'vitest';
import { predict } from '#engine';
import { mark } from '#engine/question/mark.ts';
import { templates, templatesOfLesson } from '#engine/question/templates.ts';
import type { NumberAnswer, Practice, Template, TemplateSpec } from '#engine/question/types.ts';
import { areaOfStrandsSpec } from '#engine/question/unit-1/area-of-strands.ts';
import { cladResistanceSpec } from '#engine/question/unit-1/clad-resistance.ts';
import { equalCopperSpec } from '#engine/question/unit-1/equal-copper.ts';
import { gaugeStepsSpec } from '#engine/question/unit-1/gauge-steps.ts';
import { heatByLengthSpec } from '#engine/question/unit-1/heat-by-length.ts';
import { heatRatioSpec } from '#engine/question/unit-1/heat-ratio.ts';
import { loopResistanceSpec } from '#engine/question/unit-1/loop-resistance.ts';
import { ownThermometerSpec } from '#engine/question/unit-1/own-thermometer.ts';
import { riseAtMoreSpec } from '#engine/question/unit-1/rise-at-more.ts';
import { warmResistanceSpec } from '#engine/question/unit-1/warm-resistance.ts';
import { unitOf } from '#engine/question/units.ts';
import { firstCase, practices, questions, settled, some, testNumbers, testSpecs } from './number-templates.ts';
import { celsius, stemOf } from './stem.ts';
import { typedQuestion } from './typed.ts';
import { works1 } from './unit-1-slips.ts';

const foot = 0.3048;

it('lessons 1.1 to 1.4 ask these numbers, in the order of the curriculum', () => {
  const inOrder = (lesson: string) => templatesOfLesson(lesson).map(({ id }) => id);
  const all = ['1.1', '1.2', '1.3', '1.4'].flatMap(inOrder);
  expect(all.filter((id) => id in works1)).toEqual(Object.keys(works1));
});

testNumbers({ works: works1, accused: 0.02 });

const told = ({ value, unit }: NumberAnswer) => {
  const { factor, offset } = unitOf(unit) as NonNullable<ReturnType<typeof unitOf>>;
  return (value - offset) / factor;
};

it.each<[string, Record<Practice, readonly [number, number]>]>([
  ['Q01', { iec: [0.08, 13], na: [0.02, 4] }],
  ['Q02', { iec: [1.44, 9], na: [1.44, 9] }],
  ['Q03', { iec: [18, 60], na: [18, 60] }],
  ['Q06', { iec: [0.06, 3.2], na: [0.04, 2.7] }],
  ['Q08', { iec: [2, 90], na: [0.6, 28] }],
  ['Q10', { iec: [0.28, 4.2], na: [0.28, 4.2] }],
  ['Q11', { iec: [19, 80], na: [19, 80] }],
  ['Q12', { iec: [0.22, 2.1], na: [0.24, 2.7] }],
  ['Q15', { iec: [42, 1130], na: [42, 1070] }],
  ['Q16', { iec: [33, 71], na: [33, 61] }],
])('%s has answers of a size that leads have', (id, range) => {
  for (const practice of practices) {
    const values = questions(id, practice).map(({ answer }) => told(answer));
    const [least, most] = range[practice];
    expect(Math.min(...values)).toBeGreaterThanOrEqual(least);
    expect(Math.max(...values)).toBeLessThanOrEqual(most);
    // and they differ by more than the tolerance of one from end to end
    expect(Math.max(...values) / Math.min(...values)).toBeGreaterThan(1.5);
  }
});

// BS 7671 Table 4F3A, single phase, and NFPA 70 Table 400.5(A)(1) column B, both seen [A]
const allowed: Record<string, number> = {
  ...{ '0.75 mm²': 6, '1 mm²': 10, '1.5 mm²': 16, '2.5 mm²': 25, '4 mm²': 32 },
  ...{ '18 AWG': 10, '16 AWG': 13, '14 AWG': 18, '12 AWG': 25, '10 AWG': 30 },
};

it('Q01 never draws more than the cord’s table allows, Q15 and Q16 never warm a lead past its rating', () => {
  for (const question of practices.flatMap((practice) => questions('Q01', practice))) {
    const [, I, size] = /draws ([\d.]+) A through a lead of ([\d.]+ \S+) copper/.exec(stemOf(question)) ?? [];
    expect(Number(I), size).toBeLessThanOrEqual(allowed[size as string] as number);
  }
  for (const [practice, rating] of [
    ['iec', 70],
    ['na', 60],
  ] as const) {
    for (const question of questions('Q15', practice)) {
      expect(Math.max(...celsius(stemOf(question)))).toBeLessThanOrEqual(rating);
    }
  }
  for (const practice of practices) {
    for (const question of questions('Q16', practice)) {
      expect(told(question.answer)).toBeLessThan(practice === 'iec' ? 70.9 : 60.9);
    }
  }
});

it('the cases of Q01 and Q06 make the heat and have the ohms that are asked for, by the engine', () => {
  for (const question of some('Q01')) {
    const { run, thermal } = predict({ ...firstCase(question), run: { duration_s: 1 } }, { samplesPerStep: 1 });
    const I = Number(/draws ([\d.]+) A/.exec(stemOf(question))?.[1]);
    expect((2 * I * I * thermal.cable.conductor.R20) / question.answer.value).toBeCloseTo(1, 2);
    expect(run.outcome).toBe('completed');
  }
  for (const question of some('Q06')) {
    const { thermal } = predict({ ...firstCase(question), run: { duration_s: 1 } }, { samplesPerStep: 1 });
    const length = firstCase(question).lead?.length_m as number;
    expect((2 * length * thermal.cable.conductor.R20) / question.answer.value).toBeCloseTo(1, 2);
  }
});

it('Q03 answers with the engine’s own steady state, and warns at every overload', () => {
  for (const question of some('Q03')) {
    const [low, high] = question.scenarios.map(({ scenario }) => scenario) as [ReturnType<typeof firstCase>, never];
    const air = 273.15 + low.surroundings.ambient_degC;
    expect(settled(high).conductor - air).toBeCloseTo(question.answer.value, 6);
    const first = Number(/settles (\d+) K above/.exec(stemOf(question))?.[1]);
    expect(Math.abs(settled(low).conductor - air - first)).toBeLessThanOrEqual(0.5 + 1e-9);
  }
});

it('leads that are measured or not of copper carry their caution', () => {
  for (const id of ['Q06', 'Q12']) {
    for (const { cautions } of some(id)) expect(cautions.join(' ')).toContain('Unplug both ends first');
  }
  for (const question of [...some('Q11'), ...some('Q15'), ...some('Q16')]) {
    const copper = !/aluminium|steel/.test(stemOf(question));
    expect(question.cautions.join(' ').includes('terminals made for copper')).toBe(!copper);
  }
  for (const question of [...Object.keys(works1)].flatMap(some)) {
    for (const caution of question.cautions) expect(caution.split(/\s+/).length, caution).toBeLessThanOrEqual(25);
  }
});

it('a share typed without its sign is asked for it, and a ratio told as so many per cent too few is noticed', () => {
  const share = typedQuestion(templates.Q33 as Template, 'a share', 'iec');
  const percent = (100 * share.answer.value).toFixed(1);
  const asked = mark(share, percent);
  expect(asked).toMatchObject({ verdict: 'unit missing', marks: null, tags: [], headline: `${percent} of what?` });
  expect(asked.whyNot).toContain(`Did you mean ${percent}\u00A0%?`);
  expect(mark(share, `${percent} %`).marks).toBe(1);
  expect(mark(share, share.answer.value.toPrecision(3)).marks).toBe(1);
  expect(mark(share, '100')).toMatchObject({ verdict: 'unit missing', marks: null });
  expect(mark(share, '1')).toMatchObject({ verdict: 'not yet', tags: ['M24'] });
  const times = typedQuestion(templates.Q02 as Template, 'times', 'iec');
  const typed = times.answer.value.toPrecision(3);
  expect(mark(times, typed).marks).toBe(1);
  expect(mark(times, `${Number(typed) * 100} %`).marks).toBe(1);
  expect(mark(times, `${typed} %`)).toMatchObject({ verdict: 'not yet', tags: [] });
  expect(mark(times, `${typed} %`).whyNot).toContain('per cent are hundredths');
  expect(mark(times, `${Number(typed) * 100}`)).toMatchObject({ verdict: 'not yet', tags: [] });
});

/** The answer to a case of our choice, in its own unit. */
function answered<C>(spec: TemplateSpec<C>, drawn: C, practice: Practice): number {
  const built = spec.build(drawn, practice);
  if (built.kind !== 'number') throw new Error(`${spec.id} asks for a number`);
  return told(built.answer);
}

const load = 'A pump on a farm';
const run = 'along a polytunnel';
const lead = 'A lead on a farm';
const place = 'In a joinery';

// what print or a textbook's arithmetic says, and how far its own rounding reaches
it.each<[string, number, number, number]>([
  [
    'Q06: 100 m of 1.5 mm² flexible copper, 13.3 Ω/km (IEC 60228, Table 3, class 5, seen), out and back',
    answered(loopResistanceSpec, { run, size: 1.5, count: 100 }, 'iec'),
    2.66,
    0.001,
  ],
  [
    'Q01: 10 A in 2.5 mm² flexible copper, 7.98 Ω/km (IEC 60228, Table 3, class 5, seen), 2 I²R',
    answered(heatByLengthSpec, { load, size: 2.5, I_A: 10 }, 'iec'),
    1.596,
    0.001,
  ],
  [
    'Q02: twice the current, four times the heat (Joule’s law, any textbook)',
    answered(heatRatioSpec, { change: 'In a village hall a heater is turned up', I1_A: 6, I2_A: 12 }, 'iec'),
    4,
    0.001,
  ],
  [
    'Q08: 14 AWG 2.525, 18 AWG 6.385 Ω/1000 ft (NBS Circular 31, seen in wire-gauge.csv)',
    answered(gaugeStepsSpec, { place, from_AWG: 14, to_AWG: 18, R: 2.525 }, 'na'),
    6.385,
    0.002,
  ],
  [
    'Q08: 16 AWG 4.016, 10 AWG 0.9989 Ω/1000 ft (NBS Circular 31)',
    answered(gaugeStepsSpec, { place, from_AWG: 16, to_AWG: 10, R: 4.016 }, 'na'),
    0.9989,
    0.001,
  ],
  [
    'Q08: 18 AWG 20.95, 24 AWG 84.22 Ω/km (the same table in Ω/km, 6.385 and 25.67 Ω/1000 ft over 0.3048)',
    answered(gaugeStepsSpec, { place, from_AWG: 18, to_AWG: 24, R: 6.385 / foot }, 'iec'),
    25.67 / foot,
    0.001,
  ],
  [
    'Q10: 30 × 0.25 mm is the usual make-up of 1.5 mm² (VDE 0295), 1.47 mm² of metal',
    answered(areaOfStrandsSpec, { lead, count: 30, d_mm: 0.25 }, 'iec'),
    1.473,
    0.001,
  ],
  [
    'Q10: 24 × 0.2 mm is the usual make-up of 0.75 mm² (VDE 0295)',
    answered(areaOfStrandsSpec, { lead, count: 24, d_mm: 0.2 }, 'iec'),
    0.754,
    0.001,
  ],
  [
    'Q11: 10 % copper on aluminium conducts 64.9 % IACS (100 % and 61 % by area, ASTM B566 classes)',
    answered(cladResistanceSpec, { inner: 'aluminium', share: 10, from: 'A wire' }, 'iec'),
    17.241 / 0.649,
    0.001,
  ],
  [
    'Q11: 15 % copper on aluminium, at most 26.76 nΩ·m (ASTM B566, class 15A, seen); mixing sits 2 to 4 % below',
    answered(cladResistanceSpec, { inner: 'aluminium', share: 15, from: 'A wire' }, 'iec'),
    26.76 * 0.97,
    0.01,
  ],
  [
    'Q12: 58 m of annealed copper of 1 mm² have one ohm (IEC 60028, by definition)',
    answered(equalCopperSpec, { lead, marked: 1.5, count: 29, R_mOhm: 1000 }, 'iec'),
    1,
    0.0005,
  ],
  [
    'Q12: 12.1 Ω/km, the greatest of 1.5 mm² (IEC 60228, class 1, seen), is equal to 1.425 mm²',
    answered(equalCopperSpec, { lead, marked: 1.5, count: 10, R_mOhm: 242 }, 'iec'),
    1.425,
    0.001,
  ],
  [
    'Q15: 1.20 times from 20 to 70 °C (IET On-Site Guide, seen; it takes 0.004/K, which makes 0.3 %)',
    answered(warmResistanceSpec, { lead, metal: 'copper', R20_mOhm: 100, T_degC: 70 }, 'iec'),
    120,
    0.0031,
  ],
  [
    'Q15: 13.3 Ω/km over 0.962 at 30 °C (correction of IEC 60228, seen)',
    answered(warmResistanceSpec, { lead, metal: 'copper', R20_mOhm: 133, T_degC: 30 }, 'iec'),
    133 / 0.962,
    0.0013,
  ],
  [
    'Q16: copper by (235 + θ2)/(235 + θ1) = R2/R1 (IEC 60034-1, from memory): 400 to 463 mΩ is 60.2 °C',
    answered(ownThermometerSpec, { lead, metal: 'copper', R20_mOhm: 400, R_mOhm: 463 }, 'iec'),
    (463 / 400) * (235 + 20) - 235,
    0.005,
  ],
  [
    'Q16: aluminium by (225 + θ2)/(225 + θ1) = R2/R1 (IEC 60034-1, from memory), within 0.6 K at 60 °C',
    answered(ownThermometerSpec, { lead, metal: 'aluminium', R20_mOhm: 500, R_mOhm: 580 }, 'iec'),
    (580 / 500) * (225 + 20) - 225,
    0.01,
  ],
])('%s', (_what, ours, print, part) => {
  expect(Math.abs(ours / print - 1)).toBeLessThanOrEqual(part);
});

it('Q03: tables scale the rise with the square of the current (NFPA 70, 310.15(B), note), within the tolerance asked', () => {
  for (const question of some('Q03')) {
    const [I1, I2] = [...stemOf(question).matchAll(/([\d.]+) A\b/g)].map((found) => Number(found[1])) as [
      number,
      number,
    ];
    const first = Number(/settles (\d+) K above/.exec(stemOf(question))?.[1]);
    const by = question.answer.tolerance.kind === 'absolute' ? question.answer.tolerance.by : 0;
    expect(Math.abs(first * (I2 / I1) ** 2 - question.answer.value)).toBeLessThanOrEqual(by);
  }
});

testSpecs([
  heatByLengthSpec,
  heatRatioSpec,
  riseAtMoreSpec,
  loopResistanceSpec,
  gaugeStepsSpec,
  areaOfStrandsSpec,
  cladResistanceSpec,
  equalCopperSpec,
  warmResistanceSpec,
  ownThermometerSpec,
] as unknown as TemplateSpec<never>[]);

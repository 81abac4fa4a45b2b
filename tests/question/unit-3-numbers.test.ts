// The numeric questions of lessons 3.1 and 3.2. What is right and what is wrong is worked out in unit-3-slips.ts from the words
// of the stem; the engine is asked again, by way of `predict`, for what each answer says of its case; and print has the last word.
import { expect, it } from 'vitest';
import { kelvin, predict } from '#engine';
import { templatesOfLesson } from '#engine/question/templates.ts';
import type { NumberAnswer, Practice, TemplateSpec } from '#engine/question/types.ts';
import { loadCurrentSpec } from '#engine/question/unit-3/load-current.ts';
import { longestRunSpec } from '#engine/question/unit-3/longest-run.ts';
import { tableNeededSpec } from '#engine/question/unit-3/table-needed.ts';
import { voltsLostSpec } from '#engine/question/unit-3/volts-lost.ts';
import { unitOf } from '#engine/question/units.ts';
import { firstCase, practices, questions, settled, some, testNumbers, testSpecs } from './number-templates.ts';
import { number, stemOf } from './stem.ts';
import { works3 } from './unit-3-slips.ts';

const foot = 0.3048;

it('lessons 3.1 and 3.2 ask these numbers, in the order of the curriculum', () => {
  const all = ['3.1', '3.2'].flatMap((lesson) => templatesOfLesson(lesson).map(({ id }) => id));
  expect(all.filter((id) => id in works3)).toEqual(Object.keys(works3));
});

testNumbers({ works: works3, accused: 0.03 });

const told = ({ value, unit }: NumberAnswer) => {
  const { factor, offset } = unitOf(unit) as NonNullable<ReturnType<typeof unitOf>>;
  return (value - offset) / factor;
};

it.each<[string, Record<Practice, readonly [number, number]>]>([
  ['Q39', { iec: [2, 31], na: [4, 30] }],
  ['Q40', { iec: [6, 60], na: [15, 60] }],
  ['Q45', { iec: [3, 100], na: [10, 330] }],
])('%s has answers of a size that circuits have', (id, range) => {
  for (const practice of practices) {
    const values = questions(id, practice).map(({ answer }) => told(answer));
    const [least, most] = range[practice];
    expect(Math.min(...values)).toBeGreaterThanOrEqual(least);
    expect(Math.max(...values)).toBeLessThanOrEqual(most);
    expect(Math.max(...values) / Math.min(...values)).toBeGreaterThan(1.5);
  }
});

it('the load of Q39 draws its current on the bench too, but for what its cable takes', () => {
  for (const question of some('Q39')) {
    const { steady } = predict({ ...firstCase(question), run: { duration_s: 1 } }, { samplesPerStep: 1 });
    if (steady.kind !== 'steady') throw new Error('the case settles');
    expect(steady.I / question.answer.value).toBeGreaterThan(0.96);
    expect(steady.I / question.answer.value).toBeLessThanOrEqual(1);
  }
});

it('what the table gives by Q40 keeps a cable, alone in that air, below its limit', () => {
  for (const practice of practices) {
    for (const question of questions('Q40', practice).slice(0, 25)) {
      expect(settled(firstCase(question)).conductor).toBeLessThan(kelvin(practice === 'iec' ? 70 : 90));
    }
  }
});

it('the engine loses no more along the runs of Q44 and Q45 than the tables do, and not much less', () => {
  for (const id of ['Q44', 'Q45']) {
    for (const question of some(id)) {
      const scenario = firstCase(question);
      const { thermal } = predict({ ...scenario, run: { duration_s: 1 } }, { samplesPerStep: 1 });
      const { R20, alpha20 } = thermal.cable.conductor;
      const R = R20 * (1 + alpha20 * (settled(scenario).conductor - kelvin(20)));
      const I = (scenario.supply[0] as { I_A: number }).I_A;
      const U = number(stemOf(question), /supply has (\d+) V/);
      const exact = 2 * R * (scenario.lead?.length_m as number) * I;
      const { answer } = question;
      const table =
        id === 'Q45'
          ? (U * number(stemOf(question), /more than (\d+) %/)) / 100
          : answer.value * (answer.unit === '%' ? U : 1);
      expect(exact / table).toBeGreaterThan(0.78);
      expect(exact / table).toBeLessThan(1.01);
    }
  }
});

/** The answer to a case of our choice. */
function answered<C>(spec: TemplateSpec<C>, drawn: C, practice: Practice): number {
  const built = spec.build(drawn, practice);
  if (built.kind !== 'number') throw new Error(`${spec.id} asks for a number`);
  return built.answer.value;
}

const place = 'in a cabin roof';
const run = { load: 'A farm pump', from: 'table', asked: 'volts' } as const;

it.each<[string, number, number, number]>([
  [
    'Q39: 4.4 kW at 230 V is 19.1 A',
    answered(loadCurrentSpec, { load: 'A water heater', place, P_W: 4400, U_V: 230 }, 'iec'),
    19.1,
    0.002,
  ],
  [
    'Q39: 4.4 kW at 240 V is 18.3 A',
    answered(loadCurrentSpec, { load: 'A water heater', place, P_W: 4400, U_V: 240 }, 'na'),
    18.3,
    0.002,
  ],
  [
    'Q40: 20 A over 0.94 and 0.70 (IEC 60364-5-52 Tables B.52.14 and B.52.17, seen) is 30.4 A',
    answered(tableNeededSpec, { place, In_A: 20, ambient_degC: 35, circuits: 3, insulated_mm: 0 }, 'iec'),
    30.4,
    0.001,
  ],
  [
    'Q40: 20 A over 0.87 and 0.70 (NFPA 70 Tables 310.15(B)(1) and (C)(1), seen) is 32.8 A',
    answered(tableNeededSpec, { place, In_A: 20, ambient_degC: 45, circuits: 4, insulated_mm: 0 }, 'na'),
    32.8,
    0.002,
  ],
  [
    'Q44: 12 A in 60 m of 1.5 mm² at 32 mV/A/m (BS 7671 Table 4F3B, seen) is 23.0 V',
    answered(voltsLostSpec, { ...run, size: 1.5, I_A: 12, length: 60 }, 'iec'),
    23.04,
    0.001,
  ],
  [
    'Q44: 4 mm² has 12 mV/A/m (BS 7671 Table 4F3B, seen), 3.8 % of 230 V',
    answered(voltsLostSpec, { ...run, asked: 'share', size: 4, I_A: 12, length: 60 }, 'iec'),
    0.03757,
    0.001,
  ],
  [
    'Q44: by its ohms at 60 °C, 1.5 mm² loses within 4 % of what 32 mV/A/m prints',
    answered(voltsLostSpec, { ...run, from: 'ohms', size: 1.5, I_A: 12, length: 60 }, 'iec'),
    23.04,
    0.04,
  ],
  [
    'Q44: 12 A in 100 ft of 14 AWG at 3.14 Ω/kft (NFPA 70 Chapter 9 Table 8, seen) is 7.5 V',
    answered(voltsLostSpec, { ...run, from: 'ohms', size: 14, I_A: 12, length: 100 }, 'na'),
    7.536,
    0.004,
  ],
  [
    'Q44: 10 AWG at 1.24 Ω/kft (NFPA 70 Chapter 9 Table 8, seen) loses 2.5 %',
    answered(voltsLostSpec, { ...run, from: 'ohms', asked: 'share', size: 10, I_A: 12, length: 100 }, 'na'),
    0.0248,
    0.004,
  ],
  [
    'Q45: 3 % of 120 V at 12 A and 1.98 Ω/kft (NFPA 70 Chapter 9 Table 8, seen) is 75.8 ft',
    answered(longestRunSpec, { load: 'A saw', size: 12, I_A: 12, percent: 3 }, 'na'),
    75.76 * foot,
    0.006,
  ],
  [
    'Q45: 5 % of 230 V at 16 A and 19 mV/A/m (BS 7671 Table 4F3B, seen) is 37.8 m, which prints no fraction',
    answered(longestRunSpec, { load: 'A saw', size: 2.5, I_A: 16, percent: 5 }, 'iec'),
    37.83,
    0.03,
  ],
])('%s', (_what, ours, print, part) => {
  expect(Math.abs(ours / print - 1)).toBeLessThanOrEqual(part);
});

testSpecs([loadCurrentSpec, tableNeededSpec, voltsLostSpec, longestRunSpec] as unknown as TemplateSpec<never>[]);

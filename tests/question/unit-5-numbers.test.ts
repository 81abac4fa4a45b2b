// The numeric questions of lessons 5.1 to 5.3. What is right and what is wrong is worked out in unit-5-slips.ts from the words
// of the stem; the engine is asked again, by way of `predict`, for what each answer says of its case; and print has the last word.
import { expect, it } from 'vitest';
import { predict } from '#engine';
import { identify } from '#engine/bench/identify/identify.ts';
import { metals } from '#engine/material/metals.ts';
import { templatesOfLesson } from '#engine/question/templates.ts';
import type { NumberAnswer, Practice, TemplateSpec } from '#engine/question/types.ts';
import { areaByGramsSpec } from '#engine/question/unit-5/area-by-grams.ts';
import { benchVoltsSpec } from '#engine/question/unit-5/bench-volts.ts';
import { benchWattsSpec } from '#engine/question/unit-5/bench-watts.ts';
import { fourWiresSpec } from '#engine/question/unit-5/four-wires.ts';
import { howSureSpec } from '#engine/question/unit-5/how-sure.ts';
import { ohmsTimesGramsSpec } from '#engine/question/unit-5/ohms-times-grams.ts';
import { layFactor, massShare, nearestMetal, productOf } from '#engine/question/unit-5/suspects.ts';
import { twoWiresSpec } from '#engine/question/unit-5/two-wires.ts';
import { unitOf } from '#engine/question/units.ts';
import { firstCase, practices, questions, some, testNumbers, testSpecs } from './number-templates.ts';
import { works5 } from './unit-5-slips.ts';

it('lessons 5.1 to 5.3 ask these numbers, in the order of the curriculum', () => {
  const all = ['5.1', '5.2', '5.3'].flatMap((lesson) => templatesOfLesson(lesson).map(({ id }) => id));
  expect(all.filter((id) => id in works5)).toEqual(Object.keys(works5));
});

testNumbers({ works: works5, accused: 0.02 });

const told = ({ value, unit }: NumberAnswer) => {
  const { factor, offset } = unitOf(unit) as NonNullable<ReturnType<typeof unitOf>>;
  return (value - offset) / factor;
};

it.each<[string, Record<Practice, readonly [number, number]>]>([
  ['Q65', { iec: [12, 40], na: [2, 14] }],
  ['Q65b', { iec: [12, 40], na: [2, 14] }],
  ['Q66', { iec: [0.3, 3], na: [0.3, 3] }],
  ['Q67', { iec: [76, 1200], na: [7, 110] }],
  ['Q67c', { iec: [0.4, 2.6], na: [0.4, 2.6] }],
  ['Q68', { iec: [0.5, 11], na: [0.5, 11] }],
  ['Q68b', { iec: [3, 260], na: [3, 260] }],
])('%s has answers of a size that benches have', (id, range) => {
  for (const practice of practices) {
    const values = questions(id, practice).map(({ answer }) => told(answer));
    const [least, most] = range[practice];
    expect(Math.min(...values)).toBeGreaterThanOrEqual(least);
    expect(Math.max(...values)).toBeLessThanOrEqual(most);
    expect(Math.max(...values) / Math.min(...values)).toBeGreaterThan(1.5);
  }
});

it('the lead of Q68 and Q68b takes on the bench the volts and watts that are asked for, by the engine', () => {
  for (const [id, part] of [
    ['Q68', 'U'],
    ['Q68b', 'W'],
  ] as const) {
    for (const question of some(id)) {
      const { run, thermal } = predict(firstCase(question));
      const { R20, alpha20 } = thermal.cable.conductor;
      const [I, T] = [run.curves.I.at(-1) as number, run.curves.conductor.at(-1) as number];
      const U = I * 2 * (firstCase(question).lead?.length_m as number) * R20 * (1 + alpha20 * (T - 293.15));
      expect((part === 'U' ? U : U * I) / question.answer.value).toBeCloseTo(1, 1.9);
      expect(U).toBeLessThanOrEqual(12);
    }
  }
});

it('a metal’s product, with the lay of the strands, lies where the identification of leads looks for it', () => {
  const bands = identify({}).massTimesResistance.metals;
  for (const [metal, candidate] of [
    ['copper', 'copper'],
    ['aluminium', 'aluminium'],
    ['steel', 'steel'],
    ['cca10', 'cladAluminium'],
  ] as const) {
    const { low, high } = bands.find((one) => one.metal === candidate) as { low: number; high: number };
    expect(productOf(metals[metal]), metal).toBeGreaterThan(low);
    expect(productOf(metals[metal]) * layFactor ** 2, metal).toBeLessThan(high);
    expect(nearestMetal(productOf(metals[metal]) * layFactor ** 2)).toBe(metal);
  }
});

/** The answer to a case of our choice, in its own unit. */
function answered<C>(spec: TemplateSpec<C>, drawn: C, practice: Practice): number {
  const built = spec.build(drawn, practice);
  if (built.kind !== 'number') throw new Error(`${spec.id} asks for a number`);
  return told(built.answer);
}

const lead = 'A lead from a polytunnel';

// what print or a textbook's arithmetic says, and how far its own rounding reaches
it.each<[string, number, number, number]>([
  [
    'Q65: 0.2152 V at 1 A and 23 °C over 8 m is 13.3 mΩ/m at 20 °C, the most of 1.5 mm² (IEC 60228 Table 3, class 5, seen)',
    answered(fourWiresSpec, { lead, count: 8, I_A: 1, T_degC: 23, U_mV: 215.3, clips_mV: 335 }, 'iec'),
    13.3,
    0.001,
  ],
  [
    'Q65b: 0.12 Ω of test leads make 20.8 mΩ/m of 13.3',
    answered(twoWiresSpec, { lead, count: 8, loop_mOhm: 333, own_mOhm: 120 }, 'iec'),
    13.3,
    0.002,
  ],
  [
    'Q66: 3, 4 and 12 make 13 (and 0 K adds nothing)',
    answered(howSureSpec, { lead, U: 3, I: 4, L: 12, T: 0 }, 'iec'),
    1.3,
    1e-9,
  ],
  [
    'Q67: 36.0 mΩ/m times 2.50 g/m is 90.0 mΩ·g/m²',
    answered(ohmsTimesGramsSpec, { lead, marked: 1.5, count: 8, loop_mOhm: 576, piece: 100, piece_g: 2.5 }, 'iec'),
    90,
    1e-9,
  ],
  [
    'Q67: copper’s product is 8.89 g/cm³ over 58 m/(Ω·mm²), 153.28 mΩ·g/m² (IEC 60028, from memory)',
    productOf(metals.copper) * 1e6,
    153.28,
    0.0001,
  ],
  [
    'Q67c: 3.322 g/cm³ of a tenth copper (8.89 and 2.703, from memory): 2.505 g/m are 0.754 mm²',
    answered(areaByGramsSpec, { lead, marked: 1.5, volume: 10, R: 0.036, mass: 2.505e-3 }, 'iec'),
    0.754,
    0.001,
  ],
  ['Q67b: a tenth by volume is 26.8 % by mass (8.89 and 2.703 g/cm³, from memory)', 100 * massShare(0.1), 26.76, 0.001],
  [
    'Q68: 10 A through 16 m of 13.3 mΩ/m settle a 1.5 mm² cord of 20 °C at about 31 °C: 2.21 V',
    answered(benchVoltsSpec, { metal: 'copper', size: 1.5, count: 8, I_A: 10, ambient_degC: 20 }, 'iec'),
    10 * 16 * 13.3e-3 * (1 + 0.00393 * 11),
    0.005,
  ],
  [
    'Q68b: the watts are those volts times 10 A',
    answered(benchWattsSpec, { metal: 'copper', size: 1.5, count: 8, I_A: 10, ambient_degC: 20 }, 'iec'),
    100 * 16 * 13.3e-3 * (1 + 0.00393 * 11),
    0.005,
  ],
])('%s', (_what, ours, print, part) => {
  expect(Math.abs(ours / print - 1)).toBeLessThanOrEqual(part);
});

testSpecs([
  fourWiresSpec,
  twoWiresSpec,
  howSureSpec,
  ohmsTimesGramsSpec,
  areaByGramsSpec,
  benchVoltsSpec,
  benchWattsSpec,
] as unknown as TemplateSpec<never>[]);

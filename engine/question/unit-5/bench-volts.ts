import { amount, plainNumber } from '../figures.ts';
import { toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { staysApartRounded } from '../unit-3/two-figures.ts';
import { formula, quantity, words } from '../words.ts';
import { type BenchLoad, benchScenario, boundToCurrent, drawnLoad, factsOf, stemOf } from './bench-load.ts';
import { benchCaution } from './bench-words.ts';
import { warmer } from './suspects.ts';

// Q68: volts across a known lead on the bench, once it has settled.

function drawnCase(random: Random, practice: Practice): BenchLoad | null {
  const drawn = drawnLoad(random, practice);
  return drawn && staysApartRounded(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

function answerOf(drawn: BenchLoad, practice: Practice): NumberAnswer {
  const { U } = factsOf(drawn, practice);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value: U, kind: 'voltage', unit: 'V', tolerance, figures: 3, text: amount(U, 3, 'V') };
}

function wrongOf(drawn: BenchLoad, practice: Practice): WrongValue[] {
  const { T_degC, loop } = factsOf(drawn, practice);
  return [
    {
      id: 'M16',
      value: drawn.I_A * loop(20),
      trueOf: 'is what it would take if it stayed cold.',
      ask: 'What has the lead’s resistance grown to by then?',
      whyNot: 'Warm metal resists more. The ohms at 20\u00A0°C are those of a cold lead.',
    },
    {
      id: 'M09',
      value: drawn.I_A * loop(T_degC, 1),
      trueOf: 'is what one of the two conductors takes.',
      ask: 'Which way does the current come back?',
    },
  ];
}

const law = formula(
  String.raw`U = I \cdot 2L \cdot R'_{20} (1 + \alpha(\theta - 20))`,
  'U is I times two L times R prime twenty, times one plus alpha times theta less twenty.',
);

function built(drawn: BenchLoad, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { alpha, T_degC, loop } = factsOf(drawn, practice);
  return {
    kind: 'number',
    stem: [...stemOf(drawn, practice), words`What volts will the meter show across the lead’s near end by then?`],
    ask: 'In V. Three figures are enough.',
    scenarios: [{ name: 'this lead on the bench', scenario: benchScenario(drawn, practice) }],
    hints: [
      words`How long is the conductor that the current passes, out and back?`,
      words`Find the ohms of that loop cold. Then make them as warm as the conductors are.`,
      words`Volts are amps times those ohms.`,
    ],
    solution: [
      words`Out and back the current passes ${quantity(toldLength(2 * drawn.count, practice).text)}. Cold, that has ${quantity(amount(loop(20), 3, 'Ω'))}.`,
      words`Warm, it has ${quantity(plainNumber(warmer(alpha, T_degC), 4))} times as much: ${quantity(amount(loop(T_degC), 3, 'Ω'))}.`,
      words`${law}`,
      words`So the meter shows ${quantity(answer.text)}.`,
      boundToCurrent,
    ],
    look: 'Open the case, and read the volts from the start to the end.',
    cautions: [benchCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q68 is drawn and built. */
export const benchVoltsSpec: TemplateSpec<BenchLoad> = {
  id: 'Q68',
  version: 1,
  lesson: '5.3',
  kind: 'number',
  title: 'Volts on the bench',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.3 draw the curve before power'],
  misconceptions: ['M09', 'M16'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ metal: 'cca10', size: 1.5, count: 8, I_A: 14, ambient_degC: 20 }],
    na: [{ metal: 'cca10', size: 16, count: 20, I_A: 14, ambient_degC: 20 }],
  },
  build: built,
};

/** Q68: volts across a lead on the bench. */
export const benchVolts = defineTemplate(benchVoltsSpec);

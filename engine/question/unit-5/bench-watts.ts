import { amount, given, percentText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { staysApartRounded } from '../unit-3/two-figures.ts';
import { voltsOf } from '../unit-3/watts.ts';
import { formula, quantity, words } from '../words.ts';
import { type BenchLoad, bench_V, benchScenario, boundToCurrent, drawnLoad, factsOf, stemOf } from './bench-load.ts';
import { benchCaution } from './bench-words.ts';
import { warmer } from './suspects.ts';

// Q68b: watts made in a known lead on the bench, once it has settled.

function drawnCase(random: Random, practice: Practice): BenchLoad | null {
  const drawn = drawnLoad(random, practice);
  return drawn && staysApartRounded(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

function answerOf(drawn: BenchLoad, practice: Practice): NumberAnswer {
  const { W } = factsOf(drawn, practice);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value: W, kind: 'power', unit: 'W', tolerance, figures: 3, text: amount(W, 3, 'W') };
}

function wrongOf(drawn: BenchLoad, practice: Practice): WrongValue[] {
  const { T_degC, loop, W } = factsOf(drawn, practice);
  const made = (R: number) => drawn.I_A * drawn.I_A * R;
  return [
    {
      id: 'M16',
      value: made(loop(20)),
      trueOf: 'is what it would make if it stayed cold.',
      ask: 'What has the lead’s resistance grown to by then?',
      whyNot: 'Warm metal resists more. The ohms at 20\u00A0°C are those of a cold lead.',
    },
    {
      id: 'M09',
      value: made(loop(T_degC, 1)),
      trueOf: 'is what one of the two conductors makes.',
      ask: 'Which way does the current come back?',
    },
    {
      id: 'M46',
      value: (W * bench_V) / voltsOf(practice),
      trueOf: 'shrinks the heat with the volts of the supply.',
      ask: 'Which current and which ohms make the heat, here and in use?',
    },
  ];
}

const law = formula(
  String.raw`P = I^2 \cdot 2L \cdot R'_{20} (1 + \alpha(\theta - 20))`,
  'P is I squared times two L times R prime twenty, times one plus alpha times theta less twenty.',
);

function built(drawn: BenchLoad, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { alpha, T_degC, loop } = factsOf(drawn, practice);
  return {
    kind: 'number',
    stem: [...stemOf(drawn, practice), words`How much heat does the whole lead make by then?`],
    ask: 'In W. Three figures are enough.',
    scenarios: [{ name: 'this lead on the bench', scenario: benchScenario(drawn, practice) }],
    hints: [
      words`Find the ohms of the loop, out and back, as warm as the conductors are.`,
      words`Heat is amps squared times those ohms.`,
      words`Does the supply’s voltage stand in that rule?`,
    ],
    solution: [
      words`The warm loop has ${quantity(amount(loop(T_degC), 3, 'Ω'))}, which is ${quantity(percentText(warmer(alpha, T_degC) - 1))} more than cold.`,
      words`${law}`,
      words`So the lead makes ${quantity(answer.text)}.`,
      boundToCurrent,
      words`On ${quantity(given(voltsOf(practice), 'V'))} the same current would make the same heat in it.`,
    ],
    look: 'Open the case, and read the heat from the start to the end.',
    cautions: [benchCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q68b is drawn and built. */
export const benchWattsSpec: TemplateSpec<BenchLoad> = {
  id: 'Q68b',
  version: 1,
  lesson: '5.3',
  kind: 'number',
  title: 'Watts on the bench',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.3 draw the curve before power'],
  misconceptions: ['M09', 'M16', 'M46'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ metal: 'cca10', size: 1.5, count: 8, I_A: 14, ambient_degC: 20 }],
    na: [{ metal: 'cca10', size: 16, count: 20, I_A: 14, ambient_degC: 20 }],
  },
  build: built,
};

/** Q68b: heat of a lead on the bench. */
export const benchWatts = defineTemplate(benchWattsSpec);

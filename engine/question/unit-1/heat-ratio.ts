import { given, plainNumber } from '../figures.ts';
import { staysApart } from '../guard.ts';
import { perLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q02: how many times the heat, from how many times the amps.

interface Case {
  readonly change: string;
  readonly I1_A: number;
  readonly I2_A: number;
}

const turnedUp = [
  'In a laundry a bigger iron takes the place of the old one',
  'In a village hall a heater is turned up',
  'In a bakery the proving cabinet switches in its second element',
  'In a theatre workshop a heat gun goes from low to high',
  'On a farm a pump has to lift higher than before',
];
const joined = [
  'On a market stall a second urn is plugged into the same lead',
  'In a boatyard two chargers now share one lead',
  'In a joinery the extractor is joined by a planer',
];
const changes = [...turnedUp, ...joined];

const sharedLead =
  'Two loads on one lead add their amps. Too hot, insulation softens and fails. Never load a lead above its marking.';

function drawnCase(random: Random): Case | null {
  const drawn = { change: random.pick(changes), I1_A: random.whole(6, 24) / 2, I2_A: random.whole(10, 32) / 2 };
  const ratio = drawn.I2_A / drawn.I1_A;
  if (ratio < 1.2 || ratio > 3) return null;
  return staysApart(answerOf(drawn), wrongOf(drawn)) ? drawn : null;
}

function answerOf({ I1_A, I2_A }: Case): NumberAnswer {
  const value = (I2_A / I1_A) ** 2;
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value, kind: 'ratio', unit: '', tolerance, figures: 3, text: `${plainNumber(value, 3)} times` };
}

const wrongOf = ({ I1_A, I2_A }: Case): WrongValue[] => [
  {
    id: 'M01',
    value: I2_A / I1_A,
    trueOf: 'is how many times the amps.',
    ask: 'Twice the amps also meets twice the volts along the lead. What does that do to the watts?',
  },
];

const law = formula(
  String.raw`\frac{W_2}{W_1} = (\frac{I_2}{I_1})^2`,
  'W two over W one is I two over I one, squared.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn);
  const [from, to] = [quantity(given(drawn.I1_A, 'A')), quantity(given(drawn.I2_A, 'A'))];
  const times = quantity(plainNumber(drawn.I2_A / drawn.I1_A, 3));
  return {
    kind: 'number',
    stem: [
      words`${drawn.change}. The current in the lead goes from ${from} to ${to}.`,
      words`Take the resistance as unchanged. How many times as much heat does each ${perLength[practice].name} make now?`,
    ],
    ask: 'A number of times. It needs no unit; three figures are enough.',
    scenarios: [],
    hints: [
      words`First find how many times the amps have grown.`,
      words`Heat goes with amps times amps.`,
      words`So square the number of times.`,
    ],
    solution: [
      words`The amps have grown ${times} times.`,
      words`${law}`,
      words`That number squared is the answer: ${quantity(answer.text)} the heat.`,
    ],
    look: 'In the ledger of the lesson, double the amps and read the heat made.',
    cautions: joined.includes(drawn.change) ? [sharedLead] : [],
    answer,
    wrong: wrongOf(drawn),
  };
}

/** How Q02 is drawn and built. */
export const heatRatioSpec: TemplateSpec<Case> = {
  id: 'Q02',
  version: 1,
  lesson: '1.1',
  kind: 'number',
  title: 'How many times the heat',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['1.1 state the effect of ×2 and ×½ on heat without a calculator'],
  misconceptions: ['M01'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ change: 'In a village hall a heater is turned up', I1_A: 6, I2_A: 9 }],
    na: [{ change: 'In a village hall a heater is turned up', I1_A: 6, I2_A: 9 }],
  },
  build: built,
};

/** Q02: how many times the heat when the current grows. */
export const heatRatio = defineTemplate(heatRatioSpec);

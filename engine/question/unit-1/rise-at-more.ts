import type { CastKey } from '../../examples/cast.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { celsius } from '../../quantity.ts';
import { cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { wholeF } from '../degrees.ts';
import { heldCurrent, settlesAt } from '../experiment.ts';
import { given, plainNumber, riseText, temperatureText } from '../figures.ts';
import { isWithin, staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q03: the rise at a higher current, estimated from the rise at a lower one.

interface Case {
  readonly cord: CastKey;
  readonly place: string;
  readonly ambient_degC: number;
  readonly I1_A: number;
  readonly I2_A: number;
}

interface Facts {
  /** The rise that is given, to whole kelvin [K]. */
  readonly first: number;
  /** The rise at the higher current, by the engine [K]. */
  readonly second: number;
}

const places = [
  'in a theatre workshop',
  'on a market stall',
  'in a boatyard shed',
  'in a village hall',
  'in a joinery',
  'in a bakery store',
];

/** The greatest rise asked about: an overload still, but none that melts plastic [K]. */
const hottest = 60;
const most_A = 30;

function riseOf({ cord, ambient_degC }: Case, I_A: number): number | null {
  const T = settlesAt(buildCase(heldCurrent(cordOf(cord), ambient_degC, I_A, 3600)));
  return T === null ? null : celsius(T) - ambient_degC;
}

function factsOf(drawn: Case): Facts | null {
  const [first, second] = [riseOf(drawn, drawn.I1_A), riseOf(drawn, drawn.I2_A)];
  return first === null || second === null ? null : { first: Math.round(first), second };
}

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const I1_A = random.whole(8, 18);
  const drawn: Case = {
    cord: cord.key,
    place: random.pick(places),
    ambient_degC: random.whole(15, 25),
    I1_A,
    I2_A: Math.round((I1_A * random.whole(14, 20)) / 10),
  };
  if (drawn.I2_A > most_A) return null;
  const facts = factsOf(drawn);
  if (!facts || facts.first < 9 || facts.second > hottest) return null;
  const answer = answerOf(facts);
  const fair = isWithin(answer.tolerance, answer.value, estimateOf(drawn, facts), 0.9);
  return fair && staysApart(answer, wrongOf(drawn, facts, practice)) ? drawn : null;
}

/** The rise as the heat would have it [K]. */
const estimateOf = ({ I1_A, I2_A }: Case, { first }: Facts) => first * (I2_A / I1_A) ** 2;

function answerOf({ second }: Facts): NumberAnswer {
  return {
    value: second,
    kind: 'temperature rise',
    unit: 'K',
    tolerance: { kind: 'absolute', by: Math.max(5, 0.1 * second) },
    figures: 2,
    text: riseText(second),
  };
}

function wrongOf(drawn: Case, facts: Facts, practice: Practice): WrongValue[] {
  const end_degC = drawn.ambient_degC + estimateOf(drawn, facts);
  const temperature = {
    id: 'M17',
    trueOf: 'is the temperature it comes to, not the rise.',
    whyNot: 'The rise is counted from ambient. Take ambient off again.',
    ask: 'How far above the air around it is the conductor?',
  } as const;
  return [
    {
      id: 'M03',
      value: (facts.first * drawn.I2_A) / drawn.I1_A,
      trueOf: 'is what it would be if the rise went with the amps themselves.',
      ask: 'How many times the heat does each metre make now?',
    },
    { ...temperature, value: end_degC },
    ...(practice === 'na' ? [{ ...temperature, value: (wholeF(end_degC) * 5) / 9, onlyIn: '°F' }] : []),
  ];
}

const law = formula(
  String.raw`\Delta\theta_2 \approx \Delta\theta_1 (\frac{I_2}{I_1})^2`,
  'Delta theta two is about delta theta one times I two over I one, squared.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const cord = cordOf(drawn.cord);
  const facts = factsOf(drawn) as Facts;
  const answer = answerOf(facts);
  const ratio = drawn.I2_A / drawn.I1_A;
  const [from, to] = [quantity(given(drawn.I1_A, 'A')), quantity(given(drawn.I2_A, 'A'))];
  const first = quantity(riseText(facts.first));
  return {
    kind: 'number',
    stem: [
      words`It is ${quantity(temperatureText(drawn.ambient_degC, practice))} ${drawn.place}. There ${cord.words} hangs in still air and carries ${from}. Its conductor settles ${first} above the air.`,
      words`Now it carries ${to}. About how far above the air does the conductor settle?`,
    ],
    ask: 'A rise in K. Two figures are enough.',
    scenarios: [
      { name: `${drawn.I1_A}\u00A0A`, scenario: heldCurrent(cord, drawn.ambient_degC, drawn.I1_A, 3600) },
      { name: `${drawn.I2_A}\u00A0A`, scenario: heldCurrent(cord, drawn.ambient_degC, drawn.I2_A, 3600) },
    ],
    hints: [
      words`First find how many times the heat has grown: the amps, squared.`,
      words`The rise grows nearly as the heat does, and a little less.`,
      words`Multiply the rise you know by that number.`,
    ],
    solution: [
      words`The amps grow ${quantity(plainNumber(ratio, 3))} times, so the heat grows ${quantity(plainNumber(ratio * ratio, 3))} times.`,
      words`${law}`,
      words`That gives ${quantity(riseText(estimateOf(drawn, facts)))} as an estimate.`,
      words`The engine also counts that a hotter surface sheds more, and that hot copper makes more. It gives ${quantity(answer.text)}.`,
      words`${ratingNote(cord)}`,
    ],
    look: 'How many times the heat, and how does the rise follow the heat?',
    cautions: overloadCaution(cord, drawn.I2_A),
    answer,
    wrong: wrongOf(drawn, facts, practice),
  };
}

/** How Q03 is drawn and built. */
export const riseAtMoreSpec: TemplateSpec<Case> = {
  id: 'Q03',
  version: 1,
  lesson: '1.1',
  kind: 'number',
  title: 'The rise at more amps',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['1.1 separate heat from temperature rise'],
  misconceptions: ['M03', 'M17'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C100', place: 'in a joinery', ambient_degC: 20, I1_A: 10, I2_A: 17 }],
    na: [{ cord: 'A16', place: 'in a joinery', ambient_degC: 20, I1_A: 12, I2_A: 20 }],
  },
  build: built,
};

/** Q03: the rise at a higher current, from the rise at a lower one. */
export const riseAtMore = defineTemplate(riseAtMoreSpec);

import { metals } from '../../material/metals.ts';
import { resistanceRatio } from '../../material/resistivity.ts';
import { kelvin } from '../../quantity.ts';
import { wholeF } from '../degrees.ts';
import { amount, given, plainNumber, rounded, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { otherMetals } from './metal-leads.ts';

// Q15: the resistance of a conductor at a temperature, from that at 20 °C.

interface Case {
  readonly lead: string;
  readonly metal: 'copper' | 'aluminium' | 'steel';
  readonly R20_mOhm: number;
  readonly T_degC: number;
}

const leads = [
  'The lead of a bakery’s oven',
  'A reel of a theatre workshop',
  'The lead of a laundry press',
  'A lead on a farm',
  'The lead of a hall’s heater',
  'A lead in a joinery',
];

/** The hottest that a plain lead's insulation is rated for [°C]. */
const hottest = { iec: 70, na: 60 } as const satisfies Record<Practice, number>;

function drawnCase(random: Random, practice: Practice): Case | null {
  const drawn: Case = {
    lead: random.pick(leads),
    metal: random.pick(['copper', 'copper', 'aluminium', 'steel']),
    R20_mOhm: random.whole(40, 900),
    T_degC: random.whole(35, hottest[practice]),
  };
  return staysApart(answerOf(drawn), wrongOf(drawn, practice)) ? drawn : null;
}

/** The coefficient as it is told, to three figures [1/K]. */
const alphaOf = ({ metal }: Case) => rounded(metals[metal].alpha20.value, 3);

function answerOf(drawn: Case): NumberAnswer {
  const value = drawn.R20_mOhm * 1e-3 * resistanceRatio(alphaOf(drawn), 0, kelvin(drawn.T_degC));
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value, kind: 'resistance', unit: 'mΩ', tolerance, figures: 3, text: amount(value * 1e3, 3, 'mΩ') };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const R20 = drawn.R20_mOhm * 1e-3;
  const alpha = alphaOf(drawn);
  const inF: WrongValue = {
    id: 'M14',
    value: R20 * (1 + alpha * wholeF(drawn.T_degC)),
    trueOf: 'puts °F into a formula that counts in kelvin.',
    whyNot: 'The coefficient is for each kelvin, counted from 20\u00A0°C. Take the degrees above that, in °C.',
    ask: 'By that rule, what is the resistance at 68\u00A0°F? Is that what was measured?',
  };
  return [
    {
      id: 'M14',
      value: R20 * (1 + alpha * drawn.T_degC),
      trueOf: 'counts the degrees from zero.',
      ask: 'By that rule, what is the resistance at 20\u00A0°C? Is that what was measured?',
    },
    {
      id: 'M13',
      value: R20 * (1 - alpha * (drawn.T_degC - 20)),
      trueOf: 'is less than when it was cold.',
      ask: 'In the lesson the volts were held and the lead warmed. Which way did the amps go?',
    },
    ...(practice === 'na' ? [inF] : []),
  ];
}

const law = formula(
  String.raw`R = R_{20} (1 + \alpha (\theta - 20))`,
  'R is R twenty times the sum of one and alpha times theta minus twenty.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn);
  const alpha = alphaOf(drawn);
  const above = drawn.T_degC - 20;
  const [cold, hot] = [quantity(temperatureText(20, practice)), quantity(temperatureText(drawn.T_degC, practice))];
  return {
    kind: 'number',
    stem: [
      words`${drawn.lead} ${drawn.metal === 'copper' ? 'has' : 'turns out to have'} ${drawn.metal} conductors. Its loop has ${quantity(amount(drawn.R20_mOhm, 3, 'mΩ'))} at ${cold}. In use the conductors settle at ${hot}.`,
      words`For ${drawn.metal} the temperature coefficient is ${quantity(plainNumber(alpha, 3))} for each kelvin, counted from ${quantity(given(20, '°C'))}. What is the resistance of the loop now?`,
    ],
    ask: 'A resistance with its unit. Three figures are enough.',
    scenarios: [],
    hints: [
      words`First find how many kelvin it is above ${quantity(given(20, '°C'))}.`,
      words`Times the coefficient, that is the part by which the resistance has grown.`,
      words`Add that part to one, and multiply.`,
    ],
    solution: [
      words`It is ${quantity(given(above, 'K'))} above ${quantity(given(20, '°C'))}.`,
      words`Times the coefficient that is ${quantity(plainNumber(alpha * above, 3))}. By that part of itself the resistance has grown.`,
      words`${law}`,
      words`So it is now ${quantity(answer.text)}.`,
    ],
    look: 'How far is it above the temperature of the cold reading?',
    cautions: drawn.metal === 'copper' ? [] : [otherMetals],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q15 is drawn and built. */
export const warmResistanceSpec: TemplateSpec<Case> = {
  id: 'Q15',
  version: 1,
  lesson: '1.4',
  kind: 'number',
  title: 'Ohms when warm',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['1.4 work out resistance from temperature'],
  misconceptions: ['M13', 'M14'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: 'A lead on a farm', metal: 'copper', R20_mOhm: 266, T_degC: 70 }],
    na: [{ lead: 'A lead on a farm', metal: 'copper', R20_mOhm: 266, T_degC: 60 }],
  },
  build: built,
};

/** Q15: resistance at a temperature. */
export const warmResistance = defineTemplate(warmResistanceSpec);

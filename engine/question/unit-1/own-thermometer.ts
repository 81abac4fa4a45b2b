import { metals } from '../../material/metals.ts';
import { resistanceRatio } from '../../material/resistivity.ts';
import { celsius, kelvin } from '../../quantity.ts';
import { inTheScale } from '../degrees.ts';
import { amount, given, plainNumber, rounded, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { loadedCaution } from './dead-lead.ts';
import { otherMetals } from './metal-leads.ts';

// Q16: how hot a conductor is, from its resistance cold and warm.

interface Case {
  readonly lead: string;
  readonly metal: 'copper' | 'aluminium' | 'steel';
  /** As the meter shows them [mΩ]. */
  readonly R20_mOhm: number;
  readonly R_mOhm: number;
}

const leads = [
  'a stage lead',
  'a lead of a market stall',
  'the lead of a polytunnel heater',
  'a lead in a boatyard',
  'the lead of a proving cabinet',
];

/** The hottest that a plain lead's insulation is rated for [°C]. */
const hottest = { iec: 70, na: 60 } as const satisfies Record<Practice, number>;

function drawnCase(random: Random, practice: Practice): Case | null {
  const metal = random.pick(['copper', 'copper', 'aluminium', 'steel'] as const);
  const R20_mOhm = random.whole(120, 900);
  const T = kelvin(random.whole(34, hottest[practice]));
  const R_mOhm = Math.round(R20_mOhm * resistanceRatio(alphaOf(metal), 0, T));
  const drawn = { lead: random.pick(leads), metal, R20_mOhm, R_mOhm };
  return staysApart(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

const alphaOf = (metal: Case['metal']) => rounded(metals[metal].alpha20.value, 3);
/** How far above 20 °C it is [K]. */
const above = ({ metal, R20_mOhm, R_mOhm }: Case) => (R_mOhm / R20_mOhm - 1) / alphaOf(metal);

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = kelvin(20 + above(drawn));
  const tolerance = { kind: 'absolute', by: 2 } as const;
  const text = temperatureText(celsius(value), practice);
  return { value, kind: 'temperature', unit: '°C', tolerance, figures: 2, span: above(drawn), text };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const riseAlone = {
    id: 'M15',
    trueOf: 'is how far it is above the cold reading.',
    ask: 'Which temperature belongs to the cold reading?',
  } as const;
  const degree = (told: (T_degC: number) => number) => (told(100) - told(0)) / 100;
  return [
    ...inTheScale(practice, riseAlone, (told) => above(drawn) * degree(told)),
    {
      id: 'M13',
      value: kelvin(20 - above(drawn)),
      trueOf: 'is colder than the room.',
      ask: 'The resistance has grown. Which way did the metal’s temperature go?',
    },
  ];
}

const law = formula(
  String.raw`\theta = 20 + \frac{R / R_{20} - 1}{\alpha}`,
  'Theta is twenty plus a fraction: R over R twenty, minus one, all over alpha.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const grown = drawn.R_mOhm / drawn.R20_mOhm - 1;
  const [cold, warm] = [
    quantity(amount(drawn.R20_mOhm, 3, 'mΩ')),
    quantity(amount(drawn.R_mOhm, drawn.R_mOhm >= 1000 ? 4 : 3, 'mΩ')),
  ];
  const alpha = alphaOf(drawn.metal);
  return {
    kind: 'number',
    stem: [
      words`The loop of ${drawn.lead} is ${drawn.metal} and has ${cold} at ${quantity(temperatureText(20, practice))}. On an isolated bench supply it warms. Volts divided by amps now give ${warm}.`,
      words`For ${drawn.metal} the temperature coefficient is ${quantity(plainNumber(alpha, 3))} for each kelvin, counted from ${quantity(given(20, '°C'))}. How hot is the conductor, on average?`,
    ],
    ask: 'A temperature with its unit, to the nearest degree.',
    scenarios: [],
    hints: [
      words`First find by which part the resistance has grown.`,
      words`That part divided by the coefficient says how many kelvin it is above ${quantity(given(20, '°C'))}.`,
      words`This thermometer begins at ${quantity(given(20, '°C'))}, so add that.`,
    ],
    solution: [
      words`The resistance has grown by the part ${quantity(plainNumber(grown, 3))}.`,
      words`Divided by the coefficient that is ${quantity(amount(above(drawn), 3, 'K'))} above ${quantity(given(20, '°C'))}.`,
      words`${law}`,
      words`So the conductor is at ${quantity(answer.text)}.`,
    ],
    look: 'How much more resistance is there, and what is one degree worth?',
    cautions: drawn.metal === 'copper' ? [loadedCaution] : [loadedCaution, otherMetals],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q16 is drawn and built. */
export const ownThermometerSpec: TemplateSpec<Case> = {
  id: 'Q16',
  version: 1,
  lesson: '1.4',
  kind: 'number',
  title: 'The lead as a thermometer',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['1.4 use a lead as its own thermometer'],
  misconceptions: ['M13', 'M15'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: 'a stage lead', metal: 'copper', R20_mOhm: 400, R_mOhm: 463 }],
    na: [{ lead: 'a stage lead', metal: 'copper', R20_mOhm: 400, R_mOhm: 455 }],
  },
  build: built,
};

/** Q16: the conductor's temperature from its resistance. */
export const ownThermometer = defineTemplate(ownThermometerSpec);

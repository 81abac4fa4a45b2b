import { cableOf } from '../../cable/cable.ts';
import { cordRating } from '../../cable/cord-ratings.ts';
import { amount, given, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import { markedAs, perLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { leadOf, sizesOf } from './metal-leads.ts';

// Q01: heat made in each metre of a lead, from amps and the resistance of one conductor.

interface Case {
  readonly load: string;
  readonly size: number;
  readonly I_A: number;
}

const loads = [
  'A heat gun in a theatre workshop',
  'A soup warmer on a market stall',
  'A mixer in a bakery',
  'A pump on a farm',
  'A battery charger in a boatyard',
  'A press in a laundry',
  'A heater in a cabin',
  'A planer in a joinery',
  'A lamp bar in a theatre workshop',
  'An oven in a village hall',
  'A fan heater in a polytunnel',
  'A hoist on a slipway',
];

const [leastAsked_A, mostAsked_A] = [3, 16];

function drawnCase(random: Random, practice: Practice): Case | null {
  const size = random.pick(sizesOf(practice));
  const most_A = Math.min(mostAsked_A, cordRating(cableOf(leadOf(size, 'copper', practice)))?.I ?? 0);
  const least_A = most_A > 10 ? 5 : leastAsked_A; // thick leads with few amps make next to nothing
  const drawn = { load: random.pick(loads), size, I_A: random.whole(2 * least_A, 2 * most_A) / 2 };
  return staysApart(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

const resistanceOf = ({ size }: Case, practice: Practice) =>
  toldResistance(cableOf(leadOf(size, 'copper', practice)).conductor.R20, practice);

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = 2 * drawn.I_A ** 2 * resistanceOf(drawn, practice).R;
  const { length, heat } = perLength[practice];
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value, kind: 'heat per metre', unit: heat, tolerance, figures: 3, text: amount(value * length, 3, heat) };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const { R } = resistanceOf(drawn, practice);
  return [
    {
      id: 'M02',
      value: drawn.I_A ** 2 * R,
      trueOf: 'is the heat of one conductor.',
      ask: 'How does the current get back?',
    },
    {
      id: 'M01',
      value: 2 * drawn.I_A * R,
      trueOf: 'is amps times ohms, which is volts, not watts.',
      ask: 'What would that rule say when the amps double? What does the ledger of the lesson say?',
    },
  ];
}

const law = formula("W' = 2 I^2 R'", 'W prime is two times I squared times R prime.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { text } = resistanceOf(drawn, practice);
  const { length, heat, name: each } = perLength[practice];
  const I = quantity(given(drawn.I_A, 'A'));
  const square = quantity(amount(drawn.I_A ** 2, 3, 'A²'));
  return {
    kind: 'number',
    stem: [
      words`${drawn.load} draws ${I} through a lead of ${quantity(markedAs(drawn.size, practice))} copper.`,
      words`Take the metal at ${quantity(temperatureText(20, practice))}. Each conductor then has ${quantity(text)}. How much heat does each ${each} of the lead make, out and back together?`,
    ],
    ask: `Watts for each ${each}, with the unit. Three figures are enough.`,
    scenarios: [
      {
        name: `${drawn.I_A}\u00A0A in this lead`,
        scenario: {
          practice,
          cable: leadOf(drawn.size, 'copper', practice),
          surroundings: { kind: 'stillAir', ambient_degC: 20 },
          supply: [{ kind: 'current', I_A: drawn.I_A }],
          run: { duration_s: 1800 },
        },
      },
    ],
    hints: [
      words`Heat goes with amps times amps. Square the current first.`,
      words`Multiply by the ohms of one ${each} of one conductor. A milliohm is a thousandth of an ohm.`,
      words`The current goes out and comes back. Two conductors make that heat.`,
    ],
    solution: [
      words`The current squared is ${square}.`,
      words`Times the resistance of ${quantity(text)} that is the heat of one conductor: ${quantity(amount((answer.value * length) / 2, 3, heat))}.`,
      words`${law}`,
      words`Out and back there are two, so each ${each} makes ${quantity(answer.text)}.`,
    ],
    look: 'Square the amps, multiply by the ohms of one conductor, then count both.',
    cautions: [],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q01 is drawn and built. */
export const heatByLengthSpec: TemplateSpec<Case> = {
  id: 'Q01',
  version: 1,
  lesson: '1.1',
  kind: 'number',
  title: 'Heat in each length',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['1.1 work out the heat of each metre'],
  misconceptions: ['M01', 'M02'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: 'A pump on a farm', size: 1.5, I_A: 8 }],
    na: [{ load: 'A pump on a farm', size: 14, I_A: 8 }],
  },
  build: built,
};

/** Q01: heat made in each metre or foot of a lead, out and back together. */
export const heatByLength = defineTemplate(heatByLengthSpec);

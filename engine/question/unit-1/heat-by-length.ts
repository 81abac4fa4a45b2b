import { cableOf } from '../../cable/cable.ts';
import { amount, given } from '../figures.ts';
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
];

function drawnCase(random: Random, practice: Practice): Case | null {
  const drawn = { load: random.pick(loads), size: random.pick(sizesOf(practice)), I_A: random.whole(3, 16) };
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

const law = formula("W' = 2 I^2 R'", 'W dash is two times I squared times R dash.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { text } = resistanceOf(drawn, practice);
  const { unit } = perLength[practice];
  const each = unit === 'm' ? 'metre' : 'foot';
  const I = quantity(given(drawn.I_A, 'A'));
  const square = quantity(given(drawn.I_A ** 2, 'A²'));
  return {
    kind: 'number',
    stem: [
      words`${drawn.load} draws ${I} through a lead of ${quantity(markedAs(drawn.size, practice))} copper.`,
      words`At 20\u00A0°C each of its conductors has ${quantity(text)}. How much heat is made in each ${each} of the lead, go and return together?`,
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
      words`Heat goes with amps squared. Square the current first.`,
      words`Multiply by the ohms of one ${each} of one conductor. Mind the milli.`,
      words`The current goes out and comes back. Two conductors make that heat.`,
    ],
    solution: [
      words`The current squared is ${square}.`,
      words`Times the resistance of ${quantity(text)} that is the heat of one conductor: ${quantity(amount((answer.value * perLength[practice].length) / 2, 3, perLength[practice].heat))}.`,
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

/** Q01: heat made in each metre or foot of a lead, go and return together. */
export const heatByLength = defineTemplate(heatByLengthSpec);

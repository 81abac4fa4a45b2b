import { fixedCable } from '../../cable/fixed-cable.ts';
import { tradeSize } from '../../conductor/area-scale.ts';
import type { CableSpec, Scenario } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { amount, given } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { staysApartRounded } from './two-figures.ts';
import { ampsOf, otherVolts, voltsOf, wattsText } from './watts.ts';

// Q39: the design current of a load, from its watts and the supply's volts.

interface Case {
  readonly load: string;
  readonly place: string;
  readonly P_W: number;
  readonly U_V: number;
}

/** A load, and the least and greatest watts that such a thing takes. */
const loads: readonly (readonly [name: string, least_W: number, most_W: number])[] = [
  ['A panel heater', 500, 2400],
  ['An urn', 1000, 3000],
  ['A hot cupboard', 800, 2000],
  ['A wax melter', 500, 1200],
  ['A water heater', 2000, 7000],
  ['A small kiln', 2500, 7000],
  ['An oven', 2000, 6000],
  ['A drying cabinet', 1500, 5000],
];
const places = [
  'in a bakery',
  'on a farm',
  'in a laundry',
  'in a boatyard',
  'in a site cabin',
  'in a village hall',
  'in a joinery',
];

/** Two hot conductors of a North American supply [V]: twice the nominal 120 V. */
const bothHot = 240;
/** Above this a North American heater stands on both hot conductors [W] (our choice, from what is sold). */
const most120 = 1800;

function drawnCase(random: Random, practice: Practice): Case | null {
  const [load, least, most] = random.pick(loads);
  const P_W = 50 * random.whole(least / 50, most / 50);
  const drawn = {
    load,
    place: random.pick(places),
    P_W,
    U_V: practice === 'na' && P_W > most120 ? bothHot : voltsOf(practice),
  };
  return staysApartRounded(answerOf(drawn), wrongOf(drawn, practice)) ? drawn : null;
}

function answerOf({ P_W, U_V }: Case): NumberAnswer {
  const value = ampsOf(P_W, U_V);
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value, kind: 'current', unit: 'A', tolerance, figures: 3, text: amount(value, 3, 'A') };
}

/** The volts that habit puts in: of the other practice, or of one hot conductor where there are two. */
const habit = (U_V: number, practice: Practice) => (U_V === bothHot ? voltsOf('na') : otherVolts(practice));

function wrongOf({ P_W, U_V }: Case, practice: Practice): WrongValue[] {
  const other = habit(U_V, practice);
  const both = { whyNot: 'This one stands on two hot conductors, and the voltage between them counts.' };
  return [
    {
      id: 'M49',
      value: ampsOf(P_W, other),
      trueOf: `is what those watts draw from ${given(other, 'V')}.`,
      ...(U_V === bothHot ? both : {}),
      ask: 'Which voltage does the question give for this supply?',
    },
  ];
}

/** A cable that its table lets carry this load: a cord, or a fixed cable for the larger ones. */
function cableFor(I: number, practice: Practice): CableSpec {
  const thin = practice === 'iec' ? 1.5 : 12;
  const thick = practice === 'iec' ? 4 : 10;
  const size = tradeSize(practice === 'iec' ? 'mm2' : 'AWG', I <= 16 ? thin : thick);
  const cable = size ? fixedCable(size) : null;
  if (!cable) throw new Error('Q39 has walls for its cables');
  return cable;
}

function scenarioOf({ P_W, U_V }: Case, practice: Practice): Scenario {
  const I = ampsOf(P_W, U_V);
  const one = carrying(cableFor(I, practice), { kind: 'clipped', ambient_degC: 25 }, I, practice, 3600);
  return { ...one, lead: { length_m: 5 }, supply: [{ kind: 'mains', U_V, load_W: P_W, rated_V: U_V }] };
}

const law = formula(String.raw`I_\mathrm{b} = \frac{P}{U_0}`, 'I b is P over U nought.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const { load, place, P_W, U_V } = drawn;
  const answer = answerOf(drawn);
  const between = U_V === bothHot ? ' between its two hot conductors' : '';
  return {
    kind: 'number',
    stem: [
      words`${load} ${place} is marked ${quantity(wattsText(P_W))}. Its supply has ${quantity(given(U_V, 'V'))}${between}.`,
      words`It heats and does nothing else. What current does it draw?`,
    ],
    ask: 'A current with its unit. Three figures are enough.',
    scenarios: [{ name: `behind ${given(5, 'm')} of cable`, scenario: scenarioOf(drawn, practice) }],
    hints: [
      words`Watts are volts times amps. Which two of the three are known?`,
      words`${law}`,
      words`Write the watts without kilo before you divide.`,
    ],
    solution: [
      words`A heater's watts are its volts times its amps.`,
      words`${law}`,
      words`${quantity(wattsText(P_W))} over ${quantity(given(U_V, 'V'))} is ${quantity(answer.text)}.`,
      words`It is the design current of the circuit: every device and every cable before it has to carry this much. A motor would need its own plate, since its watts are those of its shaft.`,
    ],
    look: 'Divide the watts by the volts of this supply, and check that kilo has gone.',
    cautions: [],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q39 is drawn and built. */
export const loadCurrentSpec: TemplateSpec<Case> = {
  id: 'Q39',
  version: 1,
  lesson: '3.1',
  kind: 'number',
  title: 'What the load draws',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['3.1 apply Ib ≤ In ≤ Iz and I2 ≤ 1.45 Iz'],
  misconceptions: ['M49'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: 'A water heater', place: 'in a site cabin', P_W: 4400, U_V: 230 }],
    na: [{ load: 'A water heater', place: 'in a site cabin', P_W: 4400, U_V: 240 }],
  },
  build: built,
};

/** Q39: the current of a load from its watts and volts. */
export const loadCurrent = defineTemplate(loadCurrentSpec);

import { awgArea } from '../../conductor/awg.ts';
import { metals } from '../../material/metals.ts';
import { amount, given, rounded, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import { markedAs, toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { bridgeCaution, currentPair } from './dead-lead.ts';

// Q12: the copper size that a lead is equal to, from the resistance of its loop and its length.

interface Case {
  readonly lead: string;
  /** The size it is marked with: mm², or AWG in `na`. */
  readonly marked: number;
  /** In metres, or feet in `na`. */
  readonly count: number;
  /** As the meter shows it [mΩ]. */
  readonly R_mOhm: number;
}

const leads = [
  'A lead from a market stall',
  'An extension lead of a village hall',
  'A lead that came with a heater for a polytunnel',
  'A lead from a boatyard',
  'The lead of a laundry press',
];

const markings = { iec: [0.75, 1, 1.5, 2.5], na: [18, 16, 14, 12] } as const satisfies Record<Practice, unknown>;

/** The area that a marking claims [m²]. */
const claimed = (marked: number, practice: Practice) => (practice === 'iec' ? marked * 1e-6 : awgArea(marked));

function drawnCase(random: Random, practice: Practice): Case | null {
  const marked = random.pick<number>(markings[practice]);
  const count = practice === 'iec' ? random.whole(2, 12) : random.whole(6, 40);
  const part = random.whole(30, 80) / 100; // of the marked size, as copper
  const R = (2 * lengthOf(count, practice) * metals.copper.rho20.value) / (part * claimed(marked, practice));
  const drawn = { lead: random.pick(leads), marked, count, R_mOhm: rounded(R * 1e3, 3) };
  return staysApart(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

const lengthOf = (count: number, practice: Practice) => toldLength(count, practice).L;

function areaOf({ count, R_mOhm }: Case, practice: Practice): number {
  return (2 * lengthOf(count, practice) * metals.copper.rho20.value) / (R_mOhm * 1e-3);
}

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = areaOf(drawn, practice);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value, kind: 'area', unit: 'mm²', tolerance, figures: 3, text: amount(value * 1e6, 3, 'mm²') };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  return [
    {
      id: 'M09',
      value: areaOf(drawn, practice) / 2,
      trueOf: 'counts the length once, although the meter saw both conductors.',
      ask: 'The far end was bridged. Through how much conductor did the test current run?',
    },
    {
      id: 'M10',
      value: claimed(drawn.marked, practice),
      trueOf: 'is what the marking claims.',
      ask: 'Would copper of the marked size have so many ohms?',
      whyNot: 'A marking is a claim. The ohms tell what is there.',
    },
  ];
}

const law = formula(String.raw`A_\mathrm{Cu} = \frac{2 L \rho_\mathrm{Cu}}{R}`, 'A copper is two L rho copper over R.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const L = lengthOf(drawn.count, practice);
  const told = toldLength(drawn.count, practice).text;
  const length = practice === 'iec' ? told : `${told} (${amount(L, 3, 'm')})`;
  const marking = markedAs(drawn.marked, practice);
  const size = practice === 'iec' ? marking : `${marking} (${amount(awgArea(drawn.marked) * 1e6, 3, 'mm²')})`;
  const rho = amount(metals.copper.rho20.value * 1e9, 4, 'nΩ·m');
  const R = quantity(given(drawn.R_mOhm, 'mΩ'));
  return {
    kind: 'number',
    stem: [
      words`${drawn.lead} is marked ${quantity(size)} and is ${quantity(length)} long. It is unplugged at both ends, and its wires look like copper.`,
      words`You bridge ${currentPair[practice]} at the far end. From the near end you measure ${R} at ${quantity(temperatureText(20, practice))}.`,
      words`Copper has a resistivity of ${quantity(rho)}. What area of copper would measure the same?`,
    ],
    ask: 'An area in mm². Three figures are enough.',
    scenarios: [],
    hints: [
      words`The test current ran out and back: twice the length.`,
      words`Resistance is resistivity times length over area. Turn that round for the area.`,
      words`Copper of ${quantity(given(1, 'mm²'))} has ${quantity(amount(metals.copper.rho20.value * 1e9, 4, 'mΩ'))} in each metre. Twice the area has half of that.`,
    ],
    solution: [
      words`The conductor that was measured is ${quantity(amount(2 * L, 3, 'm'))} long, out and back.`,
      words`Copper of ${quantity(given(1, 'mm²'))} and that length would have ${quantity(amount(2 * L * metals.copper.rho20.value * 1e9, 3, 'mΩ'))}.`,
      words`${law}`,
      words`Divided by the ${R} that were measured, that gives ${quantity(answer.text)}.`,
    ],
    look: 'How many ohms would copper of the marked size have at this length?',
    cautions: [bridgeCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q12 is drawn and built. */
export const equalCopperSpec: TemplateSpec<Case> = {
  id: 'Q12',
  version: 1,
  lesson: '1.3',
  kind: 'number',
  title: 'Equal to which copper',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['1.3 state the copper size that a clad conductor is equal to'],
  misconceptions: ['M09', 'M10'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: 'A lead from a boatyard', marked: 1.5, count: 5, R_mOhm: 229 }],
    na: [{ lead: 'A lead from a boatyard', marked: 16, count: 16, R_mOhm: 214 }],
  },
  build: built,
};

/** Q12: the copper size with the same ohms. */
export const equalCopper = defineTemplate(equalCopperSpec);

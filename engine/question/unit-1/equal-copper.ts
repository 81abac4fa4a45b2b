import { metals } from '../../material/metals.ts';
import { foot } from '../../quantity.ts';
import { amount, given, rounded } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q12: the copper size that a lead is equal to, from the resistance of its loop and its length.

interface Case {
  readonly lead: string;
  readonly marked_mm2: number;
  /** In metres, or feet in `na`. */
  readonly count: number;
  /** As the meter shows it [mΩ]. */
  readonly R_mOhm: number;
}

const leads = [
  'a lead from a market stall',
  'an extension lead of a village hall',
  'a lead that came with a heater for a polytunnel',
  'a lead from a boatyard',
  'the lead of a laundry press',
];

function drawnCase(random: Random, practice: Practice): Case | null {
  const marked_mm2 = random.pick([0.75, 1, 1.5, 2.5]);
  const count = practice === 'iec' ? random.whole(2, 12) : random.whole(6, 40);
  const part = random.whole(30, 80) / 100; // of the marked size, as copper
  const R = (2 * lengthOf(count, practice) * metals.copper.rho20.value) / (part * marked_mm2 * 1e-6);
  const drawn = { lead: random.pick(leads), marked_mm2, count, R_mOhm: rounded(R * 1e3, 3) };
  return staysApart(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

const lengthOf = (count: number, practice: Practice) => count * (practice === 'na' ? foot : 1);

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
      value: drawn.marked_mm2 * 1e-6,
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
  const length = practice === 'iec' ? given(drawn.count, 'm') : `${given(drawn.count, 'ft')} (${amount(L, 3, 'm')})`;
  const rho = amount(metals.copper.rho20.value * 1e9, 4, 'nΩ·m');
  const R = quantity(given(drawn.R_mOhm, 'mΩ'));
  return {
    kind: 'number',
    stem: [
      words`You have ${drawn.lead} in front of you, unplugged at both ends. It is marked ${quantity(given(drawn.marked_mm2, 'mm²'))} and is ${quantity(length)} long.`,
      words`You bridge line and neutral at the far end. With four wires you measure ${R} at 20\u00A0°C. Copper has ${quantity(rho)}. Which copper size is it equal to?`,
    ],
    ask: 'An area with its unit. Three figures are enough.',
    scenarios: [],
    hints: [
      words`The test current ran out and back: twice the length.`,
      words`Resistance is resistivity times length over area. Turn that round for the area.`,
      words`A nanoohm is a thousandth of a millionth of an ohm, and a square metre has a million mm².`,
    ],
    solution: [
      words`The conductor that was measured is ${quantity(amount(2 * L, 3, 'm'))} long, out and back.`,
      words`Copper of one mm² and that length would have ${quantity(amount(2 * L * metals.copper.rho20.value * 1e9, 3, 'mΩ'))}.`,
      words`${law}`,
      words`Over the ${R} that were measured it gives ${quantity(answer.text)}.`,
    ],
    look: 'How many ohms would copper of the marked size have at this length?',
    cautions: [],
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
  objectives: ['1.3 state the copper size a conductor is equal to'],
  misconceptions: ['M09', 'M10'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: 'a lead from a boatyard', marked_mm2: 1.5, count: 5, R_mOhm: 229 }],
    na: [{ lead: 'a lead from a boatyard', marked_mm2: 1.5, count: 16, R_mOhm: 224 }],
  },
  build: built,
};

/** Q12: the copper size with the same ohms. */
export const equalCopper = defineTemplate(equalCopperSpec);

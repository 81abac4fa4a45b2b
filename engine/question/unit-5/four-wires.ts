import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { metals } from '../../material/metals.ts';
import { amount, given, plainNumber, rounded, temperatureText } from '../figures.ts';
import { perLength, toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { currentPair } from '../unit-1/dead-lead.ts';
import { staysApartRounded } from '../unit-3/two-figures.ts';
import { formula, quantity, words } from '../words.ts';
import { finders, fourWireCaution } from './bench-words.ts';
import { warmer } from './suspects.ts';

// Q65: resistance by the length at 20 °C from volts, amps, length and temperature, with four wires.

interface Case {
  readonly lead: string;
  /** In metres, or feet in `na`. */
  readonly count: number;
  readonly I_A: number;
  readonly T_degC: number;
  /** Volts at the ends of the cord itself, and at the clips of the supply [mV]. */
  readonly U_mV: number;
  readonly clips_mV: number;
}

const measured: Readonly<Record<Practice, readonly CastKey[]>> = {
  iec: ['C075', 'C100', 'C150', 'SUS'],
  na: ['A18', 'A16', 'A14', 'A16S'],
};

function drawnCase(random: Random, practice: Practice): Case | null {
  const { conductor } = cableOf(cast[random.pick(measured[practice])]);
  const count = practice === 'iec' ? random.whole(3, 20) : random.whole(10, 60);
  const I_A = random.pick([1, 1, 1.5, 2]);
  const T_degC = random.pick([5, 6, 8, 9, 10, 12, 14, 25, 27, 28, 30, 31, 33, 35]);
  const spread = 1 + random.whole(-30, 30) / 1000; // a lead and its length are never quite what they are called
  const R = 2 * conductor.R20 * lengthOf(count, practice) * spread * warmer(conductor.alpha20, T_degC);
  const leads = random.whole(40, 250) / 1000; // what test leads and their clips have together
  const drawn = {
    lead: random.pick(finders),
    count,
    I_A,
    T_degC,
    U_mV: rounded(1e3 * I_A * R, 3),
    clips_mV: rounded(1e3 * I_A * (R + leads), 3),
  };
  return staysApartRounded(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

const lengthOf = (count: number, practice: Practice) => toldLength(count, practice).L;
const alpha = rounded(metals.copper.alpha20.value, 3);

/** R'20 of one conductor [Ω/m] from `U` [mV], for so many conductors in the loop and so many degrees of correction. */
function resistanceFrom(U: number, { count, I_A, T_degC }: Case, practice: Practice, times = 2, T = T_degC): number {
  return U / 1e3 / I_A / (times * lengthOf(count, practice)) / warmer(alpha, T);
}

const told = (R: number, practice: Practice) =>
  amount(R * perLength[practice].length * 1e3, 3, perLength[practice].resistance);

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = resistanceFrom(drawn.U_mV, drawn, practice);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  const unit = perLength[practice].resistance;
  return { value, kind: 'resistance per metre', unit, tolerance, figures: 3, text: told(value, practice) };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  return [
    {
      id: 'M09',
      value: resistanceFrom(drawn.U_mV, drawn, practice, 1),
      trueOf: 'counts the length once.',
      ask: 'The far end was joined. Through how much conductor did the current run?',
    },
    {
      id: 'M14',
      value: resistanceFrom(drawn.U_mV, drawn, practice, 2, 20 + drawn.T_degC),
      trueOf: 'takes all the degrees for degrees above the reference.',
      ask: 'How far from the reference was the conductor?',
    },
    {
      id: 'M45',
      value: resistanceFrom(drawn.clips_mV, drawn, practice),
      trueOf: 'has the clips and the test leads in it.',
      ask: 'Which of the two voltmeters sees the cord alone?',
    },
  ];
}

const law = formula(
  String.raw`R'_{20} = \frac{U}{I \cdot 2L \cdot (1 + \alpha(\theta - 20))}`,
  'R prime twenty is U over three factors: I, two L, and one plus alpha times theta less twenty.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { lead, count, I_A, T_degC, U_mV, clips_mV } = drawn;
  const length = toldLength(count, practice).text;
  const R = (1e-3 * U_mV) / I_A;
  return {
    kind: 'number',
    stem: [
      words`${lead} is ${quantity(length)} long. It is dead, unplugged at both ends, and lies at ${quantity(temperatureText(T_degC, practice))}. You join ${currentPair[practice]} at the far end.`,
      words`A bench supply sends ${quantity(given(I_A, 'A'))} through the loop. A voltmeter on the cord’s own ends reads ${quantity(amount(U_mV, 3, 'mV'))}. Another, on the supply’s clips, reads ${quantity(amount(clips_mV, 3, 'mV'))}.`,
      words`Take ${quantity(plainNumber(alpha, 3))} for each kelvin, counted from ${quantity(temperatureText(20, practice))}. At that reference temperature, what resistance by the ${perLength[practice].name} does one conductor have?`,
    ],
    ask: `In ${perLength[practice].resistance}, at the reference temperature. Three figures are enough.`,
    scenarios: [],
    hints: [
      words`Four wires: two bring the current, two others carry the volts. Take the volts that the cord alone has.`,
      words`Volts over amps are the ohms of the loop. The loop is out and back.`,
      words`Then bring it to the reference: divide by one plus alpha times the degrees above it.`,
    ],
    solution: [
      words`${law}`,
      words`The cord’s own volts over the amps give ${quantity(amount(R, 3, 'Ω'))} for the loop.`,
      words`Out and back that is ${quantity(told(R / (2 * lengthOf(count, practice)), practice))}, as warm as it was.`,
      words`Divided by ${quantity(plainNumber(warmer(alpha, T_degC), 4))}, that gives ${quantity(answer.text)}.`,
    ],
    look: 'Draw both circuits: the one the current takes, and the one the voltmeter sees.',
    cautions: [fourWireCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q65 is drawn and built. */
export const fourWiresSpec: TemplateSpec<Case> = {
  id: 'Q65',
  version: 1,
  lesson: '5.1',
  kind: 'number',
  title: 'Ohms by four wires',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.1 set up four-wire', '5.1 correct to 20 °C'],
  misconceptions: ['M09', 'M14', 'M45'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: finders[0], count: 8, I_A: 1, T_degC: 28, U_mV: 219, clips_mV: 339 }],
    na: [{ lead: finders[0], count: 25, I_A: 1, T_degC: 28, U_mV: 211, clips_mV: 331 }],
  },
  build: built,
};

/** Q65: R' at 20 °C by four wires. */
export const fourWires = defineTemplate(fourWiresSpec);

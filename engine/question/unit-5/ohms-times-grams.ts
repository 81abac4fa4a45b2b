import { metals } from '../../material/metals.ts';
import { amount, given, rounded, temperatureText } from '../figures.ts';
import { markedAs, perLength, toldLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { metalNames } from '../unit-1/metal-leads.ts';
import { staysApartRounded } from '../unit-3/two-figures.ts';
import { formula, quantity, words } from '../words.ts';
import { finders, keepOutCaution, toldMass, toldProduct } from './bench-words.ts';
import { coreReads, isPlain, nearestMetal, productOf, type SuspectMetal } from './suspects.ts';

// Q67: R' times m' of a core, in which its area cancels.

interface Case {
  readonly lead: string;
  readonly marked: number;
  /** In metres, or feet in `na`. */
  readonly count: number;
  /** The loop at 20 °C [mΩ], and what a bared piece of one core weighs [g]; its length in cm, or inches. */
  readonly loop_mOhm: number;
  readonly piece: number;
  readonly piece_g: number;
}

const markings = { iec: [0.75, 1, 1.5, 2.5], na: [18, 16, 14] } as const satisfies Record<Practice, unknown>;
const pieceUnit = { iec: ['cm', 0.01], na: ['in', 0.0254] } as const;
const trueMetals: readonly SuspectMetal[] = ['cca10', 'cca10', 'aluminium', 'steel'];

function drawnCase(random: Random, practice: Practice): Case | null {
  const metal = random.pick(trueMetals);
  const { R, mass } = coreReads(metal, random.whole(40, 240) / 1e8);
  const count = practice === 'iec' ? random.whole(3, 20) : random.whole(10, 60);
  const piece = practice === 'iec' ? 10 * random.whole(3, 10) : random.whole(12, 40);
  const spread = () => 1 + random.whole(-8, 8) / 1000;
  const drawn = {
    lead: random.pick(finders),
    marked: random.pick<number>(markings[practice]),
    count,
    loop_mOhm: rounded(2e3 * R * toldLength(count, practice).L * spread(), 3),
    piece,
    piece_g: rounded(1e3 * mass * piece * pieceUnit[practice][1] * spread(), 3),
  };
  const answer = answerOf(drawn, practice);
  return isPlain(answer.value) && staysApartRounded(answer, wrongOf(drawn, practice)) ? drawn : null;
}

const resistanceOf = ({ loop_mOhm, count }: Case, practice: Practice, times = 2) =>
  loop_mOhm / 1e3 / (times * toldLength(count, practice).L);
const massOf = ({ piece, piece_g }: Case, practice: Practice) => piece_g / 1e3 / (piece * pieceUnit[practice][1]);

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = resistanceOf(drawn, practice) * massOf(drawn, practice);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  const { text, unit } = toldProduct(value, practice);
  return { value, kind: 'resistance times mass', unit, tolerance, figures: 3, text };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  return [
    {
      id: 'M09',
      value: resistanceOf(drawn, practice, 1) * massOf(drawn, practice),
      trueOf: 'has the ohms of two conductors and the grams of one.',
      ask: 'Through how much conductor did the test current run?',
    },
    {
      id: 'M50',
      value: productOf(metals.copper),
      trueOf: 'is copper’s own product. It takes the grams of the copper that has as many ohms.',
      ask: 'What did the piece on the balance weigh?',
    },
  ];
}

const law = formula(
  String.raw`R' \cdot m' = \frac{\rho}{A} \cdot d A = \rho d`,
  'R prime times m prime is rho over A times d A. The area cancels: rho times d.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { lead, marked, count, loop_mOhm, piece, piece_g } = drawn;
  const { rho20, density } = metals.copper;
  const metal = nearestMetal(answer.value);
  const { name } = perLength[practice];
  return {
    kind: 'number',
    stem: [
      words`${lead} is marked ${quantity(markedAs(marked, practice))} and is ${quantity(toldLength(count, practice).text)} long. Its far end is joined. Four wires find ${quantity(amount(loop_mOhm, 3, 'mΩ'))} round the loop, at ${quantity(temperatureText(20, practice))}.`,
      words`A bared piece of one core, ${quantity(given(piece, pieceUnit[practice][0]))} long, weighs ${quantity(amount(piece_g, 3, 'g'))}.`,
      words`Copper has ${quantity(amount(rho20.value * 1e9, 4, 'nΩ·m'))} and ${quantity(given(density.value, 'kg/m³'))}. What is the product of ohms and grams for each ${name} of one core?`,
    ],
    ask: `In ${answer.unit}. Three figures are enough.`,
    scenarios: [],
    hints: [
      words`Bring both to one core and one ${name}: the ohms, and the grams.`,
      words`The loop is two conductors, one after the other. The piece is of one.`,
      words`Then multiply them. A thicker core has fewer ohms and more grams, so its size drops out.`,
    ],
    solution: [
      words`One conductor has ${quantity(toldResistance(resistanceOf(drawn, practice), practice).text)}.`,
      words`One core weighs ${quantity(toldMass(massOf(drawn, practice), practice).text)}.`,
      words`${law}`,
      words`The product is ${quantity(answer.text)}.`,
      words`Copper’s own is ${quantity(toldProduct(productOf(metals.copper), practice).text)}. That of ${metalNames[metal]} is ${quantity(toldProduct(productOf(metals[metal]), practice).text)}, and the lay of the strands adds some per cent.`,
      words`So the conductors behave as ${metalNames[metal]}, whatever they are marked.`,
    ],
    look: 'How many conductors are in the ohms, and how many in the grams?',
    cautions: [keepOutCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q67 is drawn and built. */
export const ohmsTimesGramsSpec: TemplateSpec<Case> = {
  id: 'Q67',
  version: 1,
  lesson: '5.2',
  kind: 'number',
  title: 'Ohms times grams',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.2 use R′·m′ to name the metal'],
  misconceptions: ['M09', 'M50'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: finders[0], marked: 1.5, count: 8, loop_mOhm: 576, piece: 50, piece_g: 1.25 }],
    na: [{ lead: finders[0], marked: 16, count: 25, loop_mOhm: 549, piece: 20, piece_g: 1.27 }],
  },
  build: built,
};

/** Q67: the product of ohms and grams. */
export const ohmsTimesGrams = defineTemplate(ohmsTimesGramsSpec);

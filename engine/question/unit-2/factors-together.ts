import { ambientFactor } from '../../protection/ambient-factor.ts';
import { type Factor, factorProduct, ratingInPlace } from '../../protection/factors.ts';
import { adjustmentFactor, groupingFactor } from '../../protection/grouping-factor.ts';
import { thermalInsulationFactor } from '../../protection/insulation-factor.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { amount, given, plainNumber, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { citation, type TableCurrent, tableCurrentOf, tableCurrentsOf } from './table-currents.ts';

// Q36: what is left of a table's current once two or three factors act on it.

interface Case {
  readonly cable: string;
  readonly place: string;
  readonly ambient_degC: number;
  /** Circuits alike in the bunch, this one counted. */
  readonly circuits: number;
  /** Length in thermal insulation [mm], for a fixed cable; 0 for none. */
  readonly insulated_mm: number;
}

const places = [
  'behind a stage',
  'above a bakery',
  'over a laundry',
  'in a farm loft',
  'in a cabin roof',
  'beside a kiln in a joinery',
] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cable = random.pick(tableCurrentsOf(practice));
  const drawn = {
    cable: cable.id,
    place: random.pick(places),
    ambient_degC: random.whole(31, cable.limit_degC - 10),
    circuits: random.whole(2, 9),
    insulated_mm: cable.fixed ? random.pick([0, 50, 100, 200, 400]) : 0,
  };
  const answer = answerOf(drawn);
  const least = wrongOf(drawn).every(({ value }) => value > 0.5);
  return answer.value >= 1 && least && staysApart(answer, wrongOf(drawn)) ? drawn : null;
}

/** The factors in the order of the stem: ambient, grouping, thermal insulation. */
function factorsOf({ cable: id, ambient_degC, circuits, insulated_mm }: Case): Factor[] {
  const { practice, limit_degC } = tableCurrentOf(id);
  return [
    ambientFactor(practice, limit_degC, ambient_degC),
    practice === 'na' ? adjustmentFactor(2 * circuits) : groupingFactor(circuits),
    ...(insulated_mm > 0 ? [thermalInsulationFactor(insulated_mm)] : []),
  ];
}

function answerOf(drawn: Case): NumberAnswer {
  const value = ratingInPlace(tableCurrentOf(drawn.cable).It, factorsOf(drawn));
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value, kind: 'current', unit: 'A', tolerance, figures: 3, text: amount(value, 3, 'A') };
}

function wrongOf(drawn: Case): WrongValue[] {
  const { It } = tableCurrentOf(drawn.cable);
  const factors = factorsOf(drawn);
  const lost = factors.reduce((sum, { value }) => sum + 1 - value, 0);
  return [
    {
      id: 'M25',
      value: ratingInPlace(
        It,
        factors.filter(({ symbol }) => symbol !== 'Ca'),
      ),
      trueOf: 'is what it may carry there at 30\u00A0°C.',
      ask: 'The air is warmer than the table’s. How much of the way to the limit is gone before any current flows?',
    },
    {
      id: 'M26',
      value: It * (1 - lost),
      trueOf: 'takes every reduction off the whole table current.',
      ask: 'By that rule, what would be left with four reductions of 30\u00A0% each?',
    },
  ];
}

/** One such cable alone in that air, with the answer's current. */
function scenarioOf({ cable: id, ambient_degC }: Case, answer: NumberAnswer): Scenario {
  const { cable, fixed, practice } = tableCurrentOf(id);
  const I = Number(answer.value.toPrecision(3));
  return carrying(cable, fixed ? { kind: 'clipped', ambient_degC } : ambient_degC, I, practice, 3600);
}

const lawOfTwo = formula(
  String.raw`I_\mathrm{z} = I_\mathrm{t}\,C_\mathrm{a}\,C_\mathrm{g}`,
  'I z is I t times C a times C g.',
);
const lawOfThree = formula(
  String.raw`I_\mathrm{z} = I_\mathrm{t}\,C_\mathrm{a}\,C_\mathrm{g}\,C_\mathrm{i}`,
  'I z is I t times C a times C g times C i.',
);

function solutionOf({ It, words: cable, cited }: TableCurrent, factors: readonly Factor[], answer: NumberAnswer) {
  const product = factorProduct(factors);
  const sources = [cited, ...factors.map((one) => citation(one.symbol, one.source, one.where, one.confidence))];
  const row = factors.map(({ value }) => plainNumber(value, 2)).join(' times ');
  return [
    words`Each factor acts on what the others have left, so they are multiplied.`,
    words`${factors.length === 3 ? lawOfThree : lawOfTwo}`,
    words`The product is ${row}, which is ${plainNumber(product, 3)}.`,
    words`Of ${quantity(given(It, 'A'))} that leaves ${quantity(answer.text)} for ${cable}.`,
    words`${sources.join('. ')}. Editions change: check yours.`,
    words`The engine runs it alone in that air, and finds it cooler. The table also allows for neighbours, covers and touch.`,
  ];
}

const counts = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** What the cable shares its way with, in the practice's own count. */
function company({ circuits }: Case, practice: Practice): string {
  const many = counts[circuits] ?? String(circuits);
  if (practice === 'iec') return `It is one of ${many} loaded circuits alike in one bunch.`;
  return `It is one of ${many} loaded cords tied together, so ${2 * circuits} conductors carry current.`;
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const own = tableCurrentOf(drawn.cable);
  const factors = factorsOf(drawn);
  const answer = answerOf(drawn);
  const told = factors.map(({ symbol, value }) => `${symbol}\u00A0=\u00A0${plainNumber(value, 2)}`);
  const [last, ...others] = [...told].reverse() as [string, ...string[]];
  const list = `${[...others].reverse().join(', ')} and ${last}`;
  const through =
    drawn.insulated_mm > 0 ? ` Part of it, ${given(drawn.insulated_mm, 'mm')} long, lies in thermal insulation.` : '';
  return {
    kind: 'number',
    stem: [
      words`It is ${quantity(temperatureText(drawn.ambient_degC, practice))} ${drawn.place}. There runs ${own.words}. ${company(drawn, practice)}${through}`,
      words`The table allows one such circuit ${quantity(given(own.It, 'A'))} at ${quantity(temperatureText(30, practice))}, for conductors at ${quantity(temperatureText(own.limit_degC, practice))}.`,
      words`The factors are ${list}. What current may it carry there?`,
    ],
    ask: 'A current with its unit. Three figures are enough.',
    scenarios: [{ name: `alone, at ${answer.text}`, scenario: scenarioOf(drawn, answer) }],
    hints: [
      words`Which factor stands for the ambient, which for the bunch${drawn.insulated_mm > 0 ? ', which for the insulation' : ''}?`,
      words`Take the table current, and let one factor act on it. What is left?`,
      words`Let the next factor act on what is left, not on the table current.`,
    ],
    solution: solutionOf(own, factors, answer),
    look: 'Write the table current first. Then let the factors act on it one by one, each on what is left.',
    cautions: [
      'Too much current in a bunch overheats the cables inside it, where nobody sees. Keep to the lowest figure that applies.',
    ],
    answer,
    wrong: wrongOf(drawn),
  };
}

/** How Q36 is drawn and built. */
export const factorsTogetherSpec: TemplateSpec<Case> = {
  id: 'Q36',
  version: 1,
  lesson: '2.4',
  kind: 'number',
  title: 'What the factors leave',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['2.4 apply the factors Ca, Cg and Ci'],
  misconceptions: ['M25', 'M26'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cable: 'C150', place: places[0], ambient_degC: 40, circuits: 3, insulated_mm: 0 }],
    na: [{ cable: 'A14', place: places[0], ambient_degC: 40, circuits: 4, insulated_mm: 0 }],
  },
  build: built,
};

/** Q36: the current left after factors for ambient, grouping and thermal insulation. */
export const factorsTogether = defineTemplate(factorsTogetherSpec);

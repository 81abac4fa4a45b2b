import type { TradeSize } from '../../conductor/area-scale.ts';
import { ampacity, ampacitySizes } from '../../protection/ampacity.ts';
import { type Factor, factorProduct, tableCurrentNeeded } from '../../protection/factors.ts';
import { usualRatings } from '../../protection/standard-ratings.ts';
import { flatTwinRatings } from '../../protection/table-rating.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { amount, given, plainNumber, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { checkYours, citedWords, whoDecides } from './cited-words.ts';
import { addedReductions, clippedRun, companyOf, factorList, factorsAt, type Place, runPlaces } from './fixed-runs.ts';
import { staysApartRounded } from './two-figures.ts';

// Q40: what a table must give so that its factors leave the device's rating.

interface Case extends Place {
  readonly place: string;
  readonly In_A: number;
}

function drawnCase(random: Random, practice: Practice): Case | null {
  const drawn = {
    place: random.pick(runPlaces),
    In_A: random.pick(usualRatings(practice).filter((In) => In <= 32)),
    ambient_degC: random.whole(31, practice === 'iec' ? 50 : 60),
    circuits: random.whole(2, practice === 'iec' ? 6 : 4),
    insulated_mm: practice === 'iec' ? random.pick([0, 0, 50, 100, 200]) : 0,
  };
  const added = addedReductions(factorsAt(drawn, practice));
  const answer = answerOf(drawn, practice);
  const sound = added < 0.75 && answer.value <= 60;
  return sound && staysApartRounded(answer, wrongOf(drawn, practice)) ? drawn : null;
}

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = tableCurrentNeeded(drawn.In_A, factorsAt(drawn, practice));
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value, kind: 'current', unit: 'A', tolerance, figures: 3, text: amount(value, 3, 'A') };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const factors = factorsAt(drawn, practice);
  return [
    {
      id: 'M26',
      value: drawn.In_A / (1 - addedReductions(factors)),
      trueOf: 'is what it would take if the reductions were added up.',
      ask: 'By that rule, what would four reductions of 30\u00A0% each leave?',
    },
    {
      id: 'M27',
      value: drawn.In_A * factorProduct(factors),
      trueOf: `is what the factors leave of ${given(drawn.In_A, 'A')}.`,
      ask: 'Must the table give more than the device’s rating here, or less?',
    },
  ];
}

/** The thinnest size whose table current is enough; the thickest where none is. */
function sizeFor(It: number, practice: Practice): TradeSize {
  const rows =
    practice === 'iec'
      ? flatTwinRatings().map(({ size, I }) => ({ size, I }))
      : ampacitySizes('copper', 90).map((size) => ({ size, I: ampacity(size.size, 'copper', 90)?.value ?? 0 }));
  const held = rows.filter(({ size }) => size.system === 'mm2' || size.size <= 14);
  const found = held.find(({ I }) => I >= It) ?? held.at(-1);
  if (!found) throw new Error('the tables have rows');
  return found.size;
}

function scenarioOf(drawn: Case, answer: NumberAnswer, practice: Practice): Scenario {
  return clippedRun(sizeFor(answer.value, practice), drawn.ambient_degC, Math.min(drawn.In_A, 30), practice);
}

const law = formula(String.raw`I_\mathrm{t} = \frac{I_\mathrm{n}}{C}`, 'I t is I n over C, all factors together.');

function solutionOf(drawn: Case, factors: readonly Factor[], answer: NumberAnswer) {
  const row = factors.map(({ value }) => plainNumber(value, 2)).join(' times ');
  const sources = factors.map((one) => `${one.symbol}: ${citedWords(one)}`);
  return [
    words`The table's current, times the factors, has to leave ${quantity(given(drawn.In_A, 'A'))}. So the device's rating is divided by them.`,
    words`${law}`,
    words`The product is ${row}, which is ${plainNumber(factorProduct(factors), 3)}.`,
    words`${quantity(given(drawn.In_A, 'A'))} over that is ${quantity(answer.text)}. Take the first size that the table gives as much.`,
    words`${sources.join('. ')}. ${checkYours}`,
    words`The engine has that size alone in the same air, and finds it cooler. The table also allows for its neighbours.`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const factors = factorsAt(drawn, practice);
  const answer = answerOf(drawn, practice);
  const T = temperatureText(drawn.ambient_degC, practice);
  const through =
    drawn.insulated_mm > 0 ? ` Part of it, ${given(drawn.insulated_mm, 'mm')} long, lies in thermal insulation.` : '';
  return {
    kind: 'number',
    stem: [
      words`A cable runs ${drawn.place}, where it is ${quantity(T)}. ${companyOf(drawn, practice)}${through}`,
      words`Its breaker is rated ${quantity(given(drawn.In_A, 'A'))}. The factors are ${factorList(factors)}.`,
      words`How much must the table give the cable, at its own ambient and alone, so that it may carry the breaker's rating here?`,
    ],
    ask: 'A current with its unit. Three figures are enough.',
    scenarios: [{ name: 'a size that does, alone in that air', scenario: scenarioOf(drawn, answer, practice) }],
    hints: [
      words`The factors act on the table's current. What has to be left when they have acted?`,
      words`Multiply the factors with each other first.`,
      words`${law}`,
    ],
    solution: solutionOf(drawn, factors, answer),
    look: 'Check it backwards: let the factors act on your answer, one by one. What is left?',
    cautions: [whoDecides],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q40 is drawn and built. */
export const tableNeededSpec: TemplateSpec<Case> = {
  id: 'Q40',
  version: 1,
  lesson: '3.1',
  kind: 'number',
  title: 'What the table must give',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['3.1 divide by factors'],
  misconceptions: ['M26', 'M27'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ place: runPlaces[0], In_A: 20, ambient_degC: 35, circuits: 5, insulated_mm: 0 }],
    na: [{ place: runPlaces[0], In_A: 20, ambient_degC: 45, circuits: 4, insulated_mm: 0 }],
  },
  build: built,
};

/** Q40: the table current that a device and its factors ask for. */
export const tableNeeded = defineTemplate(tableNeededSpec);

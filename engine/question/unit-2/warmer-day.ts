import type { CastKey } from '../../examples/cast.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { kelvin } from '../../quantity.ts';
import { cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { inTheScale } from '../degrees.ts';
import { heldCurrent } from '../experiment.ts';
import { given, riseText, temperatureText } from '../figures.ts';
import { isWithin, staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { chainOf, estimateWidth, whole_degC } from '../settled-chain.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q21: the same current on a warmer or a cooler day.

interface Case {
  readonly cord: CastKey;
  readonly place: string;
  readonly ambient_degC: number;
  readonly other_degC: number;
  readonly I_A: number;
}

const places = [
  'A kettle lead on a market stall',
  'A heater lead in a polytunnel',
  'A press lead in a laundry',
  'A pump lead in a farm shed',
  'A mixer lead in a bakery',
  'A dryer lead in a site cabin',
] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const place = random.pick(places);
  const ambient_degC = random.whole(12, 45);
  const other_degC = ambient_degC + random.whole(12, 18) * random.pick([-1, 1]);
  const rise = random.whole(20, 48);
  if (other_degC < 12 || other_degC > 45) return null;
  const cold = buildCase(heldCurrent(cord, ambient_degC, 1, 1800));
  const I_A = Math.round(ratingAt(cold, kelvin(ambient_degC + rise)) ?? 0);
  if (I_A < 2 || I_A > 26) return null;
  const drawn = { cord: cord.key, place, ambient_degC, other_degC, I_A };
  return isClear(drawn, practice) ? drawn : null;
}

/** Where the cord settles on the first day, in whole degrees as it is told, and on the other [K]. */
function factsOf({ cord: key, ambient_degC, other_degC, I_A }: Case) {
  const cord = cordOf(key);
  const days = [ambient_degC, other_degC].map((air) => chainOf(heldCurrent(cord, air, I_A, 1800))?.conductor);
  const [first, T] = days;
  if (first === undefined || T === undefined) throw new Error('the case of Q21 settles');
  return { cord, first_degC: whole_degC(first), T };
}

type Facts = ReturnType<typeof factsOf>;

/** The rise of the first day put on the other day's air [K]. */
const estimateOf = ({ ambient_degC, other_degC }: Case, { first_degC }: Facts) =>
  kelvin(other_degC + first_degC - ambient_degC);

function isClear(drawn: Case, practice: Practice): boolean {
  const facts = factsOf(drawn);
  const answer = answerOf(drawn, facts, practice);
  const { tolerance, value } = answer;
  const isTold = [drawn.ambient_degC, drawn.other_degC].some((air) => isWithin(tolerance, value, kelvin(air)));
  const near = isWithin(tolerance, value, estimateOf(drawn, facts), 0.4);
  return near && !isTold && staysApart(answer, wrongOf(drawn, facts, practice));
}

function answerOf({ other_degC }: Case, { T }: Facts, practice: Practice): NumberAnswer {
  const rise = T - kelvin(other_degC);
  const tolerance = { kind: 'absolute', by: estimateWidth(rise) } as const;
  const text = temperatureText(whole_degC(T), practice);
  return { value: T, kind: 'temperature', unit: '°C', tolerance, figures: 2, span: rise, text };
}

function wrongOf({ ambient_degC, other_degC }: Case, { first_degC }: Facts, practice: Practice): WrongValue[] {
  const warmer = other_degC > ambient_degC;
  const same: WrongValue = {
    id: 'M25',
    value: kelvin(first_degC),
    trueOf: 'is where it settles in the first air.',
    ask: `The cord starts the second day ${warmer ? 'warmer' : 'cooler'} by ${riseText(Math.abs(other_degC - ambient_degC))}. Where would that go?`,
  };
  const riseAlone = {
    id: 'M17',
    trueOf: 'is the rise alone, told as a temperature.',
    ask: 'Before the current flows, the cord is as warm as the air. What does the current add to that?',
  } as const;
  const onTop = {
    id: 'M17',
    trueOf: 'adds a whole temperature to the air, as if all of it were rise.',
    whyNot: 'Part of that temperature was the first air. Only the rise is carried over.',
    ask: 'How much of the first temperature was there before any current flowed?',
  } as const;
  return [
    same,
    ...inTheScale(practice, riseAlone, (told) => told(first_degC) - told(ambient_degC)),
    ...inTheScale(practice, onTop, (told) => told(first_degC) + told(other_degC)),
  ];
}

const law = formula(
  String.raw`\theta_2 \approx \theta_{\mathrm{a}2} + (\theta_1 - \theta_{\mathrm{a}1})`,
  'Theta two is about theta a two plus the difference of theta one and theta a one.',
);

function solutionOf(drawn: Case, facts: Facts, answer: NumberAnswer, practice: Practice) {
  const { ambient_degC, other_degC } = drawn;
  const { cord, first_degC, T } = facts;
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const rise = first_degC - ambient_degC;
  const now = Math.round(T - kelvin(other_degC));
  return [
    words`In the first air the rise is from ${told(ambient_degC)} to ${told(first_degC)}, so ${quantity(riseText(rise))}.`,
    words`The same current makes nearly the same heat, so nearly the same rise. It now begins at ${told(other_degC)}.`,
    words`${law}`,
    words`Together that is about ${told(other_degC + rise)}. The engine gives ${quantity(answer.text)}, a rise of ${quantity(riseText(now))}.`,
    words`The two rises differ a little: warmer copper makes more heat, and a warmer surface sheds more for each kelvin.`,
    words`${ratingNote(cord)}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const facts = factsOf(drawn);
  const { cord, first_degC } = facts;
  const { ambient_degC, other_degC, I_A } = drawn;
  const answer = answerOf(drawn, facts, practice);
  const told = (T_degC: number) => temperatureText(T_degC, practice);
  const I = given(I_A, 'A');
  return {
    kind: 'number',
    stem: [
      words`${drawn.place} is ${cord.words} in still air. It carries ${quantity(I)}.`,
      words`In air at ${quantity(told(ambient_degC))} its conductor settles at ${quantity(told(first_degC))}.`,
      words`On another day the air is at ${quantity(told(other_degC))}, and the current is the same. About where does the conductor settle?`,
    ],
    ask: 'A temperature with its unit. Two figures are enough.',
    scenarios: [
      { name: `air at ${told(other_degC)}`, scenario: heldCurrent(cord, other_degC, I_A, 3600) },
      { name: `air at ${told(ambient_degC)}`, scenario: heldCurrent(cord, ambient_degC, I_A, 3600) },
    ],
    hints: [
      words`How far above the air is the conductor on the first day?`,
      words`The same current makes nearly the same heat. What does that say of the rise?`,
      words`Put the rise of the first day on the air of the other.`,
    ],
    solution: solutionOf(drawn, facts, answer, practice),
    look: 'Open both cases and compare how far each conductor ends above its own air.',
    cautions: overloadCaution(cord, I_A),
    answer,
    wrong: wrongOf(drawn, facts, practice),
  };
}

/** How Q21 is drawn and built. */
export const warmerDaySpec: TemplateSpec<Case> = {
  id: 'Q21',
  version: 1,
  lesson: '2.1',
  kind: 'number',
  title: 'Another day, another ambient',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['2.1 estimate the effect of ambient and draught'],
  misconceptions: ['M25', 'M17'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', place: 'A kettle lead on a market stall', ambient_degC: 25, other_degC: 40, I_A: 17 }],
    na: [{ cord: 'A16', place: 'A kettle lead on a market stall', ambient_degC: 25, other_degC: 40, I_A: 18 }],
  },
  build: built,
};

/** Q21: where a conductor settles when only the ambient changes. */
export const warmerDay = defineTemplate(warmerDaySpec);

import type { CastKey } from '../../examples/cast.ts';
import { cast } from '../../examples/cast.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { kelvin } from '../../quantity.ts';
import { carrying } from '../carrying.ts';
import { type Cord, cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { inTheScale } from '../degrees.ts';
import { heldCurrent } from '../experiment.ts';
import { given, plainNumber, riseText, rounded, temperatureText } from '../figures.ts';
import { isWithin, staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { chainOf, estimateWidth, whole_degC } from '../settled-chain.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q21b: the surface of a cord when a draught begins.

interface Case {
  readonly cord: CastKey;
  readonly place: string;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly speed_mPerS: number;
}

const places = [
  'in a joinery, where somebody opens both doors',
  'on a market stall, as the wind gets up',
  'in a theatre workshop, when the fan is turned on',
  'in a boatyard shed, with the slip gate open',
  'in a polytunnel, once the vents are up',
  'in a laundry, beside the extract fan',
] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const place = random.pick(places);
  const ambient_degC = random.whole(18, 40);
  const rise = random.whole(36, 64);
  const speed_mPerS = random.pick([0.5, 0.8, 1, 1.2, 1.5, 2, 2.5, 3]);
  const cold = buildCase(heldCurrent(cord, ambient_degC, 1, 1800));
  const I_A = Math.round(ratingAt(cold, kelvin(ambient_degC + rise)) ?? 0);
  if (I_A < 2 || I_A > 30) return null;
  const drawn = { cord: cord.key, place, ambient_degC, I_A, speed_mPerS };
  return isClear(drawn, practice) ? drawn : null;
}

const draughty = ({ key, practice }: Cord, { ambient_degC, I_A, speed_mPerS }: Case) =>
  carrying(cast[key], { kind: 'draught', ambient_degC, speed_mPerS }, I_A, practice, 3600);

/** The surface in still air as it is told, in the draught by the engine [K], and how much more heat each kelvin sheds there. */
function factsOf(drawn: Case) {
  const { cord: key, ambient_degC, I_A } = drawn;
  const cord = cordOf(key);
  const still = chainOf(heldCurrent(cord, ambient_degC, I_A, 3600));
  const blown = chainOf(draughty(cord, drawn));
  if (!still || !blown) throw new Error('the case of Q21b settles');
  const Ta = kelvin(ambient_degC);
  const eachKelvin = [still, blown].map(({ flow, surface }) => flow / (surface - Ta)) as [number, number];
  const times = rounded(eachKelvin[1] / eachKelvin[0], 2);
  return { cord, still_degC: whole_degC(still.surface), T: blown.surface, times };
}

type Facts = ReturnType<typeof factsOf>;

function isClear(drawn: Case, practice: Practice): boolean {
  const facts = factsOf(drawn);
  const answer = answerOf(drawn, facts, practice);
  const { tolerance, value } = answer;
  const estimate = kelvin(drawn.ambient_degC + (facts.still_degC - drawn.ambient_degC) / facts.times);
  return isWithin(tolerance, value, estimate, 0.5) && staysApart(answer, wrongOf(drawn, facts, practice));
}

function answerOf({ ambient_degC }: Case, { T }: Facts, practice: Practice): NumberAnswer {
  const rise = T - kelvin(ambient_degC);
  const tolerance = { kind: 'absolute', by: estimateWidth(rise) } as const;
  const text = temperatureText(whole_degC(T), practice);
  return { value: T, kind: 'temperature', unit: '°C', tolerance, figures: 2, span: rise, text };
}

function wrongOf({ ambient_degC }: Case, { still_degC, times }: Facts, practice: Practice): WrongValue[] {
  const riseAlone = {
    id: 'M17',
    trueOf: 'is the rise alone, told as a temperature.',
    ask: 'Can a draught make the cord cooler than the air that blows?',
  } as const;
  const shrunk = {
    id: 'M17',
    trueOf: 'shrinks the whole temperature, as if all of it were rise.',
    whyNot: 'A draught shrinks the rise, which is counted from the air. The air itself stays as it was.',
    ask: 'By that rule, how cool would the cord be in a very strong wind?',
  } as const;
  return [
    ...inTheScale(practice, riseAlone, (told) => (told(still_degC) - told(ambient_degC)) / times),
    ...inTheScale(practice, shrunk, (told) => told(still_degC) / times),
  ];
}

const law = formula(
  String.raw`\theta_\mathrm{s} = \theta_\mathrm{a} + \Delta\theta_\mathrm{s} / r`,
  'Theta s is theta a plus delta theta s over r.',
);

function solutionOf(drawn: Case, facts: Facts, answer: NumberAnswer, practice: Practice) {
  const { ambient_degC } = drawn;
  const { cord, still_degC, times } = facts;
  const rise = still_degC - ambient_degC;
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  return [
    words`In still air the surface is ${quantity(riseText(rise))} above the air.`,
    words`Once it has settled, it sheds as much as the current makes. That is nearly the same heat as before.`,
    words`Each kelvin now sheds ${plainNumber(times, 2)} times as much. So divide the rise by that: ${quantity(riseText(rise / times))} are enough.`,
    words`${law}`,
    words`That is about ${told(ambient_degC + rise / times)}. The engine gives ${quantity(answer.text)}, since cooler copper makes a little less heat.`,
    words`${ratingNote(cord)}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const facts = factsOf(drawn);
  const { cord, still_degC, times } = facts;
  const { ambient_degC, I_A, speed_mPerS } = drawn;
  const answer = answerOf(drawn, facts, practice);
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const wind = given(speed_mPerS, 'm/s');
  return {
    kind: 'number',
    stem: [
      words`It is ${told(ambient_degC)} ${drawn.place}. In still air ${cord.words} carrying ${quantity(given(I_A, 'A'))} had settled with its surface at ${told(still_degC)}.`,
      words`Now a draught of ${quantity(wind)} blows across it. For each kelvin of rise, its surface sheds ${quantity(plainNumber(times, 2))} times as much heat.`,
      words`The air is no cooler and the current is the same. About where does the surface settle now?`,
    ],
    ask: 'A temperature with its unit. Two figures are enough.',
    scenarios: [
      { name: `draught of ${wind}`, scenario: draughty(cord, drawn) },
      { name: 'still air', scenario: heldCurrent(cord, ambient_degC, I_A, 3600) },
    ],
    hints: [
      words`What does the draught change: the heat made, or how easily it is shed?`,
      words`How far above the air was the surface before?`,
      words`If each kelvin sheds more, fewer kelvins are enough. Put that smaller rise on the air.`,
    ],
    solution: solutionOf(drawn, facts, answer, practice),
    look: 'Open both cases and compare where each surface ends above the air.',
    cautions: overloadCaution(cord, I_A),
    answer,
    wrong: wrongOf(drawn, facts, practice),
  };
}

/** How Q21b is drawn and built. */
export const inADraughtSpec: TemplateSpec<Case> = {
  id: 'Q21b',
  version: 1,
  lesson: '2.1',
  kind: 'number',
  title: 'In a draught',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['2.1 estimate the effect of ambient and draught'],
  misconceptions: ['M17'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', place: places[0], ambient_degC: 30, I_A: 20, speed_mPerS: 1 }],
    na: [{ cord: 'A16', place: places[0], ambient_degC: 30, I_A: 22, speed_mPerS: 1 }],
  },
  build: built,
};

/** Q21b: where a cord's surface settles in a draught. */
export const inADraught = defineTemplate(inADraughtSpec);

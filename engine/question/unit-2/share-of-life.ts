import { type CastKey, cast } from '../../examples/cast.ts';
import { ageingMeasuredTo, ageingRate, gasConstant, lifeAt, lifeShare } from '../../heating/ageing.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { type Ageing, pvc70 } from '../../material/plastics.ts';
import { celsius, kelvin } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { heldCurrent } from '../experiment.ts';
import { amount, given, plainNumber, rounded, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q33: the share of the insulation's life that some hours above the rating use.

interface Case {
  readonly cord: CastKey;
  readonly place: string;
  readonly ambient_degC: number;
  readonly T_degC: number;
  readonly hours: number;
}

const places = [
  'A heater lead in a polytunnel',
  'A tumbler lead in a laundry',
  'The lead of a proving cabinet in a bakery',
  'A fan heater lead in a site cabin',
  'A lamp lead in a theatre workshop',
  'A glue heater lead in a joinery',
] as const;

const hour = 3600;

function ageingOf(): Ageing {
  if (!pvc70.ageing) throw new Error('PVC has ageing data');
  return pvc70.ageing;
}

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const place = random.pick(places);
  const ambient_degC = random.whole(10, 40);
  const T_degC = random.whole(75, celsius(ageingMeasuredTo) - 1);
  const part = random.whole(20, 200) / 1000;
  const hours = rounded((part * lifeAt(ageingOf(), kelvin(T_degC))) / hour, 2);
  const drawn = { cord: cord.key, place, ambient_degC, T_degC, hours };
  const I = currentOf(drawn);
  return I > cord.rating && I <= 30 && hours <= 2500 && isClear(drawn) ? drawn : null;
}

/** The current that holds the conductor at the temperature of the stem, to a tenth of an ampere [A]. */
function currentOf({ cord: key, ambient_degC, T_degC }: Case): number {
  const I = ratingAt(buildCase(heldCurrent(cordOf(key), ambient_degC, 1, 1800)), kelvin(T_degC));
  return Math.round(10 * (I ?? 0)) / 10;
}

function isClear(drawn: Case): boolean {
  const answer = answerOf(drawn);
  return answer.value >= 0.01 && answer.value <= 0.25 && staysApart(answer, wrong);
}

function answerOf({ T_degC, hours }: Case): NumberAnswer {
  const value = lifeShare(ageingOf(), kelvin(T_degC), hours * hour);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value, kind: 'ratio', unit: '%', tolerance, figures: 3, text: amount(100 * value, 3, '%') };
}

const wrong: readonly WrongValue[] = [
  {
    id: 'M24',
    value: 1,
    trueOf: 'would fit a plastic that fails as soon as it passes its rating.',
    whyNot: 'The rating is a limit for a long life, not a melting point. Above it the plastic lasts, but not as long.',
    ask: 'By the law given, how many hours does the plastic last at this temperature?',
  },
];

/** The hours of the stem, begun at the steady state, so that the bench counts the life used. */
function scenarioOf(drawn: Case, practice: Practice): Scenario {
  const I_A = currentOf(drawn);
  const { cord, ambient_degC, hours } = drawn;
  return { ...carrying(cast[cord], ambient_degC, I_A, practice, hours * hour), start: { steadyAt_A: I_A } };
}

const law = formula(
  String.raw`L = L_{70}\,e^{\frac{E_\mathrm{a}}{R}\left(\frac{1}{T} - \frac{1}{T_{70}}\right)}`,
  'L is L seventy times e to the power: E a over R, times one over T minus one over T seventy.',
);

function solutionOf(drawn: Case, answer: NumberAnswer, practice: Practice) {
  const { cord, T_degC, hours } = drawn;
  const ageing = ageingOf();
  const T = kelvin(T_degC);
  const life = lifeAt(ageing, T) / hour;
  return [
    words`Use absolute temperatures: ${quantity(amount(T, 5, 'K'))}, and ${quantity(amount(ageing.refTemperature.value, 5, 'K'))} for the rating.`,
    words`${law}`,
    words`At ${quantity(temperatureText(T_degC, practice))} it ages ${plainNumber(ageingRate(ageing, T), 3)} times as fast as at its rating. So it lasts ${quantity(amount(life, 3, 'h'))}.`,
    words`The ${quantity(given(hours, 'h'))} are ${quantity(answer.text)} of that.`,
    words`Real compounds differ, so it is a guide to how harm adds up. The energy was measured for one PVC; the ${quantity(amount(ageing.lifeAtRef.value / hour, 5, 'h'))} are from memory.`,
    words`${ratingNote(cordOf(cord))}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const cord = cordOf(drawn.cord);
  const answer = answerOf(drawn);
  const ageing = ageingOf();
  const I = currentOf(drawn);
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const spell = given(drawn.hours, 'h');
  return {
    kind: 'number',
    stem: [
      words`${drawn.place} was ${cord.words}. It carried ${quantity(given(I, 'A'))}, more than its rating. So its conductor was at ${told(drawn.T_degC)} for ${quantity(spell)} in all.`,
      words`Its PVC lasts ${quantity(amount(ageing.lifeAtRef.value / hour, 5, 'h'))} at its rating of ${told(celsius(ageing.refTemperature.value))}. Its life L at another absolute temperature T follows this law.`,
      words`${law}`,
      words`The activation energy is ${quantity(amount(ageing.activationEnergy.value / 1e3, 2, 'kJ/mol'))}, and R is ${quantity(amount(gasConstant, 4, 'J/(mol·K)'))}. What share of its life did those hours use?`,
    ],
    ask: 'A share in %. Three figures are enough.',
    scenarios: [{ name: `${given(I, 'A')} for ${spell}`, scenario: scenarioOf(drawn, practice) }],
    hints: [
      words`How long would the plastic last, if it stayed at that temperature for ever?`,
      words`Put the temperatures into the law in kelvin, which is °C and 273.15 more. Mind kJ and J.`,
      words`The share used is the hours, over the hours it lasts at that temperature.`,
    ],
    solution: solutionOf(drawn, answer, practice),
    look: `Divide by the life at ${temperatureText(drawn.T_degC, practice)}, not by the life at the rating. The case counts the life used.`,
    cautions: overloadCaution(cord, I),
    answer,
    wrong,
  };
}

/** How Q33 is drawn and built. */
export const shareOfLifeSpec: TemplateSpec<Case> = {
  id: 'Q33',
  version: 1,
  lesson: '2.3',
  kind: 'number',
  title: 'A share of its life',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['2.3 weigh time at temperature'],
  misconceptions: ['M24'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', place: places[0], ambient_degC: 30, T_degC: 88, hours: 300 }],
    na: [{ cord: 'A16', place: places[0], ambient_degC: 30, T_degC: 88, hours: 300 }],
  },
  build: built,
};

/** Q33: how much of its life a spell above the rating uses. */
export const shareOfLife = defineTemplate(shareOfLifeSpec);

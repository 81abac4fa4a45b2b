import { cableOf } from '../../cable/cable.ts';
import { cordRating } from '../../cable/cord-ratings.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase, leadResistance } from '../../heating/thermal-case.ts';
import { metals } from '../../material/metals.ts';
import { resistanceRatio } from '../../material/resistivity.ts';
import { celsius, kelvin } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { wholeF } from '../degrees.ts';
import { settlesAt } from '../experiment.ts';
import { amount, given, plainNumber, rounded, temperatureText } from '../figures.ts';
import { isWithin, staysApart } from '../guard.ts';
import { toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { loadedCaution } from './dead-lead.ts';
import { leadOf, otherMetals, sizesOf, sizeText } from './metal-leads.ts';

// Q15b: the current of a warm lead whose voltage is held.

interface Case {
  readonly place: string;
  readonly metal: 'copper' | 'aluminium' | 'steel';
  readonly size: number;
  /** In metres, or feet in `na`. */
  readonly count: number;
  readonly U_V: number;
}

interface Facts {
  /** The loop as it is told, to three figures [Ω]. */
  readonly R20: number;
  /** Where the conductors settle, to whole degrees [°C]. */
  readonly T_degC: number;
  /** The current there, by the engine alone [A]. */
  readonly I: number;
}

const places = [
  'On a bench in a theatre workshop',
  'On a tutor’s table',
  'In a boatyard shed',
  'In the store of a joinery',
  'In a village hall',
  'In a cabin',
];

/** A lead is warmed in air of this temperature, from which its metal’s coefficient counts too [°C]. */
const ambient_degC = 20;
/** The least and greatest voltage of the supply: isolated, and below what the bench allows (our choice) [V]. */
const volts = [0.5, 12] as const;
/** A lead cooler than this shows too little to measure [°C]. */
const coolest = 32;

function drawnCase(random: Random, practice: Practice): Case | null {
  const metal = random.pick(['copper', 'copper', 'aluminium', 'steel'] as const);
  const size = random.pick(sizesOf(practice));
  const count = practice === 'iec' ? random.whole(2, 12) : random.whole(6, 40);
  const known = { place: random.pick(places), metal, size, count };
  const cold = buildCase(scenarioOf({ ...known, U_V: 1 }, practice));
  const cable = cableOf(leadOf(size, metal, practice));
  const T = kelvin(random.whole(coolest, celsius(ratingOf(cable) as number)));
  const I = ratingAt(cold, T) ?? 0;
  const drawn: Case = { ...known, U_V: rounded(I * leadResistance(cold, T), 2) };
  if (drawn.U_V < volts[0] || drawn.U_V > volts[1] || I > mostAmps(drawn, practice)) return null;
  return isClear(drawn, practice) ? drawn : null;
}

/** What its table allows a copper cord, and no other metal more than copper [A]. */
const mostAmps = ({ size }: Case, practice: Practice) => cordRating(cableOf(leadOf(size, 'copper', practice)))?.I ?? 0;

/** The figures as told lead to the engine's current, and every slip is well apart. */
function isClear(drawn: Case, practice: Practice): boolean {
  const facts = factsOf(drawn, practice);
  const answer = answerOf(drawn, facts);
  const fair = isWithin(answer.tolerance, answer.value, facts.I, 0.6);
  return fair && facts.T_degC >= coolest && staysApart(answer, wrongOf(drawn, facts, practice));
}

function scenarioOf({ metal, size, count, U_V }: Case, practice: Practice): Scenario {
  return {
    ...carrying(leadOf(size, metal, practice), ambient_degC, 1, practice),
    lead: { length_m: toldLength(count, practice).L },
    supply: [{ kind: 'voltage', U_V }],
  };
}

function factsOf(drawn: Case, practice: Practice): Facts {
  const of = buildCase(scenarioOf(drawn, practice));
  const T = settlesAt(of) as number;
  return {
    R20: rounded(leadResistance(of, kelvin(20)), 3),
    T_degC: Math.round(celsius(T)),
    I: drawn.U_V / leadResistance(of, T),
  };
}

/** The coefficient as it is told, to three figures [1/K]. */
const alphaOf = ({ metal }: Case) => rounded(metals[metal].alpha20.value, 3);

/** How many times its ohms of 20 °C the lead has at a temperature [°C]. */
const grownAt = (drawn: Case, T_degC: number) => resistanceRatio(alphaOf(drawn), 0, kelvin(T_degC));

function answerOf(drawn: Case, { R20, T_degC }: Facts): NumberAnswer {
  const value = drawn.U_V / (R20 * grownAt(drawn, T_degC));
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value, kind: 'current', unit: 'A', tolerance, figures: 3, text: amount(value, 3, 'A') };
}

function wrongOf(drawn: Case, { R20, T_degC }: Facts, practice: Practice): WrongValue[] {
  const cold = drawn.U_V / R20;
  const alpha = alphaOf(drawn);
  const inF: WrongValue = {
    id: 'M14',
    value: cold / (1 + alpha * wholeF(T_degC)),
    trueOf: 'puts °F into a formula that counts in kelvin.',
    whyNot: 'The coefficient is for each kelvin, counted from 20\u00A0°C. Take the degrees above that, in °C.',
    ask: 'By that rule, which current flows at 68\u00A0°F? Is that volts over the cold ohms?',
  };
  return [
    {
      id: 'M16',
      value: cold,
      trueOf: 'is the current of the first moment, while the lead is cold.',
      whyNot: 'A warm lead has more ohms than the cold reading says. With the volts held it draws less.',
      ask: 'Which ohms does the supply see once the lead is warm?',
    },
    {
      id: 'M13',
      value: cold / (1 - alpha * (T_degC - 20)),
      trueOf: 'is more than it drew when cold.',
      ask: 'In the lesson the volts were held and the lead warmed. Which way did the amps go?',
    },
    {
      id: 'M14',
      value: cold / (1 + alpha * T_degC),
      trueOf: 'counts the degrees from zero.',
      ask: 'By that rule, which current flows at 20\u00A0°C? Is that volts over the cold ohms?',
    },
    ...(practice === 'na' ? [inF] : []),
  ];
}

const law = formula(
  String.raw`I = \frac{U}{R_{20} (1 + \alpha (\theta - 20))}`,
  'I is U over R twenty times the sum of one and alpha times theta minus twenty.',
);

/** Ohms, or milliohms below one, to three figures. */
const ohms = (R: number) => (R < 1 ? amount(R * 1e3, 3, 'mΩ') : amount(R, 3, 'Ω'));

function solutionOf(drawn: Case, { R20, T_degC }: Facts, { text }: NumberAnswer) {
  const above = T_degC - 20;
  const [grown, warm] = [alphaOf(drawn) * above, R20 * grownAt(drawn, T_degC)];
  return [
    words`It is ${quantity(given(above, 'K'))} above ${quantity(given(20, '°C'))}. Times the coefficient that is ${quantity(plainNumber(grown, 3))}.`,
    words`By that part of itself the resistance has grown. So the loop now has ${quantity(ohms(warm))}.`,
    words`${law}`,
    words`It began with ${quantity(amount(drawn.U_V / R20, 3, 'A'))}. Now it draws ${quantity(text)}.`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const facts = factsOf(drawn, practice);
  const answer = answerOf(drawn, facts);
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const U = given(drawn.U_V, 'V');
  const long = quantity(toldLength(drawn.count, practice).text);
  return {
    kind: 'number',
    stem: [
      words`${drawn.place} a lead of ${quantity(sizeText(drawn.size, practice))} lies stretched out, ${long} long. Its conductors are ${drawn.metal}. Their loop has ${quantity(ohms(facts.R20))} at ${told(20)}.`,
      words`An isolated supply now holds ${quantity(U)} across that loop. The lead warms from ${told(ambient_degC)} and settles at ${told(facts.T_degC)}.`,
      words`For ${drawn.metal} the temperature coefficient is ${quantity(plainNumber(alphaOf(drawn), 3))} for each kelvin, counted from ${quantity(given(20, '°C'))}. What current flows in the end?`,
    ],
    ask: 'A current with its unit. Three figures are enough.',
    scenarios: [{ name: `${U} held`, scenario: scenarioOf(drawn, practice) }],
    hints: [
      words`First find how many kelvin it is above ${quantity(given(20, '°C'))}.`,
      words`Work out the ohms of the loop when it is warm.`,
      words`The current is the volts that are held, divided by the ohms of that moment.`,
    ],
    solution: solutionOf(drawn, facts, answer),
    look: 'Open the case and read the current at the start and at the end. What else has changed?',
    cautions: drawn.metal === 'copper' ? [loadedCaution] : [loadedCaution, otherMetals],
    answer,
    wrong: wrongOf(drawn, facts, practice),
  };
}

/** How Q15b is drawn and built. */
export const ampsWhenWarmSpec: TemplateSpec<Case> = {
  id: 'Q15b',
  version: 1,
  lesson: '1.4',
  kind: 'number',
  title: 'Amps when warm',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['1.4 predict the drift with volts held and with amps held'],
  misconceptions: ['M13', 'M14', 'M16'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ place: 'On a tutor’s table', metal: 'steel', size: 0.75, count: 3, U_V: 6 }],
    na: [{ place: 'On a tutor’s table', metal: 'steel', size: 18, count: 10, U_V: 4.5 }],
  },
  build: built,
};

/** Q15b: the current that a warm lead draws while its voltage is held. */
export const ampsWhenWarm = defineTemplate(ampsWhenWarmSpec);

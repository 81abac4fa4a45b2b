import { awgArea } from '../../conductor/awg.ts';
import { metals } from '../../material/metals.ts';
import { amount, plainNumber, rounded, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import { perLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, unitSpace, words } from '../words.ts';

// Q08: resistance of one gauge from that of another, some numbers away.

interface Case {
  readonly place: string;
  readonly from_AWG: number;
  readonly to_AWG: number;
  /** As the box says it: mΩ/m, or mΩ/ft in `na`. */
  readonly R: number;
}

const places = [
  'In the store of a boatyard',
  'In a joinery',
  'In a theatre workshop',
  'On a farm',
  'In a van full of drums',
  'In the loft of a village hall',
  'In a cabin',
];

/** By how many per cent a wire may have more ohms than copper of its area: lay and hard drawing, from memory. */
const mostMore = 4;

function drawnCase(random: Random, practice: Practice): Case | null {
  const from_AWG = 2 * random.whole(5, 9);
  const to_AWG = from_AWG + random.pick([-6, -5, -4, -3, -2, 2, 3, 4, 5, 6]);
  if (to_AWG < 8 || to_AWG > 24) return null;
  const copper = (metals.copper.rho20.value * (1 + random.whole(0, mostMore) / 100)) / awgArea(from_AWG);
  const R = rounded(copper * perLength[practice].length * 1e3, 3);
  const drawn = { place: random.pick(places), from_AWG, to_AWG, R };
  return staysApart(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

const ohmsPerMetre = ({ R }: Case, practice: Practice) => (R * 1e-3) / perLength[practice].length;
const steps = ({ from_AWG, to_AWG }: Case) => to_AWG - from_AWG;
const areas = ({ from_AWG, to_AWG }: Case) => awgArea(from_AWG) / awgArea(to_AWG);

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = ohmsPerMetre(drawn, practice) * areas(drawn);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  const { resistance: unit, length } = perLength[practice];
  const text = amount(value * length * 1e3, 3, unit);
  return { value, kind: 'resistance per metre', unit, tolerance, figures: 3, text };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const R = ohmsPerMetre(drawn, practice);
  const thinner = steps(drawn) > 0;
  return [
    {
      id: 'M08',
      value: R / areas(drawn),
      trueOf: `would be a ${thinner ? 'thicker' : 'thinner'} wire.`,
      ask: `Is ${drawn.to_AWG}${unitSpace}AWG the thicker of the two, or the thinner?`,
    },
    {
      id: 'M07',
      value: R * Math.sqrt(areas(drawn)),
      trueOf: 'goes with the diameters, not with the areas.',
      ask: 'Draw a circle, and one twice as wide. How many of the first fit in the second?',
    },
  ];
}

const law = formula(
  String.raw`\frac{R'_2}{R'_1} = 92^{(N_2 - N_1)/19.5}`,
  'R prime two over R prime one is ninety-two to the power of N two minus N one, over nineteen and a half.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { resistance: unit, name: each } = perLength[practice];
  const gauge = (number: number) => quantity(`${number}${unitSpace}AWG`);
  const n = steps(drawn);
  const way = n > 0 ? 'up' : 'down';
  return {
    kind: 'number',
    stem: [
      words`${drawn.place} a box says that its ${gauge(drawn.from_AWG)} copper wire has ${quantity(amount(drawn.R, 3, unit))} at ${quantity(temperatureText(20, practice))}.`,
      words`The wire in the next box is the same copper, but ${gauge(drawn.to_AWG)}. What is the resistance of each ${each} of that wire?`,
    ],
    ask: `A resistance for each ${perLength[practice].name}, with the unit. Three figures are enough.`,
    scenarios: [],
    hints: [
      words`Which of the two is thicker? The gauge runs backwards.`,
      words`Three numbers up is about half the area, so about twice the resistance.`,
      words`Here is the rule, with N for the gauge number: ${law}`,
    ],
    solution: [
      words`From ${gauge(drawn.from_AWG)} to ${gauge(drawn.to_AWG)} it is ${quantity(String(Math.abs(n)))} numbers ${way}, so the wire is ${n > 0 ? 'thinner' : 'thicker'}.`,
      words`${law}`,
      words`With these numbers that is ${quantity(plainNumber(areas(drawn), 3))}.`,
      words`The resistance of the first wire times that gives ${quantity(answer.text)}.`,
    ],
    look: 'Three numbers are about a factor of two. How many threes are there, and which way?',
    cautions: [],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q08 is drawn and built. */
export const gaugeStepsSpec: TemplateSpec<Case> = {
  id: 'Q08',
  version: 1,
  lesson: '1.2',
  kind: 'number',
  title: 'Steps of the gauge',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['1.2 rank mm² and AWG on one scale'],
  misconceptions: ['M07', 'M08'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ place: 'In a joinery', from_AWG: 14, to_AWG: 18, R: 8.46 }],
    na: [{ place: 'In a joinery', from_AWG: 14, to_AWG: 18, R: 2.58 }],
  },
  build: built,
};

/** Q08: the resistance of one gauge from that of another. */
export const gaugeSteps = defineTemplate(gaugeStepsSpec);

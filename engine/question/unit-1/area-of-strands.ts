import { amount, given } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q10: the metal area of a stranded conductor, from the count and the diameter of its wires.

interface Case {
  readonly lead: string;
  readonly count: number;
  readonly d_mm: number;
}

const leads = [
  'A lead without a marking',
  'The lead of an old stage lamp',
  'A lead that came with a polytunnel heater',
  'The tail of a farm pump',
  'A lead from the bottom of a van',
  'A lead that the laundry wants to throw away',
  'A lead from a boatyard',
  'The lead of a proving cabinet',
];

function drawnCase(random: Random): Case | null {
  const drawn = {
    lead: random.pick(leads),
    count: 2 * random.whole(8, 42),
    d_mm: random.pick([0.15, 0.18, 0.2, 0.22, 0.25]),
  };
  return staysApart(answerOf(drawn), wrongOf(drawn)) ? drawn : null;
}

const areaOf = ({ count, d_mm }: Case) => (count * Math.PI * d_mm ** 2) / 4; // mm²

function answerOf(drawn: Case): NumberAnswer {
  const value = areaOf(drawn);
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value: value * 1e-6, kind: 'area', unit: 'mm²', tolerance, figures: 3, text: amount(value, 3, 'mm²') };
}

const wrongOf = ({ count, d_mm }: Case): WrongValue[] => [
  {
    id: 'M06',
    value: count * d_mm * 1e-6,
    trueOf: 'adds up diameters, as if mm² were a width.',
    ask: 'What is the area of a circle one millimetre across?',
  },
  {
    id: 'M07',
    value: (count * Math.PI * d_mm * 1e-6) / 4,
    trueOf: 'leaves the diameter without its square.',
    ask: 'Draw a circle, and one twice as wide. How many of the first fit in the second?',
  },
];

const law = formula(String.raw`A = n \frac{\pi d^2}{4}`, 'A is n times pi d squared over four.');

function built(drawn: Case): BuiltNumber {
  const answer = answerOf(drawn);
  const one = areaOf({ ...drawn, count: 1 });
  const d = quantity(given(drawn.d_mm, 'mm'));
  return {
    kind: 'number',
    stem: [
      words`${drawn.lead} lies on the bench, unplugged, with one end cut clean. One conductor has ${quantity(String(drawn.count))} thin wires.`,
      words`With a micrometer you find that each wire is ${d} across. What is the area of metal in that conductor?`,
    ],
    ask: 'An area with its unit. Three figures are enough.',
    scenarios: [],
    hints: [
      words`Begin with one wire. Its section is a circle.`,
      words`The area of a circle goes with its diameter squared.`,
      words`Then take that area as often as there are wires.`,
    ],
    solution: [
      words`One wire has ${quantity(amount(one, 3, 'mm²'))}.`,
      words`There are ${quantity(String(drawn.count))} of them.`,
      words`${law}`,
      words`Together that is ${quantity(answer.text)}.`,
    ],
    look: 'Work out one wire first, with the diameter squared.',
    cautions: [],
    answer,
    wrong: wrongOf(drawn),
  };
}

/** How Q10 is drawn and built. */
export const areaOfStrandsSpec: TemplateSpec<Case> = {
  id: 'Q10',
  version: 1,
  lesson: '1.2',
  kind: 'number',
  title: 'Count the strands',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['1.2 find the area of a conductor from its strands'],
  misconceptions: ['M06', 'M07'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: 'A lead without a marking', count: 30, d_mm: 0.25 }],
    na: [{ lead: 'A lead without a marking', count: 30, d_mm: 0.25 }],
  },
  build: built,
};

/** Q10: metal area from the count and diameter of strands. */
export const areaOfStrands = defineTemplate(areaOfStrandsSpec);

import { cableOf } from '../../cable/cable.ts';
import { amount, given, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import { markedAs, perLength, toldLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { bridgeCaution, currentPair } from './dead-lead.ts';
import { leadOf, sizesOf } from './metal-leads.ts';

// Q06: resistance of the whole loop, from the length of the run and a size.

interface Case {
  readonly run: string;
  readonly size: number;
  /** In metres, or feet in `na`. */
  readonly count: number;
}

const runs = [
  'from the farmhouse to a pump in the yard',
  'from the hall to a stall outside',
  'from the workshop to a slipway',
  'along a polytunnel',
  'from the gate to a site cabin',
  'across a stage to the lighting bar',
];

function drawnCase(random: Random, practice: Practice): Case | null {
  const count = practice === 'iec' ? random.whole(6, 60) : random.whole(20, 200);
  const drawn = { run: random.pick(runs), size: random.pick(sizesOf(practice)), count };
  return staysApart(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

function partsOf({ size, count }: Case, practice: Practice) {
  const { R, text } = toldResistance(cableOf(leadOf(size, 'copper', practice)).conductor.R20, practice);
  const run = toldLength(count, practice);
  return { R, resistance: text, L: run.L, length: run.text };
}

/** Ohms, or milliohms below one, to three figures. */
const ohms = (R: number) => (R < 1 ? amount(R * 1e3, 3, 'mΩ') : amount(R, 3, 'Ω'));

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const { R, L } = partsOf(drawn, practice);
  const value = 2 * L * R;
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value, kind: 'resistance', unit: 'Ω', tolerance, figures: 3, text: ohms(value) };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const { R, L } = partsOf(drawn, practice);
  return [
    {
      id: 'M09',
      value: L * R,
      trueOf: 'is the way out alone.',
      ask: 'How much conductor is there if the current goes out and comes back?',
    },
  ];
}

const law = formula("R = 2 L R'", 'R is two times L times R prime.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { resistance, length, L, R } = partsOf(drawn, practice);
  const { name: each, unit } = perLength[practice];
  return {
    kind: 'number',
    stem: [
      words`A lead of ${quantity(markedAs(drawn.size, practice))} copper runs ${drawn.run}. It is ${quantity(length)} long. At ${quantity(temperatureText(20, practice))} each conductor has ${quantity(resistance)}.`,
      words`You unplug it at both ends and bridge ${currentPair[practice]} at the far end. What resistance does a good meter read at the near end?`,
    ],
    ask: 'A resistance with its unit. Three figures are enough.',
    scenarios: [
      {
        name: 'this lead with a small current',
        scenario: {
          practice,
          cable: leadOf(drawn.size, 'copper', practice),
          lead: { length_m: L },
          surroundings: { kind: 'stillAir', ambient_degC: 20 },
          supply: [{ kind: 'current', I_A: 1 }],
          run: { duration_s: 600 },
        },
      },
    ],
    hints: [
      words`First find how much conductor the test current runs through.`,
      words`Multiply its length by the resistance of each ${each}.`,
      words`A thousand milliohms are one ohm.`,
    ],
    solution: [
      words`Out and back there are ${quantity(given(2 * drawn.count, unit))} of conductor.`,
      words`The way out alone has ${quantity(ohms(L * R))}.`,
      words`${law}`,
      words`The whole loop has twice that: ${quantity(answer.text)}.`,
    ],
    look: 'Follow the current once round with a finger. How long is its way?',
    cautions: [bridgeCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q06 is drawn and built. */
export const loopResistanceSpec: TemplateSpec<Case> = {
  id: 'Q06',
  version: 1,
  lesson: '1.2',
  kind: 'number',
  title: 'Round the whole loop',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['1.2 find loop resistance from size and length'],
  misconceptions: ['M09'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ run: 'along a polytunnel', size: 1.5, count: 30 }],
    na: [{ run: 'along a polytunnel', size: 14, count: 100 }],
  },
  build: built,
};

/** Q06: the resistance of a lead's loop, out and back. */
export const loopResistance = defineTemplate(loopResistanceSpec);

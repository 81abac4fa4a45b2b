import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { amount, rounded, temperatureText } from '../figures.ts';
import { perLength, toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { currentPair } from '../unit-1/dead-lead.ts';
import { staysApartRounded } from '../unit-3/two-figures.ts';
import { quantity, words } from '../words.ts';
import { finders, fourWireCaution } from './bench-words.ts';

// Q65b: resistance by the length from a meter with two leads, whose own ohms were read first.

interface Case {
  readonly lead: string;
  /** In metres, or feet in `na`. */
  readonly count: number;
  /** The loop as the meter shows it, and its own leads touched together [mΩ]. */
  readonly loop_mOhm: number;
  readonly own_mOhm: number;
}

const measured: Readonly<Record<Practice, readonly CastKey[]>> = {
  iec: ['C075', 'C100', 'C150', 'SUS'],
  na: ['A18', 'A16', 'A14', 'A16S'],
};

function drawnCase(random: Random, practice: Practice): Case | null {
  const { conductor } = cableOf(cast[random.pick(measured[practice])]);
  const count = practice === 'iec' ? random.whole(3, 20) : random.whole(10, 60);
  const R = 2e3 * conductor.R20 * toldLength(count, practice).L * (1 + random.whole(-30, 30) / 1000);
  const own_mOhm = random.whole(60, 260);
  const drawn = { lead: random.pick(finders), count, loop_mOhm: Math.round(R + own_mOhm), own_mOhm };
  return staysApartRounded(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

/** R' [Ω/m] of so many conductors of the loop in series. `R` in mΩ. */
const byLength = (R: number, { count }: Case, practice: Practice, times = 2) =>
  R / 1e3 / (times * toldLength(count, practice).L);
const told = (R: number, practice: Practice) =>
  amount(R * perLength[practice].length * 1e3, 3, perLength[practice].resistance);

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = byLength(drawn.loop_mOhm - drawn.own_mOhm, drawn, practice);
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  const unit = perLength[practice].resistance;
  return { value, kind: 'resistance per metre', unit, tolerance, figures: 3, text: told(value, practice) };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  return [
    {
      id: 'M45',
      value: byLength(drawn.loop_mOhm, drawn, practice),
      trueOf: 'has the meter’s own leads in it.',
      ask: 'What did the meter read with its leads touched together?',
    },
    {
      id: 'M09',
      value: byLength(drawn.loop_mOhm - drawn.own_mOhm, drawn, practice, 1),
      trueOf: 'counts the length once.',
      ask: 'The far end was joined. Through how much conductor did the meter look?',
    },
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { lead, count, loop_mOhm, own_mOhm } = drawn;
  const { name, resistance } = perLength[practice];
  const left = rounded(loop_mOhm - own_mOhm, 4);
  return {
    kind: 'number',
    stem: [
      words`${lead} is ${quantity(toldLength(count, practice).text)} long and lies at ${quantity(temperatureText(20, practice))}, unplugged at both ends. You have a meter with two leads only.`,
      words`With its two leads touched together it shows ${quantity(amount(own_mOhm, 3, 'mΩ'))}. You join ${currentPair[practice]} at the far end, and it shows ${quantity(amount(loop_mOhm, loop_mOhm >= 1000 ? 4 : 3, 'mΩ'))}.`,
      words`What resistance by the ${name} does one conductor have?`,
    ],
    ask: `In ${resistance}. Three figures are enough.`,
    scenarios: [],
    hints: [
      words`A meter with two leads reads its leads, its clips and the cord, one after the other.`,
      words`What it shows with its leads touched together is not the cord’s.`,
      words`What is left belongs to out and back.`,
    ],
    solution: [
      words`Without the meter’s own leads, ${quantity(amount(left, left >= 1000 ? 4 : 3, 'mΩ'))} are left for the loop.`,
      words`That is out and back. So one conductor has ${quantity(answer.text)}.`,
      words`With the leads left in it would have come to ${quantity(told(byLength(loop_mOhm, drawn, practice), practice))}: a thinner lead than it is.`,
      words`Clips that touch a little worse the second time stay in the answer. Four wires leave them out.`,
    ],
    look: 'Follow the meter’s current, from one of its sockets to the other. What does it pass?',
    cautions: [fourWireCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q65b is drawn and built. */
export const twoWiresSpec: TemplateSpec<Case> = {
  id: 'Q65b',
  version: 1,
  lesson: '5.1',
  kind: 'number',
  title: 'A meter with two leads',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['5.1 spot lead-resistance error'],
  misconceptions: ['M09', 'M45'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: finders[0], count: 8, loop_mOhm: 333, own_mOhm: 120 }],
    na: [{ lead: finders[0], count: 25, loop_mOhm: 333, own_mOhm: 120 }],
  },
  build: built,
};

/** Q65b: R' by a meter with two leads. */
export const twoWires = defineTemplate(twoWiresSpec);

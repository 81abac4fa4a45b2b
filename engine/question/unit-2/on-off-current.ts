import type { CastKey } from '../../examples/cast.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { type Cord, cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { cycling, heldCurrent, settlesAt } from '../experiment.ts';
import { amount, given, plainNumber, riseText, temperatureText, timeText } from '../figures.ts';
import { isWithin, staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q29: the steady current that warms a cord as much as a short on and off cycle does.

interface Case {
  readonly cord: CastKey;
  readonly load: string;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly on_s: number;
  readonly period_s: number;
}

const loads = [
  'A heat sealer in a bakery',
  'A stage winch in a theatre workshop',
  'A steam press in a laundry',
  'An air compressor in a joinery',
  'A water pump on a farm',
  'A hoist in a boatyard',
];

/** Begun at the steady state of the equal current, the cycle repeats itself well before this many. */
const cyclesToSettle = 6;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const period_s = random.pick([20, 24, 25, 30, 36, 40]);
  const drawn: Case = {
    cord: cord.key,
    load: random.pick(loads),
    ambient_degC: 5 * random.whole(2, 5),
    I_A: random.whole(8, 25),
    on_s: random.whole(3, period_s - 3),
    period_s,
  };
  const share = drawn.on_s / period_s;
  const even = drawn.on_s * 2 === period_s; // half is told by its looks
  return share >= 0.2 && share <= 0.8 && !even && isClear(drawn, cord) ? drawn : null;
}

function isClear(drawn: Case, cord: Cord): boolean {
  const answer = answerOf(drawn);
  const settled = settlesAt(buildCase(steadyTwin(drawn, cord)));
  if (settled === null || celsius(settled) > 100) return false;
  const told = [drawn.I_A, drawn.on_s, drawn.period_s - drawn.on_s];
  const given = told.some((number) => isWithin(answer.tolerance, answer.value, number));
  if (given || !staysApart(answer, wrongOf(drawn))) return false;
  const { mean } = cycling(cycleOf(drawn, cord), answer.value, cyclesToSettle);
  return Math.abs(mean - settled) < 1;
}

const equalCurrent = ({ I_A, on_s, period_s }: Case) => I_A * Math.sqrt(on_s / period_s);

function answerOf(drawn: Case): NumberAnswer {
  const value = equalCurrent(drawn);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value, kind: 'current', unit: 'A', tolerance, figures: 3, text: amount(value, 3, 'A') };
}

function wrongOf({ I_A, on_s, period_s }: Case): WrongValue[] {
  return [
    {
      id: 'M47',
      value: (I_A * on_s) / period_s,
      trueOf: 'is the average of the current itself.',
      ask: 'At twice the current, how many times the heat is made in one second?',
    },
  ];
}

/** The cycle for half an hour from cold. */
function cycleOf({ ambient_degC, I_A, on_s, period_s }: Case, cord: Cord): Scenario {
  const { run: _, ...rest } = heldCurrent(cord, ambient_degC, I_A, 0);
  return {
    ...rest,
    supply: [
      { kind: 'current', I_A, duration_s: on_s },
      { kind: 'off', duration_s: period_s - on_s },
    ],
    cycles: Math.ceil(1800 / period_s),
  };
}

/** The steady current held for half an hour from cold, as the answer is told. */
function steadyTwin(drawn: Case, cord: Cord): Scenario {
  return heldCurrent(cord, drawn.ambient_degC, Number(equalCurrent(drawn).toPrecision(3)), 1800);
}

function solutionOf(drawn: Case, cord: Cord, answer: NumberAnswer, practice: Practice) {
  const share = drawn.on_s / drawn.period_s;
  const { mean, peak } = cycling(cycleOf(drawn, cord), answer.value, cyclesToSettle);
  const told = (T: number) => quantity(temperatureText(celsius(T), practice));
  const I = quantity(given(drawn.I_A, 'A'));
  return [
    words`It is on for ${quantity(given(drawn.on_s, 's'))} in every ${quantity(given(drawn.period_s, 's'))}, so the on-share D is ${plainNumber(share, 3)}.`,
    words`Heat goes with current squared. Averaged over the cycle it is D times the heat at ${I}.`,
    words`The root of D is ${plainNumber(Math.sqrt(share), 3)}. That part of ${I} is ${quantity(answer.text)}.`,
    words`${law}`,
    words`The engine runs both. They end within ${quantity(riseText(1))} of each other, the cycle at ${told(mean)} on average.`,
    words`Check the peak as well: in the cycle the conductor reaches ${told(peak)}.`,
    words`${ratingNote(cord)}`,
  ];
}

const law = formula(String.raw`I_\mathrm{eq} = I\sqrt{D}`, 'I equal is I times the square root of D.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const cord = cordOf(drawn.cord);
  const answer = answerOf(drawn);
  const off = quantity(timeText(drawn.period_s - drawn.on_s));
  const ambient = quantity(temperatureText(drawn.ambient_degC, practice));
  return {
    kind: 'number',
    stem: [
      words`${drawn.load} draws ${quantity(given(drawn.I_A, 'A'))} for ${quantity(timeText(drawn.on_s))}, then nothing for ${off}, over and over.`,
      words`It hangs on ${cord.words} in still air at ${ambient}. The cycle is far shorter than the cord's warm-up.`,
      words`Which steady current would make the same heat on average?`,
    ],
    ask: 'A current with its unit. Three figures are enough.',
    scenarios: [
      { name: `on and off at ${drawn.I_A}\u00A0A`, scenario: cycleOf(drawn, cord) },
      { name: `${answer.text} held`, scenario: steadyTwin(drawn, cord) },
    ],
    hints: [
      words`First find the on-share D: the time on, over the time of one whole cycle.`,
      words`Heat goes with current squared. So the average heat is D times the heat while it is on.`,
      words`Which current, squared, is D times the square of the current while it is on?`,
    ],
    solution: solutionOf(drawn, cord, answer, practice),
    look: 'Open both cases: the cycle should swing about the steady curve, not run above or below it.',
    cautions: overloadCaution(cord, drawn.I_A),
    answer,
    wrong: wrongOf(drawn),
  };
}

/** How Q29 is drawn and built. */
export const onOffCurrentSpec: TemplateSpec<Case> = {
  id: 'Q29',
  version: 1,
  lesson: '2.2',
  kind: 'number',
  title: 'On and off',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['2.2 estimate after on and off use'],
  misconceptions: ['M47'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', load: 'A hoist in a boatyard', ambient_degC: 20, I_A: 18, on_s: 12, period_s: 40 }],
    na: [{ cord: 'A16', load: 'A hoist in a boatyard', ambient_degC: 20, I_A: 18, on_s: 12, period_s: 40 }],
  },
  build: built,
};

/** Q29: the steady current equal in heat to a short on and off cycle. */
export const onOffCurrent = defineTemplate(onOffCurrentSpec);

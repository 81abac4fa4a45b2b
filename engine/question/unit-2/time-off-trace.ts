import type { CastKey } from '../../examples/cast.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { celsius, kelvin } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { type Cord, cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { heldCurrent, settlesAt, timeTo, timeWithoutLoss, watching } from '../experiment.ts';
import { given, rounded, temperatureText, timeText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltRead, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { quantity, words } from '../words.ts';

// Q30: when the conductor passes a temperature, read off a trace.

interface Case {
  readonly cord: CastKey;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly level_degC: number;
  readonly span_s: number;
}

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const level_degC = random.pick([60, 60, 70, 70, 100]);
  const ambient_degC = random.whole(5, 35);
  const part = random.whole(55, 85) / 100;
  const span_s = 60 * random.pick([10, 15, 20, 30]);
  const cold = buildCase(heldCurrent(cord, ambient_degC, 1, 3600));
  const I_A = Math.round(ratingAt(cold, kelvin(ambient_degC + (level_degC - ambient_degC) / part)) ?? 0);
  if (I_A < 2 || I_A > 30) return null;
  const drawn = { cord: cord.key, ambient_degC, I_A, level_degC, span_s };
  return isClear(drawn) ? drawn : null;
}

/** The crossing lies well inside the axis, on a curve that still climbs there, below 160 °C throughout. */
function isClear(drawn: Case): boolean {
  const scenario = scenarioOf(drawn, cordOf(drawn.cord));
  const end = settlesAt(buildCase(scenario));
  if (end === null || celsius(end) > 155) return false;
  const part = (drawn.level_degC - drawn.ambient_degC) / (celsius(end) - drawn.ambient_degC);
  if (part < 0.5 || part > 0.88) return false;
  const t = timeTo(scenario, kelvin(drawn.level_degC));
  if (t === null || t < 0.12 * drawn.span_s || t > 0.7 * drawn.span_s) return false;
  const answer = answerOf(t);
  return staysApart(answer, wrongOf(drawn, answer));
}

function scenarioOf({ ambient_degC, I_A, level_degC, span_s }: Case, cord: Cord): Scenario {
  return watching(heldCurrent(cord, ambient_degC, I_A, span_s), level_degC);
}

function answerOf(t: number): NumberAnswer {
  const told = rounded(t, 2);
  const text = told < 60 ? given(told, 's') : `${given(told, 's')} (${timeText(told)})`;
  return { value: t, kind: 'time', unit: 's', tolerance: { kind: 'factor', by: 1.25 }, figures: 2, text };
}

function wrongOf(drawn: Case, answer: NumberAnswer): WrongValue[] {
  const cord = cordOf(drawn.cord);
  const atOnce: WrongValue = {
    id: 'M19',
    value: 0,
    trueOf: 'is when the cord is still as cool as the air.',
    ask: 'What does the curve read at the very start?',
  };
  const noLoss: WrongValue = {
    id: 'M18',
    value: timeWithoutLoss(buildCase(scenarioOf(drawn, cord)), drawn.I_A, kelvin(drawn.level_degC)),
    trueOf: 'would fit a cord that sheds no heat at all.',
    ask: 'Lay a ruler along the start of the curve. Does the curve stay on it?',
  };
  // on most traces that time is too near the right one to be told from a loose reading
  return staysApart(answer, [noLoss]) ? [atOnce, noLoss] : [atOnce];
}

function solutionOf(drawn: Case, cord: Cord, answer: NumberAnswer, practice: Practice) {
  const level = quantity(temperatureText(drawn.level_degC, practice));
  const end = celsius(settlesAt(buildCase(scenarioOf(drawn, cord))) as number);
  return [
    words`Find ${level} on the temperature axis, and go across until you meet the conductor's curve.`,
    words`From there go down to the time axis, and read the time in its unit.`,
    words`The engine finds the crossing on the same run, at about ${quantity(answer.text)}. A reading within a quarter of that is right.`,
    words`The conductor goes on to settle at ${quantity(temperatureText(end, practice))}. ${ratingNote(cord)}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltRead {
  const cord = cordOf(drawn.cord);
  const scenario = scenarioOf(drawn, cord);
  const level = temperatureText(drawn.level_degC, practice);
  const ambient = temperatureText(drawn.ambient_degC, practice);
  const I = given(drawn.I_A, 'A');
  const answer = answerOf(timeTo(scenario, kelvin(drawn.level_degC)) as number);
  return {
    kind: 'read',
    figure: {
      kind: 'trace',
      scenario,
      place: 'conductor',
      read: 'time',
      level: kelvin(drawn.level_degC),
      span: [0, drawn.span_s],
      words: `Conductor temperature against time over ${timeText(drawn.span_s)}: a curve that climbs from ${ambient}, steeply at first. A level is drawn at ${level}.`,
    },
    stem: [
      words`The trace shows ${cord.words} in still air at ${quantity(ambient)}. From time zero it carries ${quantity(I)}.`,
      words`Read off when its conductor passes ${quantity(level)}.`,
    ],
    ask: 'A time with its unit, in s or min. Two figures are enough.',
    scenarios: [{ name: `${I} from cold`, scenario }],
    hints: [
      words`Start on the temperature axis, at ${quantity(level)}.`,
      words`Go across until you meet the curve of the conductor.`,
      words`From there go down to the time axis, and note its unit.`,
    ],
    solution: solutionOf(drawn, cord, answer, practice),
    look: `Move the reading cursor along the curve until the conductor reads ${level}.`,
    cautions: overloadCaution(cord, drawn.I_A),
    answer,
    wrong: wrongOf(drawn, answer),
  };
}

/** How Q30 is drawn and built. */
export const timeOffTraceSpec: TemplateSpec<Case> = {
  id: 'Q30',
  version: 1,
  lesson: '2.2',
  kind: 'read',
  title: 'Time off a trace',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['2.2 sketch heating and cooling'],
  misconceptions: ['M19', 'M18'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', ambient_degC: 25, I_A: 21, level_degC: 60, span_s: 900 }],
    na: [{ cord: 'A16', ambient_degC: 25, I_A: 23, level_degC: 60, span_s: 900 }],
  },
  build: built,
};

/** Q30: the time to a temperature, read off a live trace. */
export const timeOffTrace = defineTemplate(timeOffTraceSpec);

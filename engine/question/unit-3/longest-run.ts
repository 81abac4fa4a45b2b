import { alongRun } from '../../heating/along-run.ts';
import { dropGuides } from '../../heating/drop-guides.ts';
import { longestForDrop } from '../../protection/volt-drop.ts';
import { amount, given, percentText, temperatureText } from '../figures.ts';
import { perLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { staysApartRounded } from './two-figures.ts';
import { ohmsOf, runCable, runCables, runScenario } from './warm-conductors.ts';
import { voltsOf } from './watts.ts';

// Q45: the longest run that keeps the loss of volts to a share.

interface Case {
  readonly load: string;
  readonly size: number;
  readonly I_A: number;
  readonly percent: number;
}

const loads = ['A farm pump', 'A heater in a polytunnel', 'A fan in a boatyard', 'A floodlight', 'A saw'] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const { size, most } = random.pick(runCables(practice));
  const drawn: Case = {
    load: random.pick(loads),
    size,
    I_A: random.whole(2, most),
    percent: Math.round(100 * random.pick(dropGuides[practice]).share),
  };
  const answer = answerOf(drawn, practice);
  const sound = answer.value >= 3 && answer.value <= 100;
  return sound && staysApartRounded(answer, wrongOf(drawn, practice)) ? drawn : null;
}

/** The longest run whose conductors have `R` [Ω/m] each; `ways` is how often the run is counted [m]. */
const longest = ({ I_A, percent }: Case, R: number, practice: Practice, ways = 2) =>
  longestForDrop(ways * R, I_A, percent / 100, voltsOf(practice));

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = longest(drawn, ohmsOf(runCable(drawn.size, practice), practice).warm.R, practice);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  const { length, unit } = perLength[practice];
  return { value, kind: 'length', unit, tolerance, figures: 3, text: amount(value / length, 3, unit) };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const { cold, warm } = ohmsOf(runCable(drawn.size, practice), practice);
  return [
    {
      id: 'M09',
      value: longest(drawn, warm.R, practice, 1),
      trueOf: 'is how much conductor there may be, out and back together.',
      ask: `What length of conductor does the current pass in a run of one ${perLength[practice].name}?`,
    },
    {
      id: 'M16',
      value: longest(drawn, cold.R, practice),
      trueOf: 'is how long a cold run might be.',
      whyNot: 'A loaded cable is warm, and warm copper resists more. So the run has to be shorter.',
      ask: 'Which of the two resistances is that of a cable at work?',
    },
  ];
}

const law = formula(String.raw`L = \frac{p\,U_0}{2\,R'\,I}`, 'L is p times U nought, over two times R prime times I.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const of = runCable(drawn.size, practice);
  const answer = answerOf(drawn, practice);
  const { cold, warm } = ohmsOf(of, practice);
  const T = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const A = quantity(given(drawn.I_A, 'A'));
  const U0 = voltsOf(practice);
  const volts = (drawn.percent / 100) * U0;
  const scenario = runScenario(of, answer.value, drawn.I_A, practice);
  const exact = alongRun(scenario);
  const own = exact.kind === 'settled' ? amount(100 * exact.share, 3, '%') : '';
  const share = percentText(drawn.percent / 100);
  return {
    kind: 'number',
    stem: [
      words`${drawn.load} takes ${A} through ${of.words}. The supply has ${quantity(given(U0, 'V'))}.`,
      words`Each of the two conductors has ${quantity(cold.text)} at ${T(20)}. The tables take it at ${T(of.table_degC)}, where it has ${quantity(warm.text)}.`,
      words`No more than ${quantity(share)} of the volts may be lost. By the warm figure, how long may the run be, one way?`,
    ],
    ask: 'A length with its unit. Three figures are enough.',
    scenarios: [{ name: `a run of ${answer.text}`, scenario }],
    hints: [
      words`How many volts may be lost in all?`,
      words`How many volts does one ${perLength[practice].name} of run lose, out and back?`,
      words`${law}`,
    ],
    solution: [
      words`${quantity(share)} of ${quantity(given(U0, 'V'))} is ${quantity(amount(volts, 3, 'V'))}.`,
      words`${law}`,
      words`Out and back, the run has two conductors of ${quantity(warm.text)}, and they carry ${A}. So it may be ${quantity(answer.text)} long.`,
      words`A shorter run loses less, a longer one too much. Then the next thicker size is needed, or a load that takes less.`,
      words`The engine lets this current warm the cable. At that length it finds ${quantity(own)} lost, because the cable stays cooler than the table takes it.`,
      words`The guide counts all the way from the origin of the supply. A lead is only the last part of that.`,
    ],
    look: 'Put your length into the drop: two conductors, the warm figure, the current. Does it come to the volts allowed?',
    cautions: [],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q45 is drawn and built. */
export const longestRunSpec: TemplateSpec<Case> = {
  id: 'Q45',
  version: 1,
  lesson: '3.2',
  kind: 'number',
  title: 'The longest run',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['3.2 percent on nominal', '3.2 resize'],
  misconceptions: ['M09', 'M16'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: loads[0], size: 1.5, I_A: 12, percent: 5 }],
    na: [{ load: loads[0], size: 14, I_A: 12, percent: 5 }],
  },
  build: built,
};

/** Q45: the greatest length that keeps the loss of volts to a share. */
export const longestRun = defineTemplate(longestRunSpec);

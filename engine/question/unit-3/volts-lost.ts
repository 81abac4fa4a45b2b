import { alongRun } from '../../heating/along-run.ts';
import { againstGuides, type Drop, dropOf } from '../../protection/volt-drop.ts';
import { amount, given, percentText, temperatureText } from '../figures.ts';
import { toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, type Words, words } from '../words.ts';
import { checkYours, citedWords } from './cited-words.ts';
import { staysApartRounded } from './two-figures.ts';
import { ohmsOf, type RunCable, runCable, runCables, runScenario, tableDrop, toldOhms } from './warm-conductors.ts';
import { otherVolts, voltsOf } from './watts.ts';

// Q44: volts lost along a run, or their share of the nominal volts, from mV/A/m or from the ohms of a conductor.

interface Case {
  readonly load: string;
  readonly size: number;
  readonly I_A: number;
  /** Length of the run in metres, or in feet. */
  readonly length: number;
  /** What the loss is worked out from: a figure for out and back together, or the ohms of one conductor. */
  readonly from: 'table' | 'ohms';
  readonly asked: 'volts' | 'share';
}

const loads = [
  'A farm pump',
  'A heater in a polytunnel',
  'A fan in a boatyard',
  'A floodlight at a market',
  'A saw in a joinery',
] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const { size, most } = random.pick(runCables(practice));
  const drawn: Case = {
    load: random.pick(loads),
    size,
    I_A: random.whole(4, most),
    length: practice === 'iec' ? random.whole(10, 60) : 5 * random.whole(6, 40),
    from: random.pick(['table', 'ohms'] as const),
    asked: random.pick(['volts', 'share'] as const),
  };
  // a share of 230 V in place of 120 V is half of it but for a hair, as is a run that is counted once
  const alike = practice === 'na' && drawn.from === 'ohms' && drawn.asked === 'share';
  const { share } = dropIn(drawn, practice);
  const sound = !alike && share >= 0.012 && share <= 0.15;
  return sound && staysApartRounded(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

/** Drop for each ampere and metre of run, from the figures as they are told [V/(A·m)]. */
function perAmpereMetre(drawn: Case, practice: Practice): number {
  const of = runCable(drawn.size, practice);
  return drawn.from === 'table' ? together(of, practice).per : 2 * ohmsOf(of, practice).warm.R;
}

/** The table's figure for out and back together: [V/(A·m)], as told, and in words. */
function together(of: RunCable, practice: Practice): { readonly per: number; readonly text: string } {
  const { value } = tableDrop(of, practice);
  if (practice === 'iec') return { per: value, text: given(1e3 * value, 'mV/A/m') };
  const { R, text } = toldOhms(value, practice);
  return { per: R, text };
}

const lengthOf = ({ length }: Case, practice: Practice) => toldLength(length, practice);

const dropBy = (per: number, drawn: Case, practice: Practice): Drop =>
  dropOf(per, drawn.I_A, lengthOf(drawn, practice).L, voltsOf(practice));
const dropIn = (drawn: Case, practice: Practice) => dropBy(perAmpereMetre(drawn, practice), drawn, practice);

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const { U, share } = dropIn(drawn, practice);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  if (drawn.asked === 'volts')
    return { value: U, kind: 'voltage', unit: 'V', tolerance, figures: 3, text: amount(U, 3, 'V') };
  return { value: share, kind: 'ratio', unit: '%', tolerance, figures: 3, text: amount(100 * share, 3, '%') };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const per = perAmpereMetre(drawn, practice);
  const pick = ({ U, share }: Drop) => (drawn.asked === 'volts' ? U : share);
  const value = (one: number) => pick(dropBy(one, drawn, practice));
  const milli = practice === 'na' ? { whyNot: 'The ohms are for 1\u00A0000\u00A0ft. Divide by a thousand.' } : {};
  return [
    ...(drawn.from === 'ohms' ? ofOhms(drawn, practice, value) : []),
    ...[1000, 10].map(
      (times): WrongValue => ({
        id: 'M43',
        value: value(per) * times,
        trueOf: `is ${String(times)} times what is lost.`,
        ...milli,
        ask: 'How many of the supply’s volts could a working cable lose?',
      }),
    ),
    ...(drawn.asked === 'share'
      ? [
          {
            id: 'M49' as const,
            value: dropIn(drawn, practice).U / otherVolts(practice),
            trueOf: `is the share of ${given(otherVolts(practice), 'V')}.`,
            whyNot: `This supply has ${given(voltsOf(practice), 'V')}. The loss is told as a share of that.`,
            ask: 'Which voltage does the question give for this supply?',
          },
        ]
      : []),
  ];
}

/** Slips that need the ohms of a conductor, cold and warm. */
function ofOhms(drawn: Case, practice: Practice, value: (per: number) => number): WrongValue[] {
  const { cold, warm } = ohmsOf(runCable(drawn.size, practice), practice);
  return [
    {
      id: 'M09',
      value: value(warm.R),
      trueOf: 'is lost on the way out alone.',
      ask: 'How often does the current pass the length of the run?',
    },
    {
      id: 'M16',
      value: value(2 * cold.R),
      trueOf: 'is what cold conductors would lose.',
      whyNot: 'A loaded cable is warm, and warm copper resists more. The tables take it at its limit.',
      ask: 'Which of the two resistances is that of a cable at work?',
    },
  ];
}

const tableLaw = formula(
  String.raw`\Delta U = \frac{z\,I\,L}{1000}`,
  'Delta U is z times I times L, over a thousand; z in millivolts per ampere and metre.',
);
const loopLaw = formula(
  String.raw`\Delta U = R'_\mathrm{loop}\,L\,I`,
  'Delta U is the loop’s R prime times L times I.',
);
const ohmsLaw = formula(String.raw`\Delta U = 2\,R'\,L\,I`, 'Delta U is two times R prime times L times I.');

function guideWords(share: number, practice: Practice): string {
  const kept = againstGuides(share, practice).map(
    ({ guide, holds }) => `${percentText(guide.share)} for ${guide.of} is ${holds ? 'kept' : 'passed'}`,
  );
  return `Of the guides, ${kept.join(', ')}.`;
}

function solutionOf(drawn: Case, of: RunCable, answer: NumberAnswer, practice: Practice): Words[] {
  const { U, share } = dropIn(drawn, practice);
  const { text: L } = lengthOf(drawn, practice);
  const table = tableDrop(of, practice);
  const each = ohmsOf(of, practice).warm.text;
  const exact = alongRun(runScenario(of, lengthOf(drawn, practice).L, drawn.I_A, practice));
  const own = exact.kind === 'settled' ? amount(exact.lost, 3, 'V') : '';
  return [
    drawn.from === 'table'
      ? words`The figure counts out and back: ${practice === 'iec' ? tableLaw : loopLaw}`
      : words`The current passes the run twice, out and back: ${ohmsLaw}`,
    drawn.from === 'table'
      ? words`${quantity(together(of, practice).text)} times ${quantity(given(drawn.I_A, 'A'))} times ${quantity(L)}, over a thousand, is ${quantity(amount(U, 3, 'V'))}.`
      : words`Two times ${quantity(each)} times ${quantity(L)} times ${quantity(given(drawn.I_A, 'A'))}, over a thousand, is ${quantity(amount(U, 3, 'V'))}.`,
    words`Of ${quantity(given(voltsOf(practice), 'V'))} that is ${quantity(amount(100 * share, 3, '%'))}. So the answer is ${quantity(answer.text)}.`,
    words`${guideWords(share, practice)} ${drawn.from === 'table' ? `Figure: ${citedWords(table)}. ${checkYours}` : ''}`,
    words`A table takes the conductor at its limit. The engine lets this current warm it, and finds ${quantity(own)} lost.`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const of = runCable(drawn.size, practice);
  const answer = answerOf(drawn, practice);
  const { text: L, L: metres } = lengthOf(drawn, practice);
  const { cold, warm } = ohmsOf(of, practice);
  const T = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const volts = drawn.asked === 'volts';
  return {
    kind: 'number',
    stem: [
      words`${drawn.load} takes ${quantity(given(drawn.I_A, 'A'))} at the end of ${quantity(L)} of ${of.words}. The supply has ${quantity(given(voltsOf(practice), 'V'))}.`,
      drawn.from === 'table'
        ? words`The table gives ${quantity(together(of, practice).text)}, out and back together, for conductors at ${T(of.table_degC)}.`
        : words`Each of its two conductors has ${quantity(cold.text)} at ${T(20)}. The tables take it at ${T(of.table_degC)}, where it has ${quantity(warm.text)}.`,
      volts
        ? words`By the warm figure, how many volts are lost along the run?`
        : words`By the warm figure, what share of the supply's volts is lost along the run?`,
    ],
    ask: volts ? 'Volts with their unit. Three figures are enough.' : 'In per cent, with its sign.',
    scenarios: [{ name: `${L}, ${given(drawn.I_A, 'A')}`, scenario: runScenario(of, metres, drawn.I_A, practice) }],
    hints: [
      drawn.from === 'table'
        ? words`Read the figure aloud: ${practice === 'iec' ? 'so many millivolts for each ampere, in each metre of run' : 'so many ohms for each thousand feet of run'}.`
        : words`How many metres, or feet, of conductor does the current pass in all?`,
      drawn.from === 'table' ? words`${practice === 'iec' ? tableLaw : loopLaw}` : words`${ohmsLaw}`,
      practice === 'na'
        ? words`The ohms are for a thousand feet. A run is a part of that.`
        : words`Milli is a thousandth: turn it into volts at the end.`,
    ],
    solution: solutionOf(drawn, of, answer, practice),
    look: 'Open the case and read the volts lost along the lead. They are a little less, since it is cooler than the table takes it.',
    cautions: [],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

const fallback: Case = { load: loads[0], size: 1.5, I_A: 12, length: 50, from: 'ohms', asked: 'volts' };

/** How Q44 is drawn and built. */
export const voltsLostSpec: TemplateSpec<Case> = {
  id: 'Q44',
  version: 1,
  lesson: '3.2',
  kind: 'number',
  title: 'Volts lost along a run',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['3.2 drop from mV/A/m or Ω', '3.2 percent on nominal'],
  misconceptions: ['M09', 'M16', 'M43', 'M49'],
  draw: drawnCase,
  fallbacks: { iec: [fallback], na: [{ ...fallback, size: 14, length: 100 }] },
  build: built,
};

/** Q44: volts lost along a run, or their share. */
export const voltsLost = defineTemplate(voltsLostSpec);

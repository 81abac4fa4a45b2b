import { metals } from '../../material/metals.ts';
import { resistanceRatio } from '../../material/resistivity.ts';
import { faultTemperature, loopOf } from '../../protection/loop.ts';
import { celsius, kelvin } from '../../quantity.ts';
import { amount, given, percentText, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { localWords, loopCaution } from './asked-devices.ts';

// Q63: the fault loop with its conductors warm, from ohms measured cold.

interface Case {
  readonly load: string;
  /** Up to the origin, line and protective conductor, cold, in hundredths of an ohm. */
  readonly Ze: number;
  readonly R1: number;
  readonly R2: number;
}

const loads = [
  'A heater in a polytunnel',
  'A saw in a joinery',
  'A washer in a boatyard',
  'A pump on a farm',
  'A press in a laundry',
  'A lamp bar in a village hall',
];

/** Share by which copper resists more at the rules' 70 °C than at 20 °C, in whole per cent as told [1]. */
const more = Math.round(100 * (resistanceRatio(metals.copper.alpha20.value, 0, faultTemperature) - 1)) / 100;
/** The coefficient [1/K] that makes that of 50 K. */
const alphaTold = more / (faultTemperature - kelvin(20));

function drawnCase(random: Random): Case | null {
  const R1 = random.whole(12, 160);
  const drawn = {
    load: random.pick(loads),
    Ze: random.whole(8, 60),
    R1,
    R2: Math.round((R1 * random.whole(100, 170)) / 100),
  };
  return staysApart(answerOf(drawn), wrongOf(drawn)) ? drawn : null;
}

const parts = ({ R1, R2 }: Case) => [
  { name: 'line', R20: R1 / 100, alpha20: alphaTold },
  { name: 'protective conductor', R20: R2 / 100, alpha20: alphaTold },
];

/** The loop as asked, by the engine; volts do not enter the ohms. */
const loop = (drawn: Case, of = parts(drawn)) =>
  loopOf({ U0: 230, Ze: drawn.Ze / 100, parts: of, T: faultTemperature });

function answerOf(drawn: Case): NumberAnswer {
  const { Zs: value } = loop(drawn);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value, kind: 'resistance', unit: 'Ω', tolerance, figures: 3, text: amount(value, 3, 'Ω') };
}

function wrongOf(drawn: Case): WrongValue[] {
  return [
    {
      id: 'M41',
      value: loop(drawn, parts(drawn).slice(0, 1)).Zs,
      trueOf: 'leaves the way back out.',
      ask: 'By which conductor does the fault current return?',
    },
    {
      id: 'M16',
      value: loop(drawn).cold,
      trueOf: 'is the loop with its conductors cold.',
      ask: 'How warm may the conductors be when the fault comes?',
      whyNot: 'In use they may be at their limit, and then resist more. The rules take them so.',
    },
  ];
}

const law = formula(
  String.raw`Z_\mathrm{s} = Z_\mathrm{e} + (R_1 + R_2)\,1.20`,
  'Z s is Z e plus R 1 plus R 2, those two times 1.20.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const { load, Ze, R1, R2 } = drawn;
  const answer = answerOf(drawn);
  const ohms = (hundredths: number) => given(hundredths / 100, 'Ω');
  const { line, earth } = localWords[practice];
  const back = practice === 'iec' ? 'protective conductor' : 'equipment grounding conductor';
  const hot = temperatureText(celsius(faultTemperature), practice);
  const { cold } = loop(drawn);
  const run = cold - Ze / 100;
  return {
    kind: 'number',
    stem: [
      words`${load} has a fault from ${line} to its metal case. Up to the origin the ${earth}-fault loop has ${quantity(ohms(Ze))}.`,
      words`From there on, cold at ${quantity(temperatureText(20, practice))}, the ${line} conductor has ${quantity(ohms(R1))} and the ${back} ${quantity(ohms(R2))}.`,
      words`Copper at ${quantity(hot)} resists ${quantity(percentText(more))} more than at ${quantity(temperatureText(20, practice))}. What is the whole loop with these two at ${quantity(hot)}?`,
    ],
    ask: 'A resistance with its unit. Three figures are enough.',
    scenarios: [],
    hints: [
      words`Draw the path of the fault current round, from the source and back to it.`,
      words`Which parts of it warm up with the load? Take those warm.`,
      words`The part up to the origin is taken as it is.`,
    ],
    solution: [
      words`The ${line} conductor and the ${back} in a row have ${quantity(amount(run, 3, 'Ω'))} cold. Warm they have ${quantity(amount(run * (1 + more), 3, 'Ω'))}.`,
      words`${law}`,
      words`With the ${quantity(ohms(Ze))} up to the origin the loop has ${quantity(answer.text)}.`,
      words`Ohms are added as if all were resistance. Up to ${quantity(given(16, 'mm²'))} that is near enough.`,
    ],
    look: 'Go round the loop with a finger. Write down each ohm, and whether it is cold or warm.',
    cautions: [loopCaution],
    answer,
    wrong: wrongOf(drawn),
  };
}

/** How Q63 is drawn and built. */
export const loopWhenWarmSpec: TemplateSpec<Case> = {
  id: 'Q63',
  version: 1,
  lesson: '4.5',
  kind: 'number',
  title: 'Round the loop, warm',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['4.5 find Zs at working temperature'],
  misconceptions: ['M41', 'M16'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: loads[0] as string, Ze: 35, R1: 60, R2: 60 }],
    na: [{ load: loads[0] as string, Ze: 20, R1: 50, R2: 50 }],
  },
  build: built,
};

/** Q63: the fault loop at working temperature. */
export const loopWhenWarm = defineTemplate(loopWhenWarmSpec);

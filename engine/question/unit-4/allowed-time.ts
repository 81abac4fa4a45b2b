import { allowedTime } from '../../protection/withstand.ts';
import { amount, given, rounded, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { shortCaution } from './asked-devices.ts';
import {
  areaTold,
  type Core,
  coreSizes,
  cores,
  coreText,
  kOfCopperInPvc,
  kTold,
  shortScenario,
  sizeWithArea,
  spanOf,
} from './short-circuit.ts';

// Q58: how long a short circuit may last, by t = k²S²/I².

interface Case {
  readonly place: string;
  readonly core: Core;
  readonly size: number;
  readonly If_A: number;
}

const places = [
  'In a boatyard a washer’s lead is crushed',
  'On a farm a cable to a pump is cut by a spade',
  'In a joinery a sander’s lead is drawn into the saw',
  'Behind a stage a cable is pinched by a flat',
  'In a laundry a worn lead fails inside a press',
  'Under a market stall a cable is nailed through',
];

/** A time from 0.12 to 4.5 s, where the formula holds, as the current that gives it. */
function drawnCase(random: Random, practice: Practice): Case | null {
  const core = random.pick(cores);
  const size = random.pick(coreSizes(core, practice));
  const t = 10 ** (random.whole(-90, 65) / 100);
  const area = areaTold(size, practice);
  const If_A = rounded((kTold(core, area) * area * 1e6) / Math.sqrt(t), 3);
  const drawn = { place: random.pick(places), core, size, If_A };
  const { sound } = allowedTime(kTold(core, area) * 1e6, area, If_A);
  const small = wrongOf(drawn, practice).every(({ value }) => value < 60);
  return sound && small && staysApart(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

function answerOf({ core, size, If_A }: Case, practice: Practice): NumberAnswer {
  const area = areaTold(size, practice);
  const { value } = allowedTime(kTold(core, area) * 1e6, area, If_A);
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value, kind: 'time', unit: 's', tolerance, figures: 3, text: amount(value, 3, 's') };
}

function wrongOf({ core, size, If_A }: Case, practice: Practice): WrongValue[] {
  const area = areaTold(size, practice);
  const k = kTold(core, area);
  const wrong: WrongValue[] = [
    {
      id: 'M38',
      value: (k * area * 1e6) / If_A,
      trueOf: 'is k times S over I, without the squares.',
      ask: 'If the current doubles, how much more heat is made in each second?',
    },
  ];
  if (k === kOfCopperInPvc) return wrong;
  const other: WrongValue = {
    id: 'M40',
    value: allowedTime(kOfCopperInPvc * 1e6, area, If_A).value,
    trueOf: 'is the time for copper in PVC, with k of 115.',
    ask: 'Which metal is this, and which insulation?',
  };
  return [...wrong, other];
}

const law = formula(String.raw`t = \frac{k^2S^2}{I^2}`, 't is k squared times S squared over I squared.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const { core, size, If_A, place } = drawn;
  const area = areaTold(size, practice);
  const k = kTold(core, area);
  const answer = answerOf(drawn, practice);
  const [from, to] = spanOf(core).map((T) => temperatureText(T, practice)) as [string, string];
  const S = given(Number((area * 1e6).toPrecision(3)), 'mm²');
  const stands = (k * area * 1e6) ** 2;
  return {
    kind: 'number',
    stem: [
      words`${place}. A short circuit drives ${quantity(given(If_A, 'A'))} through cores of ${quantity(sizeWithArea(size, practice))}, ${coreText(core)}.`,
      words`For amperes, seconds and mm², such a core has a k of ${quantity(String(k))} from ${quantity(from)} to its limit, ${quantity(to)}.`,
      words`How long may the current last?`,
    ],
    ask: 'A time with its unit. Three figures are enough.',
    scenarios: shortScenario(core, area, If_A, answer.value, practice),
    hints: [
      words`Heat made in the core is current squared, times its resistance, times the time.`,
      words`k times S, squared, is what the core stands. The current squared, times the time, is what it gets.`,
      words`Put both equal, and solve for the time.`,
    ],
    solution: [
      words`The core stands k squared times S squared: ${String(k)} squared times ${quantity(S)} squared.`,
      words`That is ${quantity(amount(stands, 3, 'A²s'))}.`,
      words`${law}`,
      words`Over ${quantity(given(If_A, 'A'))} squared it leaves ${quantity(answer.text)}.`,
      words`From 0.1 to 5${'\u00A0'}s the formula holds: so little heat leaves the core that it may be left out.`,
    ],
    look: 'Write k S first. Then ask what has to be squared, and why.',
    cautions: [shortCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q58 is drawn and built. */
export const allowedTimeSpec: TemplateSpec<Case> = {
  id: 'Q58',
  version: 1,
  lesson: '4.4',
  kind: 'number',
  title: 'How long a short circuit may last',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['4.4 use t = k²S²/I² and its limits'],
  misconceptions: ['M38', 'M40'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ place: places[0] as string, core: { metal: 'aluminium', plastic: 'pvc70' }, size: 16, If_A: 2000 }],
    na: [{ place: places[0] as string, core: { metal: 'aluminium', plastic: 'pvc70' }, size: 6, If_A: 1500 }],
  },
  build: built,
};

/** Q58: the time that a short circuit may last. */
export const allowedTimeOf = defineTemplate(allowedTimeSpec);

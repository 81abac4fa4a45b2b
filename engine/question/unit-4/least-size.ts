import { leastArea } from '../../protection/withstand.ts';
import { dealt, mostDeals } from '../deal.ts';
import { amount, given, plainNumber, rounded, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { shortCaution, spanText } from './asked-devices.ts';
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

// Q60: the least size that stands a short circuit for as long as the device takes.

interface Case {
  readonly load: string;
  readonly core: Core;
  readonly If_A: number;
  readonly t_s: number;
  readonly deal: number;
}

const loads = [
  'the pump house of a farm',
  'the washer of a boatyard',
  'the dimmers of a theatre workshop',
  'the kiln of a joinery',
  'the presses of a laundry',
  'the ovens of a bakery',
];
const times_s = [0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1.5, 2, 2.5, 3, 4, 5];
/** How near a size the least area may lie, in parts of it (our choice: rounding shall not decide). */
const near = 0.03;

function drawnCase(random: Random, practice: Practice): Case | null {
  const core = random.pick(cores);
  const sizes = coreSizes(core, practice);
  const aim = areaTold(sizes[random.whole(1, sizes.length - 1)] as number, practice) * 1e6;
  const t_s = random.pick(times_s);
  const If_A = rounded((kTold(core, aim * 1e-6) * aim * (random.whole(60, 97) / 100)) / Math.sqrt(t_s), 2);
  const drawn = { load: random.pick(loads), core, If_A, t_s, deal: random.whole(0, mostDeals) };
  return isClear(drawn, practice) ? drawn : null;
}

/** Least area [m²] of the right way, and of each wrong one that leads to another size. */
function areasOf({ core, If_A, t_s }: Case) {
  const k = kTold(core, 2.5e-6);
  return {
    right: leastArea(k * 1e6, If_A, t_s),
    M38: (If_A * t_s) / (k * 1e6),
    M40: leastArea(kOfCopperInPvc * 1e6, If_A, t_s).value,
  };
}

/** The least size of at least an area; undefined above the list. */
const sizeFor = (drawn: Case, area: number, practice: Practice) =>
  coreSizes(drawn.core, practice).find((size) => areaTold(size, practice) >= area);

/** The right size lies within the list and clear of rounding, and at least the missing squares lead elsewhere. */
function isClear(drawn: Case, practice: Practice): boolean {
  const { right, M38 } = areasOf(drawn);
  const sizes = coreSizes(drawn.core, practice);
  const found = sizeFor(drawn, right.value, practice);
  const clear = sizes.every((size) => Math.abs(areaTold(size, practice) / right.value - 1) > near);
  const other = sizeFor(drawn, M38, practice);
  return right.sound && clear && found !== undefined && other !== undefined && other !== found;
}

/** Up to five sizes: the right one, those of the wrong ideas, and its neighbours. */
function sizesOffered(drawn: Case, practice: Practice): readonly number[] {
  const { right, M38, M40 } = areasOf(drawn);
  const sizes = coreSizes(drawn.core, practice);
  const at = sizes.indexOf(sizeFor(drawn, right.value, practice) as number);
  const wanted = [
    sizes[at],
    sizeFor(drawn, M38, practice),
    sizeFor(drawn, M40, practice),
    sizes[at - 1],
    sizes[at + 1],
    sizes[at + 2],
    sizes[at - 2],
  ];
  const offered = [...new Set(wanted.filter((size): size is number => size !== undefined))].slice(0, 4);
  return sizes.filter((size) => offered.includes(size));
}

function saidOf(drawn: Case, size: number, practice: Practice): Said {
  const { right, M38, M40 } = areasOf(drawn);
  const area = areaTold(size, practice);
  const needed = amount(right.value * 1e6, 3, 'mm²');
  if (size === sizeFor(drawn, M38, practice))
    return {
      id: 'M38',
      trueOf: 'this is I times t over k, without the root.',
      whyNot: 'Both sides are squared. So it is the root of the time that stands in S.',
      ask: 'What is left of t once the root is taken?',
    };
  if (size === sizeFor(drawn, M40, practice))
    return { id: 'M40', trueOf: 'this would do for copper in PVC.', ask: 'Which metal is this, and which insulation?' };
  if (area < right.value)
    return {
      trueOf: 'this core would pass its limit before the device opens.',
      whyNot: `It needs ${needed} at least.`,
      ask: 'Which is the first size above what is needed?',
    };
  return {
    trueOf: 'this core stands it, and so does a thinner one.',
    whyNot: `It needs ${needed} at least. The question asks for the least size.`,
    ask: 'Which is the first size above what is needed?',
  };
}

const law = formula(String.raw`S = \frac{I\sqrt{t}}{k}`, 'S is I times the root of t over k.');

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { core, If_A, t_s } = drawn;
  const k = kTold(core, 2.5e-6);
  const { right } = areasOf(drawn);
  const size = sizeFor(drawn, right.value, practice) as number;
  const [from, to] = spanOf(core).map((T) => temperatureText(T, practice)) as [string, string];
  const options = sizesOffered(drawn, practice).map((one): ChooseOption => {
    const option = { id: String(one), text: sizeWithArea(one, practice) };
    return one === size ? option : { ...option, said: saidOf(drawn, one, practice) };
  });
  const told = sizeWithArea(size, practice);
  const text = `${told} is the least size that stands it.`;
  return {
    kind: 'choose',
    stem: [
      words`A new cable is to feed ${drawn.load}. It is ${coreText(core)}, with a k of ${quantity(String(k))} from ${quantity(from)} to ${quantity(to)}.`,
      words`A short circuit at its far end drives ${quantity(given(If_A, 'A'))}. The device clears it in ${quantity(spanText(t_s))}.`,
      words`Which is the least size that stands this?`,
    ],
    ask: 'Choose one. k is for amperes, seconds and mm².',
    parts: [{ id: 'size', label: 'The size', options: dealt(options, drawn.deal), right: String(size) }],
    answer: { text },
    scenarios: shortScenario(core, areaTold(size, practice), If_A, t_s, practice),
    hints: [
      words`What the core stands must be at least what it gets: k times S, squared, against I squared times t.`,
      words`Take the root of both sides, and solve for S.`,
      words`Then take the next standard size above. Below, the core would pass its limit.`,
    ],
    solution: [
      words`${law}`,
      words`The root of ${plainNumber(t_s, 3)} is ${plainNumber(Math.sqrt(t_s), 3)}. Times ${quantity(given(If_A, 'A'))} and over ${String(k)} that is ${quantity(amount(right.value * 1e6, 3, 'mm²'))}.`,
      words`So ${text}`,
      words`It must also carry its load, and its volt drop must be borne. The largest of the three sizes counts.`,
    ],
    look: 'Work out the area first. Only then look at the sizes.',
    cautions: [shortCaution],
  };
}

/** How Q60 is drawn and built. */
export const leastSizeSpec: TemplateSpec<Case> = {
  id: 'Q60',
  version: 1,
  lesson: '4.4',
  kind: 'choose',
  title: 'Least size for a short circuit',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['4.4 use t = k²S²/I² and its limits', '4.4 take k by metal and insulation'],
  misconceptions: ['M38', 'M40'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: loads[0] as string, core: { metal: 'aluminium', plastic: 'pvc70' }, If_A: 1700, t_s: 0.4, deal: 1 }],
    na: [{ load: loads[0] as string, core: { metal: 'copper', plastic: 'xlpe' }, If_A: 1500, t_s: 0.2, deal: 1 }],
  },
  build: built,
};

/** Q60: the least size that stands a short circuit. */
export const leastSize = defineTemplate(leastSizeSpec);

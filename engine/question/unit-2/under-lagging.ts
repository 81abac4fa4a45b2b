import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { kelvin } from '../../quantity.ts';
import { carrying } from '../carrying.ts';
import { type Cord, cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { inTheScale } from '../degrees.ts';
import { given, percentText, plainNumber, riseText, rounded, temperatureText } from '../figures.ts';
import { isWithin, staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { chainOf, estimateWidth, whole_degC } from '../settled-chain.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q37b: where a cord settles under lagging, from where it settles hung free.

interface Case {
  readonly cord: CastKey;
  readonly cover: string;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly thickness_mm: number;
}

const covers = [
  'folded drapes behind a stage',
  'sacks in a farm shed',
  'a heap of towels in a laundry',
  'coats in a site cabin',
  'a rolled carpet in a hall',
  'sailcloth in a boatyard loft',
] as const;

/** Conductivity of loose folded cloth [W/(m·K)] (common practice, no source). */
const cloth = 0.05;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const cover = random.pick(covers);
  const ambient_degC = random.whole(12, 30);
  const rise = random.whole(10, 30);
  const thickness_mm = 5 * random.whole(2, 8);
  const cold = buildCase(carrying(cast[cord.key], ambient_degC, 1, practice));
  const I_A = Math.round(ratingAt(cold, kelvin(ambient_degC + rise)) ?? 0);
  if (I_A < 2 || I_A > 25) return null;
  const drawn = { cord: cord.key, cover, ambient_degC, I_A, thickness_mm };
  return isClear(drawn, practice) ? drawn : null;
}

const freeOf = ({ key, practice }: Cord, { ambient_degC, I_A }: Case) =>
  carrying(cast[key], ambient_degC, I_A, practice, 3600);

const coveredOf = ({ key, practice }: Cord, { ambient_degC, I_A, thickness_mm }: Case) =>
  carrying(
    cast[key],
    { kind: 'lagged', ambient_degC, thickness_mm, conductivity_WPerMK: cloth },
    I_A,
    practice,
    2 * 3600,
  );

/** Where it settles hung free, as it is told; how much harder the way out is under the cover, and how much more heat is made there. */
function factsOf(drawn: Case) {
  const cord = cordOf(drawn.cord);
  const [free, covered] = [freeOf(cord, drawn), coveredOf(cord, drawn)].map(chainOf);
  if (!free || !covered) return null;
  const Ta = kelvin(drawn.ambient_degC);
  const [easy, hard] = [free, covered].map(({ conductor, flow }) => (conductor - Ta) / flow) as [number, number];
  return {
    cord,
    free_degC: whole_degC(free.conductor),
    T: covered.conductor,
    harder: rounded(hard / easy, 3),
    hotter: Math.round(100 * (covered.flow / free.flow - 1)) / 100,
  };
}

type Facts = NonNullable<ReturnType<typeof factsOf>>;

/** Rise under the cover by the stem's own figures [K]. */
const riseOf = ({ ambient_degC }: Case, { free_degC, harder, hotter }: Facts) =>
  (free_degC - ambient_degC) * harder * (1 + hotter);

function isClear(drawn: Case, practice: Practice): boolean {
  const facts = factsOf(drawn);
  if (!facts || facts.T > kelvin(140) || facts.hotter < 0.01) return false;
  const answer = answerOf(drawn, facts, practice);
  const { tolerance, value } = answer;
  const estimate = kelvin(drawn.ambient_degC + riseOf(drawn, facts));
  return isWithin(tolerance, value, estimate, 0.4) && staysApart(answer, wrongOf(facts, practice));
}

function answerOf({ ambient_degC }: Case, { T }: Facts, practice: Practice): NumberAnswer {
  const rise = T - kelvin(ambient_degC);
  const tolerance = { kind: 'absolute', by: estimateWidth(rise) } as const;
  const text = temperatureText(whole_degC(T), practice);
  return { value: T, kind: 'temperature', unit: '°C', tolerance, figures: 2, span: rise, text };
}

function wrongOf({ free_degC, harder, hotter }: Facts, practice: Practice): WrongValue[] {
  const times = harder * (1 + hotter);
  const sameEnd: WrongValue = {
    id: 'M29',
    value: kelvin(free_degC),
    trueOf: 'is where it settles hung free.',
    ask: 'How many kelvins does the same heat need, to get out by a harder way?',
  };
  const grown = {
    id: 'M17',
    trueOf: 'multiplies the whole temperature, as if all of it were rise.',
    whyNot: 'Only the rise above the air is driven by the heat. The air stays as it was.',
    ask: 'By that rule, how hot would the cord be under the cover without any current?',
  } as const;
  return [sameEnd, ...inTheScale(practice, grown, (told) => told(free_degC) * times)];
}

const law = formula(
  String.raw`\theta_\mathrm{c} = \theta_\mathrm{a} + W'\,\Sigma T`,
  'Theta c is theta a plus W prime times sigma T.',
);

function solutionOf(drawn: Case, facts: Facts, answer: NumberAnswer, practice: Practice) {
  const { ambient_degC } = drawn;
  const { cord, free_degC, harder, hotter } = facts;
  const rise = riseOf(drawn, facts);
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  return [
    words`Hung free, the rise is from ${told(ambient_degC)} to ${told(free_degC)}, so ${quantity(riseText(free_degC - ambient_degC))}.`,
    words`${law}`,
    words`Under the cover the way is ${plainNumber(harder, 3)} times as hard, and ${plainNumber(1 + hotter, 3)} times the heat has to go it.`,
    words`Both multiply the rise: ${quantity(riseText(rise))}. On the air that makes about ${told(ambient_degC + rise)}. The engine gives ${quantity(answer.text)}.`,
    words`It also takes much longer to get there, so a short trial shows nothing. The cover's conductivity is an estimate.`,
    words`${ratingNote(cord)}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const facts = factsOf(drawn);
  if (!facts) throw new Error('the case of Q37b settles');
  const { cord, free_degC, harder, hotter } = facts;
  const answer = answerOf(drawn, facts, practice);
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  return {
    kind: 'number',
    stem: [
      words`Hung free in air at ${told(drawn.ambient_degC)}, the conductor of ${cord.words} settles at ${told(free_degC)}. It carries ${quantity(given(drawn.I_A, 'A'))}.`,
      words`Then the cord lies under ${quantity(given(drawn.thickness_mm, 'mm'))} of ${drawn.cover}. From copper to air, the heat's way out is now ${quantity(plainNumber(harder, 3))} times as hard.`,
      words`Hotter copper also makes ${quantity(percentText(hotter))} more heat. Air and current are the same. About where does the conductor settle now?`,
    ],
    ask: 'A temperature with its unit. Two figures are enough.',
    scenarios: [
      { name: `under ${given(drawn.thickness_mm, 'mm')}`, scenario: coveredOf(cord, drawn) },
      { name: 'hung free', scenario: freeOf(cord, drawn) },
    ],
    hints: [
      words`How far above the air was the conductor, hung free?`,
      words`What does the rise go with: the heat made, the way out, or both?`,
      words`Multiply the rise, not the temperature. Then put it on the air.`,
    ],
    solution: solutionOf(drawn, facts, answer, practice),
    look: 'Open both cases and compare where they end, not only how fast they start.',
    cautions: [
      'A covered cord overheats out of sight, and its insulation softens. Keep cords in use uncovered.',
      ...overloadCaution(cord, drawn.I_A),
    ],
    answer,
    wrong: wrongOf(facts, practice),
  };
}

/** How Q37b is drawn and built. */
export const underLaggingSpec: TemplateSpec<Case> = {
  id: 'Q37b',
  version: 1,
  lesson: '2.4',
  kind: 'number',
  title: 'Under cover',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['2.4 rank surroundings'],
  misconceptions: ['M29', 'M17'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', cover: covers[0], ambient_degC: 18, I_A: 13, thickness_mm: 30 }],
    na: [{ cord: 'A16', cover: covers[0], ambient_degC: 23, I_A: 18, thickness_mm: 40 }],
  },
  build: built,
};

/** Q37b: where a covered cord settles. */
export const underLagging = defineTemplate(underLaggingSpec);

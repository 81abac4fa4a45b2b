import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { resistanceRatio } from '../../material/resistivity.ts';
import type { DeviceFamily } from '../../protection/device.ts';
import { kelvin } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, settledAt } from '../carrying.ts';
import { cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { amount, given, plainNumber, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import { perLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { askedDevice, beginning, fuseCaution, timesRating, withArticle } from './asked-devices.ts';

// Q52: the heat that a fuse may allow all day in each metre of a cord.

interface Case {
  readonly family: DeviceFamily;
  readonly In: number;
  readonly cord: CastKey;
  readonly around: 'stillAir' | 'clipped';
  readonly ambient_degC: number;
}

const fuses: Readonly<Record<Practice, readonly (readonly [DeviceFamily, number])[]>> = {
  iec: [
    ['bs1362', 7],
    ['bs1362', 10],
    ['bs1362', 13],
    ['gG', 10],
    ['gG', 16],
  ],
  na: [
    ['ul248', 10],
    ['ul248', 15],
    ['ul248', 20],
    ['ul248 delay', 15],
    ['ul248 delay', 20],
  ],
};

/** Cords hotter than this are out of the model and of the question [°C]. */
const hottest = 150;

function drawnCase(random: Random, practice: Practice): Case | null {
  const [family, In] = random.pick(fuses[practice]);
  const drawn: Case = {
    family,
    In,
    cord: random.pick(cordsOf(practice)).key,
    around: random.pick(['stillAir', 'clipped'] as const),
    ambient_degC: random.whole(5, 40),
  };
  if (endOf(drawn, practice) > hottest) return null;
  return staysApart(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

/** The current that the fuse must hold for ever [A]. */
const heldBy = ({ family, In }: Case) => askedDevice(family, In).hold.I;

const scenarioOf = (drawn: Case, practice: Practice): Scenario => ({
  ...carrying(
    cast[drawn.cord],
    { kind: drawn.around, ambient_degC: drawn.ambient_degC },
    heldBy(drawn),
    practice,
    3600,
  ),
  device: { family: drawn.family, rating_A: drawn.In },
});

/** Where the conductor settles at that current, in whole degrees as told [°C]. */
const endOf = (drawn: Case, practice: Practice) => Math.round(settledAt(scenarioOf(drawn, practice)));

/** What the stem tells: a conductor's resistance cold, and how much more it is hot. */
function partsOf(drawn: Case, practice: Practice) {
  const { conductor, loaded } = cableOf(cast[drawn.cord]);
  const told = toldResistance(conductor.R20, practice);
  const hot = resistanceRatio(conductor.alpha20, 0, kelvin(endOf(drawn, practice)));
  return { n: loaded.length, cold: told.R, text: told.text, hot, alpha20: conductor.alpha20 };
}

const heat = (n: number, I: number, R: number) => n * I ** 2 * R;

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const { n, cold, hot } = partsOf(drawn, practice);
  const value = heat(n, heldBy(drawn), cold * hot);
  const { length, heat: unit } = perLength[practice];
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value, kind: 'heat per metre', unit, tolerance, figures: 3, text: amount(value * length, 3, unit) };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const { n, cold, hot } = partsOf(drawn, practice);
  return [
    {
      id: 'M31',
      value: heat(n, drawn.In, cold * hot),
      trueOf: `is the heat at ${given(drawn.In, 'A')}, the number on the fuse.`,
      ask: 'Which current does the standard say that this fuse must hold?',
    },
    {
      id: 'M16',
      value: heat(n, heldBy(drawn), cold),
      trueOf: 'is the heat with the conductors still cold.',
      ask: 'How much more do they resist where they settle?',
      whyNot: 'Hot copper resists more. Use its resistance where it settles.',
    },
  ];
}

const lies = { stillAir: 'free in still air', clipped: 'clipped to a wall' } as const;

const law = formula("W' = n\\,I^2R'", 'W dash is n times I squared times R dash.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const of = askedDevice(drawn.family, drawn.In);
  const cord = cordOf(drawn.cord);
  const answer = answerOf(drawn, practice);
  const { text, hot, alpha20 } = partsOf(drawn, practice);
  const { name: each, resistance: unit } = perLength[practice];
  const I = heldBy(drawn);
  const end = temperatureText(endOf(drawn, practice), practice);
  const times = String(timesRating(I, of));
  const hotText = amount(Number.parseFloat(text) * hot, 3, unit);
  return {
    kind: 'number',
    stem: [
      words`${beginning(withArticle(of.name))} guards ${cord.words}. The cord is ${lies[drawn.around]} at ${quantity(temperatureText(drawn.ambient_degC, practice))}. Two conductors carry the current. Each has ${quantity(text)} at ${quantity(temperatureText(20, practice))}.`,
      words`This fuse must hold ${quantity(times)} times its rating for ever. The engine lets the conductors settle at ${quantity(end)} with that current. Copper’s coefficient is ${quantity(plainNumber(alpha20, 3))} for each kelvin above ${quantity(temperatureText(20, practice))}.`,
      words`How much heat may be made all day in each ${each} of the cord before the fuse has to open?`,
    ],
    ask: `Heat in each ${each}, with its unit. Three figures are enough.`,
    scenarios: [{ name: `${given(I, 'A')} held`, scenario: scenarioOf(drawn, practice) }],
    hints: [
      words`Find the current first: the rating times the factor that the fuse must hold.`,
      words`Then find what one conductor resists where it settles.`,
      words`Both conductors make heat: current squared times resistance, twice.`,
    ],
    solution: [
      words`The fuse must hold ${times} times ${quantity(given(drawn.In, 'A'))}, which is ${quantity(given(I, 'A'))}.`,
      words`At ${quantity(end)} the copper resists ${quantity(plainNumber(hot, 3))} times as much as at 20 degrees: ${quantity(hotText)}.`,
      words`${law}`,
      words`Two conductors make ${quantity(answer.text)}. The fuse does its job; the cord has to stand that heat.`,
      words`${ratingNote(cord)}`,
    ],
    look: 'Open the case and read the heat made once it has settled.',
    cautions: [...overloadCaution(cord, I), fuseCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q52 is drawn and built. */
export const heatAllowedSpec: TemplateSpec<Case> = {
  id: 'Q52',
  version: 1,
  lesson: '4.1',
  kind: 'number',
  title: 'Heat a fuse allows all day',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['4.1 find the fusing factor', '4.1 read hold, may and must'],
  misconceptions: ['M31', 'M16'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ family: 'bs1362', In: 13, cord: 'C150', around: 'stillAir', ambient_degC: 20 }],
    na: [{ family: 'ul248', In: 15, cord: 'A16', around: 'stillAir', ambient_degC: 20 }],
  },
  build: built,
};

/** Q52: the heat that a fuse may allow all day in a cord. */
export const heatAllowed = defineTemplate(heatAllowedSpec);

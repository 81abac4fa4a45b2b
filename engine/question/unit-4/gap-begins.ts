import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { ratingAt } from '../../heating/rating.ts';
import { heatMade } from '../../heating/steady.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { resistanceRatio } from '../../material/resistivity.ts';
import { actingShare } from '../../protection/coordination.ts';
import type { Device, DeviceFamily, Gate } from '../../protection/device.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario, SurroundingsSpec } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { amount, given, plainNumber, rounded, temperatureText, timeText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import { perLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { askedDevice, gapCaution, withArticle } from './asked-devices.ts';

// Q55: the lower end of the gap: the current that holds a cord at its limit.

interface Case {
  readonly family: DeviceFamily;
  readonly In: number;
  readonly cord: CastKey;
  readonly around: 'stillAir' | 'clipped';
  readonly ambient_degC: number;
}

type Fuses = readonly (readonly [DeviceFamily, readonly number[]])[];
const devices: Readonly<Record<Practice, Fuses>> = {
  iec: [
    ['bs1362', [10, 13]],
    ['gG', [10, 16, 20]],
    ['B', [10, 13, 16, 20]],
    ['C', [13, 16, 20]],
  ],
  na: [
    ['ul489', [15, 20, 25]],
    ['ul248', [15, 20, 25]],
    ['ul248 delay', [15, 20]],
  ],
};

function drawnCase(random: Random, practice: Practice): Case | null {
  const [family, ratings] = random.pick(devices[practice]);
  const drawn: Case = {
    family,
    In: random.pick(ratings),
    cord: random.pick(cordsOf(practice)).key,
    around: random.pick(['stillAir', 'clipped'] as const),
    ambient_degC: random.whole(5, 45),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** There is a gap, and no number of the stem is the answer. */
function isClear(drawn: Case, practice: Practice): boolean {
  const answer = answerOf(drawn, practice);
  const { hold, by, In } = askedDevice(drawn.family, drawn.In);
  const open = (by[0] as Gate).I;
  const apart = [In, hold.I, open].every((I) => Math.abs(I / answer.value - 1) > 0.06);
  return answer.value < open && answer.value >= 5 && apart && staysApart(answer, wrongOf(drawn, practice));
}

const surroundingsOf = ({ around, ambient_degC }: Case): SurroundingsSpec => ({ kind: around, ambient_degC });
const scenarioOf = (drawn: Case, I_A: number, practice: Practice): Scenario => ({
  ...carrying(cast[drawn.cord], surroundingsOf(drawn), I_A, practice, 3600),
  device: { family: drawn.family, rating_A: drawn.In },
});

/** The cord at its rating, by the engine: the current, the heat each metre sheds, and what the stem tells of its copper. */
function factsOf(drawn: Case, practice: Practice) {
  const of = buildCase(scenarioOf(drawn, 1, practice));
  const T = ratingOf(of.cable) as number;
  const Iz = ratingAt(of, T) as number;
  const { length } = perLength[practice];
  const heat = rounded(heatMade(of, Iz, T) * length, 3);
  const { R20, alpha20 } = of.cable.conductor;
  return {
    T_degC: celsius(T),
    Iz,
    heat,
    alpha20,
    R: toldResistance(R20, practice),
    hot: resistanceRatio(alpha20, 0, T),
  };
}

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const { Iz: value } = factsOf(drawn, practice);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value, kind: 'current', unit: 'A', tolerance, figures: 3, text: amount(value, 3, 'A') };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const { Iz, hot } = factsOf(drawn, practice);
  return [
    {
      id: 'M37',
      value: actingShare * Iz,
      trueOf: 'is 1.45 times what the cord carries at its limit.',
      whyNot: 'The rule lets a device need that much before it acts. The metal passes its limit from Iz on.',
      ask: 'Would the cord stay below its limit at 1.2 times Iz, held all day?',
    },
    {
      id: 'M16',
      value: Iz * Math.sqrt(hot),
      trueOf: 'is what cold copper would carry for that heat.',
      ask: 'How much more does the copper resist at its limit?',
      whyNot: 'At its limit the copper is hot, and hot copper resists more. So less current makes that heat.',
    },
  ];
}

const law = formula(
  String.raw`I_\mathrm{z} = \sqrt{\frac{W'}{n R'}}`,
  'I z is the root of W dash over n times R dash.',
);
const lies = { stillAir: 'hangs in still air', clipped: 'is clipped to a wall' } as const;

function nameOf(of: Device): string {
  const open = of.by[0] as Gate;
  return `It may carry up to ${given(Number(open.I.toPrecision(3)), 'A')} for ${timeText(open.t)} and more.`;
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const of = askedDevice(drawn.family, drawn.In);
  const cord = cordOf(drawn.cord);
  const { T_degC, heat, alpha20, R, hot, Iz } = factsOf(drawn, practice);
  const answer = answerOf(drawn, practice);
  const { name: each, heat: unit, resistance, length } = perLength[practice];
  const limit = temperatureText(T_degC, practice);
  const hotText = amount(R.R * length * 1e3 * hot, 3, resistance);
  return {
    kind: 'number',
    stem: [
      words`${cord.words.replace('a ', 'A ')} ${lies[drawn.around]} at ${quantity(temperatureText(drawn.ambient_degC, practice))}. It is behind ${withArticle(of.name)}. Its PVC is rated ${quantity(limit)}.`,
      words`With the conductors at that limit, each ${each} sheds ${quantity(amount(heat, 3, 'W'))}, by the engine. Two conductors carry the current. Each has ${quantity(R.text)} at ${quantity(temperatureText(20, practice))}. Copper’s coefficient is ${quantity(plainNumber(alpha20, 3))} for each kelvin above that.`,
      words`Which current is the lower end of the gap?`,
    ],
    ask: 'A current with its unit. Three figures are enough.',
    scenarios: [{ name: `at ${answer.text}`, scenario: scenarioOf(drawn, rounded(Iz, 3), practice) }],
    hints: [
      words`The gap begins where a held current brings the conductor to its limit.`,
      words`There the heat made is the heat shed. Write heat made as current squared times resistance, for both conductors.`,
      words`Use the resistance at the limit, not that at 20 degrees.`,
    ],
    solution: [
      words`At ${quantity(limit)} the copper resists ${quantity(plainNumber(hot, 3))} times as much: ${quantity(hotText)}.`,
      words`${law}`,
      words`Two conductors make ${quantity(amount(heat, 3, unit))} at ${quantity(answer.text)}. From there up the limit is passed, soon or late.`,
      words`The ${of.name} does not guard that. ${nameOf(of)}`,
      words`${ratingNote(cord)}`,
    ],
    look: 'Open the case and read where it settles. Then try a little more current.',
    cautions: [...overloadCaution(cord, rounded(Iz, 3)), gapCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q55 is drawn and built. */
export const gapBeginsSpec: TemplateSpec<Case> = {
  id: 'Q55',
  version: 1,
  lesson: '4.3',
  kind: 'number',
  title: 'Where the gap begins',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['4.3 find Iz for a stated limit'],
  misconceptions: ['M37', 'M16'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ family: 'bs1362', In: 13, cord: 'C125', around: 'stillAir', ambient_degC: 30 }],
    na: [{ family: 'ul489', In: 20, cord: 'A18', around: 'stillAir', ambient_degC: 30 }],
  },
  build: built,
};

/** Q55: the lower end of the gap of a cord behind a device. */
export const gapBegins = defineTemplate(gapBeginsSpec);

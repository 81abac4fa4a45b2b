import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { ratingAt } from '../../heating/rating.ts';
import { steadyFlow } from '../../heating/steady.ts';
import { buildCase, conductorResistance, type ThermalCase } from '../../heating/thermal-case.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario, SurroundingsSpec } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { amount, given, plainNumber, riseText, rounded, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q37: the greatest current a wound cord may carry for good, from the heat its turns can shed.

interface Case {
  readonly cord: CastKey;
  readonly place: string;
  readonly ambient_degC: number;
  readonly drum_mm: number;
  readonly turns: number;
  readonly layers: number;
}

const places = [
  'A stage reel',
  'A market reel',
  'A reel in a boatyard',
  'A reel in a village hall',
  'A reel on a farm',
  'A reel in a joinery',
] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const drawn: Case = {
    cord: random.pick(cordsOf(practice)).key,
    place: random.pick(places),
    ambient_degC: random.whole(10, 35),
    drum_mm: 10 * random.whole(10, 16),
    turns: random.whole(10, 16),
    layers: random.whole(1, 5),
  };
  const answer = answerOf(drawn);
  return answer.value >= 1 && staysApart(answer, wrongOf(factsOf(drawn))) ? drawn : null;
}

/** Length that fills the layers, in whole metres. */
function woundLength({ cord, drum_mm, turns, layers }: Case): number {
  const De = 2 * buildCase(carrying(cast[cord], 20, 1, 'iec')).cable.outerRadius;
  return Math.floor(Math.PI * layers * turns * (drum_mm / 1e3 + layers * De));
}

function reeled(drawn: Case, I_A: number, conductivity_WPerMK?: number): Scenario {
  const { cord, ambient_degC, drum_mm, turns, layers } = drawn;
  const wound_m = woundLength(drawn);
  const k = conductivity_WPerMK === undefined ? {} : { conductivity_WPerMK };
  const reel: SurroundingsSpec = { kind: 'coiled', ambient_degC, drum_mm, turns, layers, wound_m, ...k };
  return { ...carrying(cast[cord], reel, I_A, cordOf(cord).practice, 5 * 3600), lead: { length_m: wound_m } };
}

const freeOf = ({ cord, ambient_degC }: Case, I_A: number) =>
  carrying(cast[cord], ambient_degC, I_A, cordOf(cord).practice, 3600);

function limitOf(of: ThermalCase): number {
  const T = ratingOf(of.cable);
  if (T === null) throw new Error('the cord of Q37 has a rating');
  return T;
}

const mostIn = (of: ThermalCase) => ratingAt(of, limitOf(of)) ?? 0;

/** Whole thermal resistance from copper to air, per metre of cord, with the conductor at its limit [K·m/W]. */
const pathOf = (of: ThermalCase) => (limitOf(of) - of.Ta) / steadyFlow(of, limitOf(of));

/** The figures of the stem, rounded as they are told; the greatest current is the engine's own [A]. */
function factsOf(drawn: Case) {
  const wound = buildCase(reeled(drawn, 1));
  const free = buildCase(freeOf(drawn, 1));
  const limit = limitOf(free);
  return {
    cord: cordOf(drawn.cord),
    limit_degC: celsius(limit),
    room: limit - free.Ta,
    wound: rounded(pathOf(wound), 3),
    free: rounded(pathOf(free), 3),
    R: rounded(conductorResistance(free, limit), 3),
    n: free.n,
    length: woundLength(drawn),
  };
}

type Facts = ReturnType<typeof factsOf>;

/** I = √(Δθ/(ΣT · n R')), the balance of heat made and shed at the limit [A]. */
const balance = ({ room, n, R }: Facts, path: number) => Math.sqrt(room / (path * n * R));

function answerOf(drawn: Case): NumberAnswer {
  const value = mostIn(buildCase(reeled(drawn, 1)));
  const tolerance = { kind: 'relative', part: 0.1 } as const;
  return { value, kind: 'current', unit: 'A', tolerance, figures: 2, text: amount(value, 2, 'A') };
}

function wrongOf(facts: Facts): WrongValue[] {
  return [
    {
      id: 'M28',
      value: balance(facts, facts.free),
      trueOf: 'is what the cord could carry hung free.',
      ask: 'How does the heat of an inner turn get out of the reel?',
    },
  ];
}

const law = formula(
  String.raw`n\,I^2R' = \frac{\theta - \theta_\mathrm{a}}{\Sigma T}`,
  'N times I squared times R prime is theta minus theta a, over sigma T.',
);

/** The honest range of a wound coil's conductivity [W/(m·K)] (heat model, section 3). */
const packings = [0.13, 0.28] as const;

function solutionOf(drawn: Case, facts: Facts, answer: NumberAnswer) {
  const { cord, room, wound, R, n } = facts;
  const packed = packings.map((k) => amount(mostIn(buildCase(reeled(drawn, 1, k))), 2, 'A')) as [string, string];
  const range = packed[0] === packed[1] ? '' : ` Packed worse or better, it might be ${packed.join(' or ')}.`;
  const heat = room / wound;
  return [
    words`There are ${quantity(riseText(room))} between the air and the limit.`,
    words`${law}`,
    words`Through ${quantity(amount(wound, 3, 'K·m/W'))}, that room lets out ${quantity(amount(heat, 3, 'W/m'))}.`,
    words`Two loaded cores of ${quantity(amount(1e3 * R, 3, 'mΩ/m'))} may make that much. So current squared is ${plainNumber(heat / (n * R), 3)}, and the current ${quantity(answer.text)}.`,
    words`The reel's figures are an estimate.${range}`,
    words`${ratingNote(cord)} A reel's plate gives a wound rating: that one rules.`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const facts = factsOf(drawn);
  const { cord, limit_degC, wound, free, R, length } = facts;
  const answer = answerOf(drawn);
  const I = Number(answer.value.toPrecision(2));
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const layers = drawn.layers === 1 ? 'one layer' : `${drawn.layers} layers`;
  return {
    kind: 'number',
    stem: [
      words`${drawn.place} holds ${quantity(given(length, 'm'))} of ${cord.words}, wound in ${layers} of ${String(drawn.turns)} turns. The air is at ${told(drawn.ambient_degC)}.`,
      words`Wound, each metre has ${quantity(amount(wound, 3, 'K·m/W'))} of thermal resistance from the copper of the inner turn to the air. Hung free it has ${quantity(amount(free, 3, 'K·m/W'))}.`,
      words`Two cores are loaded. At ${told(limit_degC)} each has ${quantity(amount(1e3 * R, 3, 'mΩ/m'))}. Which current, held for good, brings the inner turn of the full reel to that limit?`,
    ],
    ask: 'A current with its unit. Two figures are enough.',
    scenarios: [
      { name: `on the reel, ${answer.text}`, scenario: reeled(drawn, I) },
      { name: `hung free, ${answer.text}`, scenario: freeOf(drawn, I) },
    ],
    hints: [
      words`How many kelvins are there between the air and the limit?`,
      words`Those kelvins, over the thermal resistance of the wound cord, give the heat that a metre can shed.`,
      words`Which current makes as much heat in two cores? ${law}`,
    ],
    solution: solutionOf(drawn, facts, answer),
    look: 'Open both cases. The same current ends far hotter on the reel: compare the two ends.',
    cautions: [
      'A wound reel overheats inside, unseen, and its insulation fails. Unwind it fully; keep to the wound rating on its plate.',
      ...overloadCaution(cord, I),
    ],
    answer,
    wrong: wrongOf(facts),
  };
}

/** How Q37 is drawn and built. */
export const mostOnAReelSpec: TemplateSpec<Case> = {
  id: 'Q37',
  version: 1,
  lesson: '2.4',
  kind: 'number',
  title: 'The most a reel can take',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['2.4 say why a reel is worse with each layer'],
  misconceptions: ['M28'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', place: places[0], ambient_degC: 20, drum_mm: 120, turns: 12, layers: 4 }],
    na: [{ cord: 'A16', place: places[0], ambient_degC: 20, drum_mm: 120, turns: 12, layers: 4 }],
  },
  build: built,
};

/** Q37: the greatest current that a wound cord carries without passing its limit. */
export const mostOnAReel = defineTemplate(mostOnAReelSpec);

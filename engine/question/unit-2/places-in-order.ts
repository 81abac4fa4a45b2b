import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import type { Scenario, SurroundingsSpec } from '../../scenario/schema.ts';
import { allApart, carrying, clearly, settledAt } from '../carrying.ts';
import { type Cord, cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { dealtOrder, mostDeals } from '../deal.ts';
import { given, temperatureText } from '../figures.ts';
import { inWords } from '../mark-order.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltOrder, OrderItem, Practice, TemplateSpec, WrongOrder } from '../types.ts';
import { quantity, words } from '../words.ts';

// Q35: one cord at one current in several surroundings, in order of where it settles.

type Around = 'free' | 'clipped' | 'touching' | 'lagged' | 'reeled';

interface Case {
  readonly cord: CastKey;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly around: readonly Around[];
  readonly lagging_mm: number;
  readonly layers: number;
  readonly deal: number;
}

const drum_mm = 120;
const turns = 12;
/** Loose folds of cloth, as in the lesson [W/(m·K)] (our choice, argued there). */
const cloth = 0.05;
/** Above this a cord of the model is too far past its plastic's limit [°C]. */
const hottest = 155;

const sets: readonly (readonly Around[])[] = [
  ['free', 'clipped', 'touching', 'lagged', 'reeled'],
  ['free', 'clipped', 'lagged', 'reeled'],
  ['free', 'touching', 'lagged', 'reeled'],
];

function drawnCase(random: Random, practice: Practice): Case | null {
  const drawn = {
    cord: random.pick(cordsOf(practice)).key,
    ambient_degC: random.whole(10, 30),
    I_A: random.whole(8, 20),
    around: random.pick(sets),
    lagging_mm: random.pick([10, 15, 20, 25, 30]),
    layers: random.pick([1, 1, 2]),
    deal: random.whole(0, mostDeals),
  };
  const ends = endsOf(drawn, practice);
  const T = ends.map(({ T_degC }) => T_degC);
  // lagging and reel differ in kind, so they keep well apart: a learner judges by their sizes alone
  const [lagged, reeled] = (['lagged', 'reeled'] as const).map((id) => ends.find((end) => end.id === id)?.T_degC ?? 0);
  const clear = allApart(T, clearly) && Math.max(...T) <= hottest && (reeled as number) >= (lagged as number) + 10;
  const right = ends.map(({ id }) => id).join();
  return clear && wrongOf(ends.map(({ id }) => id)).every(({ order }) => order.join() !== right) ? drawn : null;
}

/** Length that the layers hold, to whole metres [m]: M layers of W turns, L = π M W (Dd + M De). */
function woundLength({ cord, layers }: Case): number {
  const De = 2 * cableOf(cast[cord]).outerRadius;
  return Math.floor(Math.PI * layers * turns * (drum_mm / 1e3 + layers * De));
}

function surroundingsOf(drawn: Case, id: Around): SurroundingsSpec {
  const { ambient_degC } = drawn;
  switch (id) {
    case 'free':
      return { kind: 'stillAir', ambient_degC };
    case 'clipped':
      return { kind: 'clipped', ambient_degC };
    case 'touching':
      return { kind: 'clipped', ambient_degC, arrangement: 'threeTouching' };
    case 'lagged':
      return { kind: 'lagged', ambient_degC, thickness_mm: drawn.lagging_mm, conductivity_WPerMK: cloth };
    case 'reeled':
      return { kind: 'coiled', ambient_degC, drum_mm, turns, layers: drawn.layers, wound_m: woundLength(drawn) };
  }
}

function scenarioOf(drawn: Case, id: Around, practice: Practice): Scenario {
  const scenario = carrying(cast[drawn.cord], surroundingsOf(drawn, id), drawn.I_A, practice, 7200);
  return id === 'reeled' ? { ...scenario, lead: { length_m: woundLength(drawn) } } : scenario;
}

/** Where the cord settles in each surroundings, coolest first, by the engine [°C]. */
function endsOf(drawn: Case, practice: Practice) {
  const ends = drawn.around.map((id) => ({ id, T_degC: settledAt(scenarioOf(drawn, id, practice)) }));
  return ends.sort((a, b) => a.T_degC - b.T_degC);
}

/** One who takes the reel for storage, or lagging for a delay, puts it beside the cord in free air; which comes first is chance. */
function wrongOf(order: readonly Around[]): WrongOrder[] {
  const beside = (id: Around): Around[][] => {
    const rest = order.filter((other) => other !== id);
    const at = rest.indexOf('free');
    return [at, at + 1].map((i) => [...rest.slice(0, i), id, ...rest.slice(i)]);
  };
  const key = order.join();
  const told = (id: 'M28' | 'M29', one: Around[], trueOf: string, ask: string): WrongOrder => ({
    id,
    order: one,
    trueOf,
    ask,
  });
  return [
    ...beside('reeled').map((one) =>
      told(
        'M28',
        one,
        'this treats the reel as if each turn were alone in the air.',
        'What does a turn in the middle of the drum have on both sides?',
      ),
    ),
    ...beside('lagged').map((one) =>
      told(
        'M29',
        one,
        'lagging does slow the warming, and this stops there.',
        'The same watts must still get out. What do they have to cross now?',
      ),
    ),
  ].filter(({ order: one }) => one.join() !== key);
}

function nameOf({ lagging_mm, layers }: Case, id: Around): string {
  switch (id) {
    case 'free':
      return 'free in still air';
    case 'clipped':
      return 'clipped to a wall';
    case 'touching':
      return 'touching two others loaded alike';
    case 'lagged':
      return `under ${given(lagging_mm, 'mm')} of cloth`;
    case 'reeled':
      return `on a reel in ${layers === 1 ? 'one layer' : 'two layers'}`;
  }
}

function solutionOf(drawn: Case, cord: Cord, text: string, practice: Practice) {
  const told = endsOf(drawn, practice).map(
    ({ id, T_degC }) => `${nameOf(drawn, id)} ${temperatureText(T_degC, practice)}`,
  );
  return [
    words`The heat made is nearly the same everywhere. What differs is its way out.`,
    words`A wall or a neighbour covers part of the skin. Cloth lengthens the way out as well.`,
    words`On a reel the turns heat each other, and only the outside of the drum sheds heat.`,
    words`The engine gives these: ${told.slice(0, 2).join(', ')}.`,
    words`And these: ${told.slice(2).join(', ')}.`,
    words`So ${text}`,
    words`The reel is an estimate, and its inner turns are hotter. Unwind a lead fully before use. ${ratingNote(cord)}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltOrder {
  const cord = cordOf(drawn.cord);
  const order = endsOf(drawn, practice).map(({ id }) => id);
  const wrong = wrongOf(order);
  const dealtIds = dealtOrder(
    order,
    wrong.map((one) => one.order),
    drawn.deal,
  );
  const items = dealtIds.map((id): OrderItem => ({ id, name: nameOf(drawn, id as Around) }));
  const ends = ['coolest', 'hottest'] as const;
  const text = `${inWords({ items, ends }, order)}.`;
  return {
    kind: 'order',
    stem: [
      words`${cord.words.replace('a ', 'A ')} carries ${quantity(given(drawn.I_A, 'A'))} where the air is at ${quantity(temperatureText(drawn.ambient_degC, practice))}. Each time it is held until the temperature stands.`,
      words`Put these surroundings in order of where its conductor settles. The reel’s drum is ${quantity(given(drum_mm, 'mm'))} across and full.`,
    ],
    ask: 'Move each up or down with its two buttons.',
    items,
    ends,
    answer: { order, text },
    wrong,
    scenarios: order.map((id) => ({ name: nameOf(drawn, id), scenario: scenarioOf(drawn, id, practice) })),
    hints: [
      words`The heat made is nearly the same in all. Look at its way out.`,
      words`How much of the skin is still open to the air, and what lies between it and the air?`,
      words`On a reel, ask how a turn in the middle gets rid of its heat.`,
    ],
    solution: solutionOf(drawn, cord, text, practice),
    look: 'Open the cases and compare where the conductors settle.',
    cautions: [
      ...overloadCaution(cord, drawn.I_A),
      'A covered or wound lead may start a fire. Simulate only; never run one to see how hot it gets.',
    ],
  };
}

/** How Q35 is drawn and built. */
export const placesInOrderSpec: TemplateSpec<Case> = {
  id: 'Q35',
  version: 1,
  lesson: '2.4',
  kind: 'order',
  title: 'One cord, many surroundings',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['2.4 rank surroundings'],
  misconceptions: ['M28', 'M29'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        cord: 'C125',
        ambient_degC: 20,
        I_A: 14,
        around: ['free', 'touching', 'lagged', 'reeled'],
        lagging_mm: 15,
        layers: 1,
        deal: 1,
      },
    ],
    na: [
      {
        cord: 'A16',
        ambient_degC: 20,
        I_A: 14,
        around: ['free', 'touching', 'lagged', 'reeled'],
        lagging_mm: 15,
        layers: 1,
        deal: 1,
      },
    ],
  },
  build: built,
};

/** Q35: one cord in several surroundings, in order of where it settles. */
export const placesInOrder = defineTemplate(placesInOrderSpec);

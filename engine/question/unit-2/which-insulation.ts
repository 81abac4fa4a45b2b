import { type CastKey, cast } from '../../examples/cast.ts';
import type { Plastic, PlasticId } from '../../material/plastics.ts';
import { plastics } from '../../material/plastics.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, clearly, settledAt } from '../carrying.ts';
import { type Cord, cordOf, cordsOf } from '../cords.ts';
import { dealt, mostDeals } from '../deal.ts';
import { given, riseText, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { withPlastic } from './walls.ts';

// Q32: the lowest-rated insulation that stands what a warm place makes of a cord.

interface Case {
  readonly cord: CastKey;
  readonly place: string;
  /** Where the rise was seen [°C]. */
  readonly room_degC: number;
  /** Where the cord is to go [°C]. */
  readonly hot_degC: number;
  readonly I_A: number;
  readonly insulations: readonly PlasticId[];
  readonly deal: number;
}

// how hot places are [°C]: our choice, for the question
const places: readonly (readonly [string, number, number])[] = [
  ['in the proving cabinet of a bakery', 40, 55],
  ['in the drying room of a laundry', 45, 65],
  ['in the kiln house of a joinery', 50, 80],
  ['on the lamp bar over a stage', 55, 95],
  ['above the heater of a polytunnel', 45, 75],
];

const soft: readonly PlasticId[] = ['pvc90', 'xlpe', 'epr'];
const hard: readonly PlasticId[] = ['silicone', 'fep', 'ptfe'];

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const [place, least, most] = random.pick(places);
  const drawn: Case = {
    cord: cord.key,
    place,
    room_degC: random.whole(18, 26),
    hot_degC: random.whole(least, most),
    I_A: random.whole(4, cord.rating),
    insulations: ['rubber60', 'pvc70', random.pick(soft), random.pick(hard)],
    deal: random.whole(0, mostDeals),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** The cord is clear of every rating there, and its room alone would have asked for less. */
function isClear(drawn: Case, practice: Practice): boolean {
  const needed = neededIn(drawn, drawn.hot_degC, practice);
  const clear = drawn.insulations.every((id) => {
    const rating = ratedAt(plastics[id]);
    const own = settledAt(scenarioOf(drawn, drawn.hot_degC, id, practice));
    return (
      Math.abs(rating - needed) >= clearly && Math.abs(rating - own) >= clearly && rating < own === rating < needed
    );
  });
  return clear && needed >= 55 && needed <= 120 && leastFor(drawn, needed) !== leastFor(drawn, inRoom(drawn, practice));
}

/** Continuous rating of a plastic [°C], its lower end where the sources give a range. */
const ratedAt = ({ limits }: Plastic) => celsius(limits.find(({ kind }) => kind === 'rating')?.low ?? Number.NaN);

const scenarioOf = ({ cord, I_A }: Case, ambient_degC: number, id: PlasticId, practice: Practice): Scenario =>
  carrying(withPlastic(cast[cord], id), ambient_degC, I_A, practice, 3600);

const inRoom = (drawn: Case, practice: Practice) => settledAt(scenarioOf(drawn, drawn.room_degC, 'pvc70', practice));

/** Rise as it is told [K]. */
const riseOf = (drawn: Case, practice: Practice) => Math.round(inRoom(drawn, practice) - drawn.room_degC);

/** Where the conductor settles at an ambient, from the rise as it is told [°C]. */
const neededIn = (drawn: Case, ambient_degC: number, practice: Practice) => ambient_degC + riseOf(drawn, practice);

/** The lowest-rated insulation on offer that stands `T_degC` for long. */
function leastFor({ insulations }: Case, T_degC: number): PlasticId {
  const stand = insulations.filter((id) => ratedAt(plastics[id]) >= T_degC);
  const [least] = stand.sort((a, b) => ratedAt(plastics[a]) - ratedAt(plastics[b]));
  if (!least) throw new Error('none on offer stands it');
  return least;
}

const names: Readonly<Partial<Record<PlasticId, string>>> = {
  rubber60: 'rubber',
  pvc70: 'PVC',
  pvc90: 'heat-resisting PVC',
  xlpe: 'cross-linked polyethylene',
  epr: 'ethylene-propylene rubber',
  silicone: 'silicone rubber',
  fep: 'FEP',
  ptfe: 'PTFE',
};

const nameOf = (id: PlasticId, practice: Practice) =>
  `${names[id]}, rated ${temperatureText(ratedAt(plastics[id]), practice)}`;

function saidOf(drawn: Case, id: PlasticId, needed: number, practice: Practice): Said {
  const rating = ratedAt(plastics[id]);
  const end = temperatureText(needed, practice);
  if (rating > needed)
    return {
      id: 'M24',
      trueOf: 'that one would stand it too, but is rated far above what is needed.',
      whyNot: 'A rating is not a melting point. It already is a temperature to hold for years.',
      ask: 'Which insulation on offer has the next rating above the conductor?',
    };
  const trueOf = `the conductor settles at ${end} there, past this rating.`;
  if (id === leastFor(drawn, inRoom(drawn, practice)))
    return { id: 'M25', trueOf, ask: 'The rise stays nearly the same. What does it stand on in the warm place?' };
  return {
    trueOf,
    whyNot: 'Held past its rating, insulation ages far faster than it should.',
    ask: 'How hot is the conductor, with the warm place under its rise?',
  };
}

function solutionOf(drawn: Case, cord: Cord, text: string, practice: Practice) {
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const rise = riseOf(drawn, practice);
  const needed = neededIn(drawn, drawn.hot_degC, practice);
  const right = leastFor(drawn, needed);
  const own = settledAt(scenarioOf(drawn, drawn.hot_degC, right, practice));
  return [
    words`In the room the conductor rises ${quantity(riseText(rise))} above the air.`,
    words`The same watts make nearly the same rise in the warm place: ${told(drawn.hot_degC)} and ${quantity(riseText(rise))} is ${told(needed)}.`,
    words`A rating is for years of use. Take the lowest that is not below this.`,
    words`So ${text} The engine lets that cord settle at ${told(own)}.`,
    words`At ${told(30)} the table allows this cord ${quantity(given(cord.rating, 'A'))}. For warmer places tables ask for less, so check yours.`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const cord = cordOf(drawn.cord);
  const needed = neededIn(drawn, drawn.hot_degC, practice);
  const right = leastFor(drawn, needed);
  const options = drawn.insulations.map((id): ChooseOption => {
    const option = { id, text: `${(names[id] ?? id).charAt(0).toUpperCase()}${nameOf(id, practice).slice(1)}` };
    return id === right ? option : { ...option, said: saidOf(drawn, id, needed, practice) };
  });
  const text = `${nameOf(right, practice)}, is the lowest that stands ${temperatureText(needed, practice)}.`;
  const I = quantity(given(drawn.I_A, 'A'));
  return {
    kind: 'choose',
    stem: [
      words`In a room at ${quantity(temperatureText(drawn.room_degC, practice))}, ${cord.words} carries ${I} for hours. Its conductor settles at ${quantity(temperatureText(inRoom(drawn, practice), practice))}.`,
      words`A cord like it is to carry ${I} ${drawn.place}, where the air is at ${quantity(temperatureText(drawn.hot_degC, practice))}. Which is the lowest-rated insulation that stands it for years?`,
    ],
    ask: 'Choose one. All of them are as thick as the first cord’s.',
    parts: [{ id: 'insulation', label: 'The insulation', options: dealt(options, drawn.deal), right }],
    answer: { text },
    scenarios: [
      { name: 'in the room', scenario: scenarioOf(drawn, drawn.room_degC, 'pvc70', practice) },
      { name: 'in the warm place', scenario: scenarioOf(drawn, drawn.hot_degC, right, practice) },
    ],
    hints: [
      words`How far does the conductor rise above the air of the room?`,
      words`That rise stays nearly the same. Put it on top of the warm place’s air.`,
      words`A rating already is a temperature to hold for years. Look for the first that is not below yours.`,
    ],
    solution: solutionOf(drawn, cord, text, practice),
    look: 'Open both cases, and compare each conductor with its air.',
    cautions: [],
  };
}

/** How Q32 is drawn and built. */
export const whichInsulationSpec: TemplateSpec<Case> = {
  id: 'Q32',
  version: 1,
  lesson: '2.3',
  kind: 'choose',
  title: 'Insulation for a warm place',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['2.3 match insulation to continuous limits'],
  misconceptions: ['M25', 'M24'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        cord: 'C125',
        place: 'in the drying room of a laundry',
        room_degC: 20,
        hot_degC: 60,
        I_A: 13,
        insulations: ['rubber60', 'pvc70', 'xlpe', 'silicone'],
        deal: 1,
      },
    ],
    na: [
      {
        cord: 'A16',
        place: 'in the drying room of a laundry',
        room_degC: 20,
        hot_degC: 62,
        I_A: 13,
        insulations: ['rubber60', 'pvc70', 'xlpe', 'silicone'],
        deal: 1,
      },
    ],
  },
  build: built,
};

/** Q32: the lowest-rated insulation that stands a warm place. */
export const whichInsulation = defineTemplate(whichInsulationSpec);

import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { celsius, kelvin } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, settledAt } from '../carrying.ts';
import { type Cord, cordOf, cordsOf } from '../cords.ts';
import { dealt, mostDeals } from '../deal.ts';
import { timeTo } from '../experiment.ts';
import { given, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';

// D02: a reel's cut-out opens though the current is below the lead's rating: which cause do the readings leave.

interface Case {
  readonly cord: CastKey;
  readonly load: string;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly wound_m: number;
  readonly deal: number;
}

const loads = [
  'A lighting bar in a theatre workshop',
  'A heater in a village hall',
  'A hot cupboard behind a stage',
  'A tea urn at a stage door',
  'A dimmer rack on a small stage',
];

const drum_mm = 120;
const turns = 12;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice).filter(({ rating }) => rating >= 10)); // thinner ones hold out longer
  const drawn = {
    cord: cord.key,
    load: random.pick(loads),
    ambient_degC: random.whole(15, 28),
    I_A: random.whole(cord.rating - 4, cord.rating - 1),
    wound_m: random.pick([20, 25, 30, 40]),
    deal: random.whole(0, mostDeals),
  };
  return causesOf(drawn, practice).filter(({ holds }) => holds).length === 1 && isClear(drawn, practice) ? drawn : null;
}

/** The reel opens in 12 to 25 minutes; laid out, the lead stays well within what its insulation is rated for. */
function isClear(drawn: Case, practice: Practice): boolean {
  const { minutes, laidOut_degC, rated_degC } = factsOf(drawn, practice);
  return minutes !== null && minutes >= 12 && minutes <= 25 && laidOut_degC <= rated_degC - 10;
}

const laidOut = ({ cord, ambient_degC, I_A, wound_m }: Case, practice: Practice): Scenario => ({
  ...carrying(cast[cord], ambient_degC, I_A, practice, 3600),
  lead: { length_m: wound_m },
});

// half an hour: a reel that the question is about has passed its limit by then
const wound = ({ cord, ambient_degC, I_A, wound_m }: Case, practice: Practice): Scenario => ({
  ...carrying(cast[cord], { kind: 'coiled', ambient_degC, drum_mm, turns }, I_A, practice, 1800),
  lead: { length_m: wound_m },
});

/** The readings, by the engine. The cut-out opens where the coil's mean passes the insulation's rating. */
function factsOf(drawn: Case, practice: Practice) {
  const rated = ratingOf(cableOf(cast[drawn.cord])) as number;
  const t = timeTo(wound(drawn, practice), rated);
  const minutes = t === null ? null : Math.round(t / 60);
  return { minutes, laidOut_degC: settledAt(laidOut(drawn, practice)), rated_degC: celsius(rated) };
}

interface Cause {
  readonly id: string;
  readonly text: string;
  /** Whether the readings allow it. */
  readonly holds: boolean;
  readonly said: Said;
}

function causesOf(drawn: Case, practice: Practice): Cause[] {
  const { rating } = cordOf(drawn.cord);
  const { minutes, laidOut_degC, rated_degC } = factsOf(drawn, practice);
  const rated = kelvin(rated_degC);
  const opensAt = rated; // where the stem says that it opens
  return [
    {
      id: 'wound',
      text: 'On the drum the turns heat each other, and only its outside sheds heat.',
      holds: minutes !== null && laidOut_degC <= rated_degC,
      said: { trueOf: 'the turns do heat each other.', ask: 'Which reading tells another cause?' },
    },
    {
      id: 'cord too thin',
      text: 'The cord is too thin for this current, wound or not.',
      holds: laidOut_degC > rated_degC,
      said: {
        id: 'M28',
        trueOf: `laid out, this cord settles at ${temperatureText(laidOut_degC, practice)} with the same current.`,
        ask: 'What was different when it ran for hours?',
      },
    },
    {
      id: 'cut-out too small',
      text: 'The cut-out is too small, and the next size up would hold.',
      holds: opensAt < rated,
      said: {
        id: 'M33',
        trueOf: 'a larger one would hold longer, while the cord grew hotter.',
        ask: 'How hot was the cord’s plastic when the cut-out opened?',
      },
    },
    {
      id: 'overload',
      text: 'The load draws more than the cord’s table allows.',
      holds: drawn.I_A > rating,
      said: {
        trueOf: `the table allows this cord ${given(rating, 'A')}.`,
        whyNot: `The meter read ${given(drawn.I_A, 'A')}, which is less.`,
        ask: 'Which two currents have to be compared?',
      },
    },
    {
      id: 'plug',
      text: 'The plug makes bad contact, and its heat reaches the cut-out.',
      holds: false, // the stem's own reading: the plug is cool
      said: {
        trueOf: 'bad contact makes heat where it is.',
        whyNot: 'Here the plug was cool to a probe. The heat came from the drum.',
        ask: 'Where would a bad contact have shown?',
      },
    },
  ];
}

function solutionOf(drawn: Case, cord: Cord, text: string, practice: Practice) {
  const { minutes, laidOut_degC } = factsOf(drawn, practice);
  return [
    words`The current is below the table’s ${quantity(given(cord.rating, 'A'))}, so the load is not too much for the cord laid out.`,
    words`The plug was cool, so it is no bad contact. Laid out, the engine lets the conductor settle at ${quantity(temperatureText(laidOut_degC, practice))}.`,
    words`Wound, it takes the middle of the coil about ${quantity(given(minutes ?? 0, 'min'))} to the rating of the plastic. The reel is an estimate: inner turns are sooner.`,
    words`The cut-out did what it is for: it protects its own reel, and nothing else. Unwind the lead fully before use.`,
    words`So ${text}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const cord = cordOf(drawn.cord);
  const causes = causesOf(drawn, practice);
  const right = causes.find(({ holds }) => holds);
  if (!right) throw new Error('the readings leave no cause');
  const { minutes, rated_degC } = factsOf(drawn, practice);
  const options = causes.map(
    ({ id, text, said }): ChooseOption => (id === right.id ? { id, text } : { id, text, said }),
  );
  const text = 'it is the drum: the turns heat each other.';
  return {
    kind: 'choose',
    stem: [
      words`${drawn.load} hangs on ${quantity(given(drawn.wound_m, 'm'))} of ${cord.words}, all of it on its reel. A meter reads ${quantity(given(drawn.I_A, 'A'))}; the air is at ${quantity(temperatureText(drawn.ambient_degC, practice))}.`,
      words`After ${quantity(given(minutes ?? 0, 'min'))} the thermal cut-out in the reel opens. It is made to open where the coil passes ${quantity(temperatureText(rated_degC, practice))}, which the cord’s PVC is rated for.`,
      words`A probe finds the plug cool. Last week the same load ran for hours, with the same lead laid out on the floor. What is the cause?`,
    ],
    ask: 'Choose the one cause that all the readings allow.',
    parts: [{ id: 'cause', label: 'The cause', options: dealt(options, drawn.deal), right: right.id }],
    answer: { text },
    scenarios: [
      { name: 'wound on its reel', scenario: wound(drawn, practice) },
      { name: 'laid out', scenario: laidOut(drawn, practice) },
    ],
    hints: [
      words`Take each cause in turn. Is there a reading that it cannot explain?`,
      words`Compare the current with the table, and the plug with the drum.`,
      words`What changed between last week and today?`,
    ],
    solution: solutionOf(drawn, cord, text, practice),
    look: 'Open both cases: the same cord and current, wound and laid out.',
    cautions: [
      'A cut-out opens because something is too hot. Switch off, unplug, and find out what before you use the lead again.',
    ],
  };
}

/** How D02 is drawn and built. */
export const stageReelSpec: TemplateSpec<Case> = {
  id: 'D02',
  version: 1,
  lesson: '2.4',
  kind: 'choose',
  title: 'The reel that opens',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['2.4 say why a reel is worse with each layer'],
  misconceptions: ['M28', 'M33'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', load: 'A hot cupboard behind a stage', ambient_degC: 20, I_A: 11, wound_m: 25, deal: 1 }],
    na: [{ cord: 'A16', load: 'A hot cupboard behind a stage', ambient_degC: 20, I_A: 12, wound_m: 25, deal: 1 }],
  },
  build: built,
};

/** D02: why a reel's cut-out opens below the lead's rating. */
export const stageReel = defineTemplate(stageReelSpec);

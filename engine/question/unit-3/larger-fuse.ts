import { type CastKey, cast } from '../../examples/cast.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, settledAt } from '../carrying.ts';
import { cordOf, overloadCaution, ratingNote } from '../cords.ts';
import { dealt, mostDeals } from '../deal.ts';
import { given, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { actAt, deviceName, deviceOf, testTimes } from './block-devices.ts';

// D08: a larger device was put in because the old one kept opening: which cause do the readings leave.

interface Case {
  readonly who: string;
  readonly loads: string;
  readonly cord: CastKey;
  /** Rating of the device that kept opening, and of the one put in [A]. */
  readonly old_A: number;
  readonly now_A: number;
  readonly I_A: number;
  readonly ambient_degC: number;
  readonly deal: number;
}

const people = ['A caterer', 'A stall holder', 'A hall keeper', 'A site manager', 'A baker'];
const loads = [
  'two hot cupboards',
  'an urn and a soup warmer',
  'two heaters',
  'a grill and a kettle',
  'a heater and an iron',
];

/** A cord, the device it had, and the one put in. */
type Swap = readonly [cord: CastKey, old_A: number, now_A: number];
const swaps: Readonly<Record<Practice, readonly Swap[]>> = {
  iec: [
    ['C075', 5, 13],
    ['C100', 5, 13],
    ['C100', 7, 13],
    ['C100', 10, 13],
  ],
  na: [
    ['A16', 15, 25],
    ['A14', 15, 25],
    ['A14', 15, 30],
    ['A16', 15, 30],
  ],
};

/** Conductors hotter than this are out of the question [°C]. */
const hottest = 120;

function drawnCase(random: Random, practice: Practice): Case | null {
  const [cord, old_A, now_A] = random.pick(swaps[practice]);
  const drawn: Case = {
    who: random.pick(people),
    loads: random.pick(loads),
    ...{ cord, old_A, now_A },
    I_A: random.whole(10, 28),
    ambient_degC: random.whole(15, 28),
    deal: random.whole(0, mostDeals),
  };
  const { left, settled_degC } = factsOf(drawn, practice);
  return left.length === 1 && left[0]?.id === 'overload' && settled_degC <= hottest ? drawn : null;
}

const scenarioOf = ({ cord, I_A, ambient_degC }: Case, practice: Practice): Scenario =>
  carrying(cast[cord], ambient_degC, I_A, practice, 3600);

/** The readings, by the engine, and the causes they leave. */
function factsOf(drawn: Case, practice: Practice) {
  const cord = cordOf(drawn.cord);
  const [before, now] = [deviceOf(practice, drawn.old_A), deviceOf(practice, drawn.now_A)];
  const settled_degC = settledAt(scenarioOf(drawn, practice));
  const had = actAt(before, drawn.I_A);
  const has = actAt(now, drawn.I_A);
  const causes = causesOf(drawn, cord.rating, had === 'opens', has === 'holds', practice);
  return { cord, before, now, settled_degC, causes, left: causes.filter(({ holds }) => holds) };
}

interface Cause {
  readonly id: string;
  readonly text: string;
  /** Whether the readings allow it. */
  readonly holds: boolean;
  readonly said: Said;
}

/** `opened`: the old device had to open at this current. `held`: the new one has to hold it. */
function causesOf({ I_A, old_A }: Case, rating: number, opened: boolean, held: boolean, practice: Practice): Cause[] {
  const one = deviceName[practice];
  return [
    {
      id: 'overload',
      text: 'The loads are too much for this cord, and now the cord is the weakest part.',
      holds: I_A > rating && opened && held,
      said: { trueOf: 'the cord is overloaded.', ask: 'Which current does the table allow this cord?' },
    },
    {
      id: 'too small',
      text: `The old ${one} was too small, and the larger one has put it right.`,
      holds: I_A <= rating,
      said: {
        id: 'M33',
        trueOf: `the larger ${one} does hold.`,
        ask: 'What is the weakest part between the supply and the loads now?',
      },
    },
    {
      id: 'by load',
      text: `Nothing is amiss: a ${one} is chosen by its load, and this one holds it.`,
      holds: I_A <= rating && held,
      said: {
        id: 'M32',
        trueOf: `the new ${one} does hold this load.`,
        ask: `Which two things must a ${one} suit?`,
      },
    },
    {
      id: 'weak',
      text: `The old ${one} was worn out, and opened at less than it should.`,
      holds: !opened,
      said: {
        trueOf: `the old ${one} was rated ${given(old_A, 'A')}.`,
        whyNot: `By its standard it had to open at ${given(I_A, 'A')}. It did what it is for.`,
        ask: `What does the standard ask of it at ${given(I_A, 'A')}?`,
      },
    },
    {
      id: 'contact',
      text: 'A bad contact in the plug makes the heat.',
      holds: false, // the stem's own reading: the plug is cool, the cord warm from end to end
      said: {
        trueOf: 'a bad contact makes heat where it is.',
        whyNot: 'Here the plug was cool, and the cord was warm from end to end.',
        ask: 'Where would a bad contact have shown?',
      },
    },
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { cord, before, now, settled_degC, causes, left } = factsOf(drawn, practice);
  const [right] = left;
  if (!right) throw new Error('the readings leave no cause');
  const one = deviceName[practice];
  const options = causes.map(
    ({ id, text, said }): ChooseOption => (id === right.id ? { id, text } : { id, text, said }),
  );
  const I = quantity(given(drawn.I_A, 'A'));
  const text = 'it is an overload, and the cord is now the weakest part.';
  return {
    kind: 'choose',
    stem: [
      words`${drawn.who} runs ${drawn.loads} on ${cord.words}. Its ${quantity(given(drawn.old_A, 'A'))} ${one} kept opening within ${testTimes(before).open}. A ${quantity(given(drawn.now_A, 'A'))} ${one} was put in, and it holds.`,
      words`The air is at ${quantity(temperatureText(drawn.ambient_degC, practice))}. A clamp meter reads ${I}, and the table allows this cord ${quantity(given(cord.rating, 'A'))}.`,
      words`By its standard the old ${one} has to open at ${quantity(given(opensAt(before), 'A'))}. A probe finds the plug cool, and the cord warm from end to end. What has happened?`,
    ],
    ask: 'Choose the one cause that all the readings allow.',
    parts: [{ id: 'cause', label: 'The cause', options: dealt(options, drawn.deal), right: right.id }],
    answer: { text },
    scenarios: [{ name: `the cord at ${given(drawn.I_A, 'A')}`, scenario: scenarioOf(drawn, practice) }],
    hints: [
      words`Compare three currents: what flows, what the table allows the cord, and what the old ${one} had to open at.`,
      words`Take each cause in turn. Is there a reading that it cannot explain?`,
      words`What was the weakest part before the ${one} was changed, and what is it now?`,
    ],
    solution: [
      words`The loads draw ${I}, and the table allows the cord ${quantity(given(cord.rating, 'A'))}. So it is an overload.`,
      words`The old ${one} had to open at ${quantity(given(opensAt(before), 'A'))}. It was not worn: it protected the lead.`,
      words`The new one must hold ${quantity(given(Number(now.hold.I.toPrecision(3)), 'A'))}. So it lets this go on all day, and the cord has become the weakest part.`,
      words`The engine lets the conductor settle at ${quantity(temperatureText(settled_degC, practice))} in still air. Covered or wound, it would be far hotter.`,
      words`The plug was cool and the cord evenly warm, so no contact is at fault.`,
      words`So ${text} Put the old rating back, and share the loads. ${ratingNote(cord)}`,
    ],
    look: 'Put the three currents side by side: the load, the cord’s table and the old device.',
    cautions: [
      `Stop using this lead. Too large a ${one} lets a cord overheat unseen, and start a fire. Have the old rating put back.`,
      ...overloadCaution(cord, drawn.I_A),
    ],
  };
}

/** The conventional operating current of a device, to three figures [A]. */
const opensAt = ({ by }: ReturnType<typeof deviceOf>): number => Number((by[0]?.I ?? 0).toPrecision(3));

/** How D08 is drawn and built. */
export const largerFuseSpec: TemplateSpec<Case> = {
  id: 'D08',
  version: 1,
  lesson: '3.3',
  kind: 'choose',
  title: 'The larger one holds',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['3.3 reject “fits, so fine”'],
  misconceptions: ['M33', 'M32'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        ...{ who: 'A caterer', loads: 'an urn and a soup warmer', cord: 'C100', old_A: 7, now_A: 13 },
        ...{ I_A: 15, ambient_degC: 20, deal: 1 },
      },
    ],
    na: [
      {
        ...{ who: 'A caterer', loads: 'two heaters', cord: 'A14', old_A: 15, now_A: 25 },
        ...{ I_A: 22, ambient_degC: 20, deal: 1 },
      },
    ],
  },
  build: built,
};

/** D08: what a larger device has done. */
export const largerFuse = defineTemplate(largerFuseSpec);

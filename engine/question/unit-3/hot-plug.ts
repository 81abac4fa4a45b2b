import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { cordOf, ratingNote } from '../cords.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import type { Random } from '../random.ts';
import { chainOf } from '../settled-chain.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';

// D01: a cool cord and a hot plug: the cause, and the readings that show it.

interface Case {
  readonly load: string;
  readonly cord: CastKey;
  readonly I_A: number;
  readonly ambient_degC: number;
  /** What probes on the sheath and on the plug read [°C]. */
  readonly plug_degC: number;
  readonly deal: number;
}

const loads = [
  'A laundry press',
  'An oven in a bakery',
  'A heater in a site cabin',
  'A dryer in a laundry',
  'A tea urn in a hall',
] as const;
const keys: Readonly<Record<Practice, readonly CastKey[]>> = { iec: ['C100', 'C125', 'C150'], na: ['A16', 'A14'] };
/** Rating of the fuse in the plug, or of the breaker of the branch [A]. */
const device_A = { iec: 13, na: 20 } as const satisfies Record<Practice, number>;
/** What is browned, and what is clamped, in each practice. */
const parts = {
  iec: { browned: 'the fuse carrier in the plug', device: 'fuse', contact: 'the fuse’s clips' },
  na: { browned: 'the receptacle’s face by one blade', device: 'breaker', contact: 'one blade and its spring' },
} as const satisfies Record<Practice, Readonly<Record<'browned' | 'device' | 'contact', string>>>;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(keys[practice]);
  const most = Math.min(cordOf(cord).rating, device_A[practice] - 1);
  const drawn = {
    load: random.pick(loads),
    cord,
    I_A: random.whole(Math.ceil(0.7 * most), most),
    ambient_degC: random.whole(16, 28),
    plug_degC: random.whole(58, 78),
    deal: random.whole(0, mostDeals),
  };
  const { sheath_degC, conductor_degC, limit_degC } = factsOf(drawn, practice);
  return drawn.plug_degC >= sheath_degC + 20 && conductor_degC <= limit_degC - 10 ? drawn : null;
}

const scenarioOf = ({ cord, ambient_degC, I_A }: Case, practice: Practice): Scenario =>
  carrying(cast[cord], ambient_degC, I_A, practice, 3600);

function factsOf(drawn: Case, practice: Practice) {
  const chain = chainOf(scenarioOf(drawn, practice));
  if (!chain) throw new Error('the cord settles');
  return {
    sheath_degC: Math.round(celsius(chain.surface)),
    conductor_degC: celsius(chain.conductor),
    /** How much hotter than its sheath the copper is [K]. */
    within_K: chain.conductor - chain.surface,
    limit_degC: celsius(ratingOf(cableOf(cast[drawn.cord])) as number),
  };
}

function causesOf(drawn: Case, practice: Practice): Offer[] {
  const { within_K, conductor_degC } = factsOf(drawn, practice);
  const { contact, device } = parts[practice];
  const { rating } = cordOf(drawn.cord);
  return [
    [
      'contact',
      `A poor contact: ${contact} make heat where they touch.`,
      { trueOf: 'a poor contact makes heat in one place.', ask: 'Which reading speaks for another cause?' },
    ],
    [
      'small device',
      `The ${device} is too small, and the next size up would stay cool.`,
      {
        id: 'M33',
        trueOf: `it carries ${given(drawn.I_A, 'A')}, and is rated ${given(device_A[practice], 'A')}.`,
        ask: 'Is there an overload at all?',
      },
    ],
    [
      'thin cord',
      'The cord is too thin, and its heat runs into the plug.',
      {
        trueOf: 'a thin cord would make heat, all along.',
        whyNot: `By the engine its copper is at ${temperatureText(conductor_degC, practice)}, far cooler than the plug. Heat runs from hot to cool.`,
        ask: 'Which of the two is the hotter?',
      },
    ],
    [
      'hidden',
      'The cord’s copper is as hot as the plug, and the sheath hides it.',
      {
        trueOf: 'copper is hotter than its sheath.',
        whyNot: `At this current it is ${amount(within_K, 2, 'K')} hotter, and no more.`,
        ask: 'How much can the plastic hide?',
      },
    ],
    [
      'overload',
      'The load draws more than the cord’s table allows.',
      {
        trueOf: `the table allows this cord ${given(rating, 'A')}.`,
        whyNot: `The meter reads ${given(drawn.I_A, 'A')}, which is no more.`,
        ask: 'Which two currents are to be compared?',
      },
    ],
  ];
}

function readingsOf({ plug_degC }: Case, practice: Practice): Offer[] {
  const plug = temperatureText(plug_degC, practice);
  return [
    [
      'cool cord and current',
      'The cord is cool along its length. The current is in its table.',
      { trueOf: 'these two clear cord and load.', ask: 'What else could they come from?' },
    ],
    [
      'plug and browning',
      `The plug reads ${plug}. It is browned.`,
      {
        trueOf: 'both show where it is hot.',
        whyNot: 'They do not show whence the heat comes. Cord and load are not cleared by them.',
        ask: 'Which readings were taken away from the plug?',
      },
    ],
    [
      'shell',
      `The plug’s shell reads ${plug}, so its metal is as hot as that and no hotter.`,
      {
        id: 'M22',
        trueOf: `the shell does read ${plug}.`,
        whyNot:
          'Heat has to fall through the plastic of the shell. So the metal inside is hotter than what a probe reads.',
        ask: 'Which is hotter: where heat is made, or where it leaves?',
      },
    ],
    [
      'volts and room',
      'The socket has its full volts. The room is as warm as always.',
      {
        trueOf: 'the room does rule out a hot place.',
        whyNot: 'Cord, load and contact are all left.',
        ask: 'Which readings differ for a hot cord and a hot contact?',
      },
    ],
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { load, I_A, ambient_degC, plug_degC, deal } = drawn;
  const cord = cordOf(drawn.cord);
  const { sheath_degC, conductor_degC } = factsOf(drawn, practice);
  const { browned, device } = parts[practice];
  const text = 'a poor contact makes the heat, where it touches. Plug and socket have to be looked at, dead.';
  return {
    kind: 'choose',
    stem: [
      words`${load} has ${cord.words}, laid straight. It runs all morning at ${quantity(given(I_A, 'A'))}, on a ${device} of ${quantity(given(device_A[practice], 'A'))}. The room is at ${quantity(temperatureText(ambient_degC, practice))}.`,
      words`A probe on the cord reads ${quantity(temperatureText(sheath_degC, practice))} wherever it is put. On the plug’s shell it reads ${quantity(temperatureText(plug_degC, practice))}, and ${browned} is browned.`,
      words`The socket has its full volts. What is the cause, and which two readings rule the others out?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('cause', 'The cause', causesOf(drawn, practice), deal),
      partOf('readings', 'The two readings', readingsOf(drawn, practice), deal + 1),
    ],
    answer: { text },
    scenarios: [{ name: 'the cord at this current', scenario: scenarioOf(drawn, practice) }],
    hints: [
      words`The same current flows in plug and cord. Where is the heat made?`,
      words`Heat runs from hot to cool. Which of the two could warm the other?`,
      words`Compare the current with the cord’s table.`,
    ],
    solution: [
      words`The engine lets the conductors settle at ${quantity(temperatureText(conductor_degC, practice))}. So the cord is as it should be.`,
      words`The plug is far hotter than any metal of the cord. Its heat is made in it.`,
      words`A larger ${device} would cool nothing: the same current would pass the same contact.`,
      words`So ${text}`,
      words`${ratingNote(cord)}`,
    ],
    look: 'Open the case, and compare the cord with the plug.',
    cautions: [
      'A hot plug may shock, burn or catch fire. Switch off at the source, let it cool, and use neither plug nor socket again.',
    ],
  };
}

/** How D01 is drawn and built. */
export const hotPlugSpec: TemplateSpec<Case> = {
  id: 'D01',
  version: 1,
  lesson: '3.3',
  kind: 'choose',
  title: 'A cool cord, a hot plug',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['3.3 reject “fits, so fine”'],
  misconceptions: ['M22', 'M33'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: loads[0], cord: 'C125', I_A: 10, ambient_degC: 20, plug_degC: 70, deal: 1 }],
    na: [{ load: loads[0], cord: 'A14', I_A: 13, ambient_degC: 20, plug_degC: 70, deal: 1 }],
  },
  build: built,
};

/** D01: why a plug is hot on a cool cord. */
export const hotPlug = defineTemplate(hotPlugSpec);

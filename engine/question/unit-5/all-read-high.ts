import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { metals } from '../../material/metals.ts';
import { cordOf } from '../cords.ts';
import { mostDeals } from '../deal.ts';
import { amount, percentText, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import { toldLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { currentPair } from '../unit-1/dead-lead.ts';
import { quantity, words } from '../words.ts';
import { fourWireCaution } from './bench-words.ts';

// D05: every lead of a morning reads too high by the same ohms: the cause, and the readings that show it.

interface Case {
  readonly who: string;
  readonly cord: CastKey;
  /** Lengths of a short and a long lead, in metres, or feet in `na`. */
  readonly short: number;
  readonly long: number;
  /** What the meter's own leads and clips have [mΩ]. */
  readonly own_mOhm: number;
  readonly deal: number;
}

const people = ['A theatre workshop', 'A hire yard', 'A boatyard', 'A village hall', 'A joinery'];
const keys: Readonly<Record<Practice, readonly CastKey[]>> = {
  iec: ['C075', 'C100', 'C125', 'C150'],
  na: ['A18', 'A16', 'A14'],
};

function drawnCase(random: Random, practice: Practice): Case | null {
  const drawn = {
    who: random.pick(people),
    cord: random.pick(keys[practice]),
    short: practice === 'iec' ? random.whole(2, 5) : random.whole(6, 15),
    long: practice === 'iec' ? random.whole(10, 25) : 5 * random.whole(6, 16),
    own_mOhm: 10 * random.whole(10, 25),
    deal: random.whole(0, mostDeals),
  };
  // a share of the long lead is plainly not what the short one has too much
  const { shortShare, longShare } = factsOf(drawn, practice);
  return shortShare > 2 * longShare && longShare > 0.05 ? drawn : null;
}

/** What the table leads to for both leads, what the meter shows, and by what share that is too much. */
function factsOf({ cord, short, long, own_mOhm }: Case, practice: Practice) {
  const told = toldResistance(cableOf(cast[cord]).conductor.R20, practice);
  const [should, shouldLong] = [short, long].map((count) =>
    Math.round(2e3 * told.R * toldLength(count, practice).L),
  ) as [number, number];
  return {
    told,
    should,
    shouldLong,
    shows: should + own_mOhm,
    showsLong: shouldLong + own_mOhm,
    shortShare: own_mOhm / should,
    longShare: own_mOhm / shouldLong,
    /** How warm copper would have to be, to read so much more [K above 20 °C]. */
    shortRise: own_mOhm / should / metals.copper.alpha20.value,
  };
}

const ohms = (R_mOhm: number) => amount(R_mOhm / 1e3, R_mOhm >= 1000 ? 3 : R_mOhm >= 100 ? 3 : 2, 'Ω');

function causesOf(drawn: Case, practice: Practice): Offer[] {
  const { shortShare, longShare, shortRise } = factsOf(drawn, practice);
  return [
    [
      'two wires',
      'The meter’s own leads and clips: their ohms are in every reading.',
      { trueOf: 'those are in every reading.', ask: 'What else could it be?' },
    ],
    [
      'little metal',
      'The leads: they have less metal than they are marked with.',
      {
        id: 'M45',
        trueOf: `the short one does read ${percentText(shortShare)} too much, and the long one ${percentText(longShare)}.`,
        whyNot: 'Thin conductors would be too high by one share, at any length. Here both are off by the same ohms.',
        ask: 'What stays the same from lead to lead?',
      },
    ],
    [
      'warm',
      'The leads: they are warmer than the table’s temperature.',
      {
        trueOf: 'warm metal does read more.',
        whyNot: `The short one would have to be ${amount(shortRise, 2, 'K')} warmer, and the thermometer shows no such thing.`,
        ask: 'What did the thermometer show?',
      },
    ],
    [
      'joints',
      'The joints in the plugs: all of them have worked loose.',
      {
        trueOf: 'a loose joint does add ohms.',
        whyNot: 'Loose joints differ from lead to lead. They would not all add one amount.',
        ask: 'How much alike would so many joints be?',
      },
    ],
    [
      'length',
      'The tape: all the leads are longer than it says.',
      {
        trueOf: 'a longer lead does read more.',
        whyNot: 'A tape that is off adds a share of the length. The long lead would be off by more ohms.',
        ask: 'By how many ohms is each lead off?',
      },
    ],
  ];
}

const readings: readonly Offer[] = [
  [
    'same and touched',
    'Short and long are off by the same ohms; touched together, the meter’s leads show as much.',
    { trueOf: 'both point one way.', ask: 'What else could they come from?' },
  ],
  [
    'marks and room',
    'The marking is clear; the room is at the table’s temperature.',
    {
      trueOf: 'the room does rule out warm leads.',
      whyNot: 'A marking is a claim. It rules nothing out.',
      ask: 'Which readings tell thin leads from a meter that adds something?',
    },
  ],
  [
    'both high',
    'Both leads read too high; the long one reads most.',
    {
      trueOf: 'both do.',
      whyNot: 'Every one of the causes makes readings too high. So these two rule out none.',
      ask: 'What would be different for each cause?',
    },
  ],
  [
    'room and high',
    'The room is at the table’s temperature; both leads read too high.',
    {
      trueOf: 'the room does rule out warm leads.',
      whyNot: 'Thin leads, a bad tape and the meter are all left.',
      ask: 'Which reading was taken without any lead?',
    },
  ],
];

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { who, short, long, own_mOhm, deal } = drawn;
  const { told, should, shouldLong, shows, showsLong } = factsOf(drawn, practice);
  const text = 'the meter’s own leads and clips are in every reading. Four wires leave them out.';
  const [one, other] = [short, long].map((count) => quantity(toldLength(count, practice).text));
  if (!one || !other) throw new Error('two leads');
  return {
    kind: 'choose',
    stem: [
      words`${who} measures its leads this morning, with a meter that has two leads. All read too high. Each lead is ${cordOf(drawn.cord).words}, unplugged, with ${currentPair[practice]} joined at the far end.`,
      words`By its table each conductor has ${quantity(told.text)}. A lead of ${one} should read ${quantity(ohms(should))} and shows ${quantity(ohms(shows))}. One of ${other} should read ${quantity(ohms(shouldLong))} and shows ${quantity(ohms(showsLong))}.`,
      words`The room and the leads are at ${quantity(temperatureText(20, practice))}. With the meter’s leads touched together it shows ${quantity(ohms(own_mOhm))}. All the sheaths are clearly marked.`,
      words`What is the cause, and which two readings rule the others out?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('cause', 'The cause', causesOf(drawn, practice), deal),
      partOf('readings', 'The two readings', readings, deal + 1),
    ],
    answer: { text },
    scenarios: [],
    hints: [
      words`By how many ohms is the short lead off, and by how many the long one?`,
      words`Which of the causes add a share, and which add one amount?`,
      words`Is there a reading in which no lead takes part?`,
    ],
    solution: [
      words`Both leads are off by ${quantity(ohms(own_mOhm))}. That is ${quantity(percentText(own_mOhm / should))} of the short one, and ${quantity(percentText(own_mOhm / shouldLong))} of the long one.`,
      words`Thin metal, warmth and a bad tape all add a share. So it is none of them.`,
      words`The meter shows as much with no lead at all.`,
      words`So ${text}`,
    ],
    look: 'Take what each lead should read from what it shows.',
    cautions: [fourWireCaution],
  };
}

/** How D05 is drawn and built. */
export const allReadHighSpec: TemplateSpec<Case> = {
  id: 'D05',
  version: 1,
  lesson: '5.1',
  kind: 'choose',
  title: 'Every lead reads high',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['5.1 spot lead-resistance error'],
  misconceptions: ['M45'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ who: people[0] as string, cord: 'C150', short: 3, long: 20, own_mOhm: 120, deal: 1 }],
    na: [{ who: people[0] as string, cord: 'A16', short: 8, long: 60, own_mOhm: 120, deal: 1 }],
  },
  build: built,
};

/** D05: why all leads read too high. */
export const allReadHigh = defineTemplate(allReadHighSpec);

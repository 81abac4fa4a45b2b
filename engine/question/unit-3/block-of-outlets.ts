import { type CastKey, cast } from '../../examples/cast.ts';
import type { Device } from '../../protection/device.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, settledAt } from '../carrying.ts';
import { type Cord, cordOf, overloadCaution, ratingNote } from '../cords.ts';
import { dealt, mostDeals } from '../deal.ts';
import { amount, given, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, ChoosePart, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { type Act, actAt, blockCords, deviceName, deviceOf, testTimes } from './block-devices.ts';
import { ampsOf, voltsOf, wattsText } from './watts.ts';

// Q49: a block with two to four loads: the current, what the device must do, and the cord against its table.

interface Plugged {
  readonly name: string;
  readonly P_W: number;
}

interface Case {
  readonly place: string;
  readonly cord: CastKey;
  readonly In_A: number;
  readonly ambient_degC: number;
  readonly loads: readonly Plugged[];
  readonly deal: number;
}

const places = ['On a market stall', 'In a village hall', 'In a site cabin', 'In a bakery', 'In a laundry'];

/** What people plug in, with watts that such a thing takes: UK and IEC, and North America. */
const plugged: Readonly<Record<Practice, readonly (readonly [name: string, least_W: number, most_W: number])[]>> = {
  iec: [
    ['an urn', 2000, 2800],
    ['a kettle', 2000, 3000],
    ['a soup warmer', 800, 1500],
    ['a toaster', 800, 1600],
    ['a heater', 1000, 2000],
    ['a lamp', 100, 300],
  ],
  na: [
    ['an urn', 1200, 1500],
    ['a kettle', 1200, 1500],
    ['a soup warmer', 500, 900],
    ['a toaster', 700, 1200],
    ['a heater', 750, 1500],
    ['a lamp', 50, 150],
  ],
};

/** Conductors hotter than this are out of the question [°C]. */
const hottest = 145;

function drawnCase(random: Random, practice: Practice): Case | null {
  const count = random.whole(2, 4);
  const list = plugged[practice];
  const from = random.whole(0, list.length - 1);
  const loads = Array.from({ length: count }, (_, i): Plugged => {
    const [name, least, most] = list[(from + i) % list.length] as (typeof list)[number];
    return { name, P_W: 50 * random.whole(Math.ceil(least / 50), Math.floor(most / 50)) };
  });
  const drawn: Case = {
    place: random.pick(places),
    cord: random.pick(blockCords(practice)).key,
    In_A: practice === 'iec' ? 13 : random.pick([15, 20]),
    ambient_degC: random.whole(15, 30),
    loads,
    deal: random.whole(0, mostDeals),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** The current is more than the device's rating, lies on no line by a hair, and leaves the cord in the model's range. */
function isClear(drawn: Case, practice: Practice): boolean {
  const { I, device, cord } = factsOf(drawn, practice);
  const lines = [device.hold.I, device.by[0]?.I ?? 0, device.In, cord.rating];
  const near = lines.some((line) => Math.abs(I / line - 1) < 0.02);
  if (near || I < 1.03 * device.In || I > 2.1 * device.In) return false;
  return settledAt(scenarioOf(drawn, I, practice)) <= hottest;
}

function factsOf(drawn: Case, practice: Practice) {
  const U0 = voltsOf(practice);
  const I = drawn.loads.reduce((sum, { P_W }) => sum + ampsOf(P_W, U0), 0);
  const device = deviceOf(practice, drawn.In_A);
  return { U0, I, device, cord: cordOf(drawn.cord), act: actAt(device, I) };
}

function scenarioOf({ cord, ambient_degC }: Case, I: number, practice: Practice): Scenario {
  return carrying(cast[cord], ambient_degC, Number(I.toPrecision(3)), practice, 3600);
}

const acts: readonly Act[] = ['holds', 'may', 'opens'];

function actText(act: Act, of: Device): string {
  if (act === 'holds') return 'must hold, for as long as this goes on';
  return act === 'may' ? 'may hold or open' : `must open within ${testTimes(of).open}`;
}

function actSaid(act: Act, right: Act, of: Device, practice: Practice): Said {
  const one = deviceName[practice];
  const opens = given(Number(amount(of.by[0]?.I ?? 0, 3, '').trim()), 'A');
  const holds = given(Number(amount(of.hold.I, 3, '').trim()), 'A');
  if (act === 'opens' || (act === 'may' && right === 'holds'))
    return {
      id: 'M30',
      trueOf: `the current is more than the ${one}’s number.`,
      whyNot: `But it has to hold ${holds} by its standard, and need not open below ${opens}.`,
      ask: `At which current must this ${one} open, and in what time?`,
    };
  return {
    trueOf: `this ${one} must hold ${holds}, and must open at ${opens}.`,
    whyNot:
      right === 'may'
        ? 'Between the two its standard says nothing, so nobody can count on either.'
        : 'The current is past both, so it has to act.',
    ask: 'On which side of the two does the current lie?',
  };
}

function partsOf(drawn: Case, practice: Practice): ChoosePart[] {
  const { I, device, cord, act, U0 } = factsOf(drawn, practice);
  const { rating } = cord;
  const one = deviceName[practice];
  const greatest = Math.max(...drawn.loads.map(({ P_W }) => ampsOf(P_W, U0)));
  const currents: ChooseOption[] = [
    { id: 'sum', text: amount(I, 3, 'A') },
    {
      id: 'device',
      text: given(device.In, 'A'),
      said: {
        id: 'M31',
        trueOf: `${given(device.In, 'A')} is the number on the ${one}.`,
        ask: `What sets the current while the ${one} is whole?`,
      },
    },
    {
      id: 'greatest',
      text: amount(greatest, 3, 'A'),
      said: {
        trueOf: 'that is the largest of the loads alone.',
        whyNot: 'They stand side by side on the block, and each draws its own current. The lead carries the sum.',
        ask: 'Through which cord do all of the currents go?',
      },
    },
  ];
  const within = I <= rating;
  const cordSaid: Said = within
    ? {
        trueOf: `the table allows this cord ${given(rating, 'A')}.`,
        whyNot: `The loads draw ${amount(I, 3, 'A')}, which is less.`,
        ask: 'Which two currents have to be compared?',
      }
    : {
        ...(device.In <= rating ? { id: 'M31' as const } : {}),
        trueOf:
          device.In <= rating
            ? `${given(device.In, 'A')} would be within the table’s ${given(rating, 'A')}.`
            : `the table allows this cord ${given(rating, 'A')}.`,
        ...(device.In <= rating ? {} : { whyNot: `The loads draw ${amount(I, 3, 'A')}, which is more.` }),
        ask: 'Which current flows in the cord: the device’s number, or the sum of the loads?',
      };
  const cordOptions: ChooseOption[] = [
    { id: 'within', text: 'within its table', ...(within ? {} : { said: cordSaid }) },
    { id: 'past', text: 'past its table', ...(within ? { said: cordSaid } : {}) },
  ];
  return [
    { id: 'current', label: 'Current in the lead', options: dealt(currents, drawn.deal), right: 'sum' },
    {
      id: 'device',
      label: `The ${one}`,
      options: acts.map((id): ChooseOption => {
        const option = { id, text: actText(id, device) };
        return id === act ? option : { ...option, said: actSaid(id, act, device, practice) };
      }),
      right: act,
    },
    { id: 'cord', label: 'The cord', options: cordOptions, right: within ? 'within' : 'past' },
  ];
}

function listOf(loads: readonly Plugged[]): string {
  const told = loads.map(({ name, P_W }) => `${name} of ${wattsText(P_W)}`);
  return `${told.slice(0, -1).join(', ')} and ${told.at(-1)}`;
}

/** What the standard says of the device, as the stem tells it. */
function deviceRule(of: Device, practice: Practice): string {
  const { hold, open } = testTimes(of);
  const [holds, opens] = [amount(of.hold.I, 3, 'A'), amount(of.by[0]?.I ?? 0, 3, 'A')];
  return practice === 'iec'
    ? `By its standard it carries ${holds} for at least ${hold}, and opens within ${open} at ${opens}.`
    : `By its standard it holds ${holds}, and trips within ${open} at ${opens}.`;
}

function solutionOf(drawn: Case, text: string, practice: Practice) {
  const { U0, I, device, cord } = factsOf(drawn, practice);
  const each = drawn.loads.map(({ P_W }) => amount(ampsOf(P_W, U0), 3, 'A')).join(', ');
  const end = temperatureText(settledAt(scenarioOf(drawn, I, practice)), practice);
  return [
    words`Watts over volts: the loads draw ${each}. They stand side by side, so the lead carries the sum.`,
    words`A ${deviceName[practice]} does not throttle. Until it opens, the loads set the current.`,
    words`${deviceRule(device, practice)} What it carries through its test it may carry all day.`,
    words`So ${text}`,
    words`Held for good, this settles the conductor at ${quantity(end)} by the engine, laid out in still air. Under a coat, or wound up, it would be far hotter.`,
    words`${ratingNote(cord)} ${I > cord.rating ? 'Past that, take loads off: what the device lets through is no permission.' : 'That rules, not what still air allows.'}`,
  ];
}

const partText = ({ label, options, right }: ChoosePart) =>
  `${label.charAt(0).toLowerCase()}${label.slice(1)} ${label.startsWith('Current') ? 'is ' : ''}${label === 'The cord' ? 'is ' : ''}${options.find(({ id }) => id === right)?.text}`;

/** Hazard, what it does, what to do, for a block that is loaded past its device. */
const blockCaution =
  'A block can overload its lead for hours before anything opens. The plastic softens and fails. Share the loads among sockets.';

function cautionsFor(cord: Cord, I: number): string[] {
  return [blockCaution, ...overloadCaution(cord, Number(I.toPrecision(3)))];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { U0, I, device, cord } = factsOf(drawn, practice);
  const parts = partsOf(drawn, practice);
  const text = `${parts.map(partText).join('; ')}.`;
  const T = quantity(temperatureText(drawn.ambient_degC, practice));
  return {
    kind: 'choose',
    stem: [
      words`${drawn.place} it is ${T}. A block of outlets hangs on ${cord.words}. It feeds ${listOf(drawn.loads)}. All are on, at ${quantity(given(U0, 'V'))}.`,
      words`The table allows this cord ${quantity(given(cord.rating, 'A'))}. Before it stands ${practice === 'iec' ? `a ${given(device.In, 'A')} plug fuse` : `a ${given(device.In, 'A')} breaker`}. ${deviceRule(device, practice)}`,
      words`All this goes on for hours. What current flows, what does the ${deviceName[practice]} do, and how does the cord stand?`,
    ],
    ask: 'Choose one in each part.',
    parts,
    answer: { text },
    scenarios: [{ name: `${cord.words}, ${amount(I, 3, 'A')}`, scenario: scenarioOf(drawn, I, practice) }],
    hints: [
      words`What does each load draw? Watts over volts.`,
      words`Add the currents: they all go through one cord.`,
      words`Put that current between the one that the ${deviceName[practice]} must hold and the one at which it must open.`,
    ],
    solution: solutionOf(drawn, text, practice),
    look: 'Open the case: the whole current runs in the cord, and warms it.',
    cautions: cautionsFor(cord, I),
  };
}

/** How Q49 is drawn and built. */
export const blockOfOutletsSpec: TemplateSpec<Case> = {
  id: 'Q49',
  version: 1,
  lesson: '3.3',
  kind: 'choose',
  title: 'A block of outlets',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['3.3 separate fixed load from multi-way block'],
  misconceptions: ['M31', 'M30'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        ...{ place: 'On a market stall', cord: 'C100', In_A: 13, ambient_degC: 25, deal: 1 },
        loads: [
          { name: 'an urn', P_W: 2400 },
          { name: 'a soup warmer', P_W: 1500 },
        ],
      },
    ],
    na: [
      {
        ...{ place: 'On a market stall', cord: 'A16', In_A: 20, ambient_degC: 25, deal: 1 },
        loads: [
          { name: 'a heater', P_W: 1500 },
          { name: 'an urn', P_W: 1450 },
        ],
      },
    ],
  },
  build: built,
};

/** Q49: what a block's loads make of its device and its cord. */
export const blockOfOutlets = defineTemplate(blockOfOutletsSpec);

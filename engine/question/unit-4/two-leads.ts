import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { resistanceRatio } from '../../material/resistivity.ts';
import { deviceOf } from '../../protection/devices.ts';
import { faultTemperature } from '../../protection/loop.ts';
import { cordOf, cordsOf } from '../cords.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, plainNumber, rounded } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import { toldLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { localWords, loopCaution, spanText, withArticle } from './asked-devices.ts';
import { breakerOf, clearingOf, type FaultCase, leastShare, magnets, timeToClear, volts } from './earth-fault.ts';

// D11: two leads end to end, and a loop that has grown too long: the cause, and what to do.

interface Case extends Omit<FaultCase, 'Zs'> {
  readonly place: string;
  readonly cord: CastKey;
  /** Lengths of the two leads, in metres, or feet in `na`. */
  readonly first: number;
  readonly second: number;
  /** The loop at the socket, warm, in hundredths of an ohm. */
  readonly socket: number;
  readonly deal: number;
}

const places = [
  'In a polytunnel a heater',
  'In an orchard a pump',
  'On a boatyard’s slip a washer',
  'Behind a market a cool box',
  'At a farm gate a pump',
];
const cordKeys: Readonly<Record<Practice, readonly CastKey[]>> = {
  iec: ['C100', 'C125', 'C150'],
  na: ['A16', 'A14'],
};
/** How near its limit a loop may lie, in parts of it (our choice: rounding shall not decide). */
const near = 0.06;
const higher = { B: 'C', C: 'D', D: 'D' } as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const In = random.pick(practice === 'iec' ? [10, 16, 20] : [15, 20]);
  const type = practice === 'iec' ? random.pick(['B', 'B', 'C'] as const) : null;
  const drawn: Case = {
    place: random.pick(places),
    In,
    type,
    level_A: type ? magnets[type] * In : 10 * random.whole(Math.ceil(0.5 * In), In),
    cord: random.pick(cordsOf(practice).filter(({ key }) => cordKeys[practice].includes(key))).key,
    first: practice === 'iec' ? random.whole(10, 50) : 5 * random.whole(5, 30),
    second: practice === 'iec' ? random.whole(10, 50) : 5 * random.whole(5, 30),
    socket: random.whole(25, practice === 'iec' ? 110 : 60),
    deal: random.whole(0, mostDeals),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** One lead clears in time, and both do not. */
function isClear(drawn: Case, practice: Practice): boolean {
  const { after, most } = loopsOf(drawn, practice);
  return after[0] <= (1 - near) * most && after[1] >= (1 + near) * most;
}

/** Ohms as the stem tells them: a core by the length, each lead's core, and the loop after one lead and after both, warm. */
function loopsOf(drawn: Case, practice: Practice) {
  const { conductor } = cableOf(cast[drawn.cord]);
  const warm = conductor.R20 * resistanceRatio(conductor.alpha20, 0, faultTemperature);
  const core = toldResistance(warm, practice);
  const [first, second] = [drawn.first, drawn.second].map((count) => core.R * toldLength(count, practice).L) as [
    number,
    number,
  ];
  const one = rounded(drawn.socket / 100 + 2 * first, 3);
  const both = rounded(drawn.socket / 100 + 2 * (first + second), 3);
  const [at, then] = [one, both].map((Z) => clearingOf({ ...drawn, Zs: 100 * Z }, practice));
  if (!at || !then) throw new Error('two loops');
  return { core, second, after: [one, both] as const, clearing: [at, then] as const, most: at.greatestLoop as number };
}

const ohms = (R: number) => amount(R, 3, 'Ω');

function causesOf(drawn: Case, practice: Practice): Offer[] {
  const { second } = loopsOf(drawn, practice);
  const back = practice === 'iec' ? 'protective conductor' : 'grounding conductor';
  return [
    [
      'length',
      'The second lead adds its way out and its way back to the loop.',
      { trueOf: 'both ways do count.', ask: 'What else does the fault current pass?' },
    ],
    [
      'bad contact',
      `A bad contact: by itself the second lead adds ${ohms(second)} only.`,
      {
        id: 'M41',
        trueOf: `${ohms(second)} is its ${localWords[practice].line} conductor alone.`,
        ask: 'By which conductor does the fault current come back?',
      },
    ],
    [
      'little metal',
      'The second lead has less metal than its marking.',
      {
        trueOf: 'such a lead would add more ohms.',
        whyNot: `This one adds what its table says for its length: the ${localWords[practice].line} conductor and the ${back}.`,
        ask: 'How many ohms belong to that length, out and back?',
      },
    ],
    [
      'weak breaker',
      'The breaker has grown weak.',
      {
        trueOf: 'a worn breaker may act late.',
        whyNot: 'These ohms are read in the conductors. The breaker has no part in them.',
        ask: 'What was it that changed from one reading to the next?',
      },
    ],
    [
      'no fault',
      'Nothing is amiss: more ohms let less current flow, which is safer.',
      { id: 'M42', trueOf: 'less current does flow.', ask: 'What does the breaker need, to act at once?' },
    ],
  ];
}

function remediesOf({ type }: Case, practice: Practice): Offer[] {
  const other = type ? `a type ${higher[type]} breaker` : 'a breaker with a higher level';
  const { earth } = localWords[practice];
  return [
    [
      'nearer',
      'Have the supply brought nearer, so that one short lead will do.',
      { trueOf: 'that does shorten the loop.', ask: 'What else would?' },
    ],
    [
      'higher magnet',
      `Have ${other} fitted.`,
      {
        trueOf: 'such a breaker rides through a harder start.',
        whyNot: 'It needs still more current to act at once. This loop lets less through.',
        ask: 'Does it act at more current, or at less?',
      },
    ],
    [
      'rod',
      `Drive a metal rod into the soil, and tie the case to it.`,
      {
        trueOf: 'a rod does make one more way back.',
        whyNot: `Soil round a rod has tens of ohms at least (common practice). Almost no current of the ${earth} fault would take it.`,
        ask: 'How many ohms would that way have?',
      },
    ],
    [
      'leave it',
      'Leave it: a smaller fault current does less harm.',
      { id: 'M42', trueOf: 'a smaller current makes less heat each second.', ask: 'For how long would it flow?' },
    ],
  ];
}

function askedOf(drawn: Case, practice: Practice) {
  const limit = spanText(timeToClear(practice).t);
  return practice === 'iec'
    ? words`The breaker is to clear an earth fault in ${quantity(limit)}, with ${quantity(plainNumber(leastShare.iec, 2))} of ${quantity(given(volts.iec, 'V'))}.`
    : words`Its maker states that the magnet surely acts within ${quantity(limit)} from ${quantity(given(drawn.level_A, 'A'))} on. The supply has ${quantity(given(volts.na, 'V'))}.`;
}

function solutionOf(drawn: Case, text: string, practice: Practice) {
  const { second, after, clearing, most } = loopsOf(drawn, practice);
  const [one, both] = clearing;
  const { rcd, earth, line } = localWords[practice];
  return [
    words`The breaker surely acts at once from ${quantity(amount(both.Ia as number, 3, 'A'))} on. So the loop may have ${quantity(ohms(most))} at most.`,
    words`After the first lead ${quantity(amount(one.I, 3, 'A'))} flows: enough. After both it is ${quantity(amount(both.I, 3, 'A'))}: not enough.`,
    words`A core of the second lead has ${quantity(ohms(second))}. Out and back that is ${quantity(ohms(2 * second))}, and the reading rose from ${quantity(ohms(after[0]))} to ${quantity(ohms(after[1]))}. So nothing else is amiss.`,
    words`So ${text}`,
    words`${practice === 'iec' ? 'An' : 'A'} ${rcd} opens on a fault to ${earth} in such a loop too. It sees no short circuit from ${line} to neutral.`,
    words`${
      practice === 'iec'
        ? 'Rule: BS 7671 and IEC 60364-4-41, 411.4.4. The least volts, 0.95 of the nominal, are British.'
        : 'NFPA 70, 250.4(A)(5), asks for a path that opens the device, and names no ohms. The level is the maker’s.'
    }`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { place, socket, first, second, deal } = drawn;
  const { core, after } = loopsOf(drawn, practice);
  const of = deviceOf(breakerOf(drawn));
  const { earth } = localWords[practice];
  const [one, two] = [first, second].map((count) => quantity(toldLength(count, practice).text));
  if (!one || !two) throw new Error('two leads');
  const text = 'the second lead adds its way out and back, and the supply has to come nearer.';
  return {
    kind: 'choose',
    stem: [
      words`${place} hangs on two leads, end to end: ${one} and ${two}. Both are ${cordOf(drawn.cord).words.replace('a three-core', 'three-core')}. Before them is ${withArticle(of.name)}.`,
      words`A licensed tester has read the ${earth}-fault loop. With warm conductors it has ${quantity(given(socket / 100, 'Ω'))} at the socket. After the first lead it has ${quantity(ohms(after[0]))}, and after both ${quantity(ohms(after[1]))}.`,
      words`A warm core of this cord has ${quantity(core.text)}.`,
      askedOf(drawn, practice),
      words`Why does the breaker not surely clear a fault at the far end? And what is to be done?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('cause', 'The cause', causesOf(drawn, practice), deal),
      partOf('remedy', 'What to do', remediesOf(drawn, practice), deal + 1),
    ],
    answer: { text },
    scenarios: [],
    hints: [
      words`Find the current that the breaker needs, and the greatest loop that lets it flow.`,
      words`How many ohms does the second lead have, out and back? Compare that with the rise of the reading.`,
      words`What makes a loop smaller: less length, more metal, or another breaker?`,
    ],
    solution: solutionOf(drawn, text, practice),
    look: 'Draw the loop, and write the ohms of every conductor beside it.',
    cautions: [loopCaution],
  };
}

/** How D11 is drawn and built. */
export const twoLeadsSpec: TemplateSpec<Case> = {
  id: 'D11',
  version: 1,
  lesson: '4.5',
  kind: 'choose',
  title: 'Two leads, end to end',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['4.5 find Zs at working temperature', '4.5 compare Zs with its limit'],
  misconceptions: ['M41', 'M42'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        ...{ place: places[0] as string, In: 16, type: 'B', level_A: 80, cord: 'C150' },
        ...{ first: 30, second: 40, socket: 83, deal: 1 },
      },
    ],
    na: [
      {
        ...{ place: places[0] as string, In: 20, type: null, level_A: 120, cord: 'A16' },
        ...{ first: 50, second: 100, socket: 30, deal: 1 },
      },
    ],
  },
  build: built,
};

/** D11: why a loop is too long behind two leads, and what to do. */
export const twoLeads = defineTemplate(twoLeadsSpec);

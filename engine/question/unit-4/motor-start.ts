import { cast } from '../../examples/cast.ts';
import { fastest } from '../../protection/band.ts';
import type { Device, DeviceFamily } from '../../protection/device.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { dealt, mostDeals } from '../deal.ts';
import { given } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { askedDevice, breakerCaution, spanText } from './asked-devices.ts';

// Q53: which of four devices surely holds through the start of a motor.

type Asked = readonly [family: DeviceFamily, In: number];

interface Case {
  readonly motor: string;
  readonly run_A: number;
  readonly start_A: number;
  readonly start_s: number;
  readonly devices: readonly Asked[];
  readonly deal: number;
}

const motors = [
  'a saw in a joinery',
  'a pump on a farm',
  'a washer in a boatyard',
  'an air compressor in a theatre workshop',
  'a dough mixer in a bakery',
  'a fan in a polytunnel',
];

/** Starts that are over within a few swings of the mains, and longer ones [s]. */
const starts: Readonly<Record<Practice, readonly (readonly number[])[]>> = {
  iec: [
    [0.02, 0.03, 0.04, 0.05, 0.06, 0.08],
    [0.2, 0.3, 0.4, 0.5, 0.6, 0.8],
  ],
  na: [
    [0.4, 0.5, 0.6, 0.8, 1],
    [2, 3, 4, 5, 6],
  ],
};

const pool: Readonly<Record<Practice, readonly Asked[]>> = {
  iec: (['B', 'C', 'D'] as const).flatMap((type) => [6, 10, 16, 20, 25, 32].map((In): Asked => [type, In])),
  na: (['ul489', 'ul248', 'ul248 delay', 'ul248 CC'] as const).flatMap((family) =>
    [15, 20, 25, 30].map((In): Asked => [family, In]),
  ),
};

/** How near a point of the standard the start may lie, in parts of it. */
const near = 0.02;

/** Four devices that all carry the running current, of which one at most is sure to hold. */
function drawnCase(random: Random, practice: Practice): Case | null {
  const run_A = random.whole(practice === 'iec' ? 3 : 5, practice === 'iec' ? 12 : 14);
  const start_A = Math.round((run_A * random.whole(40, 75)) / 10);
  const start_s = random.pick(random.pick(starts[practice]));
  const able = pool[practice].filter(([, In]) => In >= run_A && In <= 4 * run_A);
  const deal = random.whole(0, mostDeals);
  const drawn = { motor: random.pick(motors), run_A, start_A, start_s, deal, devices: dealt(able, deal).slice(0, 4) };
  return drawn.devices.length === 4 && isClear(drawn, random.whole(1, 4) === 1) ? drawn : null;
}

/** One device holds, or none where `none` allows that; the start lies clear of every point, and ideas lead elsewhere. */
function isClear(drawn: Case, none: boolean): boolean {
  const all = drawn.devices.map((one) => askedDevice(...one));
  const points = all.flatMap(({ hold, notBefore }) => [hold, ...notBefore]);
  if (points.some(({ I }) => Math.abs(drawn.start_A / I - 1) < near)) return false;
  const sure = all.filter((one) => holds(one, drawn)).length;
  const families = new Set(drawn.devices.map(([family]) => family)).size;
  return families >= 2 && (none ? sure === 0 : sure === 1);
}

/** Whether the standard keeps it from acting for as long as the start lasts. */
const holds = (of: Device, { start_A, start_s }: Case) => fastest(of, start_A, 'guaranteed') > start_s;

/** Where the fast edge no longer reaches this start: beyond its last point, or before the start is over. */
function saidOf(of: Device, drawn: Case): Said {
  const { family, notBefore } = of;
  const I = given(drawn.start_A, 'A');
  const last = notBefore.at(-1);
  if (!last)
    return {
      trueOf: 'this one may well hold, but nobody promises it.',
      whyNot: 'Its standard names no time before which it must not open. Only the maker’s curve can say.',
      ask: 'Which kind of device has such a time in its standard?',
    };
  if (drawn.start_A > last.I)
    return {
      trueOf: `up to ${given(last.I, 'A')} this one holds for ${spanText(last.t)}.`,
      whyNot: `The start draws ${I}, which is more. There it may open at once.`,
      ask: 'Up to which current does the standard promise anything of this device?',
    };
  const least = spanText(fastest(of, drawn.start_A, 'guaranteed'));
  const trueOf = `at ${I} the standard keeps this one shut for ${least} only.`;
  const ask = `What may the slow part do at ${I} after ${least}?`;
  if (family === 'C' || family === 'D') return { id: 'M35', trueOf, ask };
  return {
    trueOf,
    whyNot: `The start lasts ${spanText(drawn.start_s)}, which is longer. After that it may open.`,
    ask,
  };
}

const noneId = 'none';
const idOf = ({ family, In }: Device) => `${family} ${In}`;

function noneSaid(right: Device, drawn: Case): Said {
  return {
    id: 'M34',
    trueOf: 'the start is past every number in the list.',
    ask: `What does the standard promise of the ${right.name} at ${given(drawn.start_A, 'A')}, and for how long?`,
  };
}

const scenarioOf = ({ run_A, start_A, start_s }: Case, practice: Practice): Scenario => ({
  cable: practice === 'iec' ? cast.C150 : cast.A14,
  practice,
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: [
    { kind: 'current', I_A: start_A, duration_s: start_s },
    { kind: 'current', I_A: run_A, duration_s: 900 },
  ],
});

/** What a device's fast edge promises at the start, as a phrase. */
function promise(of: Device, { start_A }: Case): string {
  const t = fastest(of, start_A, 'guaranteed');
  if (t === Number.POSITIVE_INFINITY) return `${of.name}: for ever`;
  return `${of.name}: ${t > 0 ? spanText(t) : 'nothing'}`;
}

const law: Readonly<Record<Practice, string>> = {
  iec: 'The slow part is alike for all letters: below 2.55 times the rating, not before 1\u00A0s. Below the magnet’s zone, not before 0.1\u00A0s.',
  na: 'A time-delay fuse of class J or R holds 5 times its rating for some seconds. Class CC holds twice its rating for 12\u00A0s.',
};

function built(drawn: Case, practice: Practice): BuiltChoose {
  const all = drawn.devices.map((one) => askedDevice(...one));
  const right = all.find((one) => holds(one, drawn));
  const options = all.map((one): ChooseOption => {
    const shown = { id: idOf(one), text: one.name };
    return one === right ? shown : { ...shown, said: saidOf(one, drawn) };
  });
  const none: ChooseOption = { id: noneId, text: 'None of them is sure to hold.' };
  options.push(right ? { ...none, said: noneSaid(right, drawn) } : none);
  const start = given(drawn.start_A, 'A');
  const text = right
    ? `only the ${right.name} is sure to hold ${start} for ${spanText(drawn.start_s)}.`
    : `none is sure to hold ${start} for ${spanText(drawn.start_s)}.`;
  const told = all.map((one) => promise(one, drawn));
  return {
    kind: 'choose',
    stem: [
      words`${drawn.motor.replace(/^a/, 'A')} draws ${quantity(given(drawn.run_A, 'A'))} when it runs. When it starts it draws ${quantity(start)} for ${quantity(spanText(drawn.start_s))}.`,
      words`Every device in the list carries the running current. Which one does its standard keep from opening through the start?`,
    ],
    ask: 'Choose one. The device starts cold.',
    parts: [
      { id: 'device', label: 'The device', options: dealt(options, drawn.deal), right: right ? idOf(right) : noneId },
    ],
    answer: { text },
    scenarios: [{ name: 'the start, then the run', scenario: scenarioOf(drawn, practice) }],
    hints: [
      words`Take the fast edge: the time before which a device must not act.`,
      words`${practice === 'iec' ? 'First look at the magnet: does the start reach its zone?' : 'First ask which of them has any least time in its standard.'}`,
      words`${practice === 'iec' ? 'Then look at the slow part: the start in times the rating, and how long it lasts.' : 'Then compare the start in times the rating, and how long it lasts.'}`,
    ],
    solution: [
      words`A device surely holds where its fast edge lies above the start. Typical samples hold far longer.`,
      words`${law[practice]}`,
      words`At ${quantity(start)} the standards promise: ${told.slice(0, 2).join(', ')}.`,
      words`And: ${told.slice(2).join(', ')}.`,
      words`The start lasts ${quantity(spanText(drawn.start_s))}. So ${text}`,
      words`The lead still has to carry whatever the device lets through. A larger device needs a larger lead.`,
    ],
    look: 'For each device, work out the start in times its rating. Which edge does it reach?',
    cautions: [breakerCaution],
  };
}

/** How Q53 is drawn and built. */
export const motorStartSpec: TemplateSpec<Case> = {
  id: 'Q53',
  version: 1,
  lesson: '4.2',
  kind: 'choose',
  title: 'Through the start',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['4.2 explain trips on start'],
  misconceptions: ['M34', 'M35'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        motor: 'a saw in a joinery',
        run_A: 10,
        start_A: 62,
        start_s: 0.4,
        devices: [
          ['B', 16],
          ['C', 10],
          ['D', 10],
          ['B', 25],
        ],
        deal: 1,
      },
    ],
    na: [
      {
        motor: 'a saw in a joinery',
        run_A: 10,
        start_A: 62,
        start_s: 0.4,
        devices: [
          ['ul489', 20],
          ['ul248', 15],
          ['ul248 delay', 15],
          ['ul248 CC', 20],
        ],
        deal: 1,
      },
    ],
  },
  build: built,
};

/** Q53: the device that surely holds through a motor's start. */
export const motorStart = defineTemplate(motorStartSpec);

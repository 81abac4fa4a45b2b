import { fastest, slowest } from '../../protection/band.ts';
import type { Device, DeviceFamily, Gate } from '../../protection/device.ts';
import { given, plainNumber, timeText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { askedDevice, beginning, fuseCaution, timesRating, withArticle } from './asked-devices.ts';

// Q50: what a fuse does at a held current: it must hold, it may do either, or it must have opened.

interface Case {
  readonly family: DeviceFamily;
  readonly In: number;
  readonly load: string;
  readonly I_A: number;
}

type Zone = 'hold' | 'may' | 'open';

const loads = [
  'a dough warmer in a bakery',
  'two heaters in a village hall',
  'a steam press in a laundry',
  'a pump on a farm',
  'a lighting bar in a theatre workshop',
  'a washer in a boatyard',
];

const fuses: Readonly<Record<Practice, readonly (readonly [DeviceFamily, readonly number[]])[]>> = {
  iec: [
    ['bs1362', [3, 5, 7, 10, 13]],
    ['gG', [6, 10, 16, 20, 25, 32, 40, 50]],
  ],
  na: [
    ['ul248', [10, 15, 20, 25, 30, 40]],
    ['ul248 delay', [15, 20, 25, 30, 40]],
    ['ul248-14', [6, 10, 15, 20]],
  ],
};

/** How near an edge of the standard a current may lie, in parts of it (our choice: it shall not hang on rounding). */
const near = 0.02;
/** The greatest current asked about, in times the rating. */
const most = 4;

function drawnCase(random: Random, practice: Practice): Case | null {
  const [family, ratings] = random.pick(fuses[practice]);
  const In = random.pick(ratings);
  const of = askedDevice(family, In);
  const [hold, open] = edgesOf(of);
  const zone = random.pick<Zone>(['hold', 'may', 'open']);
  const [from, to] = { hold: [In, hold.I], may: [hold.I, open.I], open: [open.I, most * In] }[zone] as [number, number];
  const step = In < 12 ? 0.1 : 0.5;
  const [least, greatest] = [Math.ceil((from * (1 + near)) / step), Math.floor((to * (1 - near)) / step)];
  if (least > greatest) return null;
  const I_A = Number((random.whole(least, greatest) * step).toFixed(1));
  return { family, In, load: random.pick(loads), I_A };
}

/** What it must hold, and the first point by which it must have opened. */
const edgesOf = ({ hold, by }: Device): readonly [Gate, Gate] => [hold, by[0] as Gate];

/** The zone of a held current: for ever held, for sure opened in the end, or neither promised. */
function zoneOf(of: Device, I: number): Zone {
  if (fastest(of, I, 'guaranteed') === Number.POSITIVE_INFINITY) return 'hold';
  return slowest(of, I, 'guaranteed') === Number.POSITIVE_INFINITY ? 'may' : 'open';
}

const zones: readonly (readonly [Zone, string])[] = [
  ['hold', 'It must hold.'],
  ['may', 'It may hold or open.'],
  ['open', 'It must have opened.'],
];

function saidOf(of: Device, I: number, zone: Zone): Said {
  const [hold, open] = edgesOf(of);
  const right = zoneOf(of, I);
  const here = `Here the current is ${plainNumber(I / of.In, 3)} times the rating`;
  if (zone === 'open')
    return {
      id: 'M30',
      trueOf: `that is so from ${given(open.I, 'A')} on.`,
      ask: 'Which currents does the standard say that it must carry?',
    };
  if (zone === 'hold')
    return {
      trueOf: `up to ${given(hold.I, 'A')} it must hold.`,
      whyNot: `${here}, which is past that edge.`,
      ask: 'Which of the two edges has this current passed?',
    };
  return {
    trueOf: `between ${given(hold.I, 'A')} and ${given(open.I, 'A')} it may do either.`,
    whyNot: `${here}. That is ${right === 'hold' ? 'below the first edge' : 'past the second edge'}.`,
    ask: 'On which side of the two edges does this current lie?',
  };
}

function answerText(of: Device, I: number): string {
  const [hold, open] = edgesOf(of);
  const time = timeText(open.t);
  switch (zoneOf(of, I)) {
    case 'hold':
      return `it must hold, as at any current up to ${given(hold.I, 'A')}.`;
    case 'may':
      return `it may do either, as between ${given(hold.I, 'A')} and ${given(open.I, 'A')}.`;
    case 'open':
      return `it must have opened within ${time}, as from ${given(open.I, 'A')} on.`;
  }
}

function built(drawn: Case): BuiltChoose {
  const of = askedDevice(drawn.family, drawn.In);
  const [hold, open] = edgesOf(of);
  const right = zoneOf(of, drawn.I_A);
  const options = zones.map(
    ([id, text]): ChooseOption => (id === right ? { id, text } : { id, text, said: saidOf(of, drawn.I_A, id) }),
  );
  const text = answerText(of, drawn.I_A);
  const time = timeText(open.t);
  const [holds, opens] = [timesRating(hold.I, of), timesRating(open.I, of)].map(String) as [string, string];
  return {
    kind: 'choose',
    stem: [
      words`${beginning(withArticle(of.name))} feeds ${drawn.load}. The current stays at ${quantity(given(drawn.I_A, 'A'))}.`,
      words`Its standard names two edges. Up to ${quantity(holds)} times its rating the fuse holds for ever. From ${quantity(opens)} times on, it opens within ${quantity(time)}.`,
      words`What is sure after ${quantity(time)} at this current?`,
    ],
    ask: 'Choose one.',
    parts: [{ id: 'zone', label: 'The fuse', options, right }],
    answer: { text },
    scenarios: [],
    hints: [
      words`Divide the current by the number on the fuse.`,
      words`Turn both edges into amperes: multiply the rating by each.`,
      words`Below the first edge one thing is sure, past the second another. What is sure between them?`,
    ],
    solution: [
      words`The current is ${quantity(plainNumber(drawn.I_A / of.In, 3))} times the rating.`,
      words`The first edge is ${holds} times ${quantity(given(of.In, 'A'))}, which is ${quantity(given(hold.I, 'A'))}. The second is ${quantity(given(open.I, 'A'))}.`,
      words`So ${text}`,
      words`A fuse differs from sample to sample. Between the edges the standard promises nothing, and only the maker’s curve says more.`,
    ],
    look: 'Mark both edges on a line of amperes. Then mark the current.',
    cautions: [fuseCaution],
  };
}

/** How Q50 is drawn and built. */
export const mustHoldOrOpenSpec: TemplateSpec<Case> = {
  id: 'Q50',
  version: 1,
  lesson: '4.1',
  kind: 'choose',
  title: 'Hold, may, must open',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['4.1 read hold, may and must'],
  misconceptions: ['M30'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ family: 'bs1362', In: 13, load: 'a pump on a farm', I_A: 18 }],
    na: [{ family: 'ul248', In: 20, load: 'a pump on a farm', I_A: 24 }],
  },
  build: built,
};

/** Q50: what is sure of a fuse at a held current. */
export const mustHoldOrOpen = defineTemplate(mustHoldOrOpenSpec);

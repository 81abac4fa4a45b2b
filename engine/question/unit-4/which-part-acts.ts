import { fastest, slowest } from '../../protection/band.ts';
import type { Device } from '../../protection/device.ts';
import { deviceOf } from '../../protection/devices.ts';
import type { DeviceSpec } from '../../scenario/schema.ts';
import { given, plainNumber, timeText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { beginning, breakerCaution, timesRating, withArticle } from './asked-devices.ts';

// Q54: which part of a breaker acts at a current: neither, the slow one, the magnet, or either of them.

interface Case {
  readonly In: number;
  /** The type of an IEC breaker; in `na` the currents that its maker states for the magnet stand instead. */
  readonly type: 'B' | 'C' | 'D' | null;
  readonly may_A: number;
  readonly must_A: number;
  readonly place: string;
  readonly I_A: number;
}

type Zone = 'hold' | 'slow' | 'either' | 'magnet';

const places = [
  'a bakery oven',
  'a pump in a boatyard',
  'the heaters of a village hall',
  'a kiln in a joinery',
  'a press in a laundry',
  'a row of market stalls',
];

/** Time within which a breaker acts at once [s]: IEC 60898-1 Table 7, and what makers state. */
const atOnce = 0.1;
const hour = 3600;
const near = 0.02;
const types = { B: [3, 5], C: [5, 10], D: [10, 20] } as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const zone = random.pick<Zone>(['hold', 'slow', 'either', 'magnet']);
  const In = random.pick(practice === 'iec' ? [6, 10, 16, 20, 25, 32] : [15, 20, 25, 30]);
  const type = practice === 'iec' ? random.pick(['B', 'C', 'D'] as const) : null;
  const level = 10 * random.whole(Math.ceil(0.6 * In), In);
  const [may_A, must_A] = type ? types[type].map((times) => times * In) : [level, 10 * Math.round(0.15 * level)];
  const made = { In, type, may_A: may_A as number, must_A: must_A as number, place: random.pick(places) };
  const of = deviceOf(specOf(made));
  const hold = of.hold.I;
  const range = {
    hold: [type ? In : 0.6 * In, hold],
    slow: [1.2 * hold, made.may_A],
    either: [made.may_A, made.must_A],
    magnet: [made.must_A, 1.6 * made.must_A],
  }[zone] as [number, number];
  const step = zone === 'hold' ? 0.1 : 1;
  const [least, most] = [Math.ceil((range[0] * (1 + near)) / step), Math.floor((range[1] * (1 - near)) / step)];
  if (least > most) return null;
  const drawn = { ...made, I_A: Number((random.whole(least, most) * step).toFixed(1)) };
  return zoneOf(of, drawn.I_A) === zone ? drawn : null;
}

/** An IEC breaker by its type, a North American one by what its standard and its maker state. */
function specOf({ In, type, may_A, must_A }: Omit<Case, 'I_A' | 'place'>): DeviceSpec {
  if (type) return { family: type, rating_A: In };
  const slow: [number, number][] = [
    [1.35 * In, hour],
    [2 * In, 120],
    [must_A, atOnce],
  ];
  return { name: `${In}\u00A0A breaker`, rating_A: In, hold_A: In, breaker: true, slow, fast: [[may_A, atOnce]] };
}

/** The zone of a held current, by the guaranteed edges of the band. */
function zoneOf(of: Device, I: number): Zone {
  const least = fastest(of, I, 'guaranteed');
  if (least === Number.POSITIVE_INFINITY) return 'hold';
  if (slowest(of, I, 'guaranteed') <= atOnce) return 'magnet';
  return least > 0 ? 'slow' : 'either';
}

const zones: readonly (readonly [Zone, string])[] = [
  ['hold', 'Neither part: it must hold.'],
  ['slow', 'The slow part alone, if any.'],
  ['either', 'Either: the magnet may act at once.'],
  ['magnet', 'The magnet, at once.'],
];

function saidOf(of: Device, drawn: Case, chosen: Zone): Said {
  const right = zoneOf(of, drawn.I_A);
  const [may, must, hold] = [drawn.may_A, drawn.must_A, of.hold.I].map((I) => given(I, 'A'));
  const I = given(drawn.I_A, 'A');
  const low = right === 'hold' || right === 'slow';
  if (chosen === 'magnet') {
    const trueOf = `that is sure from ${must} on.`;
    const ask = 'Is this current past the magnet’s whole zone?';
    if (low) return { id: 'M34', trueOf, ask };
    return { trueOf, whyNot: `At ${I} the magnet may act, and may not. Then the slow part does.`, ask };
  }
  if (chosen === 'either')
    return {
      trueOf: `that is so between ${may} and ${must}.`,
      whyNot: `${I} is ${low ? 'less' : 'more'} than that. ${low ? 'The magnet stays still.' : 'There the magnet surely acts.'}`,
      ask: 'Where does the magnet’s zone begin, and where does it end?',
    };
  if (chosen === 'hold') {
    const trueOf = `up to ${hold} it must hold.`;
    const ask = 'Which part of a breaker sees a long, mild overload?';
    if (right === 'slow' && (drawn.type === 'C' || drawn.type === 'D')) return { id: 'M35', trueOf, ask };
    return { trueOf, whyNot: `${I} is more. At that current it is no longer bound to hold.`, ask };
  }
  const trueOf = `between ${hold} and ${may} the slow part is alone.`;
  if (right === 'hold' && drawn.I_A > drawn.In)
    return { id: 'M34', trueOf, ask: 'Up to which current does the standard bind it to hold?' };
  return {
    trueOf,
    whyNot: `${I} is ${right === 'hold' ? 'less' : 'more'} than that.`,
    ask: 'Mark the three edges on a line. Where does this current lie?',
  };
}

function answerText(of: Device, drawn: Case): string {
  const [may, must, hold] = [drawn.may_A, drawn.must_A, of.hold.I].map((I) => given(I, 'A'));
  switch (zoneOf(of, drawn.I_A)) {
    case 'hold':
      return `it must hold, as up to ${hold}.`;
    case 'slow':
      return `only the slow part can act, as up to ${may}.`;
    case 'either':
      return `the magnet may act, as between ${may} and ${must}.`;
    case 'magnet':
      return `the magnet acts at once, as from ${must} on.`;
  }
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const of = deviceOf(specOf(drawn));
  const right = zoneOf(of, drawn.I_A);
  const options = zones.map(
    ([id, text]): ChooseOption => (id === right ? { id, text } : { id, text, said: saidOf(of, drawn, id) }),
  );
  const text = answerText(of, drawn);
  const [holds, trips] = [of.hold.I, (of.by[0] as { I: number }).I].map((I) => String(timesRating(I, of)));
  const first = timeText((of.by[0] as { t: number }).t);
  const magnet = `Its maker states that the magnet may act from ${drawn.may_A}\u00A0A, and surely does from ${drawn.must_A}\u00A0A.`;
  return {
    kind: 'choose',
    stem: [
      words`${beginning(withArticle(of.name))} feeds ${drawn.place}. Its standard binds it to hold ${quantity(holds === '1' ? 'its rating' : `${holds} times its rating`)}, and to trip within ${quantity(first)} at ${quantity(`${trips} times`)}.`,
      ...(practice === 'na' ? [words`${magnet}`] : []),
      words`The current jumps to ${quantity(given(drawn.I_A, 'A'))} and stays there. Which part of the breaker acts?`,
    ],
    ask: 'Choose one.',
    parts: [{ id: 'part', label: 'The part that acts', options, right }],
    answer: { text },
    scenarios: [],
    hints: [
      words`A strip that heats and bends is the slow part. A coil that pulls is the magnet.`,
      words`${practice === 'iec' ? 'The letter sets the magnet: B from 3 to 5, C from 5 to 10, D from 10 to 20 times the rating.' : 'The magnet’s level is the maker’s to state. The slow part is the standard’s.'}`,
      words`Turn every edge into amperes, and mark the current between them.`,
    ],
    solution: [
      words`${quantity(given(drawn.I_A, 'A'))} is ${quantity(plainNumber(drawn.I_A / drawn.In, 3))} times the rating.`,
      words`It is bound to hold up to ${quantity(given(of.hold.I, 'A'))}.`,
      words`The magnet may act from ${quantity(given(drawn.may_A, 'A'))}, and surely does from ${quantity(given(drawn.must_A, 'A'))}.`,
      words`So ${text}`,
      words`${practice === 'iec' ? 'The letter moves the magnet only. The slow part is the same for B, C and D.' : 'The magnet’s level is no standard’s. Take it from the maker’s sheet of that very breaker.'}`,
    ],
    look: 'Mark four things on a line of amperes: what it holds, the magnet’s two ends, and the current.',
    cautions: [breakerCaution],
  };
}

/** How Q54 is drawn and built. */
export const whichPartActsSpec: TemplateSpec<Case> = {
  id: 'Q54',
  version: 1,
  lesson: '4.2',
  kind: 'choose',
  title: 'Slow part or magnet',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['4.2 read thermal and magnetic zones', '4.2 tell B, C and D'],
  misconceptions: ['M34', 'M35'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ In: 16, type: 'C', may_A: 80, must_A: 160, place: 'a bakery oven', I_A: 30 }],
    na: [{ In: 20, type: null, may_A: 160, must_A: 240, place: 'a bakery oven', I_A: 30 }],
  },
  build: built,
};

/** Q54: which part of a breaker acts at a current. */
export const whichPartActs = defineTemplate(whichPartActsSpec);

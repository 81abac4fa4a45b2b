import type { Limit, LimitKind } from '../../material/limits.ts';
import { pvc70 } from '../../material/plastics.ts';
import { celsius } from '../../quantity.ts';
import { dealtOrder, mostDeals } from '../deal.ts';
import { temperatureText } from '../figures.ts';
import { inWords } from '../mark-order.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltOrder, OrderItem, Practice, TemplateSpec, WrongOrder } from '../types.ts';
import { quantity, words } from '../words.ts';

// Q31: what happens to PVC as it gets hotter, in order.

interface Case {
  /** Kinds of limits, in no order. */
  readonly kinds: readonly LimitKind[];
  readonly place: string;
  readonly deal: number;
}

const places = [
  'A bakery’s lead lies too near an oven',
  'A reel in a theatre workshop is overloaded',
  'A lead in a laundry carries far too much',
  'A cord in a site cabin is buried under coats',
  'A boatyard’s lead is too thin for its heater',
];

/** Limits that a draw may leave out; without rating and softening the question has no point. */
const mayGo: readonly (LimitKind | undefined)[] = [undefined, undefined, 'fumes', 'shortTime', 'ignition'];
const asked: readonly LimitKind[] = ['rating', 'softening', 'shortTime', 'fumes', 'ignition'];

function drawnCase(random: Random): Case | null {
  const without = random.pick(mayGo);
  const drawn = {
    kinds: asked.filter((kind) => kind !== without),
    place: random.pick(places),
    deal: random.whole(0, mostDeals),
  };
  // each range ends below where the next begins
  const limits = limitsOf(drawn);
  return limits.every(({ low }, i) => i === 0 || low > (limits[i - 1] as Limit).high) ? drawn : null;
}

/** The limits of PVC that are asked for, coolest first. */
function limitsOf({ kinds }: Case): Limit[] {
  return pvc70.limits.filter(({ kind }) => kinds.includes(kind)).sort((a, b) => a.low - b.low);
}

const names: Readonly<Partial<Record<LimitKind, string>>> = {
  rating: 'rating for a long life',
  softening: 'softening',
  shortTime: 'short-circuit limit',
  fumes: 'acid fume',
  ignition: 'ignition',
};

/** One who takes the rating for the melting point puts softening at it or before it. */
function wrongOf(order: readonly string[]): WrongOrder[] {
  const rest = order.filter((id) => id !== 'rating');
  const after = rest.indexOf('softening') + 1;
  return [
    {
      id: 'M24',
      order: [...rest.slice(0, after), 'rating', ...rest.slice(after)],
      trueOf: 'this takes the rating for the point where PVC goes soft.',
      ask: 'Would you set the limit for years of use at the point where the plastic gives way?',
    },
  ];
}

function solutionOf(limits: readonly Limit[], text: string, practice: Practice) {
  const told = ({ low, high }: Limit) => {
    const from = temperatureText(celsius(low), practice);
    return high > low ? `${from} to ${temperatureText(celsius(high), practice)}` : from;
  };
  const of = (kind: LimitKind) => limits.find((limit) => limit.kind === kind);
  const [rating, softening, short, fumes, fire] = asked.map(of);
  return [
    ...(rating ? [words`The rating, ${quantity(told(rating))}, is set for a long life. Nothing melts there.`] : []),
    ...(softening ? [words`Softening depends on the compound: about ${told(softening)}.`] : []),
    ...(short ? [words`In a short circuit ${quantity(told(short))} is allowed, but for five seconds at most.`] : []),
    ...(fumes ? [words`Acid fume comes in minutes at about ${told(fumes)}.`] : []),
    ...(fire ? [words`It catches fire at about ${told(fire)}, sooner with a flame near.`] : []),
    words`So ${text}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltOrder {
  const limits = limitsOf(drawn);
  const order = limits.map(({ kind }) => kind);
  const wrong = wrongOf(order);
  const items = dealtOrder(
    order,
    wrong.map((one) => one.order),
    drawn.deal,
  ).map((id): OrderItem => ({ id, name: names[id as LimitKind] ?? id }));
  const ends = ['coolest', 'hottest'] as const;
  const text = `${inWords({ items, ends }, order)}.`;
  return {
    kind: 'order',
    stem: [
      words`${drawn.place}, and the PVC of its cores gets hotter and hotter.`,
      words`Put these in the order in which it passes them. Take PVC that is rated ${quantity(temperatureText(celsius(ratingK), practice))}.`,
    ],
    ask: 'Move each up or down with its two buttons.',
    items,
    ends,
    answer: { order, text },
    wrong,
    scenarios: [],
    hints: [
      words`One of these is for years, one for seconds. Which of the two is the lower?`,
      words`A limit for years must lie below anything that spoils the plastic in minutes.`,
      words`A fire needs the most heat of all.`,
    ].slice(0, order.includes('ignition') ? 3 : 2),
    solution: solutionOf(limits, text, practice),
    look: 'Look again at the limits, and at the time that each is meant for.',
    cautions: ['Overheated PVC gives off acid fume. It harms lungs. Stop, leave, ventilate.'],
  };
}

const ratingK = pvc70.limits.find(({ kind }) => kind === 'rating')?.low ?? Number.NaN;

/** How Q31 is drawn and built. */
export const limitsInOrderSpec: TemplateSpec<Case> = {
  id: 'Q31',
  version: 1,
  lesson: '2.3',
  kind: 'order',
  title: 'What comes first',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['2.3 order the events on the way up'],
  misconceptions: ['M24'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ kinds: asked, place: 'A bakery’s lead lies too near an oven', deal: 1 }],
    na: [{ kinds: asked, place: 'A bakery’s lead lies too near an oven', deal: 1 }],
  },
  build: built,
};

/** Q31: rating, softening, fume, short-circuit limit and ignition of PVC in order. */
export const limitsInOrder = defineTemplate(limitsInOrderSpec);

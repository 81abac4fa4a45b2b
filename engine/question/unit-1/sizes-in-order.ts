import { awgArea } from '../../conductor/awg.ts';
import { standardSize } from '../../conductor/iec60228.ts';
import { dealtOrder, mostDeals } from '../deal.ts';
import { amount, given } from '../figures.ts';
import { inWords } from '../mark-order.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltOrder, OrderItem, Practice, TemplateSpec, WrongOrder } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q07: conductors marked in mm² and in AWG, in order of their metal.

interface Case {
  readonly areas_mm2: readonly number[];
  readonly gauges: readonly number[];
  readonly place: string;
  readonly deal: number;
}

const places = [
  'A theatre workshop sorts its drums of single-core wire',
  'A boatyard store has drums of single-core wire from two trades',
  'A joinery buys a dead workshop’s drums of single-core wire',
  'A farm keeps wire from machines of many makers',
  'A bakery’s fitter sorts the wire in a van',
];

const metric = [0.75, 1, 1.5, 2.5, 4, 6, 10];
const american = [18, 16, 14, 12, 10, 8];

function some<T>(random: Random, items: readonly T[], count: number): T[] {
  const left = [...items];
  return Array.from({ length: count }, () => left.splice(random.whole(0, left.length - 1), 1)[0] as T);
}

function drawnCase(random: Random, practice: Practice): Case | null {
  const own = practice === 'iec' ? 3 : 2;
  const drawn = {
    areas_mm2: some(random, metric, own),
    gauges: some(random, american, 5 - own),
    place: random.pick(places),
    deal: random.whole(0, mostDeals),
  };
  const sizes = sizesOf(drawn).sort((a, b) => a.area - b.area);
  // a tenth apart, so that no class or lay of strands turns two of them round
  const apart = sizes.every(({ area }, i) => i === 0 || area >= 1.1 * (sizes[i - 1] as Size).area);
  const right = sizes.map(({ id }) => id).join();
  return apart && wrongOf(drawn).every(({ order }) => order.join() !== right) ? drawn : null;
}

interface Size {
  readonly id: string;
  readonly name: string;
  /** Metal area [m²]. */
  readonly area: number;
  /** The number it is marked with. */
  readonly mark: number;
  /** The gauge, where it is one. */
  readonly gauge?: number;
}

function sizesOf({ areas_mm2, gauges }: Case): Size[] {
  return [
    ...areas_mm2.map((mark): Size => {
      const area = (standardSize(mark)?.area_mm2 ?? mark) * 1e-6;
      return { id: `${mark} mm2`, name: given(mark, 'mm²'), area, mark };
    }),
    ...gauges.map((mark): Size => {
      return { id: `${mark} awg`, name: given(mark, 'AWG'), area: awgArea(mark), mark, gauge: mark };
    }),
  ];
}

/** Ids of the sizes from least to greatest of some number of theirs. */
const orderBy = (sizes: readonly Size[], number: (size: Size) => number): string[] =>
  [...sizes].sort((a, b) => number(a) - number(b)).map(({ id }) => id);

/**
 * What one makes of the gauges who takes a bigger number for a bigger wire: by the numbers as they are marked; by each
 * gauge's place, turned round among the gauges; by areas that grow with the number, A = A₁·92^((N − N₁)/19.5), from any one
 * gauge N₁ that is known.
 */
function wrongOf(drawn: Case): WrongOrder[] {
  const sizes = sizesOf(drawn);
  const byGauge = drawn.gauges.map((known) =>
    orderBy(sizes, ({ area, gauge }) => (gauge === undefined ? area : awgArea(known) * 92 ** ((gauge - known) / 19.5))),
  );
  const right = orderBy(sizes, ({ area }) => area);
  const isGauge = (id: string) => id.endsWith('awg');
  const turned = right.filter(isGauge).reverse();
  const inPlace = right.map((id) => (isGauge(id) ? (turned.shift() as string) : id));
  const orders = [orderBy(sizes, ({ mark }) => mark), inPlace, ...byGauge];
  const once = orders.filter((order, i) => orders.findIndex((other) => other.join() === order.join()) === i);
  const [thin, thick] = [Math.max(...drawn.gauges), Math.min(...drawn.gauges)];
  return once.map((order) => ({
    id: 'M08',
    order,
    trueOf: 'this order lets the gauge number grow with the wire.',
    ask: `A gauge counts the draws through dies. Which was drawn more often, ${thick} or ${thin}\u00A0AWG?`,
  }));
}

function solutionOf(drawn: Case, text: string) {
  const sizes = sizesOf(drawn).sort((a, b) => a.area - b.area);
  const gauges = sizes.filter(({ gauge }) => gauge !== undefined);
  const list = gauges.map(({ name, area }) => `${name} is ${amount(area * 1e6, 3, 'mm²')}`).join(', ');
  return [
    words`A size in mm² is the area of metal itself. A gauge has to be turned into one.`,
    words`${law}`,
    words`The diameter d is in mm, N is the gauge. Area is a quarter of π, times d squared.`,
    words`So ${list}.`,
    words`In one order, ${text}`,
  ];
}

const law = formula(
  String.raw`d = 0.127 \cdot 92^{(36 - N)/39}`,
  'd is 0.127 times 92 to the power of 36 minus N over 39.',
);

function built(drawn: Case): BuiltOrder {
  const sizes = sizesOf(drawn);
  const order = orderBy(sizes, ({ area }) => area);
  const wrong = wrongOf(drawn);
  const dealtIds = dealtOrder(
    order,
    wrong.map((one) => one.order),
    drawn.deal,
  );
  const items = dealtIds.map((id): OrderItem => ({ id, name: sizes.find((size) => size.id === id)?.name ?? id }));
  const ends = ['least metal', 'most metal'] as const;
  const text = `${inWords({ items, ends }, order)}.`;
  const known = sizes.find(({ gauge }) => gauge !== undefined) as Size;
  return {
    kind: 'order',
    stem: [
      words`${drawn.place}. Some is marked in mm², some in AWG.`,
      words`Put these conductors in order by the area of their metal.`,
    ],
    ask: 'Move each up or down with its two buttons.',
    items,
    ends,
    answer: { order, text },
    wrong,
    scenarios: [],
    hints: [
      words`Order those in mm² first. Then find where each gauge goes between them.`,
      words`A gauge runs backwards: three numbers up is about half the area.`,
      words`For a start, ${quantity(known.name)} is ${quantity(amount(known.area * 1e6, 3, 'mm²'))}.`,
    ],
    solution: solutionOf(drawn, text),
    look: 'Turn each gauge into mm² and compare again.',
    cautions: [],
  };
}

/** How Q07 is drawn and built. */
export const sizesInOrderSpec: TemplateSpec<Case> = {
  id: 'Q07',
  version: 1,
  lesson: '1.2',
  kind: 'order',
  title: 'Two ways to mark a size',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['1.2 rank mm² and AWG on one scale'],
  misconceptions: ['M08'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      { areas_mm2: [1, 2.5, 4], gauges: [18, 12], place: 'A farm keeps wire from machines of many makers', deal: 1 },
    ],
    na: [
      { areas_mm2: [1.5, 4], gauges: [18, 14, 10], place: 'A farm keeps wire from machines of many makers', deal: 1 },
    ],
  },
  build: built,
};

/** Q07: conductors in mm² and AWG in order of their metal. */
export const sizesInOrder = defineTemplate(sizesInOrderSpec);

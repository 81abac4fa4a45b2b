import { inSize, markedSize } from '../../cable/in-size.ts';
import { tradeSizes } from '../../conductor/area-scale.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import type { Device, DeviceFamily, Gate } from '../../protection/device.ts';
import { standardRatings } from '../../protection/devices.ts';
import { celsius } from '../../quantity.ts';
import type { CableSpec, SurroundingsSpec } from '../../scenario/schema.ts';
import { allApart, carrying } from '../carrying.ts';
import { cordOf, cordsOf } from '../cords.ts';
import { dealtOrder, mostDeals } from '../deal.ts';
import { amount, given, temperatureText, timeText } from '../figures.ts';
import { inWords } from '../mark-order.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltOrder, OrderItem, Practice, TemplateSpec, WrongOrder } from '../types.ts';
import { quantity, words } from '../words.ts';
import { askedDevice, beginning, gapCaution, localWords, timesRating, withArticle } from './asked-devices.ts';

// Q57: remedies ranked by how much of the gap each closes.

type Remedy = 'bigger device' | 'residual device' | 'smaller device' | 'thicker cord' | 'open air' | 'colder place';

interface Case {
  readonly family: DeviceFamily;
  readonly In: number;
  readonly cord: CastKey;
  readonly ambient_degC: number;
  readonly cloth_mm: number;
  readonly colder_degC: number;
  readonly remedies: readonly Remedy[];
  readonly deal: number;
}

const devices: Readonly<Record<Practice, readonly (readonly [DeviceFamily, readonly number[]])[]>> = {
  iec: [
    ['bs1362', [10, 13]],
    ['gG', [10, 16, 20]],
    ['B', [13, 16, 20]],
    ['C', [13, 16, 20]],
  ],
  na: [
    ['ul489', [20, 25, 30]],
    ['ul248', [15, 20, 25, 30]],
  ],
};

const helpful: readonly Remedy[] = ['smaller device', 'thicker cord', 'open air', 'colder place'];
/** Loose folds of cloth, as in lesson 2.4 [W/(m·K)] (our choice, argued there). */
const cloth = 0.05;
/** Remedies differ by this much at least [A] (our choice: a learner's sum to three figures tells them apart). */
const clear = 0.8;

function drawnCase(random: Random, practice: Practice): Case | null {
  const [family, ratings] = random.pick(devices[practice]);
  const left = random.whole(0, helpful.length - 1);
  const drawn: Case = {
    family,
    In: random.pick(ratings),
    cord: random.pick(cordsOf(practice)).key,
    ambient_degC: random.whole(25, 40),
    cloth_mm: random.pick([5, 10, 15, 20]),
    colder_degC: random.pick([5, 10, 15]),
    remedies: ['bigger device', 'residual device', ...helpful.filter((_, i) => i !== left)],
    deal: random.whole(0, mostDeals),
  };
  if (!nextDevice(drawn, 1) || !nextDevice(drawn, -1)) return null;
  const all = closedBy(drawn, practice);
  const real = all.filter(({ id }) => helpful.includes(id));
  return allApart(
    all.map(({ closed }) => closed),
    clear,
  ) && real.every(({ closed }) => closed > clear)
    ? drawn
    : null;
}

/** The device of the family's next standard rating, up or down; undefined at the ends of the list. */
function nextDevice({ family, In }: Case, way: 1 | -1): Device | undefined {
  const ratings = standardRatings(family);
  const next = ratings[ratings.indexOf(In) + way];
  return next === undefined ? undefined : askedDevice(family, next);
}

/** The current [A] that a device may carry for its conventional time: the end of the gap that its standard is sure of. */
const mayCarry = ({ by }: Device) => (by[0] as Gate).I;

const covered = ({ ambient_degC, cloth_mm }: Case): SurroundingsSpec => ({
  kind: 'lagged',
  ambient_degC,
  thickness_mm: cloth_mm,
  conductivity_WPerMK: cloth,
});

/** The next thicker cord of the same table. */
function thicker({ cord }: Case): CableSpec {
  const now = markedSize(cast[cord]);
  const sizes = tradeSizes.filter(({ system, area }) => now && system === now.system && area > now.area);
  const [cable] = sizes.flatMap((size) => inSize(cast[cord], size) ?? []);
  if (!cable) throw new Error(`there is no cord above ${cord}`);
  return cable;
}

/** What the cord carries at its limit, as told to three figures [A]. */
function carriedBy(cable: CableSpec, around: SurroundingsSpec, practice: Practice): number {
  const of = buildCase(carrying(cable, around, 1, practice));
  return Number((ratingAt(of, ratingOf(of.cable) as number) as number).toPrecision(3));
}

/** The two ends of the gap, as it is or after a remedy: what the cord carries, and what the device may carry [A]. */
function endsOf(drawn: Case, practice: Practice, remedy?: Remedy): readonly [number, number] {
  const { cord, ambient_degC, colder_degC } = drawn;
  const around = covered(drawn);
  const device =
    {
      'bigger device': nextDevice(drawn, 1) as Device,
      'smaller device': nextDevice(drawn, -1) as Device,
    }[remedy as string] ?? askedDevice(drawn.family, drawn.In);
  const place: SurroundingsSpec =
    remedy === 'open air'
      ? { kind: 'stillAir', ambient_degC }
      : remedy === 'colder place'
        ? { ...around, ambient_degC: ambient_degC - colder_degC }
        : around;
  const cable = remedy === 'thicker cord' ? thicker(drawn) : cast[cord];
  return [carriedBy(cable, place, practice), mayCarry(device)];
}

const widthOf = ([from, to]: readonly [number, number]) => Math.max(0, to - from);

/** What each remedy closes of the gap, least first [A]; less than nothing where it widens it. */
function closedBy(drawn: Case, practice: Practice) {
  const before = widthOf(endsOf(drawn, practice));
  const all = drawn.remedies.map((id) => ({ id, closed: before - widthOf(endsOf(drawn, practice, id)) }));
  return all.sort((a, b) => a.closed - b.closed);
}

function nameOf(drawn: Case, id: Remedy, practice: Practice): string {
  switch (id) {
    case 'bigger device':
      return withArticle((nextDevice(drawn, 1) as Device).name);
    case 'smaller device':
      return withArticle((nextDevice(drawn, -1) as Device).name);
    case 'residual device':
      return `${practice === 'iec' ? 'an' : 'a'} ${localWords[practice].rcd} as well`;
    case 'thicker cord':
      return `a cord of ${(markedSize(thicker(drawn))?.name ?? '').replace(' ', '\u00A0')}`;
    case 'open air':
      return 'no cover';
    case 'colder place':
      return `air ${given(drawn.colder_degC, 'K')} colder`;
  }
}

/** One who trusts the next size up, or a residual current device, puts that one last: it is to close most. */
function wrongOf(order: readonly Remedy[]): WrongOrder[] {
  const last = (id: Remedy) => [...order.filter((one) => one !== id), id];
  return [
    {
      id: 'M33',
      order: last('bigger device'),
      trueOf: 'a bigger device does stop the nuisance of its opening.',
      ask: 'Which currents may the bigger one carry that this one may not?',
    },
    {
      id: 'M44',
      order: last('residual device'),
      trueOf: 'such a device guards people from current that leaks away.',
      ask: 'In an overload, how much more goes out than comes back?',
    },
  ];
}

function solutionOf(drawn: Case, text: string, practice: Practice) {
  const [from, to] = endsOf(drawn, practice);
  const told = closedBy(drawn, practice).map(({ id, closed }) => {
    if (closed === 0) return `${nameOf(drawn, id, practice)}: nothing`;
    const by = given(Number(Math.abs(closed).toPrecision(3)), 'A');
    return `${nameOf(drawn, id, practice)}: ${closed < 0 ? `${by} wider` : by}`;
  });
  return [
    words`Now the gap runs from ${quantity(given(from, 'A'))} to ${quantity(amount(to, 3, 'A'))}.`,
    words`A remedy either lifts its lower end, what the cord carries, or lowers its upper end, what the device may carry.`,
    words`What each closes: ${told.slice(0, 2).join('; ')}.`,
    words`And: ${told.slice(2, 4).join('; ')}.`,
    ...(told.length > 4 ? [words`And: ${told.slice(4).join('; ')}.`] : []),
    words`So ${text}`,
    words`A smaller device must still carry the load. Cables are never to be covered in use.`,
  ];
}

/** What the cord carries after the remedies on offer that act on it, as the stem tells. */
function carriedText(drawn: Case, practice: Practice): string {
  const after = (id: Remedy) => given(endsOf(drawn, practice, id)[0], 'A');
  const size = (markedSize(thicker(drawn))?.name ?? '').replace(' ', '\u00A0');
  const told: Partial<Record<Remedy, string>> = {
    'thicker cord': `a cord of ${size} carries ${after('thicker cord')} here`,
    'open air': `uncovered this one carries ${after('open air')}`,
    'colder place': `${given(drawn.colder_degC, 'K')} colder it carries ${after('colder place')}`,
  };
  return helpful
    .filter((id) => drawn.remedies.includes(id))
    .flatMap((id) => told[id] ?? [])
    .join(', ');
}

function built(drawn: Case, practice: Practice): BuiltOrder {
  const of = askedDevice(drawn.family, drawn.In);
  const cord = cordOf(drawn.cord);
  const order = closedBy(drawn, practice).map(({ id }) => id);
  const wrong = wrongOf(order);
  const ids = dealtOrder(
    order,
    wrong.map((one) => one.order),
    drawn.deal,
  );
  const items = ids.map((id): OrderItem => ({ id, name: nameOf(drawn, id as Remedy, practice) }));
  const ends = ['least closed', 'most closed'] as const;
  const text = `${inWords({ items, ends }, order)}.`;
  const [now] = endsOf(drawn, practice);
  const gate = of.by[0] as Gate;
  const limit = celsius(ratingOf(buildCase(carrying(cast[drawn.cord], 20, 1, practice)).cable) as number);
  return {
    kind: 'order',
    stem: [
      words`${beginning(cord.words)} lies under ${quantity(given(drawn.cloth_mm, 'mm'))} of cloth at ${quantity(temperatureText(drawn.ambient_degC, practice))}, behind ${withArticle(of.name)}. At its limit of ${quantity(temperatureText(limit, practice))} it carries ${quantity(given(now, 'A'))}.`,
      words`This kind of ${of.kind} may carry up to ${quantity(String(timesRating(gate.I, of)))} times its rating for ${quantity(timeText(gate.t))}. Between these two currents lies the gap.`,
      words`The engine also finds: ${carriedText(drawn, practice)}. Put the remedies in order of how much of the gap each one closes.`,
    ],
    ask: 'Move each up or down with its two buttons. One that widens the gap closes least.',
    items,
    ends,
    answer: { order, text },
    wrong,
    scenarios: [{ name: 'covered', scenario: { ...carrying(cast[drawn.cord], covered(drawn), now, practice, 7200) } }],
    hints: [
      words`Work out both ends of the gap in amperes, and its width.`,
      words`For each remedy ask: which end does it move, and by how many amperes?`,
      words`Something that cannot see an overload moves neither end.`,
    ],
    solution: solutionOf(drawn, text, practice),
    look: 'Draw a line of amperes. Mark both ends of the gap, then move one for each remedy.',
    cautions: [gapCaution, 'A covered lead may start a fire. Keep leads uncovered and unwound in use.'],
  };
}

/** How Q57 is drawn and built. */
export const remediesInOrderSpec: TemplateSpec<Case> = {
  id: 'Q57',
  version: 1,
  lesson: '4.3',
  kind: 'order',
  title: 'Which remedy closes most',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['4.3 name the remedy: size, device, surroundings, load'],
  misconceptions: ['M33', 'M44'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        family: 'B',
        In: 16,
        cord: 'C100',
        ambient_degC: 30,
        cloth_mm: 10,
        colder_degC: 10,
        remedies: ['bigger device', 'residual device', 'smaller device', 'open air'],
        deal: 1,
      },
    ],
    na: [
      {
        family: 'ul489',
        In: 20,
        cord: 'A16',
        ambient_degC: 30,
        cloth_mm: 10,
        colder_degC: 10,
        remedies: ['bigger device', 'residual device', 'smaller device', 'open air'],
        deal: 1,
      },
    ],
  },
  build: built,
};

/** Q57: remedies in order of how much of the gap each closes. */
export const remediesInOrder = defineTemplate(remediesInOrderSpec);

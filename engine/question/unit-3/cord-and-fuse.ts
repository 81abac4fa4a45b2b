import { cordCurrent } from '../../cable/cord-ratings.ts';
import { type TradeSize, tradeSize } from '../../conductor/area-scale.ts';
import { branchCordRule } from '../../protection/branch-cord-rule.ts';
import { plugFuse } from '../../protection/plug-fuse.ts';
import { plugFuseRule, plugRow } from '../../protection/plug-fuse-rule.ts';
import type { RuleVerdict } from '../../protection/rule-steps.ts';
import { ulBreaker } from '../../protection/ul-breaker.ts';
import type { CableSpec, Scenario } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { dealt, mostDeals } from '../deal.ts';
import { amount, given } from '../figures.ts';
import { markedAs } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { checkYours, whoDecides } from './cited-words.ts';
import { ampsOf, otherVolts, voltsOf, wattsText } from './watts.ts';

// Q48: the thinnest cord and the smallest device for one appliance.

interface Pair {
  readonly size: number;
  readonly In: number;
}

interface Case {
  readonly load: string;
  readonly place: string;
  readonly P_W: number;
  readonly deal: number;
}

const loads: Readonly<Record<Practice, readonly (readonly [name: string, least_W: number, most_W: number])[]>> = {
  iec: [
    ['A lamp stand', 150, 500],
    ['A glue pot', 200, 900],
    ['A soup warmer', 400, 1500],
    ['A panel heater', 500, 2200],
    ['An urn', 1500, 2900],
  ],
  na: [
    ['A glue pot', 700, 1000],
    ['A soup warmer', 900, 1500],
    ['A panel heater', 1000, 1700],
    ['An urn', 1400, 1800],
    ['A hot cupboard', 1500, 2300],
  ],
};
const places = ['a market stall', 'a joinery', 'a village hall', 'a laundry', 'a theatre workshop', 'a bakery'];

const sizes = { iec: [0.5, 0.75, 1, 1.25, 1.5], na: [18, 16, 14, 12] } as const;
/** Plug fuses that BS 1362 allows and shops hold, and branch breakers that such circuits have [A]. */
const ratings = { iec: [3, 5, 10, 13], na: [15, 20] } as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const [load, least, most] = random.pick(loads[practice]);
  const drawn: Case = {
    load,
    place: random.pick(places),
    P_W: 50 * random.whole(least / 50, most / 50),
    deal: random.whole(0, mostDeals),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** A pair is right, no current lies on a row by a hair, and four pairs are on offer with a known slip among them. */
function isClear(drawn: Case, practice: Practice): boolean {
  const Ib = ampsOf(drawn.P_W, voltsOf(practice));
  const rows = [...ratings[practice], ...sizes[practice].map((size) => ratedOf(size, practice))];
  const near = rows.some((I) => Math.abs(Ib / I - 1) < 0.02);
  const pairs = pairsOf(drawn, practice);
  return !near && pairs.length === 4 && pairs.some(({ said }) => said?.id !== undefined);
}

const sized = (size: number, practice: Practice): TradeSize =>
  tradeSize(practice === 'iec' ? 'mm2' : 'AWG', size) as TradeSize;

/** What a cord may carry: with its plug by the plug's table, or by the table of cords [A]. */
const ratedOf = (size: number, practice: Practice): number =>
  practice === 'iec' ? (plugRow(size)?.rated ?? 0) : (cordCurrent(sized(size, practice))?.I ?? 0);

/** The rule of a cord worked on a pair, for a load of `Ib` [A]. */
function verdictOn({ size, In }: Pair, Ib: number, practice: Practice): RuleVerdict {
  const cord = { size: sized(size, practice), metal: 'copper', Ib, feeds: 'appliance' } as const;
  if (practice === 'iec') return plugFuseRule(cord, plugFuse(In));
  return branchCordRule(cord, ulBreaker(In), 'assembled on site');
}

/** The smallest device, and behind it the thinnest cord, that the rule allows for `Ib` [A]. */
function leastPair(Ib: number, practice: Practice): Pair | undefined {
  const In = ratings[practice].find((one) => one >= Ib);
  if (In === undefined) return undefined;
  const size = sizes[practice].find((one) => verdictOn({ size: one, In }, Ib, practice).outcome === 'met');
  return size === undefined ? undefined : { size, In };
}

interface Offered extends Pair {
  readonly said?: Said;
}

/** The right pair, and three others: what slips lead to, and the pairs beside the right one. */
function pairsOf({ P_W }: Case, practice: Practice): Offered[] {
  const Ib = ampsOf(P_W, voltsOf(practice));
  const right = leastPair(Ib, practice);
  if (!right) return [];
  const list: readonly number[] = sizes[practice];
  const devices: readonly number[] = ratings[practice];
  const [at, dev] = [list.indexOf(right.size), devices.indexOf(right.In)];
  const [thinner, thicker] = [list[at - 1], list[at + 1]];
  const [smaller, larger] = [devices[dev - 1], devices[dev + 1]];
  const other = leastPair(ampsOf(P_W, otherVolts(practice)), practice);
  const all: (Offered | undefined)[] = [
    right,
    thinner === undefined ? undefined : { size: thinner, In: right.In, said: byLoad(thinner, right.In, Ib, practice) },
    other && { ...other, said: byHabit(otherVolts(practice)) },
    smaller === undefined ? undefined : { size: right.size, In: smaller, said: tooSmall(smaller, Ib) },
    larger === undefined
      ? undefined
      : { size: right.size, In: larger, said: largerThan(right.size, larger, Ib, practice) },
    thicker === undefined ? undefined : { size: thicker, In: right.In, said: thick },
  ];
  const found = all.filter((one): one is Offered => one !== undefined);
  const once = found.filter((a, i) => found.findIndex((b) => b.size === a.size && b.In === a.In) === i);
  return once.slice(0, 4);
}

const device = { iec: 'fuse', na: 'breaker' } as const satisfies Record<Practice, string>;

const byLoad = (size: number, In: number, Ib: number, practice: Practice): Said => ({
  id: 'M32',
  trueOf: `the ${device[practice]} carries the load.`,
  whyNot:
    ratedOf(size, practice) < Ib
      ? `But this cord is rated ${given(ratedOf(size, practice), 'A')}, and the load draws ${amount(Ib, 3, 'A')}.`
      : `But ${given(In, 'A')} is too large a ${device[practice]} for this cord.`,
  ask: `What does the table allow this cord, and which ${device[practice]}?`,
});
const byHabit = (U: number): Said => ({
  id: 'M49',
  trueOf: `this pair suits the watts on ${given(U, 'V')}.`,
  ask: 'Which voltage does the question give for this supply?',
});
const tooSmall = (In: number, Ib: number): Said => ({
  trueOf: `the load draws ${amount(Ib, 3, 'A')}.`,
  whyNot: `That is more than ${given(In, 'A')}. A device is to carry the load that it feeds.`,
  ask: 'What are the watts over the volts?',
});

function largerThan(size: number, In: number, Ib: number, practice: Practice): Said {
  const allowed = verdictOn({ size, In }, Ib, practice).outcome === 'met';
  const one = device[practice];
  return {
    trueOf: allowed ? `the table allows this pair.` : `the ${one} carries the load, and is too large for the cord.`,
    whyNot: `But a smaller ${one} carries the load as well, and opens sooner when something is amiss.`,
    ask: `Which is the smallest ${one} that carries the load?`,
  };
}

const thick: Said = {
  trueOf: 'this cord carries the load.',
  whyNot: 'A thinner one does as well, and the question asks for the thinnest.',
  ask: 'What does the table allow the next thinner cord?',
};

const cordSpec = (size: number, practice: Practice): CableSpec => {
  if (practice === 'na') return { table: 'SJT', cores: 3, size_AWG: size, loaded: 2 };
  if (size === 0.5) return { table: 'H03VV-F', cores: 3, size_mm2: size, loaded: 2 };
  // walls of 1.25 mm² from memory, as in the standing cast
  const [insulation_mm, sheath_mm] = [0.65, 0.85];
  if (size !== 1.25) return { table: 'H05VV-F', cores: 3, size_mm2: size, loaded: 2 };
  return {
    layout: 'round',
    cores: 3,
    loaded: 2,
    conductor: { size_mm2: size },
    insulation: { material: 'pvc70', thickness_mm: insulation_mm },
    sheath: { material: 'pvc70', thickness_mm: sheath_mm },
  };
};

function scenarioOf({ P_W }: Case, { size }: Pair, practice: Practice): Scenario {
  const U_V = voltsOf(practice);
  const one = carrying(cordSpec(size, practice), 25, 1, practice, 3600);
  return { ...one, lead: { length_m: 2 }, supply: [{ kind: 'mains', U_V, load_W: P_W, rated_V: U_V }] };
}

const nameOf = ({ size, In }: Pair, practice: Practice) =>
  practice === 'iec'
    ? `${markedAs(size, practice)} with a ${given(In, 'A')} fuse`
    : `${markedAs(size, practice)} on a ${given(In, 'A')} breaker`;

/** What the tables allow each cord, as the stem tells it. */
function rowsTold(practice: Practice): string {
  const told = sizes[practice].map((size) => `${markedAs(size, practice)} ${given(ratedOf(size, practice), 'A')}`);
  return `${told.slice(0, -1).join(', ')} and ${told.at(-1)}`;
}

const rules: Readonly<Record<Practice, string>> = {
  iec: 'Behind 0.5\u00A0mm² the greatest fuse is 3\u00A0A; behind the others it is 13\u00A0A.',
  na: 'The set is put together on site. There the rule wants 16\u00A0AWG or thicker on these breakers.',
};

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { load, place, P_W } = drawn;
  const U0 = voltsOf(practice);
  const Ib = ampsOf(P_W, U0);
  const pairs = pairsOf(drawn, practice);
  const [right] = pairs;
  if (!right) throw new Error('a pair is right');
  const idOf = ({ size, In }: Pair) => `${size} ${In}`;
  const options = pairs.map((pair): ChooseOption => {
    const option = { id: idOf(pair), text: nameOf(pair, practice) };
    return pair.said === undefined ? option : { ...option, said: pair.said };
  });
  const text = `${nameOf(right, practice)}.`;
  const rated = given(ratedOf(right.size, practice), 'A');
  const one = device[practice];
  return {
    kind: 'choose',
    stem: [
      words`${load} in ${place} is marked ${quantity(wattsText(P_W))} and ${quantity(given(U0, 'V'))}. It is the only thing on its lead.`,
      words`${practice === 'iec' ? 'With its plug' : 'By the table'}, a cord may carry this much: ${rowsTold(practice)}. ${rules[practice]}`,
      words`Which is the smallest ${one} that carries the load, with the thinnest cord that suits both?`,
    ],
    ask: 'Choose one pair.',
    parts: [{ id: 'pair', label: `Cord and ${one}`, options: dealt(options, drawn.deal), right: idOf(right) }],
    answer: { text },
    scenarios: [{ name: 'this load on this cord', scenario: scenarioOf(drawn, right, practice) }],
    hints: [
      words`What does the load draw? Watts over volts.`,
      words`Take the smallest ${one} that carries this current.`,
      words`Then look down the row of cords: which is the first that carries the current, and may stand behind that ${one}?`,
    ],
    solution: [
      words`The load draws ${quantity(wattsText(P_W))} over ${quantity(given(U0, 'V'))}, which is ${quantity(amount(Ib, 3, 'A'))}.`,
      words`The smallest ${one} that carries it is ${quantity(given(right.In, 'A'))}.`,
      words`The thinnest cord that suits both is ${quantity(markedAs(right.size, practice))}, which may carry ${quantity(rated)}.`,
      words`So the pair is ${text}`,
      words`One appliance cannot overload its own lead. A lead with several outlets can be overloaded, and needs other rules.`,
      words`${practice === 'iec' ? 'BS 1363-1, Table 2, and BS 1362.' : 'NFPA 70, 240.5(B)(4) and Table 400.5(A)(1).'} ${checkYours}`,
    ],
    look: 'Work out the current first. Then compare it with the device, and with the cord.',
    cautions: [whoDecides],
  };
}

/** How Q48 is drawn and built. */
export const cordAndFuseSpec: TemplateSpec<Case> = {
  id: 'Q48',
  version: 1,
  lesson: '3.3',
  kind: 'choose',
  title: 'A cord and its device',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['3.3 pick cord and plug fuse, or cord for the branch breaker, from load'],
  misconceptions: ['M32', 'M49'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: 'A panel heater', place: 'a joinery', P_W: 2000, deal: 1 }],
    na: [{ load: 'An urn', place: 'a joinery', P_W: 1750, deal: 1 }],
  },
  build: built,
};

/** Q48: a cord and a device for one appliance. */
export const cordAndFuse = defineTemplate(cordAndFuseSpec);

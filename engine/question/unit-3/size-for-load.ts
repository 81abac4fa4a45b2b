import type { TradeSize } from '../../conductor/area-scale.ts';
import { ampacity } from '../../protection/ampacity.ts';
import { chooseSize, type SizeTrial } from '../../protection/choose-size.ts';
import { actingShare } from '../../protection/coordination.ts';
import { type Factor, factorProduct, tableCurrentNeeded } from '../../protection/factors.ts';
import { iecBreaker } from '../../protection/iec-breaker.ts';
import { branchSizes, fixedSizes } from '../../protection/size-asks.ts';
import { nextStandardRating } from '../../protection/standard-ratings.ts';
import { flatTwinRatings, methodRatings, type TableRating } from '../../protection/table-rating.ts';
import { ulBreaker } from '../../protection/ul-breaker.ts';
import { amount, given, plainNumber, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { bound, checkYours, citedWords, whoDecides } from './cited-words.ts';
import {
  addedReductions,
  clippedRun,
  companyOf,
  factorList,
  factorsAt,
  fixedLimit,
  type Place,
  runPlaces,
  sizeName,
} from './fixed-runs.ts';
import { ampsOf, wattsText } from './watts.ts';

// Q41: from a load to the thinnest size whose table current, with its factors, is enough for the device.

type Laid = 'flat twin' | 'B2' | 'E';

interface Case extends Place {
  readonly load: string;
  readonly place: string;
  readonly P_W: number;
  readonly U_V: number;
  /** How the cable lies in UK and IEC practice. */
  readonly laid: Laid;
  /** Where in the table the sizes on offer begin. */
  readonly first: number;
}

const loads = ['A water heater', 'A small kiln', 'An oven', 'A storage heater', 'A drying cabinet'] as const;

/** As many sizes as are on offer. */
const offered = 5;

function drawnCase(random: Random, practice: Practice): Case | null {
  const iec = practice === 'iec';
  const drawn: Case = {
    load: random.pick(loads),
    place: random.pick(runPlaces),
    P_W: 100 * random.whole(iec ? 15 : 18, iec ? 70 : 60),
    U_V: iec ? 230 : 240,
    laid: random.pick<Laid>(['flat twin', 'flat twin', 'B2', 'E']),
    ambient_degC: random.whole(31, iec ? 50 : 65),
    circuits: random.whole(2, 5),
    insulated_mm: 0,
    first: random.whole(0, 1),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** One size is right, no test is lost or won by a hair, and a known slip leads to another size on offer. */
function isClear(drawn: Case, practice: Practice): boolean {
  const sizes = sizesOffered(drawn, practice);
  const { chosen, factors, In } = factsOf(drawn, practice);
  if (!chosen || !sizes.some(({ size }) => size === chosen.size)) return false;
  const needed = tableCurrentNeeded(In, factors);
  const near = sizes.some((size) => Math.abs(tableOf(drawn, size, practice) / needed - 1) < 0.01);
  return !near && slipsOf(drawn, practice).length > 0;
}

const ratingsOf = ({ laid }: Case): TableRating[] => (laid === 'flat twin' ? flatTwinRatings() : methodRatings(laid));

/** The design current, the device, the factors and every size tried by its rule. */
function factsOf(drawn: Case, practice: Practice) {
  const Ib = ampsOf(drawn.P_W, drawn.U_V);
  const factors = factorsAt(drawn, practice);
  const counted = practice === 'na' ? 1.25 * Ib : Ib; // a load of three hours or more
  const In = nextStandardRating(practice, counted) ?? 0;
  const { chosen, trials } = chooseSize(askOf(drawn, Ib, In, factors, practice));
  return { Ib, counted, In, factors, chosen, trials };
}

function askOf(drawn: Case, Ib: number, In: number, factors: readonly Factor[], practice: Practice) {
  if (practice === 'iec') return fixedSizes(ratingsOf(drawn), { Ib, device: iecBreaker('B', In), factors });
  return branchSizes({
    Ib,
    continuous: true,
    device: ulBreaker(In),
    metal: 'copper',
    insulation_degC: fixedLimit.na,
    terminal_degC: 60,
    factors,
  });
}

/** The sizes a learner chooses from, thin to thick. */
function sizesOffered(drawn: Case, practice: Practice): TradeSize[] {
  const { trials } = factsOf(drawn, practice);
  return trials.map(({ size }) => size).slice(drawn.first, drawn.first + offered);
}

/** What the table gives a size before any factor [A]. */
function tableOf(drawn: Case, size: TradeSize, practice: Practice): number {
  if (practice === 'na') return ampacity(size.size, 'copper', fixedLimit.na)?.value ?? 0;
  return ratingsOf(drawn).find((row) => row.size.size === size.size)?.I ?? 0;
}

interface Slip {
  readonly size: TradeSize;
  readonly said: Said;
}

/** The size each known slip leads to, where it is on offer and not the right one. */
function slipsOf(drawn: Case, practice: Practice): Slip[] {
  const { chosen, factors, In, Ib } = factsOf(drawn, practice);
  const sizes = sizesOffered(drawn, practice);
  const C = factorProduct(factors);
  const withFactors = (some: readonly Factor[]) => chooseSize(askOf(drawn, Ib, In, some, practice)).chosen;
  const asIf = (value: number) => withFactors(factors.slice(0, 1).map((one) => ({ ...one, value })));
  const all: readonly (readonly [TradeSize | null, Said])[] = [
    [asIf(1 / C), multiplied(In, C)],
    ...(practice === 'iec' ? [[asIf(actingShare * C), overShare] as const] : []),
    [withFactors(factors.filter(({ symbol }) => symbol !== 'Ca')), noAmbient],
    [asIf(Math.max(1e-9, 1 - addedReductions(factors))), added],
  ];
  const found = all.flatMap(([size, said]) =>
    size && size.size !== chosen?.size && sizes.some((one) => one.size === size.size) ? [{ size, said }] : [],
  );
  return found.filter(({ size }, i) => found.findIndex((one) => one.size.size === size.size) === i);
}

const multiplied = (In: number, C: number): Said => ({
  id: 'M27',
  trueOf: `it suits a table current of ${amount(In * C, 3, 'A')}, which is the rating times the factors.`,
  ask: 'What do the factors leave of this size’s own table current?',
});
const noAmbient: Said = {
  id: 'M25',
  trueOf: 'this size would do in air at 30\u00A0°C.',
  ask: 'How much of the way to its limit is the cable before any current flows?',
};
const added: Said = {
  id: 'M26',
  trueOf: 'this size would be needed if the reductions were added up.',
  ask: 'By that rule, what would four reductions of 30\u00A0% each leave?',
};
const overShare: Said = {
  id: 'M37',
  trueOf: 'here the breaker’s rating is more than this size may carry, and less than 1.45 times as much.',
  ask: 'Which of a breaker’s two currents may be 1.45 times Iz: its rating, or the one at which it acts?',
};

/** What is said of a size that no known slip leads to. */
function saidOf(trial: SizeTrial): Said {
  const [first] = trial.rejections;
  if (!first)
    return {
      trueOf: 'this size would do.',
      whyNot: 'A thinner one on this list does as well, and the question asks for the thinnest.',
      ask: 'What do the factors leave of the next thinner size?',
    };
  return {
    trueOf: 'this size is too thin.',
    whyNot: bound(first.text),
    ask: 'What do the factors leave of this size’s own table current?',
  };
}

const law = formula(
  String.raw`I_\mathrm{b} \le I_\mathrm{n} \le I_\mathrm{z} = I_\mathrm{t}\,C_\mathrm{a}\,C_\mathrm{g}`,
  'I b is at most I n, and I n is at most I z, which is I t times C a times C g.',
);

function solutionOf(drawn: Case, text: string, practice: Practice) {
  const { Ib, counted, In, factors, chosen } = factsOf(drawn, practice);
  if (!chosen) throw new Error('a size is chosen');
  const It = tableOf(drawn, chosen, practice);
  const C = factorProduct(factors);
  const row = practice === 'iec' ? ratingsOf(drawn).find(({ size }) => size.size === chosen.size) : undefined;
  const source = row ?? ampacity(chosen.size, 'copper', fixedLimit.na);
  const sources = [...factors.map((one) => `${one.symbol}: ${citedWords(one)}`)];
  const A = (I: number) => quantity(amount(I, 3, 'A'));
  return [
    words`The load draws ${A(Ib)}.${practice === 'na' ? ` It lasts, so it counts as ${amount(counted, 3, 'A')}.` : ''} The next standard rating is ${quantity(given(In, 'A'))}.`,
    words`${law}`,
    words`The factors together are ${plainNumber(C, 3)}. So the table has to give ${A(tableCurrentNeeded(In, factors))}.`,
    words`${sizeName(chosen)} has ${quantity(given(It, 'A'))}, of which the factors leave ${A(It * C)}.`,
    words`So ${text}`,
    words`${source ? `It: ${citedWords(source)}. ` : ''}${sources.join('. ')}. ${checkYours}`,
    ...(practice === 'na'
      ? [
          words`Each cap is looked at in turn: derated ampacity, 60\u00A0°C terminals, and the greatest device for a small conductor. The leave to round the device up is not used.`,
        ]
      : [words`A breaker acts by 1.45 times its rating. So where In is at most Iz, I2 is at most 1.45 Iz as well.`]),
    words`The engine finds a cable alone in that air cooler than the table does. The table also allows for its neighbours, so the table's answer stands.`,
  ];
}

const smallConductors =
  'A small conductor has a greatest device: 15\u00A0A for 14\u00A0AWG, 20\u00A0A for 12 and 30\u00A0A for 10.';

const laidWords: Readonly<Record<Laid, string>> = {
  'flat twin': 'flat twin and earth, clipped to a surface',
  B2: 'a PVC cable of two loaded cores in conduit on a wall',
  E: 'a PVC cable of two loaded cores in free air',
};

/** A size on offer with what the table says of it. */
function optionText(drawn: Case, size: TradeSize, practice: Practice): string {
  const It = given(tableOf(drawn, size, practice), 'A');
  if (practice === 'iec') return `${sizeName(size)}: the table gives ${It}`;
  const terminals = ampacity(size.size, 'copper', 60)?.value ?? 0;
  return `${sizeName(size)}: ${It} at 90\u00A0°C, ${given(terminals, 'A')} at 60\u00A0°C`;
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { In, factors, chosen, trials, Ib } = factsOf(drawn, practice);
  if (!chosen) throw new Error('a size is chosen');
  const slips = slipsOf(drawn, practice);
  const options = sizesOffered(drawn, practice).map((size): ChooseOption => {
    const option = { id: `${size.size}`, text: optionText(drawn, size, practice) };
    if (size.size === chosen.size) return option;
    const trial = trials.find((one) => one.size.size === size.size) as SizeTrial;
    return { ...option, said: slips.find((slip) => slip.size.size === size.size)?.said ?? saidOf(trial) };
  });
  const text = `${sizeName(chosen)} is the thinnest that does.`;
  const T = quantity(temperatureText(drawn.ambient_degC, practice));
  const load = words`${drawn.load} of ${quantity(wattsText(drawn.P_W))} stands on ${quantity(given(drawn.U_V, 'V'))}. `;
  const cable = practice === 'iec' ? laidWords[drawn.laid] : 'copper with 90\u00A0°C insulation';
  const device =
    practice === 'iec'
      ? words`Its breaker is the next standard rating, ${quantity(given(In, 'A'))} of type B.`
      : words`It is on for more than three hours, so it counts for 125\u00A0%. Its breaker is ${quantity(given(In, 'A'))}, and the terminals are marked ${quantity(temperatureText(60, practice))}.`;
  return {
    kind: 'choose',
    stem: [
      [...load, ...device],
      words`The cable is ${cable}. It runs ${drawn.place}, where it is ${T}. ${companyOf(drawn, practice)}`,
      words`The factors are ${factorList(factors)}. ${practice === 'na' ? `${smallConductors} ` : ''}Which is the thinnest size that does?`,
    ],
    ask: practice === 'iec' ? 'Choose one size.' : 'Choose one size. Do not round the device up.',
    parts: [{ id: 'size', label: 'The size', options, right: `${chosen.size}` }],
    answer: { text },
    scenarios: [
      { name: 'this size alone, in that air', scenario: clippedRun(chosen, drawn.ambient_degC, Ib, practice) },
    ],
    hints: [
      words`First the load: watts over volts. Is it less than the breaker's rating?`,
      words`Divide the breaker's rating by the factors. What does that give?`,
      words`${practice === 'iec' ? 'Go down the list until the table gives as much.' : 'Go down the list until the table gives as much, and the terminals’ column carries the load as it counts.'}`,
    ],
    solution: solutionOf(drawn, text, practice),
    look: 'Let the factors act on the table current of the size you chose. Is the breaker’s rating left?',
    cautions: [whoDecides],
  };
}

/** How Q41 is drawn and built. */
export const sizeForLoadSpec: TemplateSpec<Case> = {
  id: 'Q41',
  version: 1,
  lesson: '3.1',
  kind: 'choose',
  title: 'From load to size',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['3.1 choose a size', '3.1 divide by factors'],
  misconceptions: ['M25', 'M26', 'M27', 'M37'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        ...{ load: 'A water heater', place: 'in a cabin roof', P_W: 4400, U_V: 230, laid: 'flat twin' },
        ...{ ambient_degC: 35, circuits: 3, insulated_mm: 0, first: 0 },
      },
    ],
    na: [
      {
        ...{ load: 'A storage heater', place: 'in a cabin roof', P_W: 4400, U_V: 240, laid: 'flat twin' },
        ...{ ambient_degC: 45, circuits: 4, insulated_mm: 0, first: 0 },
      },
    ],
  },
  build: built,
};

/** Q41: the thinnest size for a load, its device and its place. */
export const sizeForLoad = defineTemplate(sizeForLoadSpec);

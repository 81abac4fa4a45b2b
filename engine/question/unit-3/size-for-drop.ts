import { cableOf } from '../../cable/cable.ts';
import { fixedCable } from '../../cable/fixed-cable.ts';
import type { TradeSize } from '../../conductor/area-scale.ts';
import { ampacity } from '../../protection/ampacity.ts';
import { chooseSize, type SizeChoice, type SizeTrial } from '../../protection/choose-size.ts';
import { iecBreaker } from '../../protection/iec-breaker.ts';
import { branchSizes, dropFrom, fixedSizes } from '../../protection/size-asks.ts';
import { nextStandardRating } from '../../protection/standard-ratings.ts';
import { flatTwinRatings } from '../../protection/table-rating.ts';
import { ulBreaker } from '../../protection/ul-breaker.ts';
import { dropPerAmpereMetre } from '../../protection/volt-drop.ts';
import { kelvin } from '../../quantity.ts';
import { amount, given, percentText, temperatureText } from '../figures.ts';
import { toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { checkYours, whoDecides } from './cited-words.ts';
import { clippedRun, sizeName } from './fixed-runs.ts';
import { toldOhms } from './warm-conductors.ts';
import { voltsOf } from './watts.ts';

// Q46: the thinnest size that carries the device's rating and loses no more than a share of the volts.

interface Case {
  readonly load: string;
  readonly Ib_A: number;
  /** One way, in metres or feet. */
  readonly length: number;
  readonly percent: number;
  /** Where in the table the sizes on offer begin. */
  readonly first: number;
}

const loads = [
  'A farm pump',
  'A heater in a polytunnel',
  'A saw in a far joinery',
  'A hoist in a boatyard',
  'An oven in a bakery yard',
] as const;

/** Temperature at which the tables take such conductors [°C]. */
const table_degC = { iec: 70, na: 75 } as const satisfies Record<Practice, number>;

function drawnCase(random: Random, practice: Practice): Case | null {
  const drawn: Case = {
    load: random.pick(loads),
    Ib_A: random.whole(6, practice === 'iec' ? 31 : 24),
    length: practice === 'iec' ? random.whole(5, 60) : 5 * random.whole(4, 40),
    percent: random.pick([3, 5]),
    first: random.whole(0, 2),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** One size is right, a slip leads to another one, and no loss lies on the limit by a hair. */
function isClear(drawn: Case, practice: Practice): boolean {
  const { chosen, trials } = choiceOf(drawn, practice);
  if (!chosen) return false;
  const near = trials.some(({ drop }) => drop !== null && Math.abs((100 * drop.share) / drawn.percent - 1) < 0.04);
  const once = choiceOf(drawn, practice, 0.5).chosen;
  return !near && (once?.size !== chosen.size || byRating(trials)?.size !== chosen.size);
}

/** The thinnest size that meets the rule, whatever it loses. */
const byRating = (trials: readonly SizeTrial[]): TradeSize | undefined =>
  trials.find(({ rejections }) => rejections.every(({ id }) => id === 'drop'))?.size;

const offered = 4;

/** Sizes tried: four, with rows of the table thinner and thicker than they. */
function sizesOf({ first }: Case, practice: Practice): readonly TradeSize[] {
  const all = practice === 'iec' ? flatTwinRatings().map(({ size }) => size) : branchSizes(branch(1)).sizes;
  return all.slice(first, first + offered);
}

const branch = (Ib: number) => ({
  Ib,
  continuous: false,
  device: ulBreaker(nextStandardRating('na', Ib) ?? 15),
  metal: 'copper',
  insulation_degC: 90 as const,
  terminal_degC: 60 as const,
  factors: [],
});

type ToldOhms = ReturnType<typeof toldOhms>;
/** Ohms by a size's name, once they are worked out: a case is drawn many times over. */
const ohms = new Map<string, ToldOhms>();

/**
 * Volts lost for each ampere and metre [V/(A·m)]: printed, or by the conductor's own ohms where none is printed. As told: the
 * ohms of one conductor, to three figures.
 */
function ohmsOf(size: TradeSize, practice: Practice): ToldOhms {
  const known = ohms.get(size.name);
  if (known) return known;
  const printed = dropFrom(practice === 'iec' ? 'fixed' : 'conductor')(size);
  const cable = fixedCable(size);
  if (!cable) throw new Error(`no walls of ${size.name} are held`);
  const own = dropPerAmpereMetre(cableOf(cable).conductor, kelvin(table_degC[practice]));
  const told = toldOhms((printed ?? own) / 2, practice);
  ohms.set(size.name, told);
  return told;
}

/** Every size tried; `part` of the loss is counted, for a learner who counts the run once. */
function choiceOf(drawn: Case, practice: Practice, part = 1): SizeChoice {
  const { Ib_A: I, length, percent } = drawn;
  const rule =
    practice === 'iec'
      ? fixedSizes(flatTwinRatings(), { Ib: I, device: iecBreaker('B', deviceOf(drawn, practice)), factors: [] })
      : branchSizes(branch(I));
  const perAmpereMetre = (size: TradeSize) => 2 * ohmsOf(size, practice).R * part;
  const { L } = toldLength(length, practice);
  const drop = { I, length: L, U0: voltsOf(practice), share: percent / 100, perAmpereMetre };
  return chooseSize({ rule: rule.rule, sizes: sizesOf(drawn, practice), drop });
}

const deviceOf = ({ Ib_A }: Case, practice: Practice): number => nextStandardRating(practice, Ib_A) ?? 0;

const none = 'none';

function saidOf(trial: SizeTrial, drawn: Case, practice: Practice): Said {
  const { drop, rejections, size } = trial;
  const once = choiceOf(drawn, practice, 0.5).chosen;
  const lost = drop ? `${amount(100 * drop.share, 3, '%')} of the volts` : 'too much';
  if (rejections.length === 0)
    return {
      trueOf: `this size would do, and lose ${lost}.`,
      whyNot: 'A thinner one does as well, and the question asks for the thinnest.',
      ask: 'What does the next thinner size lose, and what may it carry?',
    };
  if (once?.size === size.size)
    return {
      id: 'M09',
      trueOf: `counted once, the run would lose ${drop ? amount(50 * drop.share, 3, '%') : 'half of that'}.`,
      ask: 'How often does the current pass the length of the run?',
    };
  if (rejections.every(({ id }) => id === 'drop'))
    return {
      trueOf: `this size carries the load, and loses ${lost}.`,
      whyNot: 'Big enough not to overheat is not yet big enough to work. The load gets what is left.',
      ask: 'How many volts may be lost along the whole run?',
    };
  return {
    trueOf: 'this size is too thin for the breaker.',
    whyNot: 'What the table gives a cable must be no less than the rating of its device.',
    ask: 'What may this size carry?',
  };
}

const milli: Said = {
  id: 'M43',
  trueOf: 'none would do if milli were left as it stands.',
  ask: 'How many millivolts make one volt?',
};
const kilo: Said = {
  ...milli,
  trueOf: 'none would do if the ohms were those of one foot.',
  whyNot: 'They are the ohms of 1\u00A0000\u00A0ft. Divide by a thousand.',
  ask: 'What part of a thousand feet is this run?',
};

const law = formula(String.raw`\Delta U = 2\,R'\,L\,I`, 'Delta U is two times R prime times L times I.');

/** What the table gives a size [A]: for a cable alone at 30 °C, or by the terminals' column. */
function tableOf(size: TradeSize, practice: Practice): number {
  if (practice === 'na') return ampacity(size.size, 'copper', 60)?.value ?? 0;
  return flatTwinRatings().find((row) => row.size.size === size.size)?.I ?? 0;
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { chosen, trials } = choiceOf(drawn, practice);
  const right = trials.find(({ size }) => size === chosen);
  if (!chosen || !right?.drop) throw new Error('a size is chosen');
  const { text: L, L: metres } = toldLength(drawn.length, practice);
  const U0 = voltsOf(practice);
  const In = deviceOf(drawn, practice);
  const most = (drawn.percent / 100) * U0;
  const textOf = (size: TradeSize) =>
    `${sizeName(size)}: ${given(tableOf(size, practice), 'A')}, each conductor ${ohmsOf(size, practice).text}`;
  const options: ChooseOption[] = trials.map((trial) => {
    const option = { id: `${trial.size.size}`, text: textOf(trial.size) };
    return trial === right ? option : { ...option, said: saidOf(trial, drawn, practice) };
  });
  options.push({ id: none, text: 'none of these sizes', said: practice === 'iec' ? milli : kilo });
  const text = `${sizeName(chosen)} is the thinnest that does.`;
  const thinner = trials[trials.indexOf(right) - 1];
  const A = quantity(given(drawn.Ib_A, 'A'));
  const percent = quantity(percentText(drawn.percent / 100));
  return {
    kind: 'choose',
    stem: [
      words`${drawn.load} takes ${A} at the end of ${quantity(L)} of cable, one way. The supply has ${quantity(given(U0, 'V'))}, and the breaker is rated ${quantity(given(In, 'A'))}.`,
      words`The cable runs alone, in air at ${quantity(temperatureText(30, practice))}. Each size is told with what its table lets it carry, and the ohms of one conductor at ${quantity(temperatureText(table_degC[practice], practice))}.`,
      words`${practice === 'na' ? `${smallConductors} ` : ''}No more than ${percent} of the volts may be lost. Which is the thinnest size that does?`,
    ],
    ask: 'Choose one. It has to pass both: the rating and the drop.',
    parts: [{ id: 'size', label: 'The size', options, right: `${chosen.size}` }],
    answer: { text },
    scenarios: [
      {
        name: 'this size along the run',
        scenario: { ...clippedRun(chosen, 30, drawn.Ib_A, practice), lead: { length_m: metres } },
      },
    ],
    hints: [
      words`First the rating: which sizes may carry what the breaker is rated for?`,
      words`How many volts may be lost along the run?`,
      words`${law}`,
    ],
    solution: [
      words`Of these, ${sizeName(byRating(trials) ?? chosen)} would do by rating alone.`,
      words`${percent} of ${quantity(given(U0, 'V'))} is ${quantity(amount(most, 3, 'V'))}. ${law}`,
      words`${sizeName(chosen)} loses ${quantity(amount(right.drop.U, 3, 'V'))}, which is ${quantity(amount(100 * right.drop.share, 3, '%'))}.`,
      ...(thinner?.drop
        ? [
            words`The next thinner size, ${sizeName(thinner.size)}, loses ${quantity(amount(100 * thinner.drop.share, 3, '%'))}, and may carry ${quantity(given(tableOf(thinner.size, practice), 'A'))}.`,
          ]
        : []),
      words`So ${text}`,
      words`${practice === 'iec' ? 'Currents: BS 7671, Table 4D5. Ohms: half of its mV/A/m, from memory.' : 'Currents: NFPA 70, Table 310.16 at 60\u00A0°C. Ohms: Chapter 9, Table 8; of thick gauges by the engine.'} ${checkYours}`,
    ],
    look: 'Two conductors times the length, the warm ohms and the current: is that no more than the volts allowed?',
    cautions: [whoDecides],
  };
}

const smallConductors =
  'A small conductor has a greatest device: 15\u00A0A for 14\u00A0AWG, 20\u00A0A for 12 and 30\u00A0A for 10.';

/** How Q46 is drawn and built. */
export const sizeForDropSpec: TemplateSpec<Case> = {
  id: 'Q46',
  version: 1,
  lesson: '3.2',
  kind: 'choose',
  title: 'Size for rating and drop',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['3.2 resize'],
  misconceptions: ['M09', 'M43'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: loads[0], Ib_A: 12, length: 40, percent: 3, first: 0 }],
    na: [{ load: loads[0], Ib_A: 12, length: 100, percent: 3, first: 0 }],
  },
  build: built,
};

/** Q46: the thinnest size that carries the load and keeps its volts. */
export const sizeForDrop = defineTemplate(sizeForDropSpec);

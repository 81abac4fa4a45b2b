import type { TradeSize } from '../conductor/area-scale.ts';
import type { RuleVerdict, TestStep } from './rule-steps.ts';
import { dropOf } from './volt-drop.ts';
import { type Adiabatic, energyTest, leastArea } from './withstand.ts';

/** A limit on voltage drop for the choice of size. */
export interface DropAsk {
  /** Current [A], one-way length [m], nominal volts [V] and the greatest share of them lost [1]. */
  readonly I: number;
  readonly length: number;
  readonly U0: number;
  readonly share: number;
  /** Volts lost for each ampere and metre in this size [V/(A·m)]; null where no figure is held. */
  readonly perAmpereMetre: (size: TradeSize) => number | null;
}

/** A short circuit that the size must stand. */
export interface ShortAsk {
  /** k of metal and insulation [A·s^½/m²]. */
  readonly k: number;
  /** A current [A] for a time [s]; or what a device lets through [A²s]. */
  readonly stress:
    | { readonly kind: 'time'; readonly I: number; readonly t: number }
    | { readonly kind: 'energy'; readonly I2t: number };
}

/** What a size is asked to meet. */
export interface SizeAsk {
  /** Sizes to try, in any order. */
  readonly sizes: readonly TradeSize[];
  /** The rule of the cable's kind, worked on a size: coordination, ampacity chain, or a cord rule. */
  readonly rule: (size: TradeSize) => RuleVerdict;
  readonly drop?: DropAsk;
  readonly short?: ShortAsk;
}

/** Why a size is not taken. */
export interface Rejection {
  /** The failed step of the rule, or `drop`, `short circuit`, `no rule`. */
  readonly id: string;
  /** In words and numbers. */
  readonly text: string;
}

/** One size tried. */
export interface SizeTrial {
  readonly size: TradeSize;
  readonly rule: RuleVerdict;
  /** Voltage drop and its share; null where none was asked for or no figure is held. */
  readonly drop: { readonly U: number; readonly share: number; readonly holds: boolean } | null;
  /** Least area for the short circuit [m²], and whether the size has it; null in `holds` where the formula does not decide. */
  readonly short: { readonly area: number; readonly holds: boolean | null; readonly range: Adiabatic['range'] } | null;
  readonly rejections: readonly Rejection[];
}

/** The choice, with every size that was tried. */
export interface SizeChoice {
  /** The smallest size that meets everything; null where none of them does. */
  readonly chosen: TradeSize | null;
  /** All sizes, thin to thick, those above the chosen one too. */
  readonly trials: readonly SizeTrial[];
}

/** Three figures, as a reader would write them. */
const figure = (x: number) => `${+x.toPrecision(3)}`;

/** Two numbers with as many figures as tell them apart, three at least. */
function apart(a: number, b: number): readonly [string, string] {
  for (let places = 3; places < 7; places++) {
    const [one, other] = [`${+a.toPrecision(places)}`, `${+b.toPrecision(places)}`];
    if (one !== other) return [one, other];
  }
  return [`${a}`, `${b}`];
}

function ruleRejections({ outcome, open, statements }: RuleVerdict): Rejection[] {
  if (outcome === 'no rule') return [{ id: 'no rule', text: statements[0]?.text ?? 'No rule covers this size.' }];
  return open.map((step) => ({ id: step.id, text: wordsOf(step) }));
}

function wordsOf({ left, right, unit, holds }: TestStep): string {
  if (holds === null) return `${left.symbol} or ${right.symbol} is not stated anywhere, so the test has no answer.`;
  const [more, most] = apart(left.value, right.value);
  return `${left.symbol} is ${more} ${unit}, more than ${right.symbol}, ${most} ${unit}.`;
}

function dropTrial(ask: DropAsk, size: TradeSize): SizeTrial['drop'] {
  const per = ask.perAmpereMetre(size);
  if (per === null) return null;
  const drop = dropOf(per, ask.I, ask.length, ask.U0);
  return { ...drop, holds: drop.share <= ask.share * (1 + 1e-9) };
}

function shortTrial({ k, stress }: ShortAsk, { area }: TradeSize): NonNullable<SizeTrial['short']> {
  if (stress.kind === 'energy') {
    const { holds, leastArea } = energyTest(k, area, stress.I2t);
    return { area: leastArea, holds, range: 'let-through' };
  }
  const { value, range, sound } = leastArea(k, stress.I, stress.t);
  return { area: value, holds: sound ? area >= value * (1 - 1e-9) : null, range };
}

function shortWords(needed: number, area: number): string {
  const [least, has] = apart(needed * 1e6, area * 1e6);
  return `A short circuit needs ${least} mm²; this has ${has} mm².`;
}

function trial({ rule, drop, short }: SizeAsk, size: TradeSize): SizeTrial {
  const verdict = rule(size);
  const volts = drop ? dropTrial(drop, size) : null;
  const stands = short ? shortTrial(short, size) : null;
  const rejections = ruleRejections(verdict);
  if (drop && !volts) rejections.push({ id: 'drop', text: 'No figure of voltage drop is held for this size.' });
  if (drop && volts && !volts.holds)
    rejections.push({
      id: 'drop',
      text: `It loses ${figure(volts.U)} V, ${figure(100 * volts.share)} % of ${drop.U0} V; ${figure(100 * drop.share)} % is the most.`,
    });
  if (stands?.holds === false) rejections.push({ id: 'short circuit', text: shortWords(stands.area, size.area) });
  return { size, rule: verdict, drop: volts, short: stands, rejections };
}

/**
 * The smallest of `sizes` that meets the rule of its kind, the limit on voltage drop and the short circuit, with every size
 * that was tried and each reason against it. A short circuit below 0.1 s told by its time, or above 5 s, rejects nothing:
 * the formula does not decide there.
 */
export function chooseSize(ask: SizeAsk): SizeChoice {
  const trials = [...ask.sizes].sort((a, b) => a.area - b.area).map((size) => trial(ask, size));
  return { chosen: trials.find(({ rejections }) => rejections.length === 0)?.size ?? null, trials };
}

import type { Statement } from '../heating/validity.ts';
import type { Cited } from './cited.ts';

/** One side of a test: '20 A, In'. */
export interface Side {
  readonly symbol: string;
  readonly value: number;
}

/** A step of a rule that gives a number: given, read from a table, or worked out. */
export interface ValueStep extends Cited {
  readonly kind: 'value';
  readonly id: string;
  readonly symbol: string;
  /** What it is, as a phrase: 'what the cable may carry here'. */
  readonly words: string;
  /** How it comes about, in symbols: 'It · Ca · Cg'; '' where it is given. */
  readonly formula: string;
  readonly value: number;
  readonly unit: string;
}

/** A step of a rule that asks whether `left` is at most `right`. */
export interface TestStep extends Cited {
  readonly kind: 'test';
  readonly id: string;
  /** What is asked, as a phrase: 'the device carries the load'. */
  readonly words: string;
  readonly left: Side;
  readonly right: Side;
  readonly unit: string;
  /** Null where a standard is silent, so that nothing is shown either way. */
  readonly holds: boolean | null;
  /** True where the step is shown beside the verdict and does not enter it. */
  readonly aside: boolean;
}

/** One step of a rule, to be shown one by one. */
export type RuleStep = ValueStep | TestStep;

/**
 * What a rule says of a case. `met`: every test holds. `not met`: one fails. `not shown`: none fails, and one has no answer.
 * `no rule`: the rule does not cover such a thing.
 */
export type RuleOutcome = 'met' | 'not met' | 'not shown' | 'no rule';

/** A rule worked through on a case. */
export interface RuleVerdict {
  readonly rule: Cited & { readonly name: string };
  readonly outcome: RuleOutcome;
  readonly steps: readonly RuleStep[];
  /** Tests that fail or have no answer, in the order of the steps. */
  readonly open: readonly TestStep[];
  /** How far it holds, and why it may differ from other answers. */
  readonly statements: readonly Statement[];
}

/** A given or worked number as a step. */
export function valueStep(
  id: string,
  symbol: string,
  words: string,
  value: number,
  cited: Cited,
  formula = '',
  unit = 'A',
): ValueStep {
  const { source, where, confidence } = cited;
  return { kind: 'value', id, symbol, words, formula, value, unit, source, where, confidence };
}

/** Sums of decimals such as 1.45 · 20 may miss by their last bit; a test is not lost by that. */
const rounding = 1e-9;

/** Whether `left` is at most `right`, as a step; a side that is null has no answer. */
export function testStep(
  id: string,
  words: string,
  left: readonly [string, number | null],
  right: readonly [string, number | null],
  cited: Cited,
  { aside = false, unit = 'A' } = {},
): TestStep {
  const side = ([symbol, value]: readonly [string, number | null]) => ({ symbol, value: value ?? Number.NaN });
  const [l, r] = [side(left), side(right)];
  const silent = Number.isNaN(l.value) || Number.isNaN(r.value);
  const { source, where, confidence } = cited;
  const holds = silent ? null : l.value <= r.value * (1 + rounding);
  return { kind: 'test', id, words, left: l, right: r, unit, holds, aside, source, where, confidence };
}

/** A verdict from its steps. */
export function verdictOf(
  rule: RuleVerdict['rule'],
  steps: readonly RuleStep[],
  statements: readonly Statement[] = [],
): RuleVerdict {
  const open = steps.filter((step): step is TestStep => step.kind === 'test' && !step.aside && step.holds !== true);
  const outcome = open.length === 0 ? 'met' : open.some(({ holds }) => holds === false) ? 'not met' : 'not shown';
  return { rule, outcome, steps, open, statements };
}

/** A verdict that there is no rule for such a thing; `statements` say why. */
export const noRule = (rule: RuleVerdict['rule'], statements: readonly Statement[]): RuleVerdict => ({
  rule,
  outcome: 'no rule',
  steps: [],
  open: [],
  statements,
});

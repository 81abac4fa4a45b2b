import { within } from '../../errors.ts';
import type { Measured } from '../measured.ts';
import { checkModel, correlationAt, type Input, isCorrelated, type Model, resultAt } from './model.ts';
import { type SecondOrder, secondOrderOf } from './second-order.ts';
import { sensitivityOf } from './sensitivity.ts';
import { studentQuantile } from './student.ts';

/** One row of an uncertainty budget. */
export interface BudgetLine {
  readonly name: string;
  readonly unit: string;
  readonly value: number;
  readonly u: number;
  readonly dof: number;
  /** ∂f/∂x, in units of the result per unit of the input. */
  readonly sensitivity: number;
  /** |∂f/∂x| · u, in the unit of the result. */
  readonly contribution: number;
  /** Part of the result's variance; the parts add to 1. One that a correlation takes back is below 0. */
  readonly share: number;
}

/** A result with its uncertainty, and where it comes from. */
export interface Uncertainty extends Measured {
  readonly dof: number;
  readonly budget: readonly BudgetLine[];
  /** u over the size of the value; infinite where the value is 0. */
  readonly relative: number;
  /** The next order of the law; null where it cannot be had. */
  readonly secondOrder: SecondOrder | null;
  /** Where the law of propagation does not quite hold, in sentences; none where it does. */
  readonly limits: readonly string[];
}

/** A half-width that holds the true value at a stated probability. */
export interface Expanded {
  readonly share: number;
  readonly k: number;
  /** k · u, in the unit of the result. */
  readonly U: number;
}

/**
 * Effective degrees of freedom u⁴ / Σ (ci ui)⁴/νi (Welch and Satterthwaite; JCGM 100, G.4.1) of `u` from `contributions`.
 * The formula is for independent parts.
 */
export function effectiveDof(u: number, contributions: readonly { contribution: number; dof: number }[]): number {
  const sum = contributions.reduce((total, { contribution, dof }) => total + contribution ** 4 / dof, 0);
  return sum > 0 ? u ** 4 / sum : Number.POSITIVE_INFINITY;
}

/** Degrees of freedom of the result: by the formula, and never above the fewest of any correlated input, which it does not know. */
function dofOf(of: Model, u: number, budget: readonly BudgetLine[]): number {
  const fewest = budget.filter((line, i) => line.contribution > 0 && isCorrelated(of, i)).map(({ dof }) => dof);
  return Math.max(1, Math.min(effectiveDof(u, budget), ...fewest));
}

function limitsOf(of: Model, dof: number, second: SecondOrder | null): string[] {
  const told: string[] = [];
  if (second?.matters)
    told.push(
      'The model bends within its uncertainties, so the straight-line law is not good enough: use the Monte Carlo check.',
    );
  if (!second && !of.correlation) told.push('The model gives no number close to its inputs, so its bend is not known.');
  if (of.correlation) told.push('Inputs are correlated, so the bend of the model was not looked at.');
  if (of.correlation && Number.isFinite(dof))
    told.push('Inputs are correlated, so the degrees of freedom are the fewest of theirs at most.');
  return told;
}

function lineOf(
  { name, unit, value, u, dof = Number.POSITIVE_INFINITY }: Input,
  sensitivity: number,
): Omit<BudgetLine, 'share'> {
  return { name, unit, value, u, dof, sensitivity, contribution: Math.abs(sensitivity) * u };
}

/**
 * Combined standard uncertainty of a model's result by the law of propagation, u² = Σ Σ ci cj rij ui uj (JCGM 100, 5.1.2 and
 * 5.2.2), with its budget and effective degrees of freedom. The law is of the first order: `secondOrder` and `limits` say
 * where that is not good enough.
 */
export function propagate(of: Model): Uncertainty {
  checkModel(of);
  const lines = of.inputs.map((input, i) => lineOf(input, sensitivityOf(of, i)));
  const parts = lines.map(({ sensitivity, u }) => sensitivity * u);
  const covariances = parts.map((part, i) =>
    parts.reduce((sum, other, j) => sum + part * other * correlationAt(of, i, j), 0),
  );
  const variance = Math.max(
    0,
    covariances.reduce((sum, v) => sum + v, 0),
  );
  const budget = lines.map((line, i) => ({ ...line, share: variance > 0 ? (covariances[i] as number) / variance : 0 }));
  const [value, u] = [resultAt(of), Math.sqrt(variance)];
  const dof = dofOf(of, u, budget);
  const secondOrder = secondOrderOf(of, u);
  return { value, u, dof, budget, relative: u / Math.abs(value), secondOrder, limits: limitsOf(of, dof, secondOrder) };
}

/**
 * Coverage factor and expanded uncertainty at probability `share` (0.5 to 0.9999): Student's quantile at its degrees of freedom
 * (JCGM 100, G.3 and G.6.4). It takes the result for normal; one rectangular part that outweighs all others is not.
 */
export function expanded({ u, dof = Number.POSITIVE_INFINITY }: Measured, share = 0.95): Expanded {
  within('coverage probability', share, [0.5, 0.9999], '');
  const k = studentQuantile(share, dof);
  return { share, k, U: k * u };
}

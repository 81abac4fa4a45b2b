import type { FitParameterId, FitValues } from './parameters.ts';
import type { Residuals } from './residuals.ts';
import type { SearchEnd } from './search.ts';

/** One parameter as a fit leaves it. SI. */
export interface Fitted {
  readonly id: FitParameterId;
  /** In words, as the subject of a sentence; its unit. */
  readonly name: string;
  readonly unit: string;
  readonly start: number;
  readonly bounds: readonly [least: number, most: number];
  readonly value: number;
  /** `held`: at its start, since the log does not tell it. */
  readonly state: 'fitted' | 'at bound' | 'held';
  /** Standard uncertainty, and the interval that holds the truth 95 times of 100 if the model is right, cut at the bounds; null unless fitted. */
  readonly u: number | null;
  readonly interval: readonly [low: number, high: number] | null;
  /**
   * How far it goes astray if what is taken as known is off by one standard uncertainty: the plastics' thermal resistivity and
   * heat capacity, and instruments' own errors where they were told. The interval, which takes the model as right, does not hold this; the wide interval does. Null unless fitted.
   */
  readonly uModel: number | null;
  readonly wide: readonly [low: number, high: number] | null;
}

/** Parameters that the log does not tell, or not apart. */
export interface Untold {
  /** The parameter that is held; null where both stay free, their intervals being of use or the log needing both. */
  readonly held: FitParameterId | null;
  /** Those it cannot be told from; empty where it moves nothing, or too little, on its own. */
  readonly from: readonly FitParameterId[];
  readonly why: 'moves nothing' | 'interval wider than its bounds' | 'correlated' | 'singular';
}

/** A sentence for the reader. */
export interface FitWords {
  readonly id: string;
  readonly text: string;
}

/** How a fit ended: by its search, or before it could begin. */
export type FitEnd = SearchEnd | 'too few readings' | 'melts';

/** A fit of the heat model to a log. */
export interface LogFit {
  readonly ended: FitEnd;
  /** Runs of the model, and steps of the search, over all its rounds. */
  readonly evaluations: number;
  readonly iterations: number;
  /** The parameters that were to be freed, in order. */
  readonly parameters: readonly Fitted[];
  /** All values of the model, fitted or not. */
  readonly values: FitValues;
  /** Σ((measured − model)/u)² at the start and at the end, over `readings` means of rows; degrees of freedom left. */
  readonly chiSquareBefore: number;
  readonly chiSquare: number;
  readonly readings: number;
  readonly dof: number;
  /** Factor (≥ 1) by which uncertainties were widened, √(χ²/dof) where that is above 1: the readings scatter more than their u. */
  readonly widened: number;
  /** Covariance with the widening in it, and correlation, of those with state `fitted`, in the order of `of`. */
  readonly of: readonly FitParameterId[];
  readonly covariance: readonly (readonly number[])[];
  readonly correlation: readonly (readonly number[])[];
  readonly untold: readonly Untold[];
  /** On every row of the log, not on the means that were fitted. */
  readonly residuals: readonly Residuals[];
  /** Rows of the log, and the groups they were put into for the search. */
  readonly rows: number;
  readonly groups: number;
  readonly words: readonly FitWords[];
}

/** Where a fit is. */
export interface FitProgress {
  readonly round: number;
  readonly iteration: number;
  readonly evaluations: number;
  readonly chiSquare: number;
}

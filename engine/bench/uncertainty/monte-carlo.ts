import { within } from '../../errors.ts';
import type { Measured } from '../measured.ts';
import { drawsOf } from './draws.ts';
import { toleranceOf } from './figures.ts';
import { checkModel, type Model } from './model.ts';
import { expanded, propagate } from './propagate.ts';

/** An interval of possible results, in their unit. */
export interface CoverageInterval {
  readonly low: number;
  readonly high: number;
}

/** What a Monte Carlo run says of a model's result (JCGM 101, 7.6 and 7.7). */
export interface Propagated extends Measured {
  readonly share: number;
  /** As much left out below as above. */
  readonly symmetric: CoverageInterval;
  readonly shortest: CoverageInterval;
  readonly trials: number;
  /** Whether value, u and both ends had settled to the tolerance before the trials ran out. */
  readonly settled: boolean;
}

/** What a Monte Carlo run may be asked for. */
export interface Trials {
  /** Any text: the same one gives the same draws. */
  readonly seed: string;
  /** Coverage probability, 0.5 to 0.999; 0.95 unless given. */
  readonly share?: number;
  /** Most trials, 20 000 to 10 million; a million unless given. */
  readonly most?: number;
  /** Significant figures of u that must settle: 1 or 2; 2 unless given. */
  readonly figures?: 1 | 2;
  /** Part of the tolerance that must be reached; 1 unless given, 1/5 for a check (JCGM 101, 8.2). */
  readonly part?: number;
}

const batch = 10_000;

/** Mean and standard deviation of results. */
function momentsOf(y: Float64Array): { value: number; u: number } {
  const pivot = y[0] as number;
  const value = pivot + y.reduce((sum, v) => sum + (v - pivot), 0) / y.length;
  const square = y.reduce((sum, v) => sum + (v - value) ** 2, 0);
  return { value, u: Math.sqrt(square / (y.length - 1)) };
}

/** The coverage interval that leaves out as much below as above, of results in rising order (JCGM 101, 7.7.1). */
function symmetricOf(y: Float64Array, share: number): CoverageInterval {
  const q = Math.round(share * y.length);
  const r = Math.floor((y.length - q) / 2); // counted from 1
  return { low: y[r - 1] as number, high: y[r + q - 1] as number };
}

/** The shortest interval that holds the share of results in rising order (JCGM 101, 7.7.2). */
function shortestOf(y: Float64Array, share: number): CoverageInterval {
  const q = Math.round(share * y.length);
  let best = 0;
  for (let r = 1; r + q < y.length; r++)
    if ((y[r + q] as number) - (y[r] as number) < (y[best + q] as number) - (y[best] as number)) best = r;
  return { low: y[best] as number, high: y[best + q] as number };
}

/** Results of one batch of trials, in rising order. */
function batchOf(f: Model['f'], draw: () => readonly number[]): Float64Array {
  const y = Float64Array.from({ length: batch }, () => f(draw()));
  const broken = y.findIndex((v) => !Number.isFinite(v));
  within('result of a trial', broken < 0 ? 0 : (y[broken] as number), [-Number.MAX_VALUE, Number.MAX_VALUE], '');
  return y.sort();
}

/** What must settle, of one batch: value, u and the ends of the symmetric interval. */
function readingsOf(y: Float64Array, share: number): number[] {
  const { value, u } = momentsOf(y);
  const { low, high } = symmetricOf(y, share);
  return [value, u, low, high];
}

/** Twice the standard deviation of the batches' mean of one reading. */
function doubt(of: readonly (readonly number[])[], column: number): number {
  const n = of.length;
  const mean = of.reduce((sum, row) => sum + (row[column] as number), 0) / n;
  const square = of.reduce((sum, row) => sum + ((row[column] as number) - mean) ** 2, 0);
  return 2 * Math.sqrt(square / (n * (n - 1)));
}

/** Standard deviation over all batches so far, from theirs. */
function spreadOf(of: readonly (readonly number[])[]): number {
  const mean = of.reduce((sum, row) => sum + (row[0] as number), 0) / of.length;
  const square = of.reduce((sum, row) => sum + (row[1] as number) ** 2 + ((row[0] as number) - mean) ** 2, 0);
  return Math.sqrt(square / of.length);
}

/**
 * Result, uncertainty and coverage intervals of a model by drawing its inputs (JCGM 101): batches of 10 000 until twice the
 * doubt of value, u and both ends is within the numerical tolerance of u (7.9), or the trials run out. Few batches prove
 * little, so nothing counts as settled before ten. The same seed gives the same figures.
 */
export function monteCarlo(of: Model, { seed, share = 0.95, most = 1e6, figures = 2, part = 1 }: Trials): Propagated {
  checkModel(of);
  within('coverage probability', share, [0.5, 0.999], '');
  within('most trials', most, [2 * batch, 1e7], '');
  const draw = drawsOf(of, seed);
  const batches: Float64Array[] = [];
  const readings: number[][] = [];
  const settled = () =>
    batches.length >= 10 &&
    [0, 1, 2, 3].every((column) => doubt(readings, column) <= part * toleranceOf(spreadOf(readings), figures));
  while ((batches.length + 1) * batch <= most && !settled()) {
    const y = batchOf(of.f, draw);
    batches.push(y);
    readings.push(readingsOf(y, share));
  }
  const y = new Float64Array(batches.length * batch);
  batches.forEach((values, i) => void y.set(values, i * batch));
  y.sort();
  const intervals = { symmetric: symmetricOf(y, share), shortest: shortestOf(y, share) };
  return { ...momentsOf(y), share, ...intervals, trials: y.length, settled: settled() };
}

/** The law of propagation held against a Monte Carlo run of the same model. */
export interface Checked {
  readonly byTrials: Propagated;
  /** value ± k·u of the law. */
  readonly byLaw: CoverageInterval;
  /** The numerical tolerance δ, in the unit of the result. */
  readonly tolerance: number;
  /** How far the lower ends of the two intervals lie apart, and the upper ones. */
  readonly apart: { readonly low: number; readonly high: number };
  /** Whether both are within the tolerance: then the law is good enough for this model. */
  readonly agree: boolean;
}

/**
 * Whether the law of propagation is good enough for a model: both ends of its interval must lie within δ, half a unit of the
 * last of `figures` figures of u, of those by Monte Carlo (JCGM 101, clause 8). The trials settle to a fifth of δ where they
 * can; where `byTrials.settled` is false, chance may have decided.
 */
export function checkByTrials(of: Model, asked: Trials): Checked {
  const law = propagate(of);
  const byTrials = monteCarlo(of, { part: 0.2, ...asked });
  const { U } = expanded(law, byTrials.share);
  const byLaw = { low: law.value - U, high: law.value + U };
  const tolerance = toleranceOf(byTrials.u, asked.figures);
  const { low, high } = byTrials.symmetric;
  const apart = { low: Math.abs(byLaw.low - low), high: Math.abs(byLaw.high - high) };
  return { byTrials, byLaw, tolerance, apart, agree: apart.low <= tolerance && apart.high <= tolerance };
}

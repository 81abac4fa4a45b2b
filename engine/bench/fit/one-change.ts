import { withinStudent } from '../uncertainty/student.ts';
import { type FitProblem, fitLog } from './fit.ts';
import type { FitParameterId } from './parameters.ts';
import type { FitProgress, LogFit } from './result.ts';

/** The refit of one parameter alone. */
export interface OneChange {
  readonly id: FitParameterId;
  readonly fit: LogFit;
  /** Share of chi-square that the change takes away, 0 to 1. */
  readonly explains: number;
  /**
   * Change of Akaike's criterion N ln(χ²/N) + 2p, whose scatter is taken from the log itself; below −2 the change pays.
   */
  readonly deltaAIC: number;
  /** F of one parameter more, and the chance of as great an F if the change were nothing. */
  readonly F: number;
  readonly p: number;
  /** Whether the change is worth making: p below one in a hundred, and the log tells the parameter. */
  readonly pays: boolean;
}

/** The single changes a refit may make, and say so: surface factor, contact, probe offset or area; never two at once. */
export const singleChangeIds = ['surface', 'contact', 'probeOffset', 'area'] as const satisfies FitParameterId[];

/** Refits one parameter alone and tells what that explains of the log. */
export function fitOne(
  problem: Omit<FitProblem, 'free'>,
  id: FitParameterId,
  onStep?: (progress: FitProgress) => boolean | undefined,
): OneChange {
  const fit = fitLog({ ...problem, free: [id] }, onStep);
  const { chiSquareBefore: before, chiSquare: after, readings, dof } = fit;
  const F = Math.max(0, (before - after) / (after / dof));
  const p = dof >= 1 ? 1 - withinStudent(Math.sqrt(F), dof) : Number.NaN;
  return {
    id,
    fit,
    explains: 1 - after / before,
    deltaAIC: readings * Math.log(after / before) + 2,
    F,
    p,
    pays: p < 0.01 && fit.of.length > 0,
  };
}

/** Every single change in turn, the one that explains the log best first. */
export function singleChanges(
  problem: Omit<FitProblem, 'free'>,
  ids: readonly FitParameterId[] = singleChangeIds,
  onStep?: (progress: FitProgress) => boolean | undefined,
): OneChange[] {
  return ids.map((id) => fitOne(problem, id, onStep)).sort((a, b) => a.deltaAIC - b.deltaAIC);
}

import type { FitParameterId, FitValues } from '#engine';
import type { Beside, FitAnswer, FitJob, FitReport, FitStage, LogQuestion } from '../workers/fit-work.ts';
import { done, type Following, type Work } from './work.ts';

/** A log beside its prediction, worked out in a worker; with some values of the case replaced, where they are given. */
export async function besideInWorker(
  question: LogQuestion,
  values: Partial<FitValues> = {},
  following: Following<FitStage> = {},
): Promise<Beside> {
  const answer = await done(work, { kind: 'beside', question, values }, following);
  return (answer as { beside: Beside }).beside;
}

/** A fit of the case to a log, worked out in a worker. */
export async function fitInWorker(
  question: LogQuestion,
  free: readonly FitParameterId[],
  following: Following<FitStage> = {},
): Promise<FitReport> {
  const answer = await done(work, { kind: 'fit', question, free }, following);
  return (answer as { report: FitReport }).report;
}

const work: Work<FitJob, FitStage, FitAnswer> = {
  start: () => new Worker(new URL('../workers/fit.ts', import.meta.url), { type: 'module' }),
  async here(job, pause) {
    const { fitWork } = await import('../workers/fit-work.ts');
    return fitWork(job, pause);
  },
};

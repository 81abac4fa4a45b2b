import {
  type Agreement,
  besideLog,
  type CompareQuestion,
  compareWithLog,
  type Difference,
  differenceAtLastPlateau,
  type FitParameterId,
  type FitProgress,
  type FitValues,
  fitAndJudge,
  fitOne,
  fitting,
  type HeldBack,
  type LogBeside,
  type LogFit,
  type NotJudged,
  type OneChange,
  type PlateauMeans,
  plateauMeans,
  singleChangeIds,
} from '#engine';
import type { Pause } from '../lib/work.ts';

/** A case, a log, and how well its columns are known. */
export type LogQuestion = Pick<CompareQuestion, 'scenario' | 'log' | 'u'>;

/** What the worker is asked: a log beside its prediction, or a fit. */
export type FitJob =
  | { readonly kind: 'beside'; readonly question: LogQuestion; readonly values?: Partial<FitValues> }
  | { readonly kind: 'fit'; readonly question: LogQuestion; readonly free: readonly FitParameterId[] };

/** A log beside its prediction; null where the log cannot drive the model. */
export interface Beside {
  readonly curves: LogBeside | null;
  readonly agreements: readonly Agreement[] | null;
  readonly plateaus: readonly PlateauMeans[];
}

/** A fit with what is told of it. */
export interface FitReport {
  readonly fit: LogFit;
  /** The log beside what the fit makes of the case. */
  readonly beside: Beside;
  readonly heldBack: HeldBack | NotJudged;
  /** The single changes, the one that explains the log best first. */
  readonly changes: readonly OneChange[];
  /** Why resistance and sheath probe differ, by the fit's values. */
  readonly difference: Difference | null;
}

export type FitAnswer = { readonly beside: Beside } | { readonly report: FitReport };

/** Where a fit is: the part that is being done, and steps of its search. */
export interface FitStage {
  readonly part: 'fit' | 'held back' | 'changes' | 'compare';
  readonly steps: number;
}

/** Does a job; `pause` hears after each step of the search where it is. */
export async function fitWork(job: FitJob, pause: Pause<FitStage>): Promise<FitAnswer> {
  if (job.kind === 'beside') return { beside: besideOf(job.question, job.values) };
  return { report: await reportOf(job.question, job.free, pause) };
}

function besideOf(question: LogQuestion, values: Partial<FitValues> = {}): Beside {
  const asked = { ...question, values };
  return { curves: besideLog(asked), agreements: compareWithLog(asked), plateaus: plateauMeans(question) };
}

async function reportOf(
  question: LogQuestion,
  free: readonly FitParameterId[],
  pause: Pause<FitStage>,
): Promise<FitReport> {
  const fit = await inSteps(fitting({ ...question, free }), pause);
  await pause({ part: 'held back', steps: 0 });
  const heldBack = fitAndJudge({ ...question, free });
  const changes: OneChange[] = [];
  for (const id of singleChangeIds) {
    await pause({ part: 'changes', steps: changes.length });
    changes.push(fitOne(question, id));
  }
  await pause({ part: 'compare', steps: 0 });
  const { values } = fit;
  return {
    fit,
    heldBack,
    changes: changes.sort((a, b) => a.deltaAIC - b.deltaAIC),
    beside: besideOf(question, values),
    difference: differenceAtLastPlateau({ ...question, values }),
  };
}

/** A fit, with a pause after each step of its search. */
async function inSteps(
  steps: Generator<FitProgress, LogFit, boolean | undefined>,
  pause: Pause<FitStage>,
): Promise<LogFit> {
  let next = steps.next();
  for (let count = 1; !next.done; count++) {
    await pause({ part: 'fit', steps: count });
    next = steps.next();
  }
  return next.value;
}

// Reads logs away from the page, so that it stays at hand. A job is ended by ending the worker.
import type { GuessOptions, LogMapping, ReadLog } from '#engine';
import { answering } from '../lib/work.ts';
import { arraysOf, type LogSource, logWork } from './readings-work.ts';

/** What the worker is asked. */
export type LogJob =
  | { readonly kind: 'guess'; readonly source: LogSource; readonly options: GuessOptions }
  | { readonly kind: 'read'; readonly source: LogSource; readonly mapping: LogMapping }
  | { readonly kind: 'take'; readonly source: LogSource; readonly mapping: LogMapping; readonly most: number };

/** What was asked for. */
export type LogAnswer = { readonly mapping: LogMapping } | { readonly result: ReadLog } | { readonly taken: TakenLog };

/** A log as it is kept: thinned where it is long, and written in our own columns. */
export interface TakenLog {
  readonly result: ReadLog;
  readonly csv: string;
  /** Rows that were read, and every how many of them one is in the log. */
  readonly rows: number;
  readonly every: number;
}

const chunk = 1 << 21;

answering<LogJob, number, LogAnswer>(
  (job, pause) => logWork(job, chunk, pause),
  (answer) => {
    if ('mapping' in answer) return [];
    return arraysOf('taken' in answer ? answer.taken.result : answer.result);
  },
);

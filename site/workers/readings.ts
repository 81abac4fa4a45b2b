// Reads logs away from the page, so that it stays at hand. A job is ended by ending the worker.
import type { GuessOptions, LogMapping, ReadLog } from '#engine';
import { answering } from '../lib/work.ts';
import { arraysOf, type LogSource, logWork } from './readings-work.ts';

/** What the worker is asked. */
export type LogJob =
  | { readonly kind: 'guess'; readonly source: LogSource; readonly options: GuessOptions }
  | { readonly kind: 'read'; readonly source: LogSource; readonly mapping: LogMapping };

/** What was asked for. */
export type LogAnswer = { readonly mapping: LogMapping } | { readonly result: ReadLog };

const chunk = 1 << 21;

answering<LogJob, number, LogAnswer>(
  (job, pause) => logWork(job, chunk, pause),
  (answer) => ('result' in answer ? arraysOf(answer.result) : []),
);

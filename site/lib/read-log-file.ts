import type { GuessOptions, LogMapping, ReadLog } from '#engine';
import type { LogAnswer, LogJob, TakenLog } from '../workers/readings.ts';
import type { LogSource } from '../workers/readings-work.ts';
import { done, type Following, type Work } from './work.ts';

/** What a file of readings seems to be, worked out in a worker. */
export async function guessLogFile(
  source: LogSource,
  options: GuessOptions = {},
  following: Following = {},
): Promise<LogMapping> {
  const answer = await done(work, { kind: 'guess', source, options }, following);
  return (answer as { mapping: LogMapping }).mapping;
}

/** Reads a file of readings by a mapping in a worker; the columns are handed over, not copied. */
export async function readLogFile(source: LogSource, mapping: LogMapping, following: Following = {}): Promise<ReadLog> {
  const answer = await done(work, { kind: 'read', source, mapping }, following);
  return (answer as { result: ReadLog }).result;
}

/** Reads a file as `readLogFile` does, thinned to about `most` rows, and writes what is left in our own columns. */
export async function takeLogFile(
  source: LogSource,
  mapping: LogMapping,
  most: number,
  following: Following = {},
): Promise<TakenLog> {
  const answer = await done(work, { kind: 'take', source, mapping, most }, following);
  return (answer as { taken: TakenLog }).taken;
}

/** Bytes of a slice on the page: some milliseconds of work. */
const slice = 1 << 15;

const work: Work<LogJob, number, LogAnswer> = {
  start: () => new Worker(new URL('../workers/readings.ts', import.meta.url), { type: 'module' }),
  async here(job, pause) {
    const { logWork } = await import('../workers/readings-work.ts');
    return logWork(job, slice, pause);
  },
};

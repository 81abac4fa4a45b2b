// Reads logs away from the page, so that it stays at hand. A job is ended by ending the worker.
import type { GuessOptions, LogMapping, ReadLog } from '#engine';
import { arraysOf, guessFile, type LogSource, readFile } from './readings-work.ts';

/** What the worker is asked. */
export type LogJob =
  | { readonly kind: 'guess'; readonly source: LogSource; readonly options: GuessOptions }
  | { readonly kind: 'read'; readonly source: LogSource; readonly mapping: LogMapping };

/** What it answers: how far it is, then what was asked for, or why not. */
export type LogAnswer =
  | { readonly progress: number }
  | { readonly mapping: LogMapping }
  | { readonly result: ReadLog }
  | { readonly failed: string };

const chunk = 1 << 21;

/** The worker's own side of the line; the page's types know no other. */
const line = globalThis as unknown as {
  onmessage: ((event: MessageEvent<LogJob>) => void) | null;
  postMessage(answer: LogAnswer, transfer: ArrayBuffer[]): void;
};

line.onmessage = async ({ data: job }) => {
  const pause = async (progress: number) => line.postMessage({ progress }, []);
  try {
    if (job.kind === 'guess') line.postMessage({ mapping: await guessFile(job.source, job.options, chunk, pause) }, []);
    else {
      const result = await readFile(job.source, job.mapping, chunk, pause);
      line.postMessage({ result }, arraysOf(result));
    }
  } catch (error) {
    line.postMessage({ failed: String(error) }, []);
  }
};

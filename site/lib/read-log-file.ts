import type { GuessOptions, LogMapping, ReadLog } from '#engine';
import type { LogAnswer, LogJob } from '../workers/readings.ts';
import type { LogSource } from '../workers/readings-work.ts';

/** How a page follows a job. */
export interface Following {
  /** Hears how far it is, 0 to 1. */
  readonly onprogress?: (share: number) => void;
  /** Ends it; the promise is then rejected with the signal's reason. */
  readonly signal?: AbortSignal;
  /** Do it on the page itself, in slices; so it is done, too, where no worker can be had. */
  readonly here?: boolean;
}

/** What a file of readings seems to be, worked out in a worker. */
export async function guessLogFile(
  source: LogSource,
  options: GuessOptions = {},
  following: Following = {},
): Promise<LogMapping> {
  const answer = await answered({ kind: 'guess', source, options }, following);
  return (answer as { mapping: LogMapping }).mapping;
}

/** Reads a file of readings by a mapping in a worker; the columns are handed over, not copied. */
export async function readLogFile(source: LogSource, mapping: LogMapping, following: Following = {}): Promise<ReadLog> {
  const answer = await answered({ kind: 'read', source, mapping }, following);
  return (answer as { result: ReadLog }).result;
}

async function answered(job: LogJob, following: Following): Promise<LogAnswer> {
  following.signal?.throwIfAborted();
  const worker = following.here ? null : startWorker();
  return worker ? await byWorker(worker, job, following) : await here(job, following);
}

function startWorker(): Worker | null {
  try {
    return new Worker(new URL('../workers/readings.ts', import.meta.url), { type: 'module' });
  } catch {
    return null;
  }
}

/** A worker that cannot be loaded leaves the work to the page. */
async function byWorker(worker: Worker, job: LogJob, following: Following): Promise<LogAnswer> {
  const { onprogress, signal } = following;
  let ended = () => {};
  try {
    return await new Promise<LogAnswer>((resolve, reject) => {
      ended = () => reject(signal?.reason);
      signal?.addEventListener('abort', ended);
      worker.onmessage = ({ data }: MessageEvent<LogAnswer>) => {
        if ('progress' in data) onprogress?.(data.progress);
        else if ('failed' in data) reject(new Error(data.failed));
        else resolve(data);
      };
      worker.onerror = () => here(job, following).then(resolve, reject);
      worker.postMessage(job);
    });
  } finally {
    signal?.removeEventListener('abort', ended);
    worker.terminate();
  }
}

/** Bytes of a slice on the page: some milliseconds of work. */
const slice = 1 << 15;

async function here(job: LogJob, { onprogress, signal }: Following): Promise<LogAnswer> {
  const { guessFile, readFile } = await import('../workers/readings-work.ts');
  let free = performance.now();
  const pause = async (share: number): Promise<void> => {
    signal?.throwIfAborted();
    if (performance.now() - free < 12) return;
    onprogress?.(share);
    await new Promise((resolve) => setTimeout(resolve, 0));
    free = performance.now();
  };
  if (job.kind === 'guess') return { mapping: await guessFile(job.source, job.options, slice, pause) };
  return { result: await readFile(job.source, job.mapping, slice, pause) };
}

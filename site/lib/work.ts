// Work done away from the page, in a worker that is ended with it, or on the page itself where no worker can be had.

/** How a page follows a piece of work. */
export interface Following<P = number> {
  /** Hears how far it is: 0 to 1, unless the work tells it otherwise. */
  readonly onprogress?: (progress: P) => void;
  /** Ends it; the promise is then rejected with the signal's reason. */
  readonly signal?: AbortSignal;
  /** Do it on the page itself, in slices; so it is done, too, where no worker can be had. */
  readonly here?: boolean;
}

/** What a worker answers: how far it is, then what was asked for, or why not. */
export type WorkAnswer<P, A> = { readonly progress: P } | { readonly failed: string } | A;

/** Hears how far the work is and lets other things happen; throws to end it. */
export type Pause<P> = (progress: P) => Promise<void>;

/** What is needed to have a job done. */
export interface Work<J, P, A> {
  /** Starts the worker; may throw where there is none. */
  readonly start: () => Worker;
  /** Does the job on the page. */
  readonly here: (job: J, pause: Pause<P>) => Promise<A>;
}

/** Has a job done, in a worker where one can be had. */
export async function done<J, P, A extends object>(
  work: Work<J, P, A>,
  job: J,
  following: Following<P> = {},
): Promise<A> {
  following.signal?.throwIfAborted();
  const worker = following.here ? null : started(work);
  return worker ? await byWorker(worker, work, job, following) : await onPage(work, job, following);
}

function started({ start }: { start: () => Worker }): Worker | null {
  try {
    return start();
  } catch {
    return null;
  }
}

/** A worker that cannot be loaded leaves the work to the page. */
async function byWorker<J, P, A extends object>(
  worker: Worker,
  work: Work<J, P, A>,
  job: J,
  following: Following<P>,
): Promise<A> {
  const { onprogress, signal } = following;
  let ended = () => {};
  try {
    return await new Promise<A>((resolve, reject) => {
      ended = () => reject(signal?.reason);
      signal?.addEventListener('abort', ended);
      worker.onmessage = ({ data }: MessageEvent<WorkAnswer<P, A>>) => {
        if ('progress' in data) onprogress?.(data.progress);
        else if ('failed' in data) reject(new Error(data.failed));
        else resolve(data);
      };
      worker.onerror = () => onPage(work, job, following).then(resolve, reject);
      worker.postMessage(job);
    });
  } finally {
    signal?.removeEventListener('abort', ended);
    worker.terminate();
  }
}

const frame = 12; // ms after which the page is let go

async function onPage<J, P, A>({ here }: Work<J, P, A>, job: J, { onprogress, signal }: Following<P>): Promise<A> {
  let free = performance.now();
  return here(job, async (progress) => {
    signal?.throwIfAborted();
    if (performance.now() - free < frame) return;
    onprogress?.(progress);
    await new Promise((resolve) => setTimeout(resolve, 0));
    free = performance.now();
    signal?.throwIfAborted();
  });
}

/** The worker's own side of the line; the page's types know no other. */
interface Line<J, A> {
  onmessage: ((event: MessageEvent<J>) => void) | null;
  postMessage(answer: A, transfer: ArrayBuffer[]): void;
}

/** Answers jobs in a worker; `handedOver` are the arrays of an answer that need not be copied. */
export function answering<J, P, A>(
  work: (job: J, pause: Pause<P>) => Promise<A>,
  handedOver: (answer: A) => ArrayBuffer[] = () => [],
): void {
  const line = globalThis as unknown as Line<J, WorkAnswer<P, A>>;
  line.onmessage = async ({ data: job }) => {
    try {
      const answer = await work(job, async (progress) => line.postMessage({ progress }, []));
      line.postMessage(answer, handedOver(answer));
    } catch (error) {
      line.postMessage({ failed: String(error) }, []);
    }
  };
}

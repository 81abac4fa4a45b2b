import type { MatrixAsk } from '#engine';
import type { Ask, Listener, Said } from './protocol.ts';

/** A worker that takes an ask; throws, or fails with its first word, where a browser lets a page have none. */
export type MakeWorker = () => Worker;

const ownWorker: MakeWorker = () => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

/**
 * Works a matrix out in a worker, or in slices on the page where there is none to be had; returns how to stop it, after which
 * nothing more is heard. A worker that breaks is given up, and the page begins afresh: rows may then come twice, alike.
 */
export function computeMatrix(ask: MatrixAsk, on: Listener, make: MakeWorker = ownWorker): () => void {
  let stopped = false;
  let end = (): void => {};

  async function onPage(): Promise<void> {
    const { inSlices } = await import('./slices.ts');
    if (!stopped) end = inSlices(ask, on);
  }

  function inWorker(): void {
    const worker = make();
    end = () => worker.terminate();
    worker.onmessage = ({ data }: MessageEvent<Said>) => {
      if (stopped) return;
      if (data.kind === 'rows') on.rows(data.rows);
      else {
        worker.terminate();
        if (data.kind === 'done') on.done();
        else on.failed(data.message);
      }
    };
    worker.onerror = (event) => {
      event.preventDefault();
      worker.terminate();
      if (!stopped) onPage();
    };
    worker.postMessage({ kind: 'ask', ask } satisfies Ask);
  }

  try {
    inWorker();
  } catch {
    onPage();
  }
  return () => {
    stopped = true;
    end();
  };
}

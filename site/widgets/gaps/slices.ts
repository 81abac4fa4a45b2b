import { harmMatrix, type MatrixAsk, type MatrixRow } from '#engine';
import type { Listener } from './protocol.ts';

/** Longest that one slice of work keeps a page from answering [ms]; one row is never cut. */
const pageSlice = 12;

/** Works a matrix out in slices of `slice` ms, with a pause after each for whatever else waits; returns how to stop it. */
export function inSlices(ask: MatrixAsk, on: Listener, slice = pageSlice): () => void {
  const stepper = harmMatrix(ask);
  let timer: ReturnType<typeof setTimeout> | undefined;

  function work(): void {
    try {
      const { rows, done } = oneSlice(stepper, slice);
      if (!done) timer = setTimeout(work);
      if (rows.length > 0) on.rows(rows);
      if (done) on.done();
    } catch (error) {
      on.failed(error instanceof Error ? error.message : String(error));
    }
  }

  timer = setTimeout(work);
  return () => clearTimeout(timer);
}

function oneSlice(stepper: Iterator<MatrixRow, void>, slice: number): { rows: MatrixRow[]; done: boolean } {
  const rows: MatrixRow[] = [];
  const end = performance.now() + slice;
  do {
    const next = stepper.next();
    if (next.done) return { rows, done: true };
    rows.push(next.value);
  } while (performance.now() < end);
  return { rows, done: false };
}

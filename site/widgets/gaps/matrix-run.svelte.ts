import { type MatrixAsk, type MatrixLead, type MatrixRow, matrixCases } from '#engine';
import { computeMatrix, type MakeWorker } from './compute.ts';

/** How far a matrix is. `ready`: the page's own table alone stands. */
export type Phase = 'ready' | 'running' | 'stopped' | 'done' | 'failed';

const keyOf = ({ metal, place, size }: MatrixLead): string => `${metal} ${place} ${size}`;
const keyed = (rows: readonly MatrixRow[]) => new Map(rows.map((row) => [keyOf(row), row]));

/** A matrix while it is worked out and after: its rows as they come, how far it is, and how to stop it. */
export class MatrixRun {
  #rows: ReadonlyMap<string, MatrixRow> = $state.raw(new Map());
  #ask: MatrixAsk = $state.raw() as MatrixAsk;
  #phase: Phase = $state('ready');
  #message = $state('');
  #cancel = (): void => {};
  readonly #make: MakeWorker | undefined;

  constructor(ask: MatrixAsk, rows: readonly MatrixRow[], make?: MakeWorker) {
    this.#ask = ask;
    this.#rows = keyed(rows);
    this.#make = make;
  }

  /** What the rows are of. */
  get ask(): MatrixAsk {
    return this.#ask;
  }

  get phase(): Phase {
    return this.#phase;
  }

  /** What went wrong; '' where nothing did. */
  get message(): string {
    return this.#message;
  }

  /** Cases worked out, and cases in all. */
  get done(): number {
    return this.#rows.size * this.#ask.devices.length;
  }

  get all(): number {
    return matrixCases(this.#ask);
  }

  get rows(): readonly MatrixRow[] {
    return [...this.#rows.values()];
  }

  /** The row of a lead in a place; undefined while it is not worked out. */
  row(at: MatrixLead): MatrixRow | undefined {
    return this.#rows.get(keyOf(at));
  }

  /** Works `ask` out from its beginning; `known` are rows of it that stand already. */
  start(ask: MatrixAsk, known: readonly MatrixRow[] = []): void {
    this.#cancel();
    this.#ask = ask;
    this.#rows = keyed(known);
    this.#phase = 'running';
    this.#message = '';
    this.#cancel = computeMatrix(
      ask,
      {
        rows: (rows) => {
          this.#rows = new Map([...this.#rows, ...keyed(rows)]);
        },
        done: () => {
          this.#phase = 'done';
        },
        failed: (message) => {
          this.#phase = 'failed';
          this.#message = message;
        },
      },
      this.#make,
    );
  }

  /** Stops where it is; the rows that are there stay. */
  stop(): void {
    this.#cancel();
    if (this.#phase === 'running') this.#phase = 'stopped';
  }
}

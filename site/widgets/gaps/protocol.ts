import type { MatrixAsk, MatrixRow } from '#engine';

/** What the worker is told. There is nothing to take an ask back with: to stop it, it is ended. */
export interface Ask {
  readonly kind: 'ask';
  readonly ask: MatrixAsk;
}

/** What the worker says: some rows as they are made, then that it is done or what went wrong. */
export type Said =
  | { readonly kind: 'rows'; readonly rows: readonly MatrixRow[] }
  | { readonly kind: 'done' }
  | { readonly kind: 'failed'; readonly message: string };

/** Who listens to a matrix while it is worked out. */
export interface Listener {
  rows(rows: readonly MatrixRow[]): void;
  done(): void;
  failed(message: string): void;
}

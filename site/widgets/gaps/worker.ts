// Works a matrix of harm sets out beside the page: one ask, then rows as they are made, then `done`.
import type { Ask, Said } from './protocol.ts';
import { inSlices } from './slices.ts';

/** Time between two words to the page [ms]: often enough for a line of progress. */
const between = 40;
const say = (said: Said): void => self.postMessage(said);

self.addEventListener('message', ({ data }: MessageEvent<Ask>) => {
  inSlices(
    data.ask,
    {
      rows: (rows) => say({ kind: 'rows', rows }),
      done: () => say({ kind: 'done' }),
      failed: (message) => say({ kind: 'failed', message }),
    },
    between,
  );
});

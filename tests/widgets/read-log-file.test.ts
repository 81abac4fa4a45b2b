// A large log read in a worker of a real browser: nothing is asserted by the clock.
import { expect, it } from 'vitest';
import { guessLogFile, readLogFile } from '#site/lib/read-log-file.ts';

const rows = 60_000;
const text = `Time;I [A];U [V];Sheath [°C];Ambient [°C]\n${Array.from({ length: rows }, (_, i) =>
  `${new Date(1_772_443_800_000 + 100 * i).toISOString()};${(10 + (i % 7) / 10).toFixed(2)};3,25;41,5;20,0`.replaceAll(
    '.',
    ',',
  ),
).join('\n')}\n`;
const file = () => new File([text], 'log.csv');

it.each([
  ['in a worker', false],
  ['on the page itself, in slices', true],
])('reads a file %s, and tells how far it is', async (_, here) => {
  const shares: number[] = [];
  const mapping = await guessLogFile(file(), {}, { here });
  const { log, counts } = await readLogFile(file(), mapping, { here, onprogress: (share) => shares.push(share) });
  expect(counts).toMatchObject({ rows: rows + 1, head: 1, read: rows, setAside: 0 });
  expect(log.t[rows - 1]).toBe((rows - 1) / 10);
  expect([log.I[1], log.U[0]]).toEqual([10.1, 3.25]);
  expect(shares.length).toBeGreaterThan(0);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
});

it.each([false, true])('is ended by whoever asked (on the page: %s)', async (here) => {
  const mapping = await guessLogFile(file());
  const ending = new AbortController();
  const reading = readLogFile(file(), mapping, {
    here,
    signal: ending.signal,
    onprogress: () => ending.abort(new Error('enough')),
  });
  ending.signal.addEventListener('abort', () => undefined);
  setTimeout(() => ending.abort(new Error('enough')), 5);
  await expect(reading).rejects.toThrow('enough');
});

it('reads bytes as it reads a file', async () => {
  const bytes = new TextEncoder().encode(text.slice(0, 4000)).buffer;
  const mapping = await guessLogFile(bytes);
  expect((await readLogFile(bytes, mapping)).counts.read).toBeGreaterThan(50);
});

import { beforeEach, expect, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { harmMatrix, type MatrixAsk, type MatrixRow, matrixScenario, scenarioFromLink, usualMatrix } from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import GapMatrix from '#site/widgets/GapMatrix.svelte';
import { computeMatrix, type MakeWorker } from '#site/widgets/gaps/compute.ts';
import { matrixCsv } from '#site/widgets/gaps/csv.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew } from './figure-on-screen.ts';
import '#site/styles/base.css';

const ask = usualMatrix('iec', 'rating', 30);
const few: MatrixAsk = { ...ask, metals: ['copper', 'steel'], places: ['stillAir'] };
const blocked: MakeWorker = () => {
  throw new DOMException('no worker may be made here', 'SecurityError');
};
/** A worker whose script cannot be had, as where a policy blocks it: it is made, and fails. */
const missing: MakeWorker = () => new Worker('/no-such-worker.js', { type: 'module' });
const firstOf = (of: MatrixAsk) => [...harmMatrix({ ...of, metals: ['copper'], places: ['stillAir'] })];
const first = { iec: firstOf(ask), na: firstOf(usualMatrix('na', 'rating', 30)) };

/** Works an ask out to its end; returns its rows in their order, and how many times it was heard of. */
function workedOut(of: MatrixAsk, make?: MakeWorker): Promise<{ rows: MatrixRow[]; words: number }> {
  return new Promise((resolve, reject) => {
    const rows: MatrixRow[] = [];
    let words = 0;
    const listener = {
      rows: (more: readonly MatrixRow[]) => {
        rows.push(...more);
        words++;
      },
      done: () => resolve({ rows, words }),
      failed: (message: string) => reject(new Error(message)),
    };
    computeMatrix(of, listener, make);
  });
}

const shown = async (make?: MakeWorker) => {
  await page.viewport(1280, 900);
  return render(GapMatrix, { id: 'gaps', first, ...(make ? { make } : {}) });
};
const cell = (row: number, column: number) => document.querySelector<HTMLElement>(`[data-cell="${row} ${column}"]`);
const plain = (text: string | null | undefined) => (text ?? '').replace(/\s+/g, ' ');
const status = () => document.querySelector('[role="status"]')?.textContent ?? '';

beforeEach(asNew);

it('a worker, slices on the page, and a worker that cannot be had all give the engine’s rows', async () => {
  const rows = [...harmMatrix(few)];
  for (const make of [undefined, blocked, missing]) expect((await workedOut(few, make)).rows).toEqual(rows);
});

it('hears of progress many times before it is done', async () => {
  expect((await workedOut(ask)).words).toBeGreaterThan(3);
  expect((await workedOut(ask, blocked)).words).toBeGreaterThan(3);
});

it.each([
  ['in a worker', undefined],
  ['on the page', blocked],
])('says nothing more once it is stopped, %s', async (_where, make) => {
  let [heard, late] = [0, 0];
  await new Promise<void>((resolve) => {
    let stopped = false;
    const stop = computeMatrix(
      ask,
      {
        rows: () => {
          if (stopped) late++;
          if (++heard < 2) return;
          stop();
          stopped = true;
          resolve();
        },
        done: () => late++,
        failed: () => late++,
      },
      make,
    );
  });
  await new Promise((resolve) => setTimeout(resolve, 1500));
  expect([heard, late]).toEqual([2, 0]);
});

it('tells what cannot be worked out', async () => {
  const wrong: MatrixAsk = { ...few, devices: [{ family: 'bs1362', rating_A: 4 }] };
  for (const make of [undefined, blocked]) await expect(workedOut(wrong, make)).rejects.toThrow(/made for: 1, 2, 3/);
});

it('shows progress, then what all cases came to, as the engine has it', async () => {
  const screen = await shown();
  const progress = screen.getByRole('progressbar', { name: 'Cases worked out' });
  await expect.element(progress).toHaveAttribute('max', '2880');
  await expect.poll(status, { timeout: 20_000 }).toMatch(/^Of 2880 cases/);
  expect((progress.element() as HTMLProgressElement).value).toBe(2880);
  const cells = [...harmMatrix(ask)].flatMap((row) => row.cells);
  const none = cells.filter(({ outcome }) => outcome === 'none');
  const refused = none.filter(({ standing }) => standing === 'not met').length;
  expect(status()).toContain(`${none.length} have no gap`);
  expect(status()).toContain(`the rules refuse ${refused}`);
});

it('stops when it is told to, says what is missing, and goes on from the beginning when asked', async () => {
  const screen = await shown();
  await expect.poll(status, { timeout: 20_000 }).toMatch(/^Of 2880 cases/);
  await screen.getByRole('radio', { name: '160 °C, short circuit' }).click();
  await screen.getByRole('button', { name: 'Stop' }).click();
  expect(status()).toMatch(/^Stopped at \d+ of 2880 cases/);
  const then = status();
  await new Promise((resolve) => setTimeout(resolve, 400));
  expect(status()).toBe(then);
  await screen.getByRole('radio', { name: 'on a reel' }).click();
  expect(document.querySelectorAll('.wide .wait').length).toBeGreaterThan(0);
  await screen.getByRole('button', { name: 'Work all out again' }).click();
  await expect.poll(status, { timeout: 20_000 }).toMatch(/^Of 2880 cases/);
  expect(document.querySelectorAll('.wide .wait')).toHaveLength(0);
});

it('says of every cell in words whether there is a gap, with bars where there is, and what the rule says', async () => {
  await shown(blocked);
  for (const [r, row] of first.iec.entries()) {
    for (const [c, of] of row.cells.entries()) {
      const text = plain(cell(r, c)?.textContent);
      expect(cell(r, c)?.querySelectorAll('[data-gap]')).toHaveLength(of.gaps.length);
      expect(cell(r, c)?.querySelectorAll('[data-gap="open"]')).toHaveLength(
        of.gaps.filter(({ to }) => to === null).length,
      );
      if (of.gaps.length === 0) expect(text).toContain('no gap');
      for (const { from } of of.gaps) expect(text).toContain(String(from));
      if (of.standing === 'not met') expect(text).toContain('not allowed by rule');
      else expect(text).not.toContain('not allowed');
    }
  }
});

it('is walked by the arrow keys, and a picked cell says more and leads to that very case on the bench', async () => {
  const screen = await shown(blocked);
  expect(
    [...document.querySelectorAll('[data-cell]')].filter((one) => (one as HTMLElement).tabIndex === 0),
  ).toHaveLength(1);
  cell(0, 0)?.focus();
  await userEvent.keyboard('{ArrowDown}{ArrowDown}{ArrowRight}{ArrowUp}{Enter}');
  expect(document.activeElement).toBe(cell(1, 1));
  const link = screen.getByRole('link', { name: 'Open this case on the bench' });
  await expect.element(link).toBeVisible();
  const hash = new URL((link.element() as HTMLAnchorElement).href).hash;
  const { scenario } = scenarioFromLink(readFragment(hash, 'bench') ?? '');
  expect(scenario).toEqual(matrixScenario(ask, { metal: 'copper', place: 'stillAir', size: 0.75 }, ask.devices[1]));
  const says = plain(screen.getByRole('region', { name: 'The case that is picked' }).element().textContent);
  expect(says).toMatch(/Not allowed by rule.*13\.5 to 100 A; 154 A up/s);
  expect(says).toMatch(/The table allows the cord 6 A at 30 °C; the device is rated 13 A, above it/);
});

it('says where a rule is met and the lead is too hot all the same', async () => {
  const screen = await shown();
  await expect.poll(status, { timeout: 20_000 }).toMatch(/^Of 2880 cases/);
  await screen.getByRole('radio', { name: 'on a reel' }).click();
  const reel = [...harmMatrix({ ...ask, metals: ['copper'], places: ['coiled'] })];
  const hot = reel.flatMap((row, r) =>
    row.cells.flatMap(({ standing, carries }, c) => (standing === 'met' && !carries ? [[r, c] as const] : [])),
  );
  expect(hot.length).toBeGreaterThan(0);
  for (const [r, c] of hot) expect(plain(cell(r, c)?.textContent)).toContain('rule met, too hot here');
});

it('turns with the practice, to gauges and their devices', async () => {
  const screen = await shown();
  await expect.poll(status, { timeout: 20_000 }).toMatch(/^Of 2880 cases/);
  practice.value = 'na';
  await expect.poll(status, { timeout: 20_000 }).toMatch(/^Of 2640 cases/);
  await expect.element(screen.getByRole('rowheader', { name: /18 AWG/ })).toBeVisible();
  cell(3, 0)?.click();
  const link = screen.getByRole('link', { name: 'Open this case on the bench' });
  await expect.element(link).toBeVisible();
  expect((link.element() as HTMLAnchorElement).hash).toContain('bench-make=assembled%20on%20site');
});

it('shows one device, or one size, at a time on a phone', async () => {
  await page.viewport(360, 740);
  const screen = await render(GapMatrix, { id: 'gaps', first, make: blocked });
  expect(document.querySelector('.wide')?.getClientRects()).toHaveLength(0);
  const lines = () =>
    [...document.querySelectorAll('.narrow li')].map((one) => plain(one.querySelector('strong')?.textContent));
  expect(lines()).toHaveLength(12);
  expect(lines()[0]).toBe('0.5 mm²');
  await screen.getByRole('radio', { name: 'one size' }).click();
  expect(lines()[1]).toBe('13 A plug fuse');
  await screen.getByRole('combobox', { name: 'Size' }).selectOptions('35 mm²');
  await screen.getByRole('button', { name: /13 A plug fuse/ }).click();
  const region = screen.getByRole('region', { name: 'The case that is picked' });
  expect(region.element().textContent).toContain('No table allows it, so nothing here is permission.');
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
});

it('saves every case, one a row, under a header with units', async () => {
  const rows = [...harmMatrix(few)];
  const lines = (await matrixCsv(few, rows)).split('\r\n');
  expect(lines).toHaveLength(1 + 2 * 12 * 12);
  expect(lines[0]).toMatch(/^size_mm2,metal,surroundings,ambient_degC,.*Iz_A,table_A,outcome,gap_from_A,gap_to_A/);
  expect(lines[1]).toBe(
    '0.5,copper,free in still air,30,rating,3 A plug fuse,3,10.5,3,no upper end found,15,20,248 A up,met,,yes',
  );
});

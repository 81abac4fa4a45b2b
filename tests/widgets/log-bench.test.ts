import { beforeEach, expect, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import {
  checksOf,
  emptyJob,
  emptyPlan,
  guessMapping,
  handHeld,
  lockPlan,
  planStart,
  precautions,
  readLog,
  type TestPlan,
  uncertaintyBy,
} from '#engine';
import { fitInWorker } from '#site/lib/fit-log.ts';
import { forgetJob, keepJob, keptJob } from '#site/store/job.ts';
import LogBench from '#site/widgets/job/LogBench.svelte';
import type { FitStage } from '#site/workers/fit-work.ts';
import { asNew } from './figure-on-screen.ts';
import '#site/styles/base.css';

/** A log of our own making: two steps, a probe and the air; a row that is no reading and one over range. */
const rows = Array.from({ length: 120 }, (_, i) => {
  const I = i < 60 ? 4 : 8;
  const warm = 20 + (I * I * 0.25 * (1 - Math.exp(-(i % 60) / 12))) / 2;
  const U = i === 30 ? 'OL' : (I * 0.575 * (1 + 0.004 * (warm - 20))).toFixed(3);
  return `${i * 10},${I.toFixed(2)},${U},${warm.toFixed(1)},20.0`;
});
const text = `t [s],Lead [A],Volts [V],Spot 1 [°C],Air [°C]\n${rows.slice(0, 60).join('\n')}\nprobe taped on again\n${rows.slice(60).join('\n')}\n`;

const told = () => (document.querySelector('.log')?.textContent ?? '').replace(/\s+/g, ' ');
const button = (name: string) => page.getByRole('button', { name, exact: true });

/** A worker takes its time to start on a machine that is busy. */
const eventually = <T>(look: () => T) => expect.poll(look, { timeout: 20_000 });

beforeEach(async () => {
  asNew();
  await forgetJob();
});

async function opened(): Promise<void> {
  await render(LogBench, { scenarios: planStart, next: '/bench/report/' });
  await expect.poll(() => document.querySelector('[data-alive="true"]')).not.toBeNull();
}

async function pasted(of = text): Promise<void> {
  await page.getByText('Paste readings as text').click();
  await page.getByRole('textbox', { name: /^Readings, a line each/ }).fill(of);
  await button('Look at this text').click();
  await expect.element(button('Read it so'), { timeout: 20_000 }).toBeVisible();
}

async function readSo(): Promise<void> {
  await button('Read it so').click();
  await eventually(told).toMatch(/rows? read of/);
}

it('takes a log as text, says what it took it for, and sets it beside the prediction', async () => {
  await opened();
  await pasted();
  expect(told()).toMatch(/Found: time, current, volts, probe, air/);
  await readSo();
  await eventually(told).toMatch(/Conductor by resistance agrees at/);
  expect(document.querySelectorAll('svg .taken').length).toBeGreaterThan(60);
});

it('reads anew what was corrected', async () => {
  await opened();
  await pasted();
  await page.getByText('Correct Air [°C]').click();
  await page.getByLabelText('Air [°C]: what it is').selectOptions('probe');
  await page.getByLabelText('Air [°C]: where it sits').selectOptions('plug');
  await readSo();
  await eventually(async () => (await keptJob())?.log?.csv).toContain('theta_probe_2_degC @plug: Air');
  await eventually(told).toMatch(/The log has no air; the ambient below is taken/);
});

it('shows rows it set aside and cells without a reading, none of them silently', async () => {
  await opened();
  await pasted();
  await readSo();
  expect(told()).toMatch(/120 rows read of 122 rows in the file/);
  expect(told()).toMatch(/1 cell without a reading: 1 over range/);
  expect(told()).toMatch(/1 row set aside/);
  expect(told()).toMatch(/Row 62.*probe taped on again/);
});

it('keeps the log, and shows it again without the file', async () => {
  await opened();
  await pasted();
  await readSo();
  await eventually(async () => (await keptJob())?.log?.file).toBe('pasted readings');
  const kept = await keptJob();
  expect(kept?.log?.notes[0]).toMatch(/120 rows read/);
  document.body.innerHTML = '';
  await opened();
  await eventually(told).toMatch(/pasted readings, kept on this device: 120 rows/);
  await eventually(told).toMatch(/Conductor by resistance agrees at/);
});

it('will not read without a current, and says what is missing', async () => {
  await opened();
  await pasted();
  await page.getByText('Correct Lead [A]').click();
  await page.getByLabelText('Lead [A]: what it is').selectOptions('ignored');
  await eventually(told).toMatch(/Name the column that holds the current/);
  await expect.element(button('Read it so')).toBeDisabled();
});

it('says of a lead that differs from the locked plan that this is not what was locked in', async () => {
  const begun = emptyPlan(planStart.iec);
  const { plan } = lockPlan(seenTo(begun), '2026-03-11T08:00:00Z');
  const log = { file: 'sander.csv', csv: text, notes: [] };
  await keepJob({ ...emptyJob('iec'), plan: plan ?? null, scenario: planStart.iec, log });
  await opened();
  await eventually(told).toMatch(/was locked in on .*, before the readings/);
  await page.getByText('Correct the lead or its place').click();
  await page.getByRole('textbox', { name: 'Length' }).first().fill('9');
  await userEvent.tab();
  await eventually(told).toMatch(/of another lead or place. This is not that one/);
  await button('Take the plan’s lead').click();
  await eventually(told).toMatch(/before the readings/);
});

it('fits what is freed, keeps what it was, and says that nothing is changed where nothing is freed', async () => {
  await opened();
  await pasted();
  await readSo();
  await button('Fit').click();
  await eventually(told).toMatch(/explains the log best/);
  await eventually(async () => (await keptJob())?.fitted).toEqual(['R20']);
  expect(told()).toMatch(/foretold the last/);
  await page.getByRole('switch', { name: 'Resistance at 20 °C' }).click();
  await eventually(told).toMatch(/Nothing is changed. The prediction stands/);
  await eventually(async () => (await keptJob())?.fitted).toEqual([]);
});

it('fits on the page as in a worker, to the last bit', async () => {
  const log = readLog(text, guessMapping(text)).log;
  const question = { scenario: planStart.iec, log, u: uncertaintyBy(handHeld, log) };
  const parts = new Set<FitStage['part']>();
  const away = await fitInWorker(question, ['R20', 'surface'], { onprogress: ({ part }) => parts.add(part) });
  const here = await fitInWorker(question, ['R20', 'surface'], { here: true });
  expect(here.fit.values).toEqual(away.fit.values);
  expect(here.changes.map(({ id, deltaAIC }) => [id, deltaAIC])).toEqual(
    away.changes.map(({ id, deltaAIC }) => [id, deltaAIC]),
  );
  expect([...parts]).toEqual(['fit', 'held back', 'changes', 'compare']);
});

it.each([false, true])('ends a fit when it is stopped (on the page: %s)', async (here) => {
  const log = readLog(text, guessMapping(text)).log;
  const ending = new AbortController();
  const fit = fitInWorker({ scenario: planStart.iec, log, u: uncertaintyBy(handHeld, log) }, ['R20', 'surface'], {
    here,
    signal: ending.signal,
  });
  ending.abort(new Error('stopped'));
  await expect(fit).rejects.toThrow('stopped');
});

/** A plan in which everything was seen to. */
function seenTo(plan: TestPlan): TestPlan {
  const checks = checksOf(plan).map(({ id, limit }) => {
    const value = limit ? { value: limit.value * (limit.sense === 'at most' ? 0.9 : 1.1) } : {};
    return { id, found: 'pass' as const, ...value };
  });
  return { ...plan, people: ['M', 'N'], approvedBy: 'O', taken: precautions.map(({ id }) => id), checks };
}

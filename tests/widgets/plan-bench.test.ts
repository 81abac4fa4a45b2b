import { beforeEach, expect, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { celsius, emptyPlan, planStart, precautions, predictPlan } from '#engine';
import { forgetJob, keptJob } from '#site/store/job.ts';
import PlanBench from '#site/widgets/job/PlanBench.svelte';
import { asNew } from './figure-on-screen.ts';
import '#site/styles/base.css';

const lock = () => page.getByRole('region', { name: 'Lock the prediction in' });
const told = () => lock().element().textContent ?? '';

beforeEach(async () => {
  asNew();
  await forgetJob();
});

async function opened(): Promise<void> {
  await render(PlanBench, { scenarios: planStart, next: '/bench/log/' });
  await expect.poll(() => document.querySelector('[data-alive="true"]')).not.toBeNull();
}

/** Sees to everything that a plan asks for before power. */
async function seeToAll(): Promise<void> {
  for (const { words } of precautions) await page.getByRole('switch', { name: words }).click();
  for (const field of ['At the supply', 'At the stop button', 'Approved by'])
    await page.getByRole('textbox', { name: field }).fill('initials');
  for (const { name, reading } of [
    { name: 'Visual', reading: null },
    { name: 'Continuity of the earth core', reading: '0.3' },
    { name: 'Continuity of each other core', reading: '0.31' },
    { name: 'Polarity', reading: null },
    { name: 'Insulation resistance', reading: '200' },
  ]) {
    await page
      .getByRole('group', { name: `${name}, found` })
      .getByRole('radio', { name: 'pass' })
      .click();
    if (reading) await page.getByRole('textbox', { name: `${name}, reading` }).fill(reading);
  }
}

it('tells what each step is expected to show, as the engine has it', async () => {
  await opened();
  const { steps } = predictPlan(emptyPlan(planStart.iec));
  const rows = [...document.querySelectorAll('.scroll tbody tr')].map(
    (row) => row.textContent?.replace(/\s+/g, ' ') ?? '',
  );
  expect(rows).toHaveLength(steps.length);
  for (const [i, { end }] of steps.entries()) {
    expect(rows[i]).toContain(celsius(end.conductor.value).toFixed(0));
    expect(rows[i]).toContain(end.U.value.toFixed(2));
  }
});

it('gives no power until all is seen to, then locks the prediction in, and notices a change after that', async () => {
  await opened();
  await expect.poll(told).toMatch(/No power yet/);
  expect(lock().getByRole('button').query()).toBeNull();
  await seeToAll();
  await lock().getByRole('button', { name: 'Lock the prediction in' }).click();
  await expect.poll(told).toMatch(/Locked in on/);
  await page.getByRole('textbox', { name: 'Amperes, step 1' }).fill('5');
  await expect.poll(told).toMatch(/changed after it was locked/);
});

it('stops at a reading beyond its limit, whatever was ticked, and refuses the mains', async () => {
  await opened();
  await seeToAll();
  await page.getByRole('textbox', { name: 'Insulation resistance, reading' }).fill('0.4');
  await expect.poll(told).toMatch(/Insulation resistance failed/);
  await page.getByRole('textbox', { name: 'Insulation resistance, reading' }).fill('40');
  await expect.poll(told).toMatch(/Everything is in its place/);
  await page.getByLabelText('The supply is').selectOptions('mains');
  await expect.poll(told).toMatch(/never loaded from the mains/);
});

it('keeps the plan on the device', async () => {
  await opened();
  await page.getByRole('textbox', { name: 'Sample' }).fill('S-17');
  await userEvent.tab();
  await expect.poll(async () => (await keptJob())?.plan?.sample).toBe('S-17');
});

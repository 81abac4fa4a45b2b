import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { accessibilityFaults } from './support/accessibility.ts';
import type { JourneyContext } from './support/journey.ts';
import { pdfPages } from './support/pdf.ts';
import type { Visit } from './support/visit.ts';

export const name = 'a log is taken in on a phone, set beside its prediction, fitted, and becomes a printed report';

const polisher = new URL('../../site/public/case-files/polisher.csv', import.meta.url);
const button = ({ page }: Visit, label: string) => page.getByRole('button', { name: label, exact: true });

async function opened({ open }: JourneyContext, width: number, theme: 'light' | 'dark' = 'light'): Promise<Visit> {
  const visit = await open('bench/log/', { width, height: 740, theme });
  await visit.page.locator('[data-alive="true"]').waitFor();
  return visit;
}

/** Reads the file as it was taken, and waits until it stands beside the prediction. */
async function readSo(visit: Visit): Promise<void> {
  await button(visit, 'Read it so').click();
  await visit.page.getByText(/Conductor by resistance agrees at/).waitFor();
}

async function fitted(visit: Visit): Promise<void> {
  await button(visit, 'Fit').click();
  await visit.page.getByRole('region', { name: 'What the fit found' }).waitFor();
}

export default async function journey(context: JourneyContext): Promise<void> {
  const phone = await opened(context, 360);
  const began = performance.now();
  await button(phone, 'The sander’s lead').click();
  await readSo(phone);
  const agreed = performance.now();
  await fitted(phone);
  await phone.page.getByText(/foretold the last/).waitFor();
  const seconds = (from: number, to: number) => ((to - from) / 1000).toFixed(1);
  console.log(`  to the agreement ${seconds(began, agreed)} s, to the fit ${seconds(began, performance.now())} s`);
  assert.match((await phone.page.locator('.log').textContent()) ?? '', /450 rows read of 451/);
  assert.equal(await phone.page.getByRole('link', { name: 'Make the report' }).getAttribute('href'), '/bench/report/');
  assert.equal(await phone.scrollsSideways(), false, 'scrolls sideways with a fit');

  // on to the report, and onto paper
  await phone.page.getByRole('link', { name: 'Make the report' }).click();
  await phone.page.locator('.report[data-current="true"]').waitFor({ timeout: 60_000 });
  assert.match((await phone.page.locator('.report').textContent()) ?? '', /This sample behaves as clad aluminium/);
  assert.ok(pdfPages(await phone.page.pdf({ format: 'A4' })) > 3, 'the report prints');
  console.log(`  from the file to a printed report ${seconds(began, performance.now())} s`);
  await phone.page.goBack();
  await phone.page.getByText(/sander.csv, kept on this device: 450 rows/).waitFor();

  // the log is kept, and gives way to another
  await phone.page.waitForTimeout(600);
  await phone.page.reload();
  await phone.page.getByText(/sander.csv, kept on this device: 450 rows/).waitFor();
  await phone.page.getByText('Take another log').click();
  const chooser = phone.page.getByLabel('Choose a log file');
  await chooser.setInputFiles({ name: 'polisher.csv', mimeType: 'text/csv', buffer: readFileSync(polisher) });
  await phone.page.getByText(/decimal comma/).waitFor();
  assert.equal(await phone.scrollsSideways(), false, 'scrolls sideways with columns');
  await readSo(phone);
  await phone.page.getByText(/6 cells without a reading: 6 over range/).waitFor();

  for (const [width, theme] of [
    [360, 'light'],
    [1280, 'dark'],
  ] as const) {
    const visit = await opened(context, width, theme);
    const faults = async (at: string) =>
      assert.deepEqual(await accessibilityFaults(visit.page), [], `${at}, ${width} px, ${theme}`);
    await faults('nothing taken');
    await button(visit, 'The worklight cord').click();
    await button(visit, 'Read it so').waitFor();
    await faults('columns');
    await readSo(visit);
    await fitted(visit);
    await visit.page.getByText('row holds no readings').first().waitFor();
    await faults('fitted');
  }
  await takeLong(await opened(context, 1280));
}

/** A million rows, made in the page: the page stays at hand, and what is kept is said. */
async function takeLong(visit: Visit): Promise<void> {
  const { page } = visit;
  await page.evaluate(() => {
    const lines = ['t [s],I [A],U [V],Sheath [°C]'];
    for (let i = 0; i < 1_000_000; i++)
      lines.push(`${i / 10},${i < 500_000 ? 4 : 8}.0${i % 10},2.3${i % 90},25.${i % 10}`);
    const files = new DataTransfer();
    files.items.add(new File([lines.join('\n')], 'long.csv'));
    const input = document.querySelector<HTMLInputElement>('input[type="file"]');
    if (!input) throw new Error('no place for a file');
    const tasks: number[] = [];
    Object.assign(globalThis, { tasks });
    new PerformanceObserver((list) => tasks.push(...list.getEntries().map(({ duration }) => duration))).observe({
      type: 'longtask',
    });
    setTimeout(() => {
      input.files = files.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    }, 500);
  });
  const began = performance.now();
  await button(visit, 'Read it so').click({ timeout: 60_000 });
  await page.getByText(/one in 84 is kept/).waitFor({ timeout: 120_000 });
  await page.getByText(/Conductor by resistance agrees at/).waitFor({ timeout: 60_000 });
  const tasks = await page.evaluate(() => (globalThis as unknown as { tasks: number[] }).tasks);
  const longest = Math.max(0, ...tasks);
  console.log(
    `  a million rows: ${((performance.now() - began) / 1000).toFixed(1)} s, longest task of the page ${longest.toFixed(0)} ms`,
  );
}

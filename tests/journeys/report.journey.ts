import assert from 'node:assert/strict';
import { readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { jobToFile } from '#engine';
import { jobWithLog, lockedPlan } from '../engine/report-job.ts';
import { accessibilityFaults } from './support/accessibility.ts';
import type { JourneyContext } from './support/journey.ts';
import { pdfPages, pdfText } from './support/pdf.ts';

export const name =
  'on a phone a bench job becomes a report: a sentence is left out, it prints on A4 and Letter, and its file opens elsewhere';

const verdict = /This sample behaves as clad aluminium/;
const refitted = { name: 'Refitted', exact: true, level: 3 } as const;
/** Everything is worked out: the log read, compared and fitted. */
const settled = async (page: Page) => {
  await page.getByRole('heading', refitted).waitFor();
  await page.locator('.report[data-current="true"]').waitFor();
};
/** What the report says, without its fields, buttons and pictures, which are drawn to the width there is. */
const told = (page: Page) =>
  page.locator('.report').evaluate((report) => {
    const copy = report.cloneNode(true) as HTMLElement;
    for (const part of copy.querySelectorAll('.screen-only, .cases, style, label, textarea, svg')) part.remove();
    return copy.textContent?.replace(/\s+/g, ' ') ?? '';
  });
async function openFile(page: Page, path: string): Promise<void> {
  await page.locator('.report[data-alive="true"]').waitFor();
  await page.getByLabel('Open a job file').setInputFiles(path);
}

async function prints(page: Page, format: 'A4' | 'Letter'): Promise<void> {
  const pdf = await page.pdf({ format });
  const pages = pdfPages(pdf);
  assert.ok(pages >= 6 && pages <= 14, `${format}: ${pages} pages`);
  const text = await pdfText(pdf);
  if (text === undefined) return;
  assert.match(text, verdict, `${format}: the verdict is on paper`);
  assert.match(text, /Signature, reviewed by/);
  assert.doesNotMatch(text, /Save the job as a file|Open this case/, 'actions stay off paper');
}

export default async function journey({ open }: JourneyContext): Promise<void> {
  const bare = jobWithLog('sander.csv');
  const plan = lockedPlan(bare, '2026-03-12T08:00:00.000Z');
  const prepared = join(tmpdir(), `prepared-${process.pid}.json`);
  await writeFile(prepared, jobToFile({ ...bare, plan, fitted: ['contact'] }));

  const phone = await open('bench/report/', { width: 360, height: 740 });
  const { page } = phone;
  await page.getByText('Not established: any reading under current.').waitFor();
  await openFile(page, prepared);
  await settled(page);
  assert.match(await told(page), verdict);
  assert.equal(await phone.scrollsSideways(), false);
  assert.deepEqual(await accessibilityFaults(page), []);

  await page.getByRole('switch', { name: 'What it is suitable for' }).click();
  await page.getByText('1 of 6 sentences left out by the writer.').waitFor();
  assert.doesNotMatch(await told(page), /Not suitable by the rule for use/);
  await page.getByRole('button', { name: 'Keep this lead out of use' }).click();
  await page.getByRole('textbox', { name: 'Written by' }).fill('A. N.');
  await settled(page);
  await prints(page, 'A4');
  await prints(page, 'Letter');

  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the job as a file' }).click();
  const file = await download;
  assert.equal(file.suggestedFilename(), 'bench-job-s-1.json');
  const saved = join(tmpdir(), `saved-${process.pid}.json`);
  await writeFile(saved, await readFile(await file.path()));

  const other = await open('bench/report/', { width: 1280, height: 900, theme: 'dark' });
  await openFile(other.page, saved);
  await settled(other.page);
  assert.ok((await told(other.page)) === (await told(page)), 'the same report on another device');
  assert.deepEqual(await accessibilityFaults(other.page), []);

  await other.page.getByRole('button', { name: 'Begin a new job' }).click();
  await other.page.getByRole('button', { name: 'Forget this job and begin anew' }).click();
  await other.page.getByText('Not established: any reading under current.').waitFor();

  const third = await open('bench/', { width: 360, height: 740 });
  await third.page.getByRole('region', { name: 'Case files' }).scrollIntoViewIfNeeded();
  await third.page.locator('astro-island:not([ssr]) [aria-label="Case files"]').waitFor();
  await third.page.getByRole('button', { name: /polisher/ }).click();
  await third.page.waitForURL(/bench\/identify\//);
  await third.page.getByText('This sample behaves as full-size copper.').waitFor();
}

import { beforeEach, expect, it } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { caseFiles, emptyJob, jobOfCase, reportOf, reportSections } from '#engine';
import { forgetJob, keepJob, keptJob } from '#site/store/job.ts';
import ReportBench from '#site/widgets/job/ReportBench.svelte';
import { asNew } from './figure-on-screen.ts';
import '#site/styles/base.css';

const sander = jobOfCase(caseFiles[0]!);
const part = (title: string) => page.getByRole('region', { name: title });

beforeEach(async () => {
  asNew();
  await forgetJob();
});

async function opened(): Promise<void> {
  await render(ReportBench, { version: '9.9.9', next: '/bench/identify/' });
  await expect.poll(() => document.querySelector('[data-current="true"]')).not.toBeNull();
}

it('has its sections in order, and says in each what is not established', async () => {
  await opened();
  const titles = [...document.querySelectorAll('.part > h2')].map(({ textContent }) => textContent?.trim());
  expect(titles).toEqual(reportSections.map(({ title }, i) => (i < 12 ? `${i + 1} ${title}` : title)));
  const { missing } = reportOf({ job: emptyJob('iec'), log: null, compared: null, fitted: null });
  for (const { id } of reportSections)
    for (const { words } of missing[id])
      expect(document.querySelector(`#report-${id}`)?.textContent).toContain(`Not established: ${words}.`);
  await expect.element(part('4 Identification').getByRole('link')).toHaveAttribute('href', /bench\/identify\//);
});

it('makes the verdict of what was found, and leaves out a sentence without rewording it', async () => {
  await keepJob(sander);
  await opened();
  const verdict = part('1 Summary and verdict');
  await expect.element(verdict).toHaveTextContent(/behaves as clad aluminium/);
  await page.getByRole('switch', { name: 'What it behaves as' }).click();
  await expect.element(verdict).not.toHaveTextContent(/behaves as clad aluminium/);
  await expect.element(verdict).toHaveTextContent(/1 of \d sentences left out by the writer/);
  await expect.poll(async () => (await keptJob())?.report.leftOut).toEqual(['behaves as']);
});

it('takes another device, and the verdict follows', async () => {
  await keepJob(sander);
  await opened();
  await expect.element(part('1 Summary and verdict')).toHaveTextContent(/13\sA plug fuse/);
  await page.getByLabelText('Rating, upstream').selectOptions('3 A');
  await expect.element(part('1 Summary and verdict')).toHaveTextContent(/A 3\sA plug fuse/);
});

it('refuses a file that is no job in words, and keeps what stands', async () => {
  await keepJob(sander);
  await opened();
  const bad = new File([JSON.stringify({ ...sander, version: 7 })], 'bad.json', { type: 'application/json' });
  await page.getByLabelText('Open a job file').upload(bad);
  await expect.element(page.getByRole('alert')).toHaveTextContent(/not opened.*version.*must be 1/s);
  await expect.element(part('1 Summary and verdict')).toHaveTextContent(/behaves as clad aluminium/);
});

it('begins a new job after asking, and not before', async () => {
  await keepJob(sander);
  await opened();
  await page.getByRole('button', { name: 'Begin a new job' }).click();
  await page.getByRole('button', { name: 'Keep it' }).click();
  await expect.element(part('1 Summary and verdict')).toHaveTextContent(/behaves as/);
  await page.getByRole('button', { name: 'Begin a new job' }).click();
  await page.getByRole('button', { name: 'Forget this job and begin anew' }).click();
  await expect.element(part('4 Identification')).toHaveTextContent(/Not established/);
  await expect.poll(async () => (await keptJob())?.found ?? {}).toEqual({});
});

it('offers ways to mend it, to put into one’s own words', async () => {
  await keepJob(sander);
  await opened();
  const offer = page.getByRole('button', { name: 'Keep this lead out of use' });
  await offer.click();
  await expect.element(page.getByRole('textbox', { name: 'Recommendation' })).toHaveValue(/^Keep this lead out of use/);
  await expect.element(offer).not.toBeInTheDocument();
});

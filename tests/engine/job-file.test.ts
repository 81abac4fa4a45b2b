// A bench job as a file that is kept and opened elsewhere.
import { expect, it } from 'vitest';
import { emptyJob, faultLine, jobFileName, jobFromFile, jobToFile, longestJobFile } from '#engine';
import { jobWithLog, lockedPlan } from './report-job.ts';

const job = jobWithLog('sander.csv');
const words = (text: string) => jobFromFile(text).faults?.map(faultLine).join('\n');

it('opens as it was saved', () => {
  const whole = { ...job, plan: lockedPlan(job, '2026-03-12T08:00:00.000Z'), fitted: ['contact'] };
  expect(jobFromFile(jobToFile(whole)).job).toEqual(whole);
});

it('has a name that people and file systems can read', () => {
  expect(jobFileName(job)).toBe('bench-job-the-sanders-lead.json');
  expect(jobFileName({ ...emptyJob('iec'), name: '../../Kabel Nr. 7/ä' })).toBe('bench-job-kabel-nr-7-a.json');
  expect(jobFileName(emptyJob('iec'))).toBe('bench-job-lead.json');
});

it('refuses what is no job, and says what is wrong and where', () => {
  expect(words('a;b;c')).toMatch(/no JSON/);
  expect(words('7')).toMatch(/must be a set of values/);
  expect(words(JSON.stringify({ ...job, version: 2 }))).toMatch(/version.*must be 1/);
  expect(words(JSON.stringify({ ...job, colour: 'red' }))).toMatch(/colour.*does not belong here/);
  expect(words(JSON.stringify({ ...job, fitted: ['luck'] }))).toMatch(/fitted\.0.*luck.*R20/);
  expect(words('"'.padEnd(longestJobFile + 1, 'x'))).toMatch(/too long/);
});

it('refuses a case whose parts do not fit, which would stop the page that shows it', () => {
  const cable = { table: 'H05VV-F', cores: 3, size_mm2: 77 };
  expect(words(JSON.stringify({ ...job, scenario: { ...job.scenario, cable } }))).toMatch(/scenario\.cable/);
  const plan = { ...lockedPlan(job, '2026-03-12T08:00:00.000Z') };
  expect(words(JSON.stringify({ ...job, plan: { ...plan, scenario: { ...plan.scenario, cable } } }))).toMatch(
    /plan\.scenario\.cable/,
  );
});

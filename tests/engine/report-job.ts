// A job put together from a case file, for the tests of the report: its log read and kept as a page keeps it.
import { readFileSync } from 'node:fs';
import {
  type BenchJob,
  caseFiles,
  caseOfJob,
  checksOf,
  compareWithLog,
  correctColumn,
  emptyPlan,
  fitLog,
  guessMapping,
  handHeld,
  jobOfCase,
  lockPlan,
  precautions,
  type ReportQuestion,
  readLog,
  type TestPlan,
  uncertaintyBy,
  writeLog,
} from '#engine';
import { logFolder } from '../case-files/generator/logs.ts';

/** The job of a case file with its log in it. */
export function jobWithLog(file: string): BenchJob {
  const of = caseFiles.find((one) => one.file === file)!;
  const bytes = new Uint8Array(readFileSync(new URL(file, logFolder)));
  const mapping = guessMapping(bytes).columns.reduce((all, { index, header }) => {
    const said = of.said[header];
    return said ? correctColumn(all, index, said) : all;
  }, guessMapping(bytes));
  const { log } = readLog(bytes, mapping);
  return { ...jobOfCase(of), log: { file, csv: writeLog(log), notes: [] } };
}

/** A plan of the job's case in which everything is seen to, locked at `at`. */
export function lockedPlan(job: BenchJob, at: string): TestPlan {
  const plan = { ...emptyPlan(job.scenario!), id: 'P-1', sample: 'S-1', question: 'Does it reach its rating at 12 A?' };
  const ready: TestPlan = {
    ...plan,
    people: ['A. N.', 'B. O.'],
    approvedBy: 'C. P.',
    taken: precautions.map(({ id }) => id),
    checks: checksOf(plan).map(({ id, limit }) => ({ id, found: 'pass', ...(limit && { value: limit.value }) })),
  };
  const locked = lockPlan(ready, at);
  if (!locked.plan) throw new Error(locked.refusals.map(({ words }) => words).join(' '));
  return locked.plan;
}

/** What a page works out of a job before its report is gathered. */
export function asked(job: BenchJob): ReportQuestion {
  const log = job.log && readLog(job.log.csv, guessMapping(job.log.csv)).log;
  const scenario = caseOfJob(job);
  if (!log || !scenario) return { job, log, compared: null, fitted: null };
  const question = { scenario, log, u: uncertaintyBy(handHeld, log) };
  const free = job.fitted.filter((id) => id === 'contact');
  const fit = free.length > 0 ? fitLog({ ...question, free }) : null;
  return {
    ...{ job, log, compared: compareWithLog(question) },
    fitted: fit && { fit, compared: compareWithLog({ ...question, values: fit.values }) },
  };
}

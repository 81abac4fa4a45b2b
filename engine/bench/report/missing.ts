import type { Identification } from '../identify/identify.ts';
import type { BenchJob } from '../job-schema.ts';
import type { BenchLog } from '../log.ts';
import type { DeviceCheck } from './device-check.ts';
import type { ReportLock } from './lock-of.ts';
import type { Missing, MissingBySection } from './sections.ts';

/** What is looked at to find what is missing. */
export interface MissingFacts {
  readonly job: BenchJob;
  readonly log: BenchLog | null;
  readonly identified: Identification | null;
  readonly lock: ReportLock;
  readonly compared: boolean;
  readonly device: DeviceCheck | null;
}

const lacks = (when: boolean, words: string, step: Missing['step'] = null): Missing[] =>
  when ? [{ words, step }] : [];
const blank = (text: string | undefined) => !text?.trim();

/** What each section lacks, with the step that makes it. */
export function missingIn({ job, log, identified, lock, compared, device }: MissingFacts): MissingBySection {
  const { plan, report, scenario } = job;
  const own = (id: string) => report.words[id];
  return {
    verdict: [],
    sample: [
      ...lacks(blank(plan?.sample), 'a number by which the sample is known', 'plan'),
      ...lacks(blank(own('sample')), 'who had the sample, from when to when'),
      ...lacks(job.pictures.length === 0, 'how the sample looked: there is no photograph', 'identify'),
    ],
    question: lacks(blank(plan?.question) && blank(own('question')), 'what was to be found out', 'plan'),
    identification: lacks(!identified, 'what the conductor is: nothing was measured on it', 'identify'),
    prediction: predictionLacks(lock),
    'set-up': [
      ...lacks(!plan, 'supply, probes and precautions: there is no plan', 'plan'),
      ...lacks(
        (plan?.instruments.length ?? 0) === 0 && blank(own('set-up')),
        'which instruments were used, and when they were calibrated',
      ),
    ],
    readings: lacks(!log, 'any reading under current', 'log'),
    comparison: [
      ...lacks(!log, 'whether readings and prediction agree: there are no readings', 'log'),
      ...lacks(
        log !== null && !compared,
        scenario ? 'whether they agree: this log cannot drive the model' : 'whether they agree: there is no case',
        scenario ? 'log' : 'plan',
      ),
    ],
    device: [
      ...lacks(!scenario, 'what the device does: there is no case', 'plan'),
      ...lacks(scenario !== null && !device, 'what the device upstream does: none is named'),
    ],
    limits: [],
    recommendation: lacks(blank(own('recommendation')), 'what the owner is to do'),
    people: [
      ...lacks(blank(report.by), 'who wrote the report'),
      ...lacks(blank(report.reviewedBy), 'who reviewed it'),
      ...lacks(blank(report.at), 'its date'),
    ],
    annex: lacks(!log, 'raw readings', 'log'),
  };
}

function predictionLacks({ state, before }: ReportLock): Missing[] {
  const words = {
    none: 'what was expected before the readings: there is no plan',
    open: 'what was expected before the readings: the plan was not locked in',
    'changed since': 'what was expected before the readings: the plan was changed after it was locked in',
    locked: 'a prediction before the readings: they began before it was locked in',
  }[state];
  return lacks(state !== 'locked' || before === false, words, 'plan');
}

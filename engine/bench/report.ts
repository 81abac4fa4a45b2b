import { predict } from '../heating/predict.ts';
import { buildCase, type ThermalCase } from '../heating/thermal-case.ts';
import type { Scenario } from '../scenario/schema.ts';
import { evidenceOf } from './evidence-of.ts';
import { type PlateauMeans, plateauMeans } from './fit/beside.ts';
import type { Agreement } from './fit/compare.ts';
import type { ColumnUncertainty } from './fit/drive.ts';
import type { LogFit } from './fit/result.ts';
import { handHeld, uncertaintyBy } from './hand-held.ts';
import { type Identification, identify } from './identify/identify.ts';
import { identifyWords } from './identify/words.ts';
import type { BenchJob, FoundOnLead } from './job-schema.ts';
import type { BenchLog } from './log.ts';
import { type PlanPrediction, predictPlan } from './plan.ts';
import { type DeviceCheck, deviceCheck } from './report/device-check.ts';
import { isSample, metalOfSample, reachedBy, resistanceOfSample } from './report/facts.ts';
import { limitsWords } from './report/limits-words.ts';
import { lockOf, type ReportLock, standsLocked } from './report/lock-of.ts';
import { missingIn } from './report/missing.ts';
import type { MissingBySection } from './report/sections.ts';
import { type VerdictFacts, type VerdictSentence, verdictWords } from './verdict-words.ts';

/** A job and what was worked out of its log. */
export interface ReportQuestion {
  readonly job: BenchJob;
  /** The job's log as read; null where it has none. */
  readonly log: BenchLog | null;
  /** Standard uncertainties of its columns; usual hand-held instruments unless given. */
  readonly u?: ColumnUncertainty;
  /** The log compared with the case of `caseOfJob`; null where that was not done, or could not be. */
  readonly compared: readonly Agreement[] | null;
  /** The fit of what the job frees, and the log compared with it; null where nothing is freed. */
  readonly fitted: { readonly fit: LogFit; readonly compared: readonly Agreement[] | null } | null;
}

/** What a report shows. */
export interface BenchReport {
  readonly facts: VerdictFacts;
  /** Every sentence the facts allow; those left out are named by the job. */
  readonly verdict: readonly VerdictSentence[];
  readonly identified: { readonly result: Identification; readonly words: readonly string[] } | null;
  readonly lock: ReportLock;
  readonly prediction: PlanPrediction | null;
  /** The case that readings are compared with. */
  readonly of: ThermalCase | null;
  /** Whether that case has the sample's resistance. */
  readonly ownCase: boolean;
  /** Means over the plateaus of the log. */
  readonly means: readonly PlateauMeans[];
  readonly device: DeviceCheck | null;
  readonly limits: readonly string[];
  readonly missing: MissingBySection;
}

/** The case that a job's readings are compared with: that of its plan, else the one it names. */
export const caseOfJob = ({ plan, scenario }: BenchJob): Scenario | null => plan?.scenario ?? scenario;

/** Whether anything was measured on a lead, beside what is printed and what colour it has. */
const measured = ({ resistance, strands, bundle_mm, mass, magnet }: FoundOnLead): boolean =>
  Boolean(resistance ?? strands ?? bundle_mm ?? mass ?? magnet);

/**
 * Gathers the report of a job. Nothing is invented: what was not found out is null, and `missing` says so by section. A verdict
 * rests on a case only where that has the sample's resistance, on readings only where they are not simulated, and on a prediction
 * only where it was locked before them.
 */
export function reportOf({ job, log, u, compared, fitted }: ReportQuestion): BenchReport {
  const identified = measured(job.found) ? identify(evidenceOf(job.found)) : null;
  const scenario = caseOfJob(job);
  const of = scenario && buildCase(scenario);
  const lock = lockOf(job, log);
  const R20 = resistanceOfSample(identified, fitted?.fit ?? null);
  const ownCase = of !== null && isSample(of, R20);
  const means = log ? plateauMeans({ log, u: u ?? uncertaintyBy(handHeld, log) }) : [];
  const device = deviceOfJob(job, of, means);
  const real = log !== null && !log.simulated;
  const facts: VerdictFacts = {
    practice: job.practice,
    R20,
    metal: metalOfSample(identified),
    reached: of && R20 && ownCase && real ? reachedBy(of, R20, fitted?.compared ?? compared, means) : null,
    device:
      device && ownCase
        ? { harm: device.judged.harm, rule: device.judged.rule, instead: device.ways.length > 0 ? device.instead : '' }
        : null,
    agrees: real && standsLocked(lock) && compared ? compared.every(({ agrees }) => agrees) : null,
  };
  return {
    ...{ facts, verdict: verdictWords(facts), lock, of, ownCase, means, device },
    identified: identified && {
      result: identified,
      words: identifyWords(identified, evidenceOf(job.found), job.practice)
        .filter(({ id }) => !['next', 'outcome', 'photograph'].includes(id))
        .map(({ text }) => text),
    },
    prediction: job.plan && predictPlan(job.plan),
    limits: limitsWords({
      ...{ log, of, lock, device, ownCase, fit: fitted?.fit ?? null, usualInstruments: u === undefined },
      model: scenario ? modelWords(scenario) : [],
    }),
    missing: missingIn({ job, log, identified, lock, device, compared: compared !== null }),
  };
}

/** What the model says of itself for a case; the bench has no device of use before its lead. */
function modelWords({ device: _, ...bench }: Scenario): string[] {
  return predict(bench).validity.statements.map(({ text }) => text);
}

/** The device that the job names, before the lead of its case; judged with the greatest current of the test. */
function deviceOfJob(job: BenchJob, of: ThermalCase | null, means: readonly PlateauMeans[]): DeviceCheck | null {
  const spec = job.scenario?.device ?? job.plan?.scenario.device;
  if (!of || !spec) return null;
  const planned = of.scenario.supply.map((step) => (step.kind === 'current' ? step.I_A : 0));
  const Ib = means.length > 0 ? Math.max(...means.map(({ I }) => I)) : Math.max(0, ...planned);
  return deviceCheck(of, spec, Ib, job.practice);
}

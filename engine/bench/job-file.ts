import type { Fault } from '../scenario/fault.ts';
import { parseScenario } from '../scenario/parse.ts';
import { fitParameterIds } from './fit/parameters.ts';
import { type BenchJob, type ParsedJob, parseJob } from './job-schema.ts';
import { parsePlan } from './plan-schema.ts';

/** Greatest size of a job's file [characters]: its log at the longest, and as much again for the rest. */
export const longestJobFile = 8_000_000;

/** A job as the text of a file: JSON, its keys in the order of the schema. */
export const jobToFile = (job: BenchJob): string => `${JSON.stringify(job, null, 2)}\n`;

/** A name for the file of a job, made of the sample or the job's name: 'bench-job-s-17.json'. */
export function jobFileName({ plan, name }: BenchJob): string {
  const about = (plan?.sample || name || 'lead')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[’']|[\u0300-\u036f]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
  return `bench-job-${about || 'lead'}.json`;
}

/** Opens the text of a file as a job; or every fault in words, those of its case and its plan among them. */
export function jobFromFile(text: string): ParsedJob {
  if (text.length > longestJobFile)
    return { faults: [{ path: '', message: `is too long; ${longestJobFile / 1e6} million characters are the most` }] };
  const read = jsonOf(text);
  if (read.fault) return { faults: [read.fault] };
  const { job, faults } = parseJob(read.value);
  if (faults) return { faults };
  const inside = [...caseFaults(job), ...planFaults(job), ...fittedFaults(job)];
  return inside.length > 0 ? { faults: inside } : { job };
}

function jsonOf(text: string): { value?: unknown; fault?: Fault } {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return { fault: { path: '', message: 'is no JSON; open a file that was saved from a report' } };
  }
}

const under = (path: string, faults: readonly Fault[] = []): Fault[] =>
  faults.map((fault) => ({ path: [path, fault.path].filter(Boolean).join('.'), message: fault.message }));

const caseFaults = ({ scenario }: BenchJob): Fault[] =>
  scenario ? under('scenario', parseScenario(scenario).faults) : [];

const planFaults = ({ plan }: BenchJob): Fault[] => (plan ? under('plan', parsePlan(plan).faults) : []);

function fittedFaults({ fitted }: BenchJob): Fault[] {
  return fitted.flatMap((id, i) =>
    fitParameterIds.some((known) => known === id)
      ? []
      : [{ path: `fitted.${i}`, message: `is ${id}; it must be one of: ${fitParameterIds.join(', ')}` }],
  );
}

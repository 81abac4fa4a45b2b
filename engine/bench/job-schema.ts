import * as v from 'valibot';
import type { Fault } from '../scenario/fault.ts';
import { amount, count, record, text, word } from '../scenario/fields.ts';
import { scenarioSchema } from '../scenario/schema.ts';
import { planRecord } from './plan-schema.ts';

// One bench job as it is kept and handed on: what was found on a lead, the plan, the readings, the report's choices. Plain data in
// the units it was typed in; every number that follows from it is computed anew by whoever opens it.

const colour = word(['copper-red', 'silvery', 'yellowish', 'grey'] as const);

/** What was found on the lead, as it was typed. */
const foundRecord = record({
  resistance: v.optional(
    record({
      /** Read as ohms, or as volts at a current. */
      R_ohm: v.optional(amount(0, 1e4, 'Ω')),
      U_V: v.optional(amount(0, 60, 'V')),
      I_A: v.optional(amount(0, 100, 'A')),
      length_m: amount(0.05, 1000, 'm'),
      T_degC: amount(-20, 80, '°C'),
      cores: word([1, 2] as const),
      method: word(['two-terminal', 'four-terminal'] as const),
      /** The instrument's own leads shorted together, where that was read [Ω]. */
      testLeads_ohm: v.optional(amount(0, 100, 'Ω')),
      instrument: v.optional(text(60)),
    }),
  ),
  strands: v.optional(record({ count: v.optional(count(1, 5000)), diameter_mm: v.optional(amount(0.01, 20, 'mm')) })),
  bundle_mm: v.optional(amount(0.05, 100, 'mm')),
  mass: v.optional(record({ mass_g: amount(0.001, 1e5, 'g'), length_m: amount(0.01, 1000, 'm') })),
  magnet: v.optional(word(['clings', 'weakly', 'does not'] as const)),
  skin: v.optional(colour),
  under: v.optional(colour),
  marking: v.optional(
    record({
      size_mm2: v.optional(amount(0.01, 1000, 'mm²')),
      size_AWG: v.optional(amount(4, 40, 'AWG')),
      material: v.optional(word(['copper', 'aluminium', 'clad aluminium', 'clad steel', 'steel', 'brass'] as const)),
    }),
  ),
});

/** A picture that was put with the job; the picture itself is kept beside, under its id. */
const pictureRecord = record({ id: text(60), caption: text(200) });

const jobRecord = record({
  version: v.literal(1, 'must be 1, the only version there is'),
  name: text(80),
  practice: word(['iec', 'na'] as const),
  found: foundRecord,
  /** The case the readings are compared with; null until a plan or the log page names it. */
  scenario: v.nullable(scenarioSchema),
  plan: v.nullable(planRecord),
  /** The readings as CSV in this site's own columns, with what was said of the file they came from. */
  log: v.nullable(record({ file: text(200), csv: text(4_000_000), notes: v.array(text(400)) })),
  /** What the fit was free to change; empty before one was made. */
  fitted: v.pipe(v.array(text(40)), v.maxLength(12, 'frees more than 12 parameters')),
  report: record({
    /** Sentences of the verdict left out by whoever wrote the report, by their ids. */
    leftOut: v.pipe(v.array(text(40)), v.maxLength(20, 'leaves out more than 20 sentences')),
    /** Own words by section. */
    words: v.record(v.string(), text(4000)),
    by: text(80),
    reviewedBy: text(80),
    at: text(40),
  }),
  pictures: v.pipe(v.array(pictureRecord), v.maxLength(24, 'has more than 24 pictures')),
});

/** A bench job. */
export type BenchJob = v.InferOutput<typeof jobRecord>;
/** What was found on a lead, as it was typed. */
export type FoundOnLead = BenchJob['found'];

/** A job with nothing in it. */
export const emptyJob = (practice: 'iec' | 'na'): BenchJob => ({
  ...{ version: 1, name: '', practice, found: {}, scenario: null, plan: null, log: null, fitted: [], pictures: [] },
  report: { leftOut: [], words: {}, by: '', reviewedBy: '', at: '' },
});

/** A job, or every fault found in what was given. */
export type ParsedJob =
  | { readonly job: BenchJob; readonly faults?: undefined }
  | { readonly job?: undefined; readonly faults: readonly Fault[] };

/** Reads unknown data as a bench job. */
export function parseJob(input: unknown): ParsedJob {
  const result = v.safeParse(jobRecord, input);
  if (result.success) return { job: result.output };
  return { faults: result.issues.map((issue) => ({ path: v.getDotPath(issue) ?? '', message: issue.message })) };
}

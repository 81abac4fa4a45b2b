import * as v from 'valibot';
import type { Fault } from '../scenario/fault.ts';
import { amount, record, text, word } from '../scenario/fields.ts';
import { parseScenario } from '../scenario/parse.ts';
import { type Scenario, scenarioSchema } from '../scenario/schema.ts';

const checkRecord = record({
  id: word(['visual', 'earth continuity', 'continuity', 'polarity', 'insulation'] as const),
  found: word(['pass', 'fail', 'not done'] as const),
  value: v.optional(amount(0, 1e12, 'Ω')),
  note: v.optional(text(400)),
});

const instrument = record({ name: text(80), id: v.optional(text(60)), calibrated: v.optional(text(40)) });

/** The schema of a plan. */
export const planRecord = record({
  version: v.literal(1, 'must be 1, the only version there is'),
  id: text(60),
  sample: text(60),
  question: text(400),
  /** The marking as found on the lead. */
  marking: text(200),
  /** What it was identified as, in words; empty where it was not. */
  identified: text(400),
  /** Cable, length, surroundings and stepped currents: what is predicted. */
  scenario: scenarioSchema,
  supply: record({
    kind: word(['isolated bench supply', 'battery', 'mains'] as const),
    current: word(['dc', 'ac'] as const),
    /** Greatest volts that the supply is set to [V], and greatest current it can give [A]. */
    most_V: amount(0, 1000, 'V'),
    most_A: amount(0, 1000, 'A'),
  }),
  probes: v.pipe(
    v.array(record({ place: word(['plug end', 'middle', 'hottest place', 'ambient'] as const), name: text(60) })),
    v.maxLength(12, 'has more than 12 probes'),
  ),
  /** Limits at which whoever stands at the bench switches off [°C]. */
  abort: record({ conductor_degC: amount(20, 200, '°C'), sheath_degC: amount(20, 200, '°C') }),
  /** 'teaching' benches stop sooner. */
  bench: word(['teaching', 'practitioner'] as const),
  people: v.pipe(v.array(text(80)), v.maxLength(10, 'names more than 10 people')),
  instruments: v.pipe(v.array(instrument), v.maxLength(12, 'names more than 12 instruments')),
  /** Precautions that have been taken, by their ids. */
  taken: v.pipe(v.array(text(40)), v.maxLength(40, 'has more than 40 precautions')),
  approvedBy: text(80),
  checks: v.pipe(v.array(checkRecord), v.maxLength(12, 'has more than 12 checks')),
  /** When the prediction was locked in, ISO 8601, and the mark of what was locked; null before. */
  locked: v.nullable(record({ at: text(40), mark: text(80) })),
});

/** A test plan: plain data, one version, every key with its unit. */
export type TestPlan = v.InferOutput<typeof planRecord>;

/** A plan, or every fault found in what was given. */
export type ParsedPlan =
  | { readonly plan: TestPlan; readonly faults?: undefined }
  | { readonly plan?: undefined; readonly faults: readonly Fault[] };

/** Reads unknown data as a test plan; its scenario is checked as any scenario is. */
export function parsePlan(input: unknown): ParsedPlan {
  const result = v.safeParse(planRecord, input);
  if (!result.success)
    return { faults: result.issues.map((issue) => ({ path: v.getDotPath(issue) ?? '', message: issue.message })) };
  const { faults } = parseScenario(result.output.scenario);
  if (faults) return { faults: faults.map(({ path, message }) => ({ path: `scenario.${path}`, message })) };
  return { plan: result.output };
}

/** A plan of a lead as a page opens it: nothing ticked, nothing locked. */
export function emptyPlan(scenario: Scenario): TestPlan {
  return {
    ...{ version: 1, id: '', sample: '', question: '', marking: '', identified: '', scenario },
    supply: { kind: 'isolated bench supply', current: 'dc', most_V: 15, most_A: 20 },
    probes: [
      { place: 'middle', name: 'sheath, middle' },
      { place: 'ambient', name: 'air beside it' },
    ],
    abort: { conductor_degC: 70, sheath_degC: 60 },
    ...{ bench: 'teaching', people: [], instruments: [], taken: [], approvedBy: '', checks: [], locked: null },
  };
}

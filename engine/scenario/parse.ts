import * as v from 'valibot';
import { loadedStart } from '../heating/start.ts';
import { buildCase } from '../heating/thermal-case.ts';
import { deviceOf } from '../protection/devices.ts';
import { type Fault, ScenarioFault } from './fault.ts';
import { type Scenario, scenarioSchema } from './schema.ts';

/** A scenario, or every fault found in what was given. */
export type Parsed =
  | { readonly scenario: Scenario; readonly faults?: undefined }
  | { readonly scenario?: undefined; readonly faults: readonly Fault[] };

function faultsOf(issues: readonly v.BaseIssue<unknown>[]): Fault[] {
  return issues.map((issue) => ({ path: v.getDotPath(issue) ?? '', message: issue.message }));
}

/**
 * Reads unknown data as a scenario. All faults of shape and range come back at once, each with its path and what would be
 * right; then those that only show when the parts are put together (a size the table lacks, a lead too long for its drum).
 */
export function parseScenario(input: unknown): Parsed {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    return {
      faults: [
        {
          path: '',
          message: 'is not a scenario: it must be a set of values with at least cable, surroundings and supply',
        },
      ],
    };
  }
  const result = v.safeParse(scenarioSchema, input);
  if (!result.success) return { faults: faultsOf(result.issues) };
  try {
    loadedStart(buildCase(result.output));
    if (result.output.device) deviceOf(result.output.device);
  } catch (fault) {
    if (fault instanceof ScenarioFault) return { faults: [fault.fault] };
    throw fault;
  }
  return { scenario: result.output };
}

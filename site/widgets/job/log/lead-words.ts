import type { lockState, Scenario, TestPlan, ThermalCase } from '#engine';
import { quantity, three } from '../../../lib/format.ts';

/** The lead of a case, and where it lies, in two sentences. */
export function leadWords({ cable, lead, outside, n }: ThermalCase): string {
  const { conductor } = cable;
  const loaded = cable.cores > 1 ? `, ${n} of ${cable.cores} cores loaded` : '';
  const R = three(conductor.R20 * 1e3, 'mΩ/m');
  const metal = cable.row ? `, ${conductor.metal.name}` : '';
  return `${cable.name}${metal}, ${quantity(lead.length, 'm')}${loaded}, ${R} a core at 20 °C. It lies: ${outside.words}.`;
}

/** Whether two scenarios are of the same lead in the same place; what the supply does is the log's own. */
export function sameCase(a: Scenario, b: Scenario): boolean {
  const said = ({ cable, lead, surroundings, start }: Scenario) => JSON.stringify([cable, lead, surroundings, start]);
  return said(a) === said(b);
}

/** What was locked in before the readings. */
export function lockWords(plan: TestPlan | null, state: ReturnType<typeof lockState>, same: boolean): string {
  if (!plan?.locked)
    return 'No prediction was locked in before. So this one comes after the readings; the report says so.';
  const when = new Date(plan.locked.at).toLocaleString();
  if (state === 'changed since')
    return `A prediction was locked in on ${when}, but the plan was changed since. This is no longer what was locked in.`;
  if (!same) return `A prediction was locked in on ${when}, of another lead or place. This is not that one.`;
  return `The prediction was locked in on ${when}, before the readings. The comparison is with that lead.`;
}

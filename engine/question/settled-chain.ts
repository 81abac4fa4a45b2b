import { type Chain, steadyState } from '../heating/steady.ts';
import { supplyOf } from '../heating/supply.ts';
import { buildCase } from '../heating/thermal-case.ts';
import { celsius } from '../quantity.ts';
import type { Scenario, SupplyStep } from '../scenario/schema.ts';

/** Temperatures along the heat's way out once a scenario has settled under its last supply step [K], and the heat [W/m]; null where it does not. */
export function chainOf(scenario: Scenario): Chain | null {
  const of = buildCase(scenario);
  const steady = steadyState(of, supplyOf(of, scenario.supply.at(-1) as SupplyStep));
  return steady.kind === 'steady' ? steady.chain : null;
}

/** A temperature as it is told: whole degrees Celsius. `T` in K. */
export const whole_degC = (T: number): number => Math.round(celsius(T));

/** Half-width of an estimate of a temperature: ±max(5 K, 10 % of the rise) (curriculum, section 4, e). `rise` in K. */
export const estimateWidth = (rise: number): number => Math.max(5, 0.1 * rise);

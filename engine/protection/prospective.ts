import { nominalVolts } from '../heating/nominal-load.ts';
import type { Scenario } from '../scenario/schema.ts';
import { type CitedValue, cite } from './cited.ts';

/**
 * Greatest current [A] that harm is looked for up to where a case tells no fault path. Our choice: 230 V over 0.23 Ω, a
 * socket some way from its transformer. Nearer to one more flows, and a case that tells its fault path has its own
 * current.
 */
export const socketCurrent: CitedValue = {
  value: 1000,
  ...cite('own', 'a socket some way from its transformer', 'our choice'),
};

/** A prospective current, and what it was taken from. */
export interface Prospective {
  /** [A] */
  readonly I: number;
  readonly from: 'fault path' | 'our choice';
}

/**
 * Voltage to earth that drives a scenario's fault [V]: its own, else that of the mains in its first supply step, else
 * the nominal one. Volts held across a lead are a bench's, not an installation's, and are not taken.
 */
export function faultVolts({ fault, practice = 'iec', supply }: Scenario): number {
  const first = supply[0];
  const mains = first && (first.kind === 'mains' || first.kind === 'power') ? first.U_V : 0;
  return fault?.U0_V ?? (mains > 0 ? mains : nominalVolts[practice].value);
}

/**
 * The greatest current that a device before the lead may meet: a fault at the lead's near end, U0/Ze, where the case
 * tells its fault path; else `socketCurrent`. Fixed wiring before the lead is left out, which errs to the greater
 * current.
 */
export function prospectiveOf(scenario: Scenario): Prospective {
  const { fault } = scenario;
  if (!fault) return { I: socketCurrent.value, from: 'our choice' };
  return { I: faultVolts(scenario) / fault.Ze_ohm, from: 'fault path' };
}

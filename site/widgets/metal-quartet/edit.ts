import { metalsCompared, type Scenario } from '#engine';
import { fixed } from '../../lib/format.ts';
import { currentOf } from '../figure/edit.ts';
import type { Held } from './words.ts';

/** Volts of the first supply step; undefined where it holds something else. */
export function voltsOf({ supply }: Scenario): number | undefined {
  const first = supply[0];
  return first?.kind === 'voltage' ? first.U_V : undefined;
}

/** The scenario with its first step held at `U_V` volts along the whole lead. */
export function withVolts(scenario: Scenario, U_V: number): Scenario {
  return withFirst(scenario, { kind: 'voltage', U_V });
}

/** What the supply of a case holds. */
export const heldOf = (scenario: Scenario): Held => (voltsOf(scenario) === undefined ? 'amps' : 'volts');

/**
 * The case with the other thing held, about alike for its copper cord: the volts that it takes when it has settled with the
 * amperes held, to a tenth, or the amperes that it settles at with the volts held, to a half.
 */
export function withHeld(scenario: Scenario, held: Held): Scenario {
  if (heldOf(scenario) === held) return scenario;
  const copper = metalsCompared(scenario)[0];
  const settled = copper?.settled;
  if (!copper || !settled) return held === 'volts' ? withVolts(scenario, 1) : withAmps(scenario, 5);
  const { length, inSeries } = copper.thermal.lead;
  const U = settled.I * settled.R * length * inSeries;
  return held === 'volts' ? withVolts(scenario, rounded(U, 10)) : withAmps(scenario, rounded(settled.I, 2));
}

const rounded = (value: number, parts: number): number => Math.max(1, Math.round(value * parts)) / parts;

function withAmps(scenario: Scenario, I_A: number): Scenario {
  return currentOf(scenario) === I_A ? scenario : withFirst(scenario, { kind: 'current', I_A });
}

function withFirst(scenario: Scenario, step: Scenario['supply'][number]): Scenario {
  const [first, ...others] = scenario.supply;
  const timing = first?.duration_s === undefined ? {} : { duration_s: first.duration_s };
  return { ...scenario, supply: [{ ...step, ...timing }, ...others] };
}

/** A figure for a table that may not be there. */
export const orDash = (value: number | null, places: number): string => (value === null ? '–' : fixed(value, places));

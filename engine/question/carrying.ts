import { buildCase } from '../heating/thermal-case.ts';
import { celsius } from '../quantity.ts';
import type { CableSpec, Scenario, SurroundingsSpec } from '../scenario/schema.ts';
import { settlesAt } from './experiment.ts';
import type { Practice } from './types.ts';

/** What stands round a cable, or still air at so many degrees [°C]. */
type Around = SurroundingsSpec | number;

/** A cable that starts at ambient and carries `I_A` for `duration_s`. */
export function carrying(
  cable: CableSpec,
  around: Around,
  I_A: number,
  practice: Practice,
  duration_s = 1800,
): Scenario {
  const surroundings: SurroundingsSpec =
    typeof around === 'number' ? { kind: 'stillAir', ambient_degC: around } : around;
  return { cable, practice, surroundings, supply: [{ kind: 'current', I_A }], run: { duration_s } };
}

/** The cable with conductors of `R20` [Ω/m] at 20 °C, all else as it is. */
export function withResistance(spec: CableSpec, R20: number): CableSpec {
  const own = { R20_ohmPerKm: R20 * 1e3 };
  if ('table' in spec) return { ...spec, conductor: { ...spec.conductor, ...own } };
  return { ...spec, conductor: { ...spec.conductor, ...own } };
}

/** Where a scenario's conductor settles under its last supply step [°C]; infinite where it does not. */
export function settledAt(scenario: Scenario): number {
  const T = settlesAt(buildCase(scenario));
  return T === null ? Number.POSITIVE_INFINITY : celsius(T);
}

/** Whether every two of the values are at least `by` from each other. */
export function allApart(values: readonly number[], by: number): boolean {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.every((value, i) => i === 0 || value - (sorted[i - 1] as number) >= by);
}

/** Temperatures that a question tells apart keep this from each other [K] (our choice: a good probe would tell them apart too). */
export const clearly = 4;

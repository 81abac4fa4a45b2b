import type { Scenario } from '#engine';

/** Amperes of the first supply step; undefined where it holds something else. */
export function currentOf({ supply }: Scenario): number | undefined {
  const first = supply[0];
  return first?.kind === 'current' ? first.I_A : undefined;
}

/** The scenario with its first step held at `I_A` amperes. */
export function withCurrent(scenario: Scenario, I_A: number): Scenario {
  const [first, ...others] = scenario.supply;
  if (first?.kind !== 'current') return scenario;
  return { ...scenario, supply: [{ ...first, I_A }, ...others] };
}

/** The scenario in surroundings of `ambient_degC`. */
export function withAmbient(scenario: Scenario, ambient_degC: number): Scenario {
  return { ...scenario, surroundings: { ...scenario.surroundings, ambient_degC } };
}

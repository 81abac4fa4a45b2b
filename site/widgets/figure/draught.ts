import type { Scenario } from '#engine';

/** Speed of the air across a lead in the open [m/s], 0 where it is still; undefined in other surroundings. */
export function draughtOf({ surroundings }: Scenario): number | undefined {
  if (surroundings.kind === 'draught') return surroundings.speed_mPerS;
  return surroundings.kind === 'stillAir' ? 0 : undefined;
}

/** A lead in the open with air of `speed_mPerS` across it; 0 is still air. Other surroundings stay as they are. */
export function withDraught(scenario: Scenario, speed_mPerS: number): Scenario {
  const { surroundings } = scenario;
  if (surroundings.kind !== 'stillAir' && surroundings.kind !== 'draught') return scenario;
  const { ambient_degC, emissivity, convection } = surroundings;
  const air = {
    ambient_degC,
    ...(emissivity === undefined ? {} : { emissivity }),
    ...(convection === undefined ? {} : { convection }),
  };
  return {
    ...scenario,
    surroundings: speed_mPerS > 0 ? { kind: 'draught', ...air, speed_mPerS } : { kind: 'stillAir', ...air },
  };
}

import { ScenarioFault } from '../scenario/fault.ts';
import type { Mesh } from './mesh.ts';
import { steadyState } from './steady.ts';
import { supplyOf } from './supply.ts';
import type { ThermalCase } from './thermal-case.ts';

/** The temperature at each node when a run begins [K]: even, or steady at a load carried before. Throws `ScenarioFault` where that load has no steady state. */
export function startProfile(of: ThermalCase, mesh: Mesh, start: Start = loadedStart(of)): Float64Array {
  const profile = new Float64Array(mesh.r.length);
  const { T, flow } = start;
  profile[0] = T;
  for (let i = 1; i < profile.length; i++) profile[i] = (profile[i - 1] as number) - flow / (mesh.K[i - 1] as number);
  return profile;
}

/** Conductor temperature [K] and heat flow [W/m] as a run begins; flow 0 where all is at one temperature. */
export interface Start {
  readonly T: number;
  readonly flow: number;
}

/** How the case begins: even, or steady at the load carried before. */
export function loadedStart(of: ThermalCase): Start {
  const before = of.scenario.start?.steadyAt_A;
  if (before === undefined) return { T: of.T0, flow: 0 };
  const steady = steadyState(of, supplyOf(of, { kind: 'current', I_A: before }), of.Ta);
  if (steady.kind === 'no steady state')
    throw new ScenarioFault(
      'start.steadyAt_A',
      `is ${before} A, which has no steady state below the metal's melting point`,
    );
  return { T: steady.chain.conductor, flow: steady.chain.flow };
}

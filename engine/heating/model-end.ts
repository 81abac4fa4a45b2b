import type { ThermalCase } from './thermal-case.ts';

/**
 * Conductor temperature [K] past which a steady state is outside the model: where the insulation may stand it for a short
 * circuit at the most, or begins to give off fumes, or the metal's straight line is no longer sound, whichever comes first.
 */
export function modelEnd({ cable }: ThermalCase): number {
  const ends = (cable.insulation?.limits ?? []).filter(({ kind }) => kind === 'shortTime' || kind === 'fumes');
  return Math.min(cable.conductor.metal.range[1], ...ends.map(({ low }) => low));
}

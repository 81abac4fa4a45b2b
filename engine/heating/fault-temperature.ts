import type { Cable } from '../cable/cable.ts';
import { kelvin } from '../quantity.ts';
import type { FaultSpec } from '../scenario/schema.ts';
import { ratingOf } from './limits-of.ts';

/** Conductor temperature that rules take during a fault of a 70 °C cable [K]. */
export const faultTemperature = kelvin(70);

/**
 * Conductor temperature that a fault takes where none is told [K]: the rating of the insulation, short of the metal's
 * melting.
 */
export function usualFaultTemperature(cable: Cable): number {
  return Math.min(ratingOf(cable) ?? faultTemperature, cable.conductor.metal.melting.value);
}

/** Conductor temperature during a fault [K]: as told, else the usual one. */
export function faultTemperatureOf(cable: Cable, { T_degC }: FaultSpec): number {
  return T_degC === undefined ? usualFaultTemperature(cable) : kelvin(T_degC);
}

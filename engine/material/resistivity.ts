import { within } from '../errors.ts';
import { kelvin } from '../quantity.ts';
import type { Metal } from './metals.ts';

/** 20 °C, where resistances are told [K]. */
export const T20 = kelvin(20);

/** ρ(θ)/ρ20 = 1 + α20 (θ − 20) + β20 (θ − 20)²: `alpha20` [1/K], `beta20` [1/K²], `T` [K]; dimensionless. */
export function resistanceRatio(alpha20: number, beta20: number, T: number): number {
  const x = T - T20;
  return 1 + x * (alpha20 + beta20 * x);
}

/**
 * Resistivity ρ(θ) = ρ20 (1 + α20 (θ − 20) + β20 (θ − 20)²) [Ω·m] of `metal` at `T` [K], 100 K to its melting point
 * (`OutOfRange` beyond, so a Celsius figure given as kelvin is refused where it matters).
 */
export function resistivity(metal: Metal, T: number): number {
  within('conductor temperature', T, [100, metal.melting.value], 'K');
  return metal.rho20.value * resistanceRatio(metal.alpha20.value, metal.beta20.value, T);
}

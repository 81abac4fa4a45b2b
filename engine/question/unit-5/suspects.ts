import { clad, type Metal, metals } from '../../material/metals.ts';
import { resistanceRatio } from '../../material/resistivity.ts';
import { kelvin } from '../../quantity.ts';
import type { AskedMetal } from '../unit-1/metal-leads.ts';

// What the conductors of a suspect lead may be, and what a bridge and a balance make of them.

/** Strands of a flexible conductor run a little longer than the cord: by this, ours of the standing cast's suspect. */
export const layFactor = 1.02;

/** Metals a suspect lead may turn out to be. */
export type SuspectMetal = Extract<AskedMetal, 'copper' | 'cca10' | 'aluminium' | 'steel'>;

/** Them all, by their product, low to high. */
export const suspectMetals: readonly SuspectMetal[] = ['aluminium', 'cca10', 'copper', 'steel'];

/** Resistivity times density of a straight wire [Ω·kg/m²]: R' · m', in which the area cancels. */
export const productOf = (metal: Metal): number => metal.rho20.value * metal.density.value;

/** What strands of `area` [m²] of metal read: R'20 [Ω/m] and mass [kg/m] of one core. */
export function coreReads(metal: SuspectMetal, area: number) {
  const { rho20, density } = metals[metal];
  return { R: (rho20.value * layFactor) / area, mass: density.value * layFactor * area };
}

/** The metal whose own product lies nearest, by ratio. `product` in Ω·kg/m². */
export function nearestMetal(product: number): SuspectMetal {
  const off = (metal: SuspectMetal) => Math.abs(Math.log(product / productOf(metals[metal])));
  return suspectMetals.reduce((best, one) => (off(one) < off(best) ? one : best));
}

/** Whether a product names one metal alone: within a lay of 6 % above it, and no other so (our choice). */
export function isPlain(product: number): boolean {
  const fits = suspectMetals.filter((one) => {
    const ratio = product / productOf(metals[one]);
    return ratio > 0.985 && ratio < 1.065;
  });
  return fits.length === 1 && fits[0] === nearestMetal(product);
}

/** Copper-clad aluminium with a share `f` of its volume copper. */
export const cladOf = (f: number): Metal => clad('asked', 'copper-clad aluminium', metals.copper, metals.aluminium, f);

/** Copper's share of the mass of a clad wire with a share `f` of its volume copper [1]. */
export const massShare = (f: number): number => (f * metals.copper.density.value) / cladOf(f).density.value;

/** Density of a clad wire if `f` were copper's share of the mass [kg/m³]: what a learner works with who mixes the two up. */
export const densityByMass = (f: number): number =>
  1 / (f / metals.copper.density.value + (1 - f) / metals.aluminium.density.value);

/** R(θ)/R20 of a metal at so many degrees [°C]. */
export const warmer = (alpha20: number, T_degC: number): number => resistanceRatio(alpha20, 0, kelvin(T_degC));

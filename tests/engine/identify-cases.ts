import type { Candidate, Evidence, Identification, IdentifiedMetal } from '#engine';
import { kelvin } from '#engine';

/** A measured value with a relative standard uncertainty. */
export const about = (value: number, relative: number) => ({ value, u: value * relative });

/** Four-terminal resistance of a lead of 8 m, go and return, at 20 °C, from its resistance a metre of core. */
export const loopOf = (R20: number, relative = 0.004): NonNullable<Evidence['resistance']> => ({
  R: about(16 * R20, relative),
  length: { value: 8, u: 0.02 },
  inSeries: 2,
  temperature: { value: kelvin(20), u: 0.5 },
  method: 'four-terminal',
});

/** Strands that were counted, and gauged in millimetres. */
export const strandsOf = (count: number, diameter_mm: number, u_mm = 0.006): NonNullable<Evidence['strands']> => ({
  count: { value: count, u: 0 },
  diameter: { value: diameter_mm * 1e-3, u: u_mm * 1e-3 },
});

/** Mass of two metres of one core, from its mass a metre [kg/m]. */
export const massOf = (perMetre: number, relative = 0.02): NonNullable<Evidence['mass']> => ({
  mass: about(2 * perMetre, relative),
  length: { value: 2, u: 0.005 },
});

/** The suspect of lesson 5.2: marked 1.5 mm², 36.0 mΩ/m, 24 strands of 0.20 mm, 2.50 g/m. */
export const suspect: Evidence = {
  resistance: loopOf(36e-3),
  strands: strandsOf(24, 0.2),
  mass: massOf(2.5e-3),
  magnet: 'does not',
  skin: { colour: 'copper-red' },
  under: { colour: 'silvery' },
  marking: { size_mm2: 1.5, material: 'copper' },
};

/** One metal of an answer. */
export function the(metal: IdentifiedMetal, { candidates }: Identification): Candidate {
  const found = candidates.find((one) => one.metal === metal);
  if (!found) throw new Error(`no ${metal} among the metals`);
  return found;
}

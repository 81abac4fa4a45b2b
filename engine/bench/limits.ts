import { ratingOf } from '../heating/limits-of.ts';
import type { LiveStop } from '../heating/live.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import { kelvin } from '../quantity.ts';
import type { SupplyStep } from '../scenario/schema.ts';

// Limits of a bench on which a lead is loaded: ours, common practice, no source. Whoever stands at the bench may make them
// stricter, never looser.

/** Greatest volts of the bench's supply where the plan does not say [V]. */
export const usualBenchVolts = 15;

/** Above these a plan is refused [V]: AC, and ripple-free DC. */
export const mostBenchVolts = { ac: 25, dc: 60 } as const;

/** Greatest temperature of a probe on the sheath on a teaching bench [K]. */
export const mostSheath = kelvin(60);
/** The same on a practitioner's bench [K]. */
export const mostSheathPractised = kelvin(80);

/** Shortest sample [m]: nothing is known within 0.3 m of each end. */
export const leastSample = 1;

const mostPvc = kelvin(70);

/** Greatest abort limit of a case's conductor [K]: the rating of its insulation, and 70 °C at most for PVC and for bare metal. */
export function mostConductor({ cable }: ThermalCase): number {
  const rating = ratingOf(cable);
  if (rating === null) return mostPvc;
  return cable.insulation?.id.startsWith('pvc') ? Math.min(mostPvc, rating) : rating;
}

/** The limits [K] that open the abort contact, on the conductor and on the sheath. */
export function abortStops(conductor: number, sheath: number): readonly LiveStop[] {
  return [
    { place: 'conductor', T: conductor },
    { place: 'surface', T: sheath },
  ];
}

/** Whether a supply step asks for more volts than a bench may have. */
export function overBenchVolts(step: SupplyStep): boolean {
  if (step.kind === 'mains' || step.kind === 'power') return step.U_V > mostBenchVolts.ac;
  if (step.kind === 'voltage') return step.U_V > mostBenchVolts.dc;
  return step.kind === 'current' && (step.compliance_V ?? 0) > mostBenchVolts.dc;
}

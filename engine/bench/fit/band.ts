import type { Cable } from '../../cable/cable.ts';
import type { ThermalCase } from '../../heating/thermal-case.ts';

/** One standard uncertainty of what a prediction rests on. */
export interface CaseUncertainty {
  /** Resistance at 20 °C, outer diameter and the surface law, each as a share of itself. */
  readonly R20: number;
  readonly diameter: number;
  readonly law: number;
  /** Emissivity of the surface, as such; air [K]. */
  readonly emissivity: number;
  readonly ambient: number;
}

/** Our choice, where a case does not say: a measured resistance, how far a maker stays below a standard's greatest, a metal area. */
const measuredResistance = 0.005;
const belowGreatest = 0.02;
const areaShare = 0.02;
/** Outer diameter of a cable that is in no table (our choice). */
const diameterShare = 0.02;
/** The laws of the surface: air, clipped or touching (heat-model: printed ratings within −6 … +9 %), coil (our choice). */
const lawShare = { stillAir: 0.03, draught: 0.03, lagged: 0.03, clipped: 0.05, coiled: 0.15 } as const;
/** Air that no thermometer of the log tells [K] (our choice). */
const untoldAir = 1;

/** How well a case is known, from its own records. `ambient` is the log's figure [K], null where the log has no air. */
export function caseUncertainty({ cable, scenario }: ThermalCase, ambient: number | null): CaseUncertainty {
  return {
    R20: resistanceShare(cable),
    diameter: overallShare(cable),
    law: lawShare[scenario.surroundings.kind],
    emissivity: (cable.sheath ?? cable.insulation)?.emissivity.u ?? cable.conductor.metal.emissivity.u,
    ambient: ambient ?? untoldAir,
  };
}

function resistanceShare({ conductor }: Cable): number {
  const { basis, metal } = conductor;
  if (basis === 'measured or given') return measuredResistance;
  if (basis.startsWith('greatest')) return belowGreatest;
  return Math.hypot(metal.rho20.u / metal.rho20.value, areaShare);
}

/** The standard's limits on overall diameter, all between them alike likely. */
function overallShare({ row }: Cable): number {
  if (!row) return diameterShare;
  const [least, most] = row.overall_mm;
  return (most - least) / (most + least) / Math.sqrt(3);
}

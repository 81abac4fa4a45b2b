import {
  celsius,
  kelvin,
  type LiveStop,
  ratingAt,
  ratingOf,
  type Scenario,
  type SupplyStep,
  supplyOf,
  supplyWords,
  type ThermalCase,
} from '#engine';
import { quantity } from '../../lib/format.ts';

// The bench rules of this course: common practice, no source. They may be made stricter by whoever stands at the bench, never looser.

/** Greatest volts of the bench's supply where the plan does not say [V]. */
export const usualVolts = 15;
/** Above these a plan is refused [V]. */
export const mostVolts = { ac: 25, dc: 60 } as const;
/** Greatest temperature of a probe on the sheath on a teaching bench [°C]. */
export const mostSheath_degC = 60;
/** Shortest sample [m]: nothing is known within 0.3 m of each end. */
const leastLength = 1;
const pvcMost_degC = 70;

/** Greatest abort limit of a case's conductor [°C]: the rating of its insulation, and 70 °C for PVC or bare metal. */
export function mostConductor_degC(of: ThermalCase): number {
  const rating = ratingOf(of.cable);
  if (rating === null) return pvcMost_degC;
  const pvc = of.cable.insulation?.id.startsWith('pvc') ?? false;
  return pvc ? Math.min(pvcMost_degC, celsius(rating)) : celsius(rating);
}

/** The limits that open the abort contact, as the engine takes them. */
export function stopsOf(conductor_degC: number, sheath_degC: number): readonly LiveStop[] {
  return [
    { place: 'conductor', T: kelvin(conductor_degC) },
    { place: 'surface', T: kelvin(sheath_degC) },
  ];
}

const driving = ({ supply }: Scenario): SupplyStep | undefined => supply.find(({ kind }) => kind !== 'off');

function tooHigh(step: SupplyStep): boolean {
  if (step.kind === 'mains' || step.kind === 'power') return step.U_V > mostVolts.ac;
  if (step.kind === 'voltage') return step.U_V > mostVolts.dc;
  return step.kind === 'current' && (step.compliance_V ?? 0) > mostVolts.dc;
}

/** Why a plan may not be put on a bench, in words; undefined where it may. */
export function refusalOf({ supply }: Scenario): string | undefined {
  const step = supply.find(tooHigh);
  if (!step) return undefined;
  return `The plan asks for ${supplyWords(step)}. A bench takes nothing above ${mostVolts.ac} V AC or ${mostVolts.dc} V ripple-free DC, and never the mains. The plan is refused.`;
}

/** What the bench's own supply is set to when a plan is put on it. */
export interface Setting {
  /** Current of the knob [A]. */
  readonly I_A: number;
  /** Greatest volts [V]. */
  readonly U_V: number;
}

/** The setting that a plan begins with: its first current, or its volts as the limit. Nothing for a plan that is refused. */
export function settingOf(of: ThermalCase): Setting {
  const step = driving(of.scenario);
  if (!step || refusalOf(of.scenario)) return { I_A: 0, U_V: usualVolts };
  if (step.kind === 'current') return { I_A: step.I_A, U_V: step.compliance_V || usualVolts };
  const I = supplyOf(of, step).current(of.T0);
  if (step.kind === 'voltage') return { I_A: Math.ceil(I), U_V: Math.max(0.1, step.U_V) };
  return { I_A: Math.round(I), U_V: usualVolts };
}

const ranges = [10, 20, 30, 50, 75, 100, 150, 200, 300] as const;

/** End of the knob [A]: enough for the plan, and for two and a half times what the lead carries for ever at its limit. */
export function knobEnd(of: ThermalCase): number {
  const steady = ratingAt(of, kelvin(mostConductor_degC(of))) ?? 0;
  const wanted = Math.max(settingOf(of).I_A, 2.5 * steady);
  return ranges.find((end) => end >= wanted) ?? 300;
}

/** What else must be said of a case before it is put on a real bench. */
export function remarksOf(of: ThermalCase): string[] {
  const { scenario, lead } = of;
  const step = driving(scenario);
  const remarks: string[] = [];
  if (scenario.surroundings.kind === 'coiled' || scenario.surroundings.kind === 'lagged')
    remarks.push(
      'A lead that is wound or covered needs a probe at its hottest place. Here the thermometer lies there.',
    );
  if (lead.length < leastLength)
    remarks.push(
      `This lead is ${quantity(lead.length, 'm', 2)} long. A sample is at least ${leastLength} m, since the parts near its ends run cooler.`,
    );
  if (step && step.kind !== 'current' && !refusalOf(scenario))
    remarks.push(`The plan says ${supplyWords(step)}. This supply is set by its current and a limit on its volts.`);
  if (settingOf(of).I_A > 300) remarks.push('The plan asks for more than this supply gives. The knob ends at 300 A.');
  return remarks;
}

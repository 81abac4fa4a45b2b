import {
  leastSample,
  mostBenchVolts,
  mostConductor,
  overBenchVolts,
  ratingAt,
  type Scenario,
  type SupplyStep,
  supplyOf,
  supplyWords,
  type ThermalCase,
  usualBenchVolts,
} from '#engine';
import { quantity } from '../../lib/format.ts';

const driving = ({ supply }: Scenario): SupplyStep | undefined => supply.find(({ kind }) => kind !== 'off');

/** Why a plan may not be put on a bench, in words; undefined where it may. */
export function refusalOf({ supply }: Scenario): string | undefined {
  const step = supply.find(overBenchVolts);
  if (!step) return undefined;
  return `The plan asks for ${supplyWords(step)}. A bench takes nothing above ${mostBenchVolts.ac} V AC or ${mostBenchVolts.dc} V ripple-free DC, and never the mains. The plan is refused.`;
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
  if (!step || refusalOf(of.scenario)) return { I_A: 0, U_V: usualBenchVolts };
  if (step.kind === 'current') return { I_A: step.I_A, U_V: step.compliance_V || usualBenchVolts };
  const I = supplyOf(of, step).current(of.T0);
  if (step.kind === 'voltage') return { I_A: Math.ceil(I), U_V: Math.max(0.1, step.U_V) };
  return { I_A: Math.round(I), U_V: usualBenchVolts };
}

const ranges = [10, 20, 30, 50, 75, 100, 150, 200, 300] as const;

/** End of the knob [A]: enough for the plan, and for two and a half times what the lead carries for ever at its limit. */
export function knobEnd(of: ThermalCase): number {
  const steady = ratingAt(of, mostConductor(of)) ?? 0;
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
  if (lead.length < leastSample)
    remarks.push(
      `This lead is ${quantity(lead.length, 'm', 2)} long. A sample is at least ${leastSample} m, since the parts near its ends run cooler.`,
    );
  if (step && step.kind !== 'current' && !refusalOf(scenario))
    remarks.push(`The plan says ${supplyWords(step)}. This supply is set by its current and a limit on its volts.`);
  if (settingOf(of).I_A > 300) remarks.push('The plan asks for more than this supply gives. The knob ends at 300 A.');
  return remarks;
}

import {
  type Cable,
  cableOf,
  celsius,
  deviceOf,
  type FaultCleared,
  type FixedWiring,
  faultCleared,
  faultLoop,
  kelvin,
  type Scenario,
  sourceVolts,
  usualFaultTemperature,
} from '#engine';
import { circuitDevices, deviceAt } from '../figure/devices.ts';

/** The loop of a lead in words that a figure needs beside its numbers. */
export interface LoopCase extends FaultCleared {
  /** The cable's marking and metal, in words. */
  readonly cable: string;
}

const usualLength = 10; // m

/** Impedance up to the origin, Ze [Ω]: the source's own in the first supply step. */
export function originOhms({ supply }: Scenario): number {
  const first = supply[0];
  return first && 'source_ohm' in first ? (first.source_ohm ?? 0) : 0;
}

/** The case with `source_ohm` [Ω] up to the origin. */
export function withOrigin(scenario: Scenario, source_ohm: number): Scenario {
  const U_V = sourceVolts(scenario);
  return { ...scenario, supply: [{ kind: 'voltage', U_V, source_ohm }, ...scenario.supply.slice(1)] };
}

/** The conductor temperature that a case takes [°C]: its own, else the rating of its insulation. */
export function faultDegrees({ cable, start }: Scenario): number {
  return start?.T_degC ?? Math.round(celsius(usualFaultTemperature(cableOf(cable))));
}

/** A cable by its marking and metal. */
export const cableWords = ({ name, row, conductor }: Cable): string =>
  row ? `${name}, ${conductor.metal.name}` : name;

/** The loop of a figure's case, whose first supply step holds the volts and the ohms up to the origin. */
export function loopCase(scenario: Scenario, fixed: FixedWiring | null): LoopCase {
  const usage = scenario.practice ?? 'iec';
  const cable = cableOf(scenario.cable);
  const device = scenario.device ? deviceOf(scenario.device) : deviceAt(circuitDevices[usage][0] ?? 'B', 16);
  const path = { U0: sourceVolts(scenario), Ze: originOhms(scenario), fixed, T: kelvin(faultDegrees(scenario)) };
  const loop = faultLoop(cable, path, scenario.lead?.length_m ?? usualLength, usage);
  return { ...faultCleared(loop, device), cable: cableWords(cable) };
}

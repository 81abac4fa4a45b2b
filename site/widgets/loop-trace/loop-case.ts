import {
  type Clearing,
  cableOf,
  celsius,
  clearsInTime,
  type Device,
  deviceOf,
  disconnectionTime,
  effectivePath,
  faultTemperature,
  kelvin,
  type Loop,
  loopOf,
  metals,
  partOf,
  ratingOf,
  type Scenario,
  slowest,
  sourceVolts,
  type TimeLimit,
} from '#engine';
import type { Practice } from '../../lib/format.ts';
import { circuitDevices, deviceAt } from '../figure/devices.ts';

/** Ohms at 20 °C of the fixed wiring before the lead, copper: out on the line, back on the protective conductor [Ω]. */
export interface FixedWiring {
  line: number;
  earth: number;
}

/** A fault at the far end of a lead, worked out all the way round. */
export interface LoopCase {
  readonly usage: Practice;
  readonly loop: Loop;
  readonly device: Device;
  /** How long the fault may last; null where the code sets no time. */
  readonly limit: TimeLimit | null;
  readonly clearing: Clearing;
  /** Conductor temperature that the warm ohms are for [°C]. */
  readonly T: number;
  /** Length of the lead [m]. */
  readonly length: number;
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
  return start?.T_degC ?? Math.round(celsius(ratingOf(cableOf(cable)) ?? faultTemperature));
}

/** The loop of a scenario: source, fixed wiring, the lead out, and the same way back on the protective conductor. */
export function loopCase(scenario: Scenario, fixed: FixedWiring | null): LoopCase {
  const usage = scenario.practice ?? 'iec';
  const { conductor, name, row } = cableOf(scenario.cable);
  const length = scenario.lead?.length_m ?? usualLength;
  const T = faultDegrees(scenario);
  const U0 = sourceVolts(scenario);
  const line = usage === 'na' ? 'hot' : 'line';
  const earth = usage === 'na' ? 'ground' : 'earth';
  const wiring = (of: string, R20: number) => ({ name: `${of}, fixed`, R20, alpha20: metals.copper.alpha20.value });
  const loop = loopOf({
    ...{ U0, Ze: originOhms(scenario), T: kelvin(T), ...(usage === 'na' ? { Cmin: 1 } : {}) },
    parts: [
      ...(fixed ? [wiring(line, fixed.line)] : []),
      partOf(`${line}, lead`, conductor, length),
      partOf(`${earth}, lead`, conductor, length),
      ...(fixed ? [wiring(earth, fixed.earth)] : []),
    ],
  });
  const device = scenario.device ? deviceOf(scenario.device) : deviceAt(circuitDevices[usage][0] ?? 'B', 16);
  const slow = (I: number) => slowest(device, I, 'guaranteed');
  const limit = usage === 'iec' ? disconnectionTime(U0) : null;
  const clearing = limit ? clearsInTime(loop, slow, limit) : effectivePath(loop, slow);
  return { usage, loop, device, limit, clearing, T, length, cable: row ? `${name}, ${conductor.metal.name}` : name };
}

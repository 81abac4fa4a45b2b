import type { Cable } from '../cable/cable.ts';
import { faultTemperatureOf } from '../heating/fault-temperature.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import type { Statement } from '../heating/validity.ts';
import { metals } from '../material/metals.ts';
import type { FaultSpec, Scenario } from '../scenario/schema.ts';
import { slowest } from './band.ts';
import { type Clearing, clearsInTime, effectivePath } from './clearing.ts';
import type { Device } from './device.ts';
import { disconnectionTime, type TimeLimit } from './disconnection.ts';
import { type Loop, loopOf, partOf } from './loop.ts';
import { faultVolts } from './prospective.ts';

type Practice = NonNullable<Scenario['practice']>;

/** Ohms at 20 °C of the wiring before the lead, copper: out on the line, back on the protective conductor [Ω]. */
export interface FixedWiring {
  readonly line: number;
  readonly earth: number;
}

/** What closes the loop of a fault at the far end of a lead. */
export interface FaultPath {
  /** Voltage to earth [V], and the impedance up to the origin [Ω]. */
  readonly U0: number;
  readonly Ze: number;
  readonly fixed: FixedWiring | null;
  /** Conductors during the fault [K]. */
  readonly T: number;
}

/** A fault at the far end of a lead, worked out all the way round. */
export interface FaultLoop {
  readonly usage: Practice;
  readonly loop: Loop;
  /** Greatest current of all [A]: a fault at the near end with no wiring before it, U0/Ze; infinite without Ze. */
  readonly nearEnd: number;
  /** How long the fault may last; null where the code sets no time. */
  readonly limit: TimeLimit | null;
  /** Conductor temperature that the warm ohms are for [K]. */
  readonly T: number;
  /** Length of the lead [m]. */
  readonly length: number;
}

/** The same behind a device. */
export interface FaultCleared extends FaultLoop {
  readonly device: Device;
  readonly clearing: Clearing;
}

/**
 * The loop of a fault at the far end of `length` [m] of a lead: up to the origin, fixed wiring, the lead out, and the
 * same way back on a protective conductor of the lead's own size. Times are those of a final circuit on TN earthing;
 * North American rules set none.
 */
export function faultLoop({ conductor }: Cable, path: FaultPath, length: number, usage: Practice): FaultLoop {
  const { U0, Ze, fixed, T } = path;
  const [line, earth] = usage === 'na' ? ['hot', 'ground'] : ['line', 'earth'];
  const wiring = (of: string, R20: number) => ({ name: `${of}, fixed`, R20, alpha20: metals.copper.alpha20.value });
  const loop = loopOf({
    ...{ U0, Ze, T, ...(usage === 'na' ? { Cmin: 1 } : {}) },
    parts: [
      ...(fixed ? [wiring(line, fixed.line)] : []),
      partOf(`${line}, lead`, conductor, length),
      partOf(`${earth}, lead`, conductor, length),
      ...(fixed ? [wiring(earth, fixed.earth)] : []),
    ],
  });
  const limit = usage === 'iec' ? disconnectionTime(U0) : null;
  return { usage, loop, nearEnd: U0 / Ze, limit, T, length };
}

/**
 * Whether `device` clears the fault, by the guaranteed slow edge: in time, or by the North American question of an
 * effective path.
 */
export function faultCleared(of: FaultLoop, device: Device): FaultCleared {
  const slow = (I: number) => slowest(device, I, 'guaranteed');
  const clearing = of.limit ? clearsInTime(of.loop, slow, of.limit) : effectivePath(of.loop, slow);
  return { ...of, device, clearing };
}

/** The fault path of a scenario put together. */
export function faultPathOf(scenario: Scenario, fault: FaultSpec, cable: Cable): FaultPath {
  const { Ze_ohm, line_ohm, earth_ohm } = fault;
  const told = line_ohm !== undefined || earth_ohm !== undefined;
  const fixed = told ? { line: line_ohm ?? 0, earth: earth_ohm ?? 0 } : null;
  return { U0: faultVolts(scenario), Ze: Ze_ohm, fixed, T: faultTemperatureOf(cable, fault) };
}

/** The loop of a case that tells its fault path; null where it tells none. */
export function faultOf({ scenario, cable, lead }: ThermalCase): FaultLoop | null {
  if (!scenario.fault) return null;
  return faultLoop(cable, faultPathOf(scenario, scenario.fault, cable), lead.length, scenario.practice ?? 'iec');
}

/** What the loop of a case leaves out or takes for granted. */
export function faultStatements({ cable, lead }: ThermalCase, { usage, limit }: FaultLoop): Statement[] {
  const conductor = usage === 'na' ? 'equipment grounding conductor' : 'protective conductor';
  const cores: Statement =
    cable.cores > 2
      ? { id: 'way back', text: `The way back is a core of this lead, as thick as the others: its ${conductor}.` }
      : {
          id: 'no way back',
          text: `This lead has no core to spare for a ${conductor}. One of the same size is taken.`,
        };
  const contacts: Statement[] =
    lead.contact > 0
      ? [{ id: 'contacts', text: 'The contacts’ ohms are not in the loop. With them less current flows.' }]
      : [];
  const earthing: Statement[] = limit
    ? [
        {
          id: 'TN',
          text: 'The time is for a metal path back to the source (TN). Through the ground (TT) it is shorter.',
        },
      ]
    : [];
  return [cores, ...contacts, ...earthing];
}

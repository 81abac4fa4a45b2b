import { type Run, runCase } from '../heating/run.ts';
import { loadedStart } from '../heating/start.ts';
import { steadyState } from '../heating/steady.ts';
import { supplyOf } from '../heating/supply.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import { type Validity, validityOf } from '../heating/validity.ts';
import type { Limit } from '../material/limits.ts';
import type { SupplyStep } from '../scenario/schema.ts';
import { type BandAt, bandAt } from './band.ts';
import type { Device } from './device.ts';
import { inSeries } from './operation.ts';
import { timeToLimit } from './time-to-limit.ts';

/**
 * Who is first at a held current: the cable at its limit, or the device. `neither`: the cable stays below and the device must
 * hold. `device or neither`: the cable stays below, the device may act or hold for ever. `conductor` and `device`: surely.
 * `either`: the cable gets there after the device may, and before it must, have acted. `together`: too near to tell.
 */
export type RaceFirst = 'neither' | 'device or neither' | 'device' | 'conductor' | 'either' | 'together';

/** A cable and a device from switch-on at a held current, until both have arrived or it is plain who does not. */
export interface Race {
  readonly thermal: ThermalCase;
  readonly device: Device;
  readonly limit: Limit;
  /** Current in each loaded core [A]. */
  readonly I: number;
  /** Time to the lower end of the limit if nothing opens [s]; infinite where it is not there within a day. */
  readonly conductor: number;
  /** Where the conductor settles if nothing opens [K]; null where it does not settle below the melting of its metal. */
  readonly settles: number | null;
  /** When the device may act and must have acted [s]. */
  readonly band: BandAt;
  /** On the guaranteed edges. */
  readonly first: RaceFirst;
  /** If the device's curve is straight between its points; null where that says the same. */
  readonly assumed: RaceFirst | null;
  /** The cable with the device in series, drawn at its slowest: it ends where the device has surely acted, or at `end`. */
  readonly run: Run;
  readonly validity: Validity;
  /** How long the race is looked at [s]. */
  readonly end: number;
}

/** Longest time to a limit that is looked for [s]: a day. */
const longest = 86_400;
/** Times closer than this part are told as a tie. Our choice: a computed time is told to two figures. */
const tie = 0.02;
/** The later one is waited for while it takes at most so many times as long as the earlier one. Our choice, for the eye. */
const patience = 8;
/** How far a race is followed past its last arrival, and past the first where the other is not waited for. */
const [afterLast, afterFirst] = [1.08, 1.6];

/** Who is first, of times [s] to the limit and to the two edges of the device; infinite where it never happens. */
export function firstOf(conductor: number, fastest: number, slowest: number): RaceFirst {
  const never = Number.POSITIVE_INFINITY;
  if (conductor === never && slowest === never) return fastest === never ? 'neither' : 'device or neither';
  if (conductor <= fastest) return 'conductor';
  if (Math.abs(conductor - slowest) <= tie * slowest) return 'together';
  return slowest < conductor ? 'device' : 'either';
}

/** How long a race is looked at: where nobody arrives, as long as the standard tests the device for holding. */
function endOf(conductor: number, slowest: number, { hold }: Device): number {
  const [early, late] = [conductor, slowest].filter((t) => t > 0).sort((a, b) => a - b) as [number, number?];
  if (early === Number.POSITIVE_INFINITY) return hold.t;
  if (late === undefined) return afterLast * early;
  return late <= patience * early ? afterLast * late : afterFirst * early;
}

/**
 * The race at a held current `I` [A] in each loaded core, from the start of the case; the case's own supply is not used. At a
 * held current the sum ∫ dt/t_op of an edge is t/t_op, so the band itself says when each comes to 1.
 */
export function raceOf(of: ThermalCase, device: Device, limit: Limit, I: number): Race {
  const band = bandAt(device, I);
  const { fastest, slowest, assumed } = band;
  const conductor = timeToLimit(of, limit, loadedStart(of), longest)(I);
  const end = endOf(conductor, slowest, device);
  const thermal = atCurrent(of, I, end);
  const run = runCase(thermal, { series: inSeries(device) });
  const steady = steadyState(of, supplyOf(of, held(I)));
  const first = firstOf(conductor, fastest, slowest);
  const straight = firstOf(conductor, assumed.fastest ?? fastest, assumed.slowest ?? slowest);
  return {
    thermal,
    device,
    limit,
    I,
    conductor,
    settles: steady.kind === 'steady' ? steady.chain.conductor : null,
    band,
    first,
    assumed: straight === first ? null : straight,
    run,
    validity: validityOf(thermal, run),
    end,
  };
}

const held = (I: number): SupplyStep => ({ kind: 'current', I_A: I });

/** The case with `I` [A] held for `end` [s]. */
function atCurrent(of: ThermalCase, I: number, end: number): ThermalCase {
  const { cycles: _cycles, ...scenario } = of.scenario;
  return { ...of, scenario: { ...scenario, supply: [held(I)], run: { ...scenario.run, duration_s: end } } };
}

/** Share of a device's operation used after `t` [s] at a held current, on an edge that acts after `acts` [s]: 0 to 1. */
export function shareUsed(t: number, acts: number): number {
  return t >= acts ? 1 : t / acts;
}

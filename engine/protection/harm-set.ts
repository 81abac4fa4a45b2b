import { OutOfRange, within } from '../errors.ts';
import { ratingAt } from '../heating/rating.ts';
import type { Start } from '../heating/start.ts';
import { steadyState } from '../heating/steady.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import type { Limit } from '../material/limits.ts';
import { slowest } from './band.ts';
import { type Device, lastGate } from './device.ts';
import { type HarmSpan, harmSpans } from './harm-spans.ts';
import { type TimeToLimit, timeToLimit } from './time-to-limit.ts';
import { adiabaticTo } from './withstand.ts';

/** The harm set from one start: on the guaranteed slow edge, and if the device's curve is straight between its points. */
export interface HarmFrom {
  readonly guaranteed: readonly HarmSpan[];
  readonly assumed: readonly HarmSpan[];
}

/** Which currents take a cable past a limit while a device may still hold. Currents in A, of one loaded core. */
export interface HarmSet {
  readonly device: Device;
  readonly limit: Limit;
  /** Steady current at the limit; 0 where ambient is there already. */
  readonly Iz: number;
  /** Greatest current looked at. */
  readonly prospective: number;
  /** The load carried before, where one was told. */
  readonly Ib: number | null;
  /** From ambient all through. */
  readonly cold: HarmFrom;
  /** From steady at Ib; null where no load was told, or where that load itself takes the cable to the limit. */
  readonly loaded: HarmFrom | null;
  /** True where the load itself, for ever, takes the cable past the limit. */
  readonly loadHarms: boolean;
  /** The set that the verdict uses: of the worse start, on the guaranteed edge. */
  readonly spans: readonly HarmSpan[];
  /** The same if the device's curve is straight between its points. */
  readonly assumed: readonly HarmSpan[];
  /** Above this current the device's points say no more than at it; null where the prospective current lies below. */
  readonly silentAbove: number | null;
  /** True where the limit belongs to a shorter time than some of the set lasts: 5 s of a short circuit, taken for minutes. */
  readonly borrowed: boolean;
}

/** What is asked of a harm set beside cable, device and limit. */
export interface HarmQuestion {
  /** Prospective current [A]. */
  readonly prospective: number;
  /** Load current before the overload [A]; left out where the cable is to start cold only. */
  readonly Ib?: number;
}

/** A cable ready to be asked behind any device: its rating at the limit, and how it starts. */
export interface HarmStart {
  /** Steady current at the limit [A]. */
  readonly Iz: number;
  readonly loadHarms: boolean;
  readonly cold: Start;
  /** Null where no load was told, or where that load itself harms. */
  readonly loaded: Start | null;
}

/** Looks at a cable and its load before any device; `OutOfRange` for a current below nothing. */
export function harmStart(of: ThermalCase, limit: Limit, { prospective, Ib }: HarmQuestion): HarmStart {
  within('prospective current', prospective, [0, 1e6], 'A');
  if (Ib !== undefined) within('load current', Ib, [0, 1e6], 'A');
  // where the metal melts before the place can get to its limit in steady state, melting is what is passed
  const Iz = ratingAt(of, limit.low, limit.place) ?? (ratingAt(of, of.cable.conductor.metal.melting.value) as number);
  const loadHarms = Ib !== undefined && Ib > 0 && Ib >= Iz;
  const loaded = Ib !== undefined && Ib > 0 && !loadHarms ? steadyAt(of, Ib) : null;
  return { Iz, loadHarms, cold: { T: of.Ta, flow: 0 }, loaded };
}

/**
 * The harm set { I : t_limit(I) < t_slowest(I) } of a cable in its surroundings behind a device, up to the prospective
 * current, for the lower end of `limit`. The supply of the case is not used. `OutOfRange` for a current below nothing.
 */
export function harmSet(of: ThermalCase, device: Device, limit: Limit, question: HarmQuestion): HarmSet {
  const start = harmStart(of, limit, question);
  const longest = device.by[0]?.t ?? 0;
  const time = (from: Start) => timeToLimit(of, limit, from, longest);
  return harmSetFrom(device, limit, question, start, time(start.cold), start.loaded && time(start.loaded));
}

/** The harm set from times to the limit that are known already, of the two starts. */
export function harmSetFrom(
  device: Device,
  limit: Limit,
  { prospective, Ib }: HarmQuestion,
  { Iz, loadHarms }: HarmStart,
  coldTime: TimeToLimit,
  loadedTime: TimeToLimit | null,
): HarmSet {
  const from = (f: TimeToLimit): HarmFrom => {
    const asked = { device, f, Iz, prospective };
    const guaranteed = harmSpans(asked, 'guaranteed');
    return { guaranteed, assumed: guaranteed.length > 0 ? harmSpans(asked, 'assumed') : [] };
  };
  const cold = from(coldTime);
  const loaded = loadedTime && from(loadedTime);
  const worse = loaded ?? cold;
  const last = lastGate(device)?.I ?? 0;
  return {
    device,
    limit,
    Iz,
    prospective,
    Ib: Ib ?? null,
    cold,
    loaded,
    loadHarms,
    spans: worse.guaranteed,
    assumed: worse.assumed,
    silentAbove: prospective > last ? last : null,
    borrowed: limit.kind === 'shortTime' && worse.guaranteed.some((span) => spanKind(device, span) !== 'fault'),
  };
}

/** Conductor and flow in steady state at `Ib` [A], which lies below the rating at the limit and so has one. */
function steadyAt(of: ThermalCase, Ib: number): Start {
  const steady = steadyState(
    of,
    { step: { kind: 'current', I_A: Ib }, current: () => Ib, possible: () => true },
    of.Ta,
  );
  if (steady.kind !== 'steady') throw new OutOfRange('load current', Ib, [0, Ib], 'A');
  return { T: steady.chain.conductor, flow: steady.chain.flow };
}

/**
 * Whether an interval is one of overload, in which the device may hold for more than 5 s, or of short circuit, in which it
 * acts sooner and the cable still loses. One that runs from overload to beyond the device's last point is `both`.
 */
export function spanKind(device: Device, { from, to }: HarmSpan): 'overload' | 'fault' | 'both' {
  if (slowest(device, from.I, 'guaranteed') <= adiabaticTo) return 'fault';
  return to.evidence === 'not found' ? 'both' : 'overload';
}

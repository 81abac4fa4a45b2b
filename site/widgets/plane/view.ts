import {
  type BandAt,
  bandAt,
  buildCase,
  type Device,
  type DeviceFamily,
  fastest,
  type HarmSet,
  type HarmSpan,
  harmSet,
  harmStart,
  type Limit,
  type PlaceKind,
  type Scenario,
  slowest,
  type ThermalCase,
  type TimeToLimit,
  type ToldSpan,
  timeToLimit,
  toldSpans,
} from '#engine';
import { currentsAbove, currentsAcross, type PlaneAxes, planeAxes } from '../../charts/plane/axes.ts';
import { fastStair, type PlanePoint, slowStair, stairBetween } from '../../charts/plane/edges.ts';
import type { DrawnDevice, DrawnHarm, PlaneReading, ToldBar } from '../../charts/plane/types.ts';
import type { Practice } from '../../lib/format.ts';
import type { SizesByPractice } from '../figure/carry.ts';
import { ampereWords } from './words.ts';

/** A limit of the conductor's insulation that a plane may be about. */
export type PlaneLimit = 'rating' | 'shortTime';

/** What a reader may change of a cord behind its device. */
export type PlaneControl = 'current' | 'device' | 'size' | 'metal' | 'limit' | 'ambient' | 'surroundings';

/** Families of devices to choose from where a page names none, by practice. */
export const cordFamilies: Readonly<Record<Practice, readonly DeviceFamily[]>> = {
  iec: ['bs1362', 'gG', 'B', 'C', 'D'],
  na: ['ul489', 'ul248', 'ul248 delay'],
};

/** Surroundings to choose from where a page names none. */
export const cordPlaces: readonly PlaceKind[] = ['stillAir', 'clipped', 'lagged', 'coiled'];

/** A cable behind a device, and all the plane shows of them. */
export interface Plane {
  readonly scenario: Scenario;
  readonly thermal: ThermalCase;
  readonly device: Device;
  readonly limit: Limit;
  readonly set: HarmSet;
  /** Time to the limit from the worse start, on which the set rests [s]. */
  readonly time: TimeToLimit;
  readonly axes: PlaneAxes;
  readonly drawn: DrawnDevice;
  readonly conductor: readonly PlanePoint[];
  /** From cold, where the worse start is not that. */
  readonly other: readonly PlanePoint[];
  readonly harms: readonly DrawnHarm[];
  readonly bars: readonly ToldBar[];
  /** If the device's curve is straight between its points; null where that says nothing new. */
  readonly assumed: readonly ToldBar[] | null;
}

/** What a page gives a figure of a cord behind its device. */
export interface CordFigure {
  /** Name of the figure on its page: the element's id and its part of the address's fragment. */
  id: string;
  number: string;
  title: string;
  /** The case it opens with, by practice, each with a device and a current. */
  scenarios: Readonly<Record<Practice, Scenario>>;
  /** The limit it opens with: the insulation's rating, or its short-circuit limit. */
  limit?: PlaneLimit;
  /** Families of devices to choose from, by practice. */
  families?: Readonly<Record<Practice, readonly DeviceFamily[]>>;
  /** Greatest rating that is offered [A]. */
  greatest_A?: number;
  sizes?: SizesByPractice;
  /** Surroundings to choose from. */
  places?: readonly PlaceKind[];
  /** What can be changed. */
  controls?: readonly PlaneControl[];
}

/** What a plane is asked for beside its case. */
export interface PlaneQuestion {
  readonly limit: Limit['id'];
  /** Greatest current that can flow [A]. */
  readonly prospective: number;
  /** A current that the plane is to have in sight [A]. */
  readonly seen?: number;
}

/** The limit of a case by its id; its metal's melting where it has none such. */
export const limitOf = ({ limits }: ThermalCase, id: string): Limit =>
  limits.find((limit) => limit.id === id) ?? (limits.find(({ kind }) => kind === 'melting') as Limit);

/**
 * The plane of a scenario with a device. The load carried before is the scenario's start. Throws `ScenarioFault` where the
 * parts do not fit each other, or where there is no device.
 */
export function planeOf(scenario: Scenario, device: Device, question: PlaneQuestion): Plane {
  const thermal = buildCase(scenario);
  const limit = limitOf(thermal, question.limit);
  const Ib = scenario.start?.steadyAt_A;
  const { prospective, seen } = question;
  const asked = { prospective, ...(Ib === undefined ? {} : { Ib }), ...(seen === undefined ? {} : { seen }) };
  return planeFrom(thermal, device, limit, harmSet(thermal, device, limit, asked), asked);
}

/** The plane of a harm set that is known already. */
export function planeFrom(
  thermal: ThermalCase,
  device: Device,
  limit: Limit,
  set: HarmSet,
  asked: { prospective: number; Ib?: number; seen?: number },
): Plane {
  const { Iz, prospective } = set;
  const told = toldSpans(set.spans);
  const ends = [...told, ...toldSpans(set.assumed)].flatMap(({ from, to }) => (to === null ? [from] : [from, to]));
  const gates = [device.hold, ...device.notBefore, ...device.by];
  const axes = planeAxes({
    currents: [
      ...[Iz, set.Ib ?? device.In, device.In, asked.seen ?? device.In],
      ...gates.map(({ I }) => I),
      ...ends.filter((I) => I < prospective),
    ],
    times: [device.hold, ...device.notBefore].map(({ t }) => t),
    by: device.by.map(({ t }) => t),
  });
  const { cold, loaded } = harmStart(thermal, limit, asked);
  const fromCold = timeToLimit(thermal, limit, cold, axes.long);
  const time = loaded ? timeToLimit(thermal, limit, loaded, axes.long) : fromCold;
  const drawn = drawnDevice(device, axes);
  const curve = (f: TimeToLimit): PlanePoint[] => [
    ...(Iz > axes.low ? [[Iz, Number.POSITIVE_INFINITY] as const] : []),
    ...currentsAbove(Iz, axes.high).map((I): PlanePoint => [I, f(I)]),
  ];
  const conductor = curve(time);
  return {
    scenario: thermal.scenario,
    thermal,
    device,
    limit,
    set,
    time,
    axes,
    drawn,
    conductor,
    other: loaded ? curve(fromCold) : [],
    harms: set.spans.map((span) => drawnHarm(span, drawn.slow, conductor, axes)),
    bars: told.map(barOf),
    assumed: JSON.stringify(toldSpans(set.assumed)) === JSON.stringify(told) ? null : toldSpans(set.assumed).map(barOf),
  };
}

const barOf = ({ from, to }: ToldSpan): ToldBar => ({
  from,
  to,
  fromText: ampereWords(from),
  toText: to === null ? 'not found' : ampereWords(to),
});

function drawnHarm(
  span: HarmSpan,
  slow: readonly PlanePoint[],
  curve: readonly PlanePoint[],
  axes: PlaneAxes,
): DrawnHarm {
  const open = span.to.evidence === 'not found';
  const from = Math.max(span.from.I, axes.low);
  const to = open ? axes.high : Math.min(span.to.I, axes.high);
  const lower = [
    [from, span.from.t] as const,
    ...curve.filter(([I]) => I > from && I < to),
    [to, open ? (curve.at(-1)?.[1] ?? 0) : span.to.t] as const,
  ];
  return { upper: stairBetween(slow, from, to), lower, open };
}

/** The device as it is drawn: staircases of its points, and lines where its curve is taken to be straight. */
function drawnDevice(device: Device, axes: PlaneAxes): DrawnDevice {
  const { hold, notBefore, by, In, agreed } = device;
  const gates = [hold, ...notBefore, ...by].map(({ I }) => I);
  const across = currentsAcross(axes.low, axes.high, [...gates, ...gates.map((I) => I * (1 - 1e-6))]);
  const line = (edge: (I: number) => number | null): PlanePoint[] =>
    across.flatMap((I): PlanePoint[] => {
      const t = edge(I);
      return t === null || !Number.isFinite(t) ? [] : [[I, t]];
    });
  const times = (I: number): string => `${Number((I / In).toPrecision(3))} In`;
  const first = by[0];
  return {
    name: device.name,
    slow: slowStair(by, axes.high),
    fast: fastStair(hold.I, notBefore),
    assumedSlow: line((I) => slowest(device, I, 'assumed')),
    assumedFast: line((I) => fastest(device, I, 'assumed')),
    hold: { I: hold.I, text: times(hold.I) },
    acts: first && agreed ? { I: first.I, text: times(first.I) } : null,
  };
}

/** What is read at a current: the times of both, and whether harm can come first there. */
export interface Read extends PlaneReading {
  readonly band: BandAt;
  readonly harmed: boolean;
}

/** Both times at a current `I` [A]. */
export function readAt({ device, set, time }: Plane, I: number): Read {
  const band = bandAt(device, I);
  const conductor = I > set.Iz ? time(I) : Number.POSITIVE_INFINITY;
  const harmed = set.spans.some(({ from, to }) => I > from.I && I < to.I);
  return { I, conductor, fastest: band.fastest, slowest: band.slowest, band, harmed };
}

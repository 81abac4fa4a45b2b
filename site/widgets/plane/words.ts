import { celsius, type Device, type Gate, type HarmSet, type Limit, sources } from '#engine';
import type { Cell, TableTwin } from '../../charts/sheet.ts';
import { type Practice, significant, temperature, thin, timeInWords } from '../../lib/format.ts';
import { shortName } from '../figure/devices.ts';
import type { Plane, Read } from './view.ts';

/** A current as a device's data give it: '20.8 A', '120 A', no more figures than it has. */
export const ampereWords = (I: number): string => `${Number(I.toPrecision(4))}${thin}A`;

/** A time as a standard gives it: '400 s', '0.1 s', '30 min'. */
export function standardTime(t: number): string {
  return t < 600 ? `${Number(t.toPrecision(3))}${thin}s` : timeInWords(t);
}

/** A computed time, no finer than the model: two figures. */
export const aboutTime = (t: number): string => timeInWords(Number(t.toPrecision(2)));

const degrees = ({ low }: Limit, practice: Practice): string => temperature(celsius(low), practice);
const places = { conductor: 'conductor', surface: 'surface', outside: 'outside' } as const;

/** A limit by what it is: 'its 70 °C rating'. */
export function limitWords(limit: Limit, practice: Practice): string {
  const T = degrees(limit, practice);
  if (limit.id === 'rating') return `its ${T} rating`;
  return limit.id === 'shortTime' ? `${T}, its short-circuit limit` : `${T} (${limit.name})`;
}

/** The curve's name in the drawing; short, so °C alone. */
export const curveName = (limit: Limit): string => `${places[limit.place]} reaches ${degrees(limit, 'iec')}`;

/** The one sentence in the drawing. */
export function leaderWords({ device, limit, harms, set }: Plane): string {
  const { kind } = device;
  if (set.loadHarms) return `The load alone takes the ${places[limit.place]} past ${degrees(limit, 'iec')}.`;
  if (harms.length === 0) return `the ${kind} surely acts first`;
  const past = limit.id === 'rating' ? `its ${degrees(limit, 'iec')} rating` : degrees(limit, 'iec');
  return `The ${kind} may hold here while the ${places[limit.place]} is past ${past}.`;
}

/** What a device does at a current, as a sentence: hold, may, or must by. */
export function deviceWords(device: Device, fastest: number, slowest: number): string {
  const name = `The ${shortName(device)}`;
  if (fastest === Number.POSITIVE_INFINITY) return `${name} must hold.`;
  const after = fastest > 0 ? ` after ${standardTime(fastest)}` : '';
  if (slowest === Number.POSITIVE_INFINITY) return `${name} may open${after}, or hold for ever.`;
  return fastest > 0
    ? `${name} must open between ${standardTime(fastest)} and ${standardTime(slowest)}.`
    : `${name} must open within ${standardTime(slowest)}.`;
}

/** When the conductor is at its limit, as a sentence. */
export function conductorWords({ set, limit, axes }: Plane, { I, conductor }: Read, practice: Practice): string {
  const who = `The ${places[limit.place]}`;
  const T = degrees(limit, practice);
  if (conductor === 0) return `${who} is past ${T} from the start.`;
  if (conductor < Number.POSITIVE_INFINITY) return `${who} reaches ${T} in about ${aboutTime(conductor)}.`;
  return I > set.Iz ? `${who} takes longer than ${timeInWords(axes.long)} to ${T}.` : `${who} never reaches ${T}.`;
}

/** All that is read at the operating point. */
export function readWords(plane: Plane, read: Read, practice: Practice): string {
  const verdict = read.harmed
    ? 'Harm can come first.'
    : read.conductor < Number.POSITIVE_INFINITY
      ? `The ${plane.device.kind} acts first.`
      : '';
  return [deviceWords(plane.device, read.fastest, read.slowest), conductorWords(plane, read, practice), verdict]
    .filter(Boolean)
    .join(' ');
}

/** Title block: cable, surroundings, device, limit, start. */
export function planeCells({ thermal, device, limit, set }: Plane, practice: Practice): Cell[] {
  const { cable, n, outside } = thermal;
  return [
    { name: 'Cable', value: `${cable.name}${cable.row ? `, ${cable.conductor.metal.name}` : ''}, ${n} loaded` },
    { name: 'Surroundings', value: outside.words },
    { name: 'Device', value: `${device.name}, band the standard promises` },
    { name: 'Limit', value: `${degrees(limit, practice)}, ${limit.name}` },
    { name: 'Before', value: beforeWords(set) },
    { name: 'Currents up to', value: ampereWords(set.prospective) },
  ];
}

const beforeWords = ({ Ib, loaded }: HarmSet): string =>
  Ib === null ? 'cold' : loaded ? `carried ${ampereWords(Ib)}` : `cold; ${ampereWords(Ib)} is too much already`;

/** Where a device's points come from. */
export const deviceSource = ({ source, where }: Device): string =>
  source === 'user' ? where : `${sources[source].title}, ${where}`;

interface GateRow {
  readonly I: number;
  readonly hold: boolean;
  readonly notBefore: Gate | undefined;
  readonly by: Gate | undefined;
}

/** The standard's points of a device, one row a current. */
export function gateRows({ hold, notBefore, by }: Device): GateRow[] {
  const currents = [...new Set([hold, ...notBefore, ...by].map(({ I }) => I))].sort((a, b) => a - b);
  return currents.map((I) => ({
    I,
    hold: I === hold.I,
    notBefore: I === hold.I ? hold : notBefore.find((gate) => gate.I === I),
    by: by.find((gate) => gate.I === I),
  }));
}

/** What a row's points promise, the earliest first. */
export const gateCells = (row: GateRow): [notBefore: string, by: string, confidence: string] => [
  row.notBefore ? `${standardTime(row.notBefore.t)}${row.hold ? ' (taken as for ever)' : ''}` : '–',
  row.by ? standardTime(row.by.t) : '–',
  [...new Set([row.notBefore?.confidence, row.by?.confidence].filter((one) => one !== undefined))].join('; '),
];

/** The table twin: the standard's points, the conductor's time at each, and where they come from. */
export function planeTable(plane: Plane, title: string, practice: Practice): TableTwin {
  const { device, set, limit, time } = plane;
  const T = degrees(limit, practice);
  const conductor = (I: number): string => {
    const t = I > set.Iz ? time(I) : Number.POSITIVE_INFINITY;
    return t < Number.POSITIVE_INFINITY ? aboutTime(t) : I > set.Iz ? 'very long' : 'never';
  };
  const source = deviceSource(device);
  const gates = gateRows(device).map((row) => {
    const [notBefore, by, confidence] = gateCells(row);
    return [significant(row.I, 4), notBefore, by, conductor(row.I), source, confidence];
  });
  const Iz = [significant(set.Iz, 3), '–', '–', 'never: the greatest steady current', limit.source, limit.confidence];
  const rows = [...gates, ...(set.Iz > 0 ? [Iz] : [])].sort((a, b) => Number(a[0]) - Number(b[0]));
  return {
    caption: `${title}: points of the standard, and the conductor’s time to ${T}`,
    columns: ['Current, A', 'Must not open before', 'Must open by', `Conductor at ${T} in`, 'Source', 'Confidence'],
    rows,
  };
}

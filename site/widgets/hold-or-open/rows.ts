import { bandAt, type Device, type DeviceFamily, deviceFamilies, type OtherSense, otherSenses } from '#engine';
import type { HoldRow } from '../../charts/hold/types.ts';
import type { Cell, TableTwin } from '../../charts/sheet.ts';
import { significant } from '../../lib/format.ts';
import type { Accepts } from '../figure/ask-text.ts';
import { shortName } from '../figure/devices.ts';
import { ampereWords, deviceSource, deviceWords, gateCells, gateRows, standardTime } from '../plane/words.ts';

/** What a hold-or-open line asks. A type, not an interface, so that it is an ask as every figure's is. */
export type HoldAsk = {
  family: DeviceFamily;
  /** Rated current of the device [A]. */
  rating: number;
  /** The load's current [A]. */
  amps: number;
};

/** What each part of it may be: any family, since a page may name any. */
export const acceptedHold: Accepts<HoldAsk> = {
  family: deviceFamilies.map(({ id }) => id),
  rating: [...new Set(deviceFamilies.flatMap(({ ratings }) => ratings))],
  amps: { least: 0.001, most: 10_000 },
};

/** A device as a row, with the standard's times at its points. */
export function holdRow(device: Device, id: string): HoldRow {
  const marks = gateRows(device).map(({ I, hold, notBefore, by }) => {
    const told = hold
      ? ''
      : by && notBefore && by.t > notBefore.t
        ? `: ${standardTime(notBefore.t)} to ${standardTime(by.t)}`
        : by
          ? `: by ${standardTime(by.t)}`
          : notBefore
            ? `: after ${standardTime(notBefore.t)}`
            : '';
    return { I, text: `${ampereWords(I)}${told}` };
  });
  return { id, name: device.name, hold: device.hold.I, acts: device.by[0]?.I ?? null, marks };
}

/** The devices that see other things, by their ids. */
export const senses = (ids: readonly OtherSense['id'][]): OtherSense[] =>
  otherSenses.filter(({ id }) => ids.includes(id));

/** Such a device as a row: it holds at every current. */
export const senseRow = ({ id, name }: OtherSense): HoldRow => ({
  id,
  name,
  hold: Number.POSITIVE_INFINITY,
  acts: null,
  marks: [],
});

/** What each device does at a current, in sentences. */
export function holdWords(devices: readonly Device[], others: readonly OtherSense[], I: number): string {
  const said = devices.map((device) => {
    const { fastest, slowest } = bandAt(device, I);
    return deviceWords(device, fastest, slowest);
  });
  return [...said, ...(others.length > 0 ? [`${namesOf(others)} holds: it looks at something else.`] : [])].join(' ');
}

/** What the line of each device says as a whole. */
export function lineWords(devices: readonly Device[]): string {
  const said = devices.map((device) => {
    const [name, first] = [shortName(device), device.by[0]];
    const holds = `The ${name} must hold up to ${ampereWords(device.hold.I)}`;
    return first
      ? `${holds}, and from ${ampereWords(first.I)} it must open within ${standardTime(first.t)}.`
      : `${holds}. No current was found at which it must open.`;
  });
  return [...said, 'Between these currents it may do either.', devices[0]?.silent ?? ''].join(' ');
}

const namesOf = (others: readonly OtherSense[]): string => `The ${others.map(({ name }) => name).join(' or ')}`;

/** Title block. */
export const holdCells = (devices: readonly Device[], I: number): Cell[] => [
  ...devices.map((device, i) => ({
    name: devices.length > 1 ? `Device ${i + 1}` : 'Device',
    value: device.name,
  })),
  { name: 'Load', value: ampereWords(I) },
];

/** The table twin: each point of each device with source and confidence. */
export function holdTable(devices: readonly Device[], others: readonly OtherSense[], title: string): TableTwin {
  const points = devices.flatMap((device) =>
    gateRows(device).map((row) => {
      const [notBefore, by, confidence] = gateCells(row);
      return [device.name, significant(row.I, 4), notBefore, by, deviceSource(device), confidence];
    }),
  );
  const blind = others.map(({ name, where, source, confidence }) => [
    name,
    'any overload',
    'holds',
    '–',
    `${source}, ${where}`,
    confidence,
  ]);
  return {
    caption: `${title}: points of the standards`,
    columns: ['Device', 'Current, A', 'Must not open before', 'Must open by', 'Source', 'Confidence'],
    rows: [...points, ...blind],
  };
}

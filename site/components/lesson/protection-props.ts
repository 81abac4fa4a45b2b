import * as v from 'valibot';
import { awgSizes, type DeviceFamily, deviceFamilies, standardSizes } from '#engine';
import { amount, castKey, oneOf } from './prop-parts.ts';

// What <Num> accepts for numbers of circuits: volts lost, what a device is bound to, what tables allow a fixed cable.

/** What tables of voltage drop say of a cord: single phase, out and back. */
export const tableDropNumbers = ['drop rate', 'table drop', 'table drop share', 'longest run'] as const;

/** What a run with a load at its end settles at. */
export const runNumbers = ['at the load', 'lost', 'lost share', 'run current', 'delivered', 'run conductor'] as const;

/** What a device's standard binds it to. */
export const deviceNumbers = ['hold current', 'hold time', 'acting current', 'acting time'] as const;

/** What tables, and the engine, say of a fixed cable of one size. */
export const fixedNumbers = ['fixed table', 'small conductor cap', 'fixed conductor', 'fixed rating current'] as const;

const size = v.picklist(
  [...new Set([...standardSizes.map(({ area_mm2 }) => area_mm2), 1.25, ...awgSizes])],
  ({ received }) => `${received} is no size in mm² or AWG`,
);
const amps = amount(0.1, 1000, 'A');
const length = amount(0.5, 1000, 'm');

/** By the printed table of the practice: `length` one way in metres, `share` of the nominal volts in per cent. */
export const tableDropNumber = v.pipe(
  v.strictObject({
    of: oneOf(tableDropNumbers),
    size,
    amps: v.optional(amps),
    length: v.optional(length),
    share: v.optional(amount(0.1, 50, '%')),
  }),
  v.check(({ of, amps: I }) => (of === 'drop rate') === (I === undefined), 'amps: goes with all but a drop rate'),
  v.check(
    ({ of, length: L }) => of.startsWith('table') === (L !== undefined),
    'length: goes with a table drop and its share',
  ),
  v.check(({ of, share }) => (of === 'longest run') === (share !== undefined), 'share: goes with the longest run'),
);

/** A run with a load that takes `amps` at the full nominal volts, and keeps its amps, ohms or watts when it gets less. */
export const runNumber = v.strictObject({
  of: oneOf(runNumbers),
  cast: castKey,
  size: v.optional(size),
  amps,
  ambient: amount(-60, 200, '°C'),
  length,
  load: v.optional(oneOf(['amps', 'ohms', 'watts'])),
});

/** A device of a family at one of its ratings. */
export const deviceNumber = v.strictObject({
  of: oneOf(deviceNumbers),
  device: oneOf(deviceFamilies.map(({ id }) => id) as DeviceFamily[]),
  rating: v.number('is a rating in A, in braces'),
});

/** What a load takes; a continuous one as North American practice counts it. */
export const loadCurrentNumber = v.strictObject({
  of: v.literal('load current'),
  watts: amount(1, 100_000, 'W'),
  volts: amount(1, 1000, 'V'),
  counted: v.optional(v.literal(true, 'stands alone, without a value')),
});

/** A fixed cable: flat twin and earth clipped, or a gauge by the column of its insulation; alone in its place for the engine. */
export const fixedNumber = v.pipe(
  v.strictObject({
    of: oneOf(fixedNumbers),
    size,
    column: v.optional(v.picklist([60, 75, 90], 'is 60, 75 or 90, in braces')),
    amps: v.optional(amps),
    ambient: v.optional(amount(-60, 85, '°C')),
  }),
  v.check(({ of, amps: I }) => (of === 'fixed conductor') === (I !== undefined), 'amps: goes with a fixed conductor'),
  v.check(
    ({ of, ambient }) => ['fixed conductor', 'fixed rating current'].includes(of) === (ambient !== undefined),
    'ambient: goes with what the engine says of a fixed cable',
  ),
);

/** A volt drop by its table. */
export type TableDropNumber = v.InferOutput<typeof tableDropNumber>;
/** A number of a run with its load. */
export type RunNumber = v.InferOutput<typeof runNumber>;
/** A number of a device. */
export type DeviceNumber = v.InferOutput<typeof deviceNumber>;
/** A load's current. */
export type LoadCurrentNumber = v.InferOutput<typeof loadCurrentNumber>;
/** A number of a fixed cable. */
export type FixedNumber = v.InferOutput<typeof fixedNumber>;
/** Any number of a circuit. */
export type ProtectionNumber = TableDropNumber | RunNumber | DeviceNumber | LoadCurrentNumber | FixedNumber;

const schemas = [
  [tableDropNumbers, tableDropNumber],
  [runNumbers, runNumber],
  [deviceNumbers, deviceNumber],
  [['load current'], loadCurrentNumber],
  [fixedNumbers, fixedNumber],
] as const;

/** The schema of a number of circuits by what it is of; undefined for a number of another kind. */
export function protectionSchema(of: string): v.GenericSchema<ProtectionNumber> | undefined {
  const found = schemas.find(([names]) => (names as readonly string[]).includes(of));
  return found?.[1] as v.GenericSchema<ProtectionNumber> | undefined;
}

const every: readonly string[] = schemas.flatMap(([names]) => [...names]);

/** Whether a number is one of circuits. */
export const isProtection = (spec: { of: string }): boolean => every.includes(spec.of);

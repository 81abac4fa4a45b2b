import * as v from 'valibot';
import {
  awgSizes,
  type DeviceFamily,
  deviceFamilies,
  type MetalId,
  metals,
  type PlasticId,
  plastics,
  standardSizes,
} from '#engine';
import { amount, castKey, oneOf } from './prop-parts.ts';

// What <Num> and a prediction accept for faults: a short circuit at the end of a lead, what a core stands and a device lets
// through, and the loop of a fault to earth.

/** What a short circuit from line to neutral does at the end of a lead, or where it begins. */
export const shortNumbers = ['fault current', 'lead loop', 'allowed time', 'opens in'] as const;
/** What a core stands. */
export const coreNumbers = ['k', 'withstand', 'stands times'] as const;
/** What devices let through, and which of two opens. */
export const energyNumbers = ['let-through', 'starts to melt', 'melts by', 'rating ratio', 'selective ratio'] as const;
/** The loop of a fault to earth at the end of a lead. */
export const loopNumbers = ['loop', 'cold loop', 'lead in loop', 'loop current', 'loop opens in'] as const;
/** What rules and a device want of a loop. */
export const loopLimits = [
  'greatest loop',
  'most cold reading',
  'disconnection time',
  'needed current',
  'least volts',
] as const;

const ohms = amount(0, 20, 'Ω');
const length = amount(0.5, 1000, 'm');
const lead = {
  cast: castKey,
  metal: v.optional(oneOf(Object.keys(metals) as MetalId[])),
  size: v.optional(
    v.picklist(
      [...new Set([...standardSizes.map(({ area_mm2 }) => area_mm2), 1.25, ...awgSizes])],
      ({ received }) => `${received} is no size in mm² or AWG`,
    ),
  ),
};
const family = oneOf(deviceFamilies.map(({ id }) => id) as DeviceFamily[]);
const rating = amount(0.03, 1250, 'A');
const alone = v.literal(true, 'stands alone, without a value');
const both = (one: unknown, other: unknown) => (one === undefined) === (other === undefined);

/** A short circuit behind `source` ohms, at the end of `length` of lead; without a length it is where the lead begins. */
export const shortNumber = v.pipe(
  v.strictObject({
    of: oneOf(shortNumbers),
    ...lead,
    source: ohms,
    length: v.optional(length),
    device: v.optional(family),
    rating: v.optional(rating),
    /** On the straight line between two points, our assumption, in place of the points alone. */
    assumed: v.optional(alone),
  }),
  v.check(
    ({ of, device, rating: In }) => both(device, In) && (of === 'opens in') === (device !== undefined),
    'device: goes with what opens in a time, and with its rating',
  ),
);

/** k of a metal in an insulation, or what a cord of the cast stands; in times what a device lets through at `amps`. */
export const coreNumber = v.pipe(
  v.strictObject({
    of: oneOf(coreNumbers),
    cast: v.optional(castKey),
    metal: lead.metal,
    size: lead.size,
    insulation: v.optional(oneOf(Object.keys(plastics) as PlasticId[])),
    device: v.optional(family),
    rating: v.optional(rating),
    amps: v.optional(amount(0.1, 100_000, 'A')),
    /** Figure of a maker's sheet, in place of a device's own. */
    through: v.optional(amount(1, 1e9, 'A²s')),
  }),
  v.check(({ cast, metal }) => cast !== undefined || metal !== undefined, 'cast: is missing, or a metal'),
  v.check(({ of, cast }) => of === 'k' || cast !== undefined, 'cast: is missing; an area is needed'),
  v.check(
    ({ of, device, rating: In, amps, through }) =>
      of === 'stands times'
        ? through !== undefined || [device, In, amps].every((one) => one !== undefined)
        : [device, In, amps, through].every((one) => one === undefined),
    'device: goes with stands times, with its rating and amps; or through',
  ),
);

/** What a device lets through at `amps`, what melts a gG fuse in a hundredth of a second, and ratios of ratings. */
export const energyNumber = v.pipe(
  v.strictObject({
    of: oneOf(energyNumbers),
    device: v.optional(family),
    rating: v.optional(rating),
    amps: v.optional(amount(0.1, 100_000, 'A')),
    /** Rating of the device nearer the source, for a ratio. */
    upper: v.optional(rating),
  }),
  v.check(
    ({ of, amps, device }) => both(amps, device) && (of === 'let-through') === (amps !== undefined),
    'amps: goes with a let-through, and with its device',
  ),
  v.check(({ of, upper }) => (of === 'rating ratio') === (upper !== undefined), 'upper: is for a rating ratio'),
  v.check(({ of, rating: In }) => (of === 'selective ratio') === (In === undefined), 'rating: is missing'),
);

/** The parts of a loop: ohms up to the origin, of the fixed wiring cold, and a lead; conductors at `warm` °C. */
export const loopParts = {
  ...lead,
  length,
  origin: ohms,
  line: v.optional(ohms),
  earth: v.optional(ohms),
  warm: v.optional(amount(20, 160, '°C')),
  device: family,
  rating,
};
const loopSpot = v.strictObject(loopParts);
/** A number of such a loop, with the device that is to open. */
export const loopNumber = v.strictObject({ of: oneOf(loopNumbers), ...loopParts });

/** What rules want of a loop; with a device, what it needs. Rules of ohms and seconds are those of UK and IEC practice. */
export const loopLimit = v.pipe(
  v.strictObject({ of: oneOf(loopLimits), device: v.optional(family), rating: v.optional(rating) }),
  v.check(
    ({ of, device, rating: In }) =>
      both(device, In) && ['disconnection time', 'least volts'].includes(of) === (device === undefined),
    'device: goes with its rating, and with what a device needs',
  ),
);

/** A number of a short circuit. */
export type ShortNumber = v.InferOutput<typeof shortNumber>;
/** A number of a core. */
export type CoreNumber = v.InferOutput<typeof coreNumber>;
/** A number of what devices let through. */
export type EnergyNumber = v.InferOutput<typeof energyNumber>;
/** A number of a loop. */
export type LoopNumber = v.InferOutput<typeof loopNumber>;
/** A loop without what is asked of it. */
export type LoopSpot = v.InferOutput<typeof loopSpot>;
/** A number that rules set. */
export type LoopLimit = v.InferOutput<typeof loopLimit>;
/** Any number of a fault. */
export type FaultNumber = ShortNumber | CoreNumber | EnergyNumber | LoopNumber | LoopLimit;

const schemas = [
  [shortNumbers, shortNumber],
  [coreNumbers, coreNumber],
  [energyNumbers, energyNumber],
  [loopNumbers, loopNumber],
  [loopLimits, loopLimit],
] as const;

/** The schema of a number of a fault by what it is of; undefined for a number of another kind. */
export function faultSchema(of: string): v.GenericSchema<FaultNumber> | undefined {
  const found = schemas.find(([names]) => (names as readonly string[]).includes(of));
  return found?.[1] as v.GenericSchema<FaultNumber> | undefined;
}

/** True for a number of a fault. */
export const isFault = (spec: { of: string }): spec is FaultNumber => faultSchema(spec.of) !== undefined;

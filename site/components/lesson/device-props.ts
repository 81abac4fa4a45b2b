import * as v from 'valibot';
import { type DeviceFamily, deviceFamilies } from '#engine';
import { amount, castKey, oneOf } from './prop-parts.ts';

// What <Num> and a prediction accept for the band of a fuse or a breaker, and for a cable behind one.

const bandNumbers = ['hold share', 'acting share', 'last point', 'load share', 'least time', 'most time'] as const;
const gapNumbers = ['gap from', 'gap to', 'limit current'] as const;

const deviceParts = {
  /** Family of the device. */
  device: oneOf(deviceFamilies.map(({ id }) => id) as DeviceFamily[]),
  rating: amount(0.03, 600, 'A'),
};
const alone = v.literal(true, 'stands alone, without a value');

/** A number of a device's band; `amps` is the held current that a time or a share is for. */
const bandNumber = v.pipe(
  v.strictObject({
    of: oneOf(bandNumbers),
    ...deviceParts,
    amps: v.optional(amount(0.1, 10_000, 'A')),
    /** On the straight line between two points, our assumption, in place of the points alone. */
    assumed: v.optional(alone),
  }),
  v.check(
    ({ of, amps }) => ['load share', 'least time', 'most time'].includes(of) === (amps !== undefined),
    'amps: is for a load share, a least time and a most time, and they need it',
  ),
);

/** An end of the gap of a cable in still air behind a device, or the current that takes it to the limit for ever. */
const gapNumber = v.strictObject({
  of: oneOf(gapNumbers),
  cast: castKey,
  ambient: amount(-60, 200, '°C'),
  ...deviceParts,
  limit: oneOf(['rating', 'shortTime']),
  /** Greatest current that is looked at. */
  upTo: amount(1, 100_000, 'A'),
  /** Which interval, counted from one. */
  part: v.optional(v.pipe(amount(1, 4, 'intervals'), v.integer('is a whole number'))),
  assumed: v.optional(alone),
});

/** What a device does at a held current, for ever or within a time in seconds. */
export const promisedProps = v.strictObject({
  ...deviceParts,
  amps: amount(0.1, 10_000, 'A'),
  within: v.optional(amount(0.001, 86_400, 's')),
});

/** A number of a device's band. */
export type BandNumber = v.InferOutput<typeof bandNumber>;
/** A number of a cable behind a device. */
export type GapNumber = v.InferOutput<typeof gapNumber>;
/** What a device is asked. */
export type PromisedProps = v.InferOutput<typeof promisedProps>;
/** A number of a band, or of a gap. */
export type DeviceBandNumber = BandNumber | GapNumber;

/** The schema of a number of a band or a gap; undefined where it is none. */
export function deviceSchema(of: string): v.GenericSchema<DeviceBandNumber> | undefined {
  if ((bandNumbers as readonly string[]).includes(of)) return bandNumber;
  return (gapNumbers as readonly string[]).includes(of) ? gapNumber : undefined;
}

/** True for a number of a band or a gap. */
export const isDeviceBand = (spec: { of: string }): spec is DeviceBandNumber => deviceSchema(spec.of) !== undefined;

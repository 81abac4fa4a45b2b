import { bandAt, buildCase, type Device, device, type HarmSet, harmSet, lastGate, toldSpans } from '#engine';
import { type Practice, quantity, significant, thin, timeInWords } from '../../lib/format.ts';
import { caseOf } from './case-of.ts';
import type { BandNumber, DeviceBandNumber, GapNumber, PromisedProps } from './device-props.ts';

/** A number of a device's band, or of the gap of a cable behind it: its value in SI, its kind, and how it is told. */
export interface DeviceValue {
  readonly kind: 'current' | 'time' | 'ratio';
  readonly value: number;
  readonly told: string;
}

const needed = <T>(value: T | null | undefined, otherwise: string): T => {
  if (value === null || value === undefined) throw new Error(otherwise);
  return value;
};

/** A device of a lesson; throws where its family has no such rating. */
export const lessonDevice = ({ device: family, rating }: { device: PromisedProps['device']; rating: number }): Device =>
  needed(device(family, rating), `${rating} A is no rating of ${family}`);

const current = (value: number): DeviceValue => ({
  kind: 'current',
  value,
  told: `${significant(value, 3).replace(/\.0+$/, '')}${thin}A`,
});
const share = (value: number): DeviceValue => ({ kind: 'ratio', value, told: quantity(100 * value, '%', 0) });
const times = (value: number): DeviceValue => ({
  kind: 'ratio',
  value,
  told: `${significant(value, 2)}${thin}times`,
});
const time = (value: number): DeviceValue => {
  if (!Number.isFinite(value) || value <= 0) throw new Error('no time is stated at this current');
  return { kind: 'time', value, told: timeInWords(value) };
};

/** The number asked for; throws where the standard has none, so that a page never prints one that is not there. */
export function deviceValue(spec: DeviceBandNumber, practice: Practice): DeviceValue {
  return 'cast' in spec ? gapValue(spec, practice) : bandValue(spec);
}

function bandValue(spec: BandNumber): DeviceValue {
  const of = lessonDevice(spec);
  const at = () => bandAt(of, needed(spec.amps, 'this number needs amps'));
  const drawn = (guaranteed: number, assumed: number | null) =>
    time(spec.assumed ? needed(assumed, 'there is no line to draw here') : guaranteed);
  switch (spec.of) {
    case 'hold share':
      return share(of.hold.I / of.In);
    case 'acting share':
      return share(needed(of.I2, 'no operating current is stated') / of.In);
    case 'last point':
      return current(needed(lastGate(of), 'this device has no points').I);
    case 'load share':
      return times(needed(spec.amps, 'this number needs amps') / of.In);
    case 'least time':
      return drawn(at().fastest, at().assumed.fastest);
    case 'most time':
      return drawn(at().slowest, at().assumed.slowest);
  }
}

/** The harm set of a cable of the cast behind a device, from cold. */
export function lessonGap({ cast, ambient, limit: kind, upTo, ...of }: Omit<GapNumber, 'of'>): HarmSet {
  const thermal = buildCase(caseOf({ cast, amps: 1, ambient }));
  const limit = needed(
    thermal.limits.find((one) => one.kind === kind && one.place === 'conductor'),
    `this cable has no limit of the kind ${kind}`,
  );
  return harmSet(thermal, lessonDevice(of), limit, { prospective: upTo });
}

function gapValue(spec: GapNumber, practice: Practice): DeviceValue {
  const set = lessonGap(spec);
  if (spec.of === 'limit current') return current(set.Iz);
  const spans = toldSpans(spec.assumed ? set.assumed : set.spans);
  const span = needed(spans[(spec.part ?? 1) - 1], `there is no such gap (${practice})`);
  return current(spec.of === 'gap from' ? span.from : needed(span.to, `the upper end was not found (${practice})`));
}

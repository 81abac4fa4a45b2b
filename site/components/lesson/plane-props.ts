import * as v from 'valibot';
import { type DeviceFamily, deviceFamilies, type MetalId, metals, otherSenses, placeKinds } from '#engine';
import { namedDevice } from './circuit-props.ts';
import { amount, either, figureNumber, leadParts, named, oneOf, sizesByPractice, words } from './prop-parts.ts';

// What the figures of a device accept: its plane of current and time with a cord, and its line of currents.

const amps = amount(0.1, 1000, 'A');
const devicePair = v.strictObject({ iec: namedDevice, na: namedDevice }, 'is a device for iec and for na');
const familyPair = v.strictObject({
  iec: v.array(oneOf(deviceFamilies.map(({ id }) => id) as DeviceFamily[])),
  na: v.array(oneOf(deviceFamilies.map(({ id }) => id) as DeviceFamily[])),
});

/** A cord behind a device. `amps` is the load's current; `before` what the cord carried. */
const cordBehind = {
  ...leadParts,
  amps: either(amps),
  device: devicePair,
  /** The insulation's rating unless given, or its limit for short circuits. */
  limit: v.optional(oneOf(['rating', 'shortTime'])),
  before: v.optional(either(amps)),
  metal: v.optional(oneOf(Object.keys(metals) as MetalId[])),
  length: v.optional(either(amount(0.01, 5000, 'm'))),
  /** Surroundings as a scenario has them, without the ambient; still air unless given. */
  surroundings: v.optional(v.record(v.string(), v.union([v.string(), v.number(), v.boolean()]))),
  families: v.optional(familyPair),
  /** Greatest rating that is offered. */
  greatest: v.optional(amount(1, 1250, 'A')),
  sizes: v.optional(sizesByPractice),
  places: v.optional(v.array(oneOf(placeKinds))),
  controls: v.optional(v.array(oneOf(['current', 'device', 'size', 'metal', 'limit', 'ambient', 'surroundings']))),
};

/** Current against time; `amps` is where the operating point stands. */
export const timeCurrentPlaneProps = v.strictObject({
  ...cordBehind,
  /** Greatest current that can flow; 1000 A unless given. */
  prospective: v.optional(amount(10, 100_000, 'A')),
});

/** The cord and its device in time, at a held current. */
export const firstToActProps = v.strictObject({
  ...cordBehind,
  /** Greatest current that can be set; 100 A unless given. */
  most: v.optional(amount(1, 10_000, 'A')),
});

const besides = v.array(namedDevice);
const senses = v.array(oneOf(otherSenses.map(({ id }) => id)));

/** Devices on a line of current. `beside` are further ones in rows of their own, `others` devices that see other things. */
export const holdOrOpenProps = v.strictObject({
  id: named,
  number: figureNumber,
  title: words('title'),
  device: devicePair,
  amps: either(amps),
  beside: v.optional(v.strictObject({ iec: besides, na: besides })),
  others: v.optional(v.strictObject({ iec: senses, na: senses })),
  families: v.optional(familyPair),
  /** Greatest rating that is offered, and greatest load that can be set. */
  greatest: v.optional(amount(1, 1250, 'A')),
  most: v.optional(amount(1, 10_000, 'A')),
  controls: v.optional(v.array(oneOf(['device', 'current']))),
});

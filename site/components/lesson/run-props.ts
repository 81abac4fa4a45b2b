import * as v from 'valibot';
import { awgSizes, type CastKey, cast, standardSizes } from '#engine';
import { isEach } from './by-practice.ts';

// What the figures of a lead with a length accept: sizes side by side, volts along a run, one cord in four metals.

const words = (what: string) => v.pipe(v.string(`${what} is text`), v.trim(), v.minLength(1, `${what} is empty`));
const oneOf = <const T extends string>(options: readonly T[]) =>
  v.picklist(options, ({ received }) => `${received} is none of ${options.join(', ')}`);
const amount = (least: number, most: number, unit: string) =>
  v.pipe(
    v.number(`is a number in ${unit}, in braces`),
    v.minValue(least, `is at least ${least} ${unit}`),
    v.maxValue(most, `is at most ${most} ${unit}`),
  );

/** One value for both practices, or one for each. */
const either = <T>(one: v.GenericSchema<T>) =>
  v.lazy((input) => (isEach(input) ? v.strictObject({ iec: one, na: one }) : one)) as v.GenericSchema<
    T | { iec: T; na: T }
  >;

const sizesOf = (list: readonly number[], unit: string) =>
  v.pipe(
    v.array(v.picklist(list, ({ received }) => `${received} is no size in ${unit}`)),
    v.minLength(2, 'names two sizes at least'),
    v.maxLength(7, 'names more than seven sizes'),
  );
const castKey = oneOf(Object.keys(cast) as CastKey[]);

const lead = {
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]*$/, 'a name is small letters, digits and dashes: warm-up')),
  number: v.pipe(v.string(), v.regex(/^\d\.\d\.\d$/, 'is written like 2.2.1')),
  title: words('title'),
  cast: v.strictObject({ iec: castKey, na: castKey }, 'is a member of the cast for iec and for na'),
  ambient: either(amount(-60, 200, '°C')),
  sizes: v.optional(
    v.strictObject({
      iec: sizesOf([...standardSizes.map(({ area_mm2 }) => area_mm2), 1.25], 'mm²'),
      na: sizesOf(awgSizes, 'AWG'),
    }),
  ),
};
const amps = either(amount(0, 1000, 'A'));
const length_m = either(amount(0.5, 1000, 'm'));

/** Cords of many sizes side by side at one current. */
export const sizeLadderProps = v.strictObject({
  ...lead,
  amps,
  length_m,
  controls: v.optional(v.array(oneOf(['size', 'length', 'current', 'ambient']))),
});

/** Volts along a run; `load` says how the load at its end is told. */
export const voltsAlongProps = v.strictObject({
  ...lead,
  amps,
  length_m,
  load: v.optional(oneOf(['amps', 'ohms', 'watts'])),
  controls: v.optional(v.array(oneOf(['length', 'size', 'current', 'load', 'ambient']))),
});

/** One cord in four metals, with amps or volts held; volts are those given, or what its copper cord takes at these amps. */
export const metalQuartetProps = v.pipe(
  v.strictObject({
    ...lead,
    amps: v.optional(amps),
    volts: v.optional(either(amount(0.1, 50, 'V'))),
    length_m: v.optional(length_m),
    held: v.optional(oneOf(['amps', 'volts'])),
    controls: v.optional(v.array(oneOf(['held', 'current', 'size', 'copper share', 'ambient']))),
  }),
  v.check(
    ({ amps: I, volts, held }) => (volts === undefined ? I !== undefined : I === undefined && held !== 'amps'),
    'has amps, or volts alone where volts are held',
  ),
);

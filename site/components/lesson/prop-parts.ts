import * as v from 'valibot';
import { awgSizes, type CastKey, cast, standardSizes } from '#engine';
import { isEach } from './by-practice.ts';

// What the props of many components are made of. Props in MDX are checked by no compiler, so a fault says in plain words what
// is not accepted.

/** Text that is not empty; `what` names it in the fault. */
export const words = (what: string) =>
  v.pipe(v.string(`${what} is text`), v.trim(), v.minLength(1, `${what} is empty`));

/** A name by which parts of a lesson find each other. */
export const named = v.pipe(
  v.string(),
  v.regex(/^[a-z][a-z0-9-]*$/, 'a name is small letters, digits and dashes: warm-up'),
);

/** The number of a figure, with its lesson's. */
export const figureNumber = v.pipe(v.string(), v.regex(/^\d\.\d\.\d$/, 'is written like 2.2.1'));

/** One of a few words. */
export const oneOf = <const T extends string>(options: readonly T[]) =>
  v.picklist(options, ({ received }) => `${received} is none of ${options.join(', ')}`);

/** A number in a unit, within its ends. */
export const amount = (least: number, most: number, unit: string) =>
  v.pipe(
    v.number(`is a number in ${unit}, in braces`),
    v.minValue(least, `is at least ${least} ${unit}`),
    v.maxValue(most, `is at most ${most} ${unit}`),
  );

/** One value for both practices, or one for each. */
export const either = <T>(one: v.GenericSchema<T>) =>
  v.lazy((input) => (isEach(input) ? v.strictObject({ iec: one, na: one }) : one)) as v.GenericSchema<
    T | { iec: T; na: T }
  >;

/** A member of the standing cast. */
export const castKey = oneOf(Object.keys(cast) as CastKey[]);

/** A member of the cast for each practice. */
export const castPair = v.strictObject({ iec: castKey, na: castKey }, 'is a member of the cast for iec and for na');

const sizesOf = (list: readonly number[], unit: string) =>
  v.pipe(
    v.array(v.picklist(list, ({ received }) => `${received} is no size in ${unit}`)),
    v.minLength(2, 'names two sizes at least'),
    v.maxLength(7, 'names more than seven sizes'),
  );

/** Sizes that a figure offers: mm², and AWG. */
export const sizesByPractice = v.strictObject({
  iec: sizesOf([...standardSizes.map(({ area_mm2 }) => area_mm2), 1.25], 'mm²'),
  na: sizesOf(awgSizes, 'AWG'),
});

/** What every figure of a lead has: its names, its member of the cast, its air. */
export const leadParts = {
  id: named,
  number: figureNumber,
  title: words('title'),
  cast: castPair,
  ambient: either(amount(-60, 200, '°C')),
};

import * as v from 'valibot';
import { awgSizes, type CastKey, cast, type MetalId, metals, placeKinds, standardSizes } from '#engine';
import { isEach } from './by-practice.ts';

// What the figures of a lead's heat accept: its ledger, and one lead in several surroundings.

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
const amps = amount(0, 1000, 'A');

const lead = {
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]*$/, 'a name is small letters, digits and dashes: warm-up')),
  number: v.pipe(v.string(), v.regex(/^\d\.\d\.\d$/, 'is written like 2.2.1')),
  title: words('title'),
  cast: v.strictObject({ iec: castKey, na: castKey }, 'is a member of the cast for iec and for na'),
  ambient: either(amount(-60, 200, '°C')),
  amps: either(amps),
  /** Greatest current that can be set. */
  greatest: v.optional(amount(1, 1000, 'A')),
};

/** Heat made against heat lost. `beside` are further currents in thin lines; `resistance` says how the metal's ohms are taken. */
export const heatLedgerProps = v.strictObject({
  ...lead,
  metal: v.optional(oneOf(Object.keys(metals) as MetalId[])),
  draught: v.optional(either(amount(0, 60, 'm/s'))),
  beside: v.optional(either(v.pipe(v.array(amps), v.maxLength(4, 'at most four currents stand beside it')))),
  resistance: v.optional(oneOf(['warm', 'fixed'])),
  sizes: v.optional(
    v.strictObject({
      iec: sizesOf([...standardSizes.map(({ area_mm2 }) => area_mm2), 1.25], 'mm²'),
      na: sizesOf(awgSizes, 'AWG'),
    }),
  ),
  controls: v.optional(v.array(oneOf(['current', 'size', 'metal', 'ambient', 'draught', 'resistance']))),
});

/** One lead in several surroundings; what is left out of lagging, reel and draught is as lessons usually have it. */
export const wrapAndWindProps = v.pipe(
  v.strictObject({
    ...lead,
    /** Length of the lead. */
    length_m: either(amount(0.5, 1000, 'm')),
    kinds: v.optional(v.pipe(v.array(oneOf(placeKinds)), v.minLength(2, 'names two surroundings at least'))),
    /** The one that the title block states when the figure opens; the first unless given. */
    pick: v.optional(oneOf(placeKinds)),
    thickness_mm: v.optional(amount(0.1, 1000, 'mm')),
    conductivity: v.optional(amount(0.005, 10, 'W/(m·K)')),
    drum_mm: v.optional(amount(1, 5000, 'mm')),
    turns: v.optional(amount(1, 1000, 'turns a layer')),
    wound_m: v.optional(either(amount(0.1, 1000, 'm'))),
    draught: v.optional(amount(0, 60, 'm/s')),
    controls: v.optional(v.array(oneOf(['current', 'thickness', 'conductivity', 'layers', 'draught', 'ambient']))),
  }),
  v.check(
    ({ kinds = placeKinds, pick }) => pick === undefined || kinds.includes(pick),
    'picks surroundings that are not among its kinds',
  ),
);

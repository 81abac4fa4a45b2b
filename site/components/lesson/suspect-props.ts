import * as v from 'valibot';
import { awgSizes, colours, type MetalId, magnetOutcomes, metals, standardSizes } from '#engine';
import { wireEnds } from '../../widgets/four-wire/lead-case.ts';
import { takenPieces } from '../../widgets/metal-finder/take.ts';
import { amount, castPair, either, figureNumber, named, oneOf, words } from './prop-parts.ts';

// What a suspect lead's figures and numbers accept: its resistance by two leads and by four, what it is, and the live bench.

const figure = { id: named, number: figureNumber, title: words('title') };
const size = v.picklist(
  [...standardSizes.map(({ area_mm2 }) => area_mm2), ...awgSizes],
  ({ received }) => `${received} is no size in mm² or AWG`,
);
const within = ({ least, most }: { least: number; most: number }, unit: string) => amount(least, most, unit);
/** Limits of error: of volts, amps and length in per cent, of the temperature in kelvin. */
const limits = v.strictObject(
  { volts: amount(0, 10, '%'), amps: amount(0, 10, '%'), length: amount(0, 10, '%'), kelvin: amount(0, 10, 'K') },
  'has volts, amps, length and kelvin',
);

/** A known copper lead, its far end joined: `truth` is what one conductor has at 20 °C, `leads` the meter's own two leads. */
export const fourWireProps = v.strictObject({
  ...figure,
  size: either(size),
  truth: either(amount(0.1, 1000, 'mΩ/m')),
  length: either(within(wireEnds.length, 'm')),
  amps: within(wireEnds.amps, 'A'),
  leads: within(wireEnds.leads, 'Ω'),
  at: within(wireEnds.T, '°C'),
  limits,
  controls: v.optional(v.array(oneOf(['current', 'leads', 'length', 'temperature', 'instruments']))),
});

const colour = oneOf(colours);

/** What is to be found on a suspect lead, each piece as a bench takes it; the resistance by four leads, out and back. */
export const metalFinderProps = v.strictObject({
  ...figure,
  size: either(size),
  magnet: v.optional(oneOf(magnetOutcomes)),
  skin: v.optional(colour),
  volts: either(amount(0.001, 60, 'V')),
  amps: amount(0.01, 40, 'A'),
  length: either(amount(0.05, 1000, 'm')),
  at: amount(-20, 80, '°C'),
  strands: v.strictObject({ count: amount(1, 2000, 'strands'), diameter: amount(0.02, 10, 'mm') }),
  mass: either(v.strictObject({ grams: amount(0.1, 10_000, 'g'), length: amount(0.05, 100, 'm') })),
  under: v.optional(colour),
  /** Pieces that are known from the start; the marking unless given. */
  start: v.optional(v.array(oneOf(takenPieces))),
});

/** The live bench with a lead of the cast on it. */
export const liveBenchProps = v.strictObject({
  id: named,
  cast: castPair,
  length: either(amount(1, 100, 'm')),
  ambient: amount(0, 40, '°C'),
  amps: either(amount(0, 16, 'A')),
});

/** What volts and amps say of one conductor of a lead: as found, at 20 °C, its doubt, what test leads add, the copper it equals. */
export const readingNumbers = [
  'measured loop',
  'measured as found',
  'measured per metre',
  'measured doubt',
  'doubt per metre',
  'leads per metre',
  'equal copper',
  'times the marking',
] as const;
/** Ohms times grams, measured or of a straight wire of a metal. */
export const productNumbers = ['mass per metre', 'measured product', 'metal product'] as const;
/** What a marked size asks of copper. */
export const markingNumbers = ['marked limit', 'least area'] as const;

/** A reading by volts and amps, out and back over a lead whose far end is joined; `leads` are left in it. */
export const readingParts = {
  volts: amount(0.001, 60, 'V'),
  amps: amount(0.01, 40, 'A'),
  length: amount(0.05, 1000, 'm'),
  at: amount(-20, 80, '°C'),
};
/** A number of such a reading; `size`, in the practice's own unit, is what it is held against. */
export const readingNumber = v.pipe(
  v.strictObject({
    of: oneOf(readingNumbers),
    ...readingParts,
    leads: v.optional(amount(0, 100, 'Ω')),
    limits: v.optional(limits),
    size: v.optional(size),
  }),
  v.check(({ of, leads }) => of !== 'leads per metre' || leads !== undefined, 'leads: is missing'),
  v.check(
    ({ of, size: marked }) => (of === 'times the marking') === (marked !== undefined),
    'size: is for times the marking',
  ),
  v.check(({ of, limits: told }) => of.includes('doubt') === (told !== undefined), 'limits: goes with a doubt'),
);

const mass = { grams: amount(0.1, 10_000, 'g'), stripped: amount(0.05, 100, 'm') };

/** Grams of each metre of a core, its ohms times its grams, or that product of a straight wire of a metal. */
export const productNumber = v.variant('of', [
  v.strictObject({ of: v.literal('mass per metre'), ...mass }),
  v.strictObject({ of: v.literal('measured product'), ...readingParts, ...mass }),
  v.strictObject({ of: v.literal('metal product'), metal: oneOf(Object.keys(metals) as MetalId[]) }),
]);

/** The most that a marked size may have, and the copper that it needs; `size` in the practice's own unit. */
export const markingNumber = v.strictObject({ of: oneOf(markingNumbers), size });

/** A number of a reading. */
export type ReadingNumber = v.InferOutput<typeof readingNumber>;
/** Ohms times grams. */
export type ProductNumber = v.InferOutput<typeof productNumber>;
/** What a marked size asks. */
export type MarkingNumber = v.InferOutput<typeof markingNumber>;
/** Any number of a suspect lead. */
export type SuspectNumber = ReadingNumber | ProductNumber | MarkingNumber;

const schemas = [
  [readingNumbers, readingNumber],
  [productNumbers, productNumber],
  [markingNumbers, markingNumber],
] as const;

/** The schema of a number of a suspect lead by what it is of; undefined for a number of another kind. */
export function suspectSchema(of: string): v.GenericSchema<SuspectNumber> | undefined {
  const found = schemas.find(([names]) => (names as readonly string[]).includes(of));
  return found?.[1] as v.GenericSchema<SuspectNumber> | undefined;
}

/** True for a number of a suspect lead. */
export const isSuspect = (spec: { of: string }): spec is SuspectNumber => suspectSchema(spec.of) !== undefined;

/** Which metal a lead is by the measurements of its finder: the likeliest is found, never given. */
export const whichMetalAsk = v.strictObject({
  kind: v.literal('which metal'),
  id: named,
  words: either(words('words')),
  answer: v.strictObject({
    volts: either(readingParts.volts),
    amps: readingParts.amps,
    length: either(readingParts.length),
    at: readingParts.at,
    grams: either(mass.grams),
    stripped: either(mass.stripped),
  }),
});
/** That ask as a lesson writes it. */
export type WhichMetalProps = v.InferOutput<typeof whichMetalAsk>;

import * as v from 'valibot';
import { type ByPractice, isEach } from './by-practice.ts';
import { chooserParts } from './circuit-props.ts';
import { sizesByPractice } from './prop-parts.ts';

// What <PredictAnswers> accepts as asks on the way from a load to a size.

const name = v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]*$/, 'a name is small letters, digits and dashes: which-size'));
const plain = v.pipe(
  v.string('is text'),
  v.trim(),
  v.minLength(1, 'is empty'),
  v.regex(/^\D*$/, 'has a number typed into it; the case has its numbers'),
);
const words = v.lazy((input) => (isEach(input) ? v.strictObject({ iec: plain, na: plain }) : plain)) as v.GenericSchema<
  ByPractice<string>
>;
const circuit = v.strictObject(chooserParts);

/** The smallest size that is right, out of those offered. */
export const sizeAsk = v.strictObject({
  kind: v.literal('size'),
  id: name,
  words,
  sizes: sizesByPractice,
  answer: circuit,
});

/** What the load takes, or what the table must give, in amperes. */
export const circuitAmpsAsk = v.strictObject({
  kind: v.literal('circuit amps'),
  id: name,
  words,
  of: v.picklist(['load', 'table'], 'is load or table'),
  answer: circuit,
});

/** An ask about a size, as a lesson writes it. */
export type SizeAskProps = v.InferOutput<typeof sizeAsk> | v.InferOutput<typeof circuitAmpsAsk>;

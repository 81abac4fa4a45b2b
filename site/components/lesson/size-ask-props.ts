import * as v from 'valibot';
import { name, words } from './ask-parts.ts';
import { chooserParts } from './circuit-props.ts';
import { sizesByPractice } from './prop-parts.ts';

// What <PredictAnswers> accepts as asks on the way from a load to a size.

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

import * as v from 'valibot';
import { fieldUnits } from '../../widgets/prediction/read-amount.ts';
import { name, plain, words } from './ask-parts.ts';
import { bandTimeAsk, promiseAsk } from './device-ask-props.ts';
import { clearsAsk, whichOpensAsk } from './fault-ask-props.ts';
import { numProps } from './num-props.ts';
import { circuitAmpsAsk, sizeAsk } from './size-ask-props.ts';
import { whichMetalAsk } from './suspect-props.ts';

// What <PredictAnswers> accepts as its asks. Numbers in their words are filled in from the case, so they cannot differ from it.

const numberAsk = v.strictObject({
  kind: v.literal('number'),
  id: name,
  words,
  unit: v.picklist(fieldUnits, ({ received }) => `${received} is none of ${fieldUnits.join(', ')}`),
  answer: numProps,
});

const option = v.strictObject({
  id: name,
  words,
  /** A number that the computed one may be nearest to; as a ratio where the answer is of two cases. */
  value: v.optional(v.number('is a number, in braces')),
  answer: v.optional(numProps),
});

const comparison = v.strictObject({
  compare: numProps,
  with: v.optional(numProps),
  over: v.optional(
    v.strictObject({ value: v.number('is a number, in braces'), unit: v.picklist(fieldUnits, 'is no unit') }),
  ),
});

const choiceAsk = v.strictObject({
  kind: v.literal('choice'),
  id: name,
  words,
  options: v.optional(v.pipe(v.array(option), v.minLength(2, 'has two options at least'), v.maxLength(6))),
  answer: v.lazy((input) =>
    typeof input === 'string' ? v.picklist(['greatest', 'least'], 'is greatest, least or a comparison') : comparison,
  ) as v.GenericSchema<'greatest' | 'least' | v.InferOutput<typeof comparison>>,
});

const orderAsk = v.strictObject({
  kind: v.literal('order'),
  id: name,
  words,
  /** What the least is called and what the greatest: ['coolest', 'hottest']. */
  ends: v.strictTuple([plain, plain]),
  items: v.pipe(
    v.array(v.strictObject({ id: name, words, answer: numProps })),
    v.minLength(3, 'has three items at least'),
    v.maxLength(6, 'has six items at most'),
  ),
});

/** One ask, as a lesson writes it. */
export const askProps = v.variant(
  'kind',
  [
    numberAsk,
    choiceAsk,
    orderAsk,
    promiseAsk,
    bandTimeAsk,
    sizeAsk,
    circuitAmpsAsk,
    clearsAsk,
    whichOpensAsk,
    whichMetalAsk,
  ],
  'kind is number, choice, order, promise, band time, size, circuit amps, clears, which opens or which metal',
);

/** An ask as a lesson writes it, once it is checked. */
export type AskProps = v.InferOutput<typeof askProps>;
/** A choice as a lesson writes it. */
export type ChoiceProps = v.InferOutput<typeof choiceAsk>;
/** An order as a lesson writes it. */
export type OrderProps = v.InferOutput<typeof orderAsk>;
/** A number as a lesson writes it. */
export type NumberProps = v.InferOutput<typeof numberAsk>;

import * as v from 'valibot';
import { type FieldUnit, fieldUnits } from '../../widgets/prediction/read-amount.ts';
import { byPractice, name, words } from './ask-parts.ts';
import { deviceSchema, promisedProps } from './device-props.ts';

// What <PredictAnswers> accepts as asks about a fuse or a breaker.

/** Whether a device holds, may do either or has acted, at a held current, for ever or within a time. */
export const promiseAsk = v.strictObject({
  kind: v.literal('promise'),
  id: name,
  words,
  answer: byPractice(() => promisedProps),
});

/** The least or the most time that a device takes at a held current. */
export const bandTimeAsk = v.strictObject({
  kind: v.literal('band time'),
  id: name,
  words,
  unit: v.picklist(
    fieldUnits,
    ({ received }) => `${received} is none of ${fieldUnits.join(', ')}`,
  ) as v.GenericSchema<FieldUnit>,
  answer: byPractice(({ of }) => deviceSchema(String(of)) ?? v.never('is no number of a band')),
});

/** An ask about a device, as a lesson writes it. */
export type DeviceAskProps = v.InferOutput<typeof promiseAsk> | v.InferOutput<typeof bandTimeAsk>;

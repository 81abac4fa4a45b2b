import * as v from 'valibot';
import { type FieldUnit, fieldUnits } from '../../widgets/prediction/read-amount.ts';
import { type ByPractice, forPractice, isEach } from './by-practice.ts';
import { deviceSchema, promisedProps } from './device-props.ts';

// What <PredictAnswers> accepts as asks about a fuse or a breaker.

const name = v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]*$/, 'a name is small letters, digits and dashes: at-ten'));
const plain = v.pipe(
  v.string('is text'),
  v.trim(),
  v.minLength(1, 'is empty'),
  v.regex(/^\D*$/, 'has a number typed into it; write {amps} or the like, and the case fills it in'),
);
const words = v.lazy((input) => (isEach(input) ? v.strictObject({ iec: plain, na: plain }) : plain)) as v.GenericSchema<
  ByPractice<string>
>;

/** A record whose parts may be written by practice, each practice's of this schema. */
const byPractice = (schema: (props: Record<string, unknown>) => v.GenericSchema) =>
  v.pipe(
    v.record(v.string(), v.unknown(), 'has no props'),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      for (const practice of ['iec', 'na'] as const) {
        const props = forPractice(dataset.value, practice);
        for (const issue of v.safeParse(schema(props), props).issues ?? [])
          addIssue({ message: `(${practice}) ${v.getDotPath(issue) ?? ''}: ${issue.message}` });
      }
    }),
  );

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

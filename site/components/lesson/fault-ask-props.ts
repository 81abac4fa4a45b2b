import * as v from 'valibot';
import { standardRatings } from '#engine';
import { type ByPractice, forPractice, isEach } from './by-practice.ts';
import { loopParts } from './fault-props.ts';
import { amount, either } from './prop-parts.ts';

// What <PredictAnswers> accepts as asks about a fault: whether it clears in time, and which of two devices opens.

const name = v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]*$/, 'a name is small letters, digits and dashes: far-end'));
const plain = v.pipe(
  v.string('is text'),
  v.trim(),
  v.minLength(1, 'is empty'),
  v.regex(/^\D*$/, 'has a number typed into it; write {lower} or the like, and the case fills it in'),
);
const words = v.lazy((input) => (isEach(input) ? v.strictObject({ iec: plain, na: plain }) : plain)) as v.GenericSchema<
  ByPractice<string>
>;

/** A record whose parts may be written by practice, each practice's of one schema. */
const byPractice = (schema: v.GenericSchema) =>
  v.pipe(
    v.record(v.string(), v.unknown(), 'has no props'),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      for (const practice of ['iec', 'na'] as const)
        for (const issue of v.safeParse(schema, forPractice(dataset.value, practice)).issues ?? [])
          addIssue({ message: `(${practice}) ${v.getDotPath(issue) ?? ''}: ${issue.message}` });
    }),
  );

const clearsProps = v.strictObject(loopParts);

/** Whether the fault in a loop surely clears in the time that the rules allow, or the code has no number for it. */
export const clearsAsk = v.strictObject({
  kind: v.literal('clears'),
  id: name,
  words,
  answer: byPractice(clearsProps),
});

const gG = v.picklist(standardRatings('gG'), ({ received }) => `${received} A is no rating of a gG fuse`);
const energy = amount(1, 1e9, 'A²s');
/** Two gG fuses by their ratings, or two fuses by figures of their makers. */
const pairProps = v.union([
  v.strictObject({ lower: gG, upper: gG }),
  v.strictObject({ lower: amount(1, 1250, 'A'), upper: amount(1, 1250, 'A'), through: energy, melts: energy }),
]);

/** Which of two fuses in series opens on a short circuit. */
export const whichOpensAsk = v.strictObject({
  kind: v.literal('which opens'),
  id: name,
  words,
  answer: either<PairProps>(pairProps),
});

/** An ask about a fault, as a lesson writes it. */
export type FaultAskProps = v.InferOutput<typeof clearsAsk> | v.InferOutput<typeof whichOpensAsk>;
/** Two fuses in series. */
export type PairProps = v.InferOutput<typeof pairProps>;

import * as v from 'valibot';
import { standardRatings } from '#engine';
import { byPractice, name, words } from './ask-parts.ts';
import { loopParts } from './fault-props.ts';
import { amount, either } from './prop-parts.ts';

// What <PredictAnswers> accepts as asks about a fault: whether it clears in time, and which of two devices opens.

const clearsProps = v.strictObject(loopParts);

/** Whether the fault in a loop surely clears in the time that the rules allow, or the code has no number for it. */
export const clearsAsk = v.strictObject({
  kind: v.literal('clears'),
  id: name,
  words,
  answer: byPractice(() => clearsProps),
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

import type { CandidateId, PieceId } from './evidence.ts';
import type { Witness } from './witness.ts';

/** A piece of evidence that clashes with the rest. */
export interface Clash {
  readonly piece: PieceId;
  /** The metal that the rest speaks for. */
  readonly restSays: CandidateId;
  /** Probability of such a piece, or one farther off, were it that metal. */
  readonly tail: number;
}

/** Whether any of the named metals fits all the evidence. */
export interface Fit {
  /** True where none does. */
  readonly none: boolean;
  /** Posterior probability of something else. */
  readonly other: number;
  /** Smallest probability of a piece by the likeliest metal, times the number of pieces; 1 without any. */
  readonly worst: number;
  /** Where none fits: the pieces that clash with the rest, worst first. */
  readonly clashes: readonly Clash[];
}

/** Above this probability of something else, none fits: our choice. */
export const otherWins = 0.5;
/** Below this chance of the worst piece, whichever it be, none fits: our choice, one sound sample in fifty is stopped at most. */
export const tooFarOff = 0.02;

/** Judges the fit by the probability of something else and by the worst of the pieces. */
export function fitOf(all: readonly Witness[], other: number): Fit {
  const count = all.length;
  const worst = all.reduce((least, { tailByAll }) => Math.min(least, tailByAll * count), 1);
  const none = other > otherWins || worst < tooFarOff;
  const clashes = all
    .filter(({ tailByRest }) => tailByRest * count < tooFarOff)
    .map(({ piece, restSays, tailByRest }) => ({ piece, restSays, tail: tailByRest }))
    .sort((a, b) => a.tail - b.tail);
  return { none, other, worst, clashes: none ? clashes : [] };
}

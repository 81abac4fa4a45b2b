import type { CandidateId, Evidence, PieceId } from './evidence.ts';
import { type Hypothesis, hypotheses, middles } from './hypotheses.ts';
import { integrate, type MeasuredPieces, type MetalPosterior } from './integrate.ts';
import { bundlePiece, isSolid, massPiece, resistancePiece, strandsPiece } from './pieces.ts';
import type { Priors } from './priors.ts';
import { type SeenId, seenProbability } from './seen.ts';
import { smeared } from './smear.ts';

/** What is measured and not only seen. */
export type MeasuredId = Extract<PieceId, 'resistance' | 'strands' | 'bundle' | 'mass'>;

export const seenIds = ['magnet', 'skin', 'under', 'marking'] as const satisfies readonly SeenId[];
export const measuredIds = ['resistance', 'strands', 'bundle', 'mass'] as const satisfies readonly MeasuredId[];

/** One metal with all the evidence as it sees it. */
export interface Weighed {
  readonly of: Hypothesis;
  readonly pieces: MeasuredPieces;
  readonly posterior: MetalPosterior;
  /** Logarithm of prior times what was seen. */
  readonly seen: number;
  /** Posterior probability. */
  readonly probability: number;
}

const laySteps = 10; // half a per cent each: finer than the tolerance of any metal's resistivity

/** Logarithms of the lay factors that are taken as alike likely: none but 1 for a solid wire. */
export const laysOf = (evidence: Evidence, priors: Priors): number[] =>
  isSolid(evidence) ? [0] : middles(priors.lay.value, laySteps).map(Math.log);

function piecesFor(evidence: Evidence, of: Hypothesis, priors: Priors): MeasuredPieces {
  const { strands, bundle, resistance, mass } = evidence;
  return {
    strands: strands ? strandsPiece(strands) : null,
    bundle: bundle ? bundlePiece(bundle, isSolid(evidence), priors) : null,
    resistance: resistance ? smeared(resistancePiece(resistance, of, priors), of.uRho) : null,
    mass: mass ? smeared(massPiece(mass), of.uDensity) : null,
  };
}

/** Shares of weights given by their logarithms; nothing possible gives all to the last, which is something else. */
export function shares(logs: readonly number[]): number[] {
  const top = Math.max(...logs);
  if (top === Number.NEGATIVE_INFINITY) return logs.map((_, i) => (i === logs.length - 1 ? 1 : 0));
  const weights = logs.map((log) => Math.exp(log - top));
  const sum = weights.reduce((all, one) => all + one, 0);
  return weights.map((one) => one / sum);
}

/** Every metal against all the evidence. */
export function weigh(evidence: Evidence, priors: Priors): Weighed[] {
  const lays = laysOf(evidence, priors);
  const all = hypotheses(priors).map((of) => {
    const pieces = piecesFor(evidence, of, priors);
    const seen = seenIds.reduce(
      (sum, piece) => sum + Math.log(seenProbability(piece, evidence, of, priors) ?? 1),
      Math.log(of.prior),
    );
    return { of, pieces, seen, posterior: integrate(of, lays, pieces, priors) };
  });
  const probabilities = shares(all.map(({ seen, posterior }) => seen + posterior.log));
  return all.map((one, i) => ({ ...one, probability: probabilities[i] as number }));
}

/** The evidence with one measured piece left out. */
export interface Without {
  readonly posteriors: readonly MetalPosterior[];
  readonly probabilities: readonly number[];
}

/** Every metal against the evidence without one measured piece. */
export function weighWithout(
  piece: MeasuredId,
  weighed: readonly Weighed[],
  evidence: Evidence,
  priors: Priors,
): Without {
  const lays = laysOf(evidence, priors);
  const posteriors = weighed.map(({ of, pieces }) => integrate(of, lays, { ...pieces, [piece]: null }, priors));
  const probabilities = shares(weighed.map(({ seen }, i) => seen + (posteriors[i] as MetalPosterior).log));
  return { posteriors, probabilities };
}

/** Probabilities of every metal without something that was seen. */
export function probabilitiesWithout(
  piece: SeenId,
  weighed: readonly Weighed[],
  evidence: Evidence,
  priors: Priors,
): number[] {
  return shares(
    weighed.map(
      ({ of, seen, posterior }) => seen + posterior.log - Math.log(seenProbability(piece, evidence, of, priors) ?? 1),
    ),
  );
}

/** Measured pieces that speak at all: a count without a diameter does not. */
export const measuredIn = (weighed: readonly Weighed[]): MeasuredId[] =>
  measuredIds.filter((id) => weighed[0]?.pieces[id]);

/** Pieces that were seen. */
export const seenIn = (evidence: Evidence): SeenId[] =>
  seenIds.filter((id) => (id === 'marking' ? evidence.marking?.material : evidence[id]) !== undefined);

/** The likeliest of the named metals. */
export function leaderOf(ids: readonly CandidateId[], probabilities: readonly number[]): number {
  let best = 0;
  for (let i = 1; i < ids.length; i++)
    if (ids[i] !== 'other' && (probabilities[i] as number) > (probabilities[best] as number)) best = i;
  return best;
}

import { within } from '../../errors.ts';
import {
  type CandidateId,
  type Colour,
  colours,
  type Evidence,
  type MagnetSeen,
  magnetOutcomes,
  type PieceId,
} from './evidence.ts';
import type { Hypothesis } from './hypotheses.ts';
import { claimedMetals, type Priors } from './priors.ts';

/** What is seen and not measured. */
export type SeenId = Extract<PieceId, 'magnet' | 'skin' | 'under' | 'marking'>;

/** Probability that a magnet does this at a metal; at something else, as often drawn as not. */
export function magnetProbability(seen: MagnetSeen, { id, magnetic }: Hypothesis, { magnet }: Priors): number {
  const { drawn, notDrawn } = magnet.value;
  if (id === 'other') return (drawn[seen] + notDrawn[seen]) / 2;
  return (magnetic ? drawn : notDrawn)[seen];
}

/** Probability that a colour is named, by skin or under it: rightly, or by error any of them alike. */
export function colourProbability(
  where: 'skin' | 'under',
  colour: Colour,
  id: CandidateId,
  priors: Priors,
  errorRate = priors.colourError.value,
): number {
  within('the error rate of a colour', errorRate, [0, 1], '');
  return (1 - errorRate) * (priors[where].value[id][colour] ?? 0) + errorRate / colours.length;
}

/** Probability of a claimed material over that of an untrue claim and a true one together: a weak witness. */
function claimProbability({ marking }: Evidence, id: CandidateId, { markingTrust }: Priors): number {
  if (!marking?.material || id === 'other') return 0.5;
  const trust = markingTrust.value;
  return (claimedMetals[marking.material].includes(id) ? trust : 1) / (1 + trust);
}

/** Probability of what was seen, were it this metal; null where it was not looked at. */
export function seenProbability(piece: SeenId, evidence: Evidence, of: Hypothesis, priors: Priors): number | null {
  if (piece === 'magnet') return evidence.magnet ? magnetProbability(evidence.magnet, of, priors) : null;
  if (piece === 'marking') return evidence.marking?.material ? claimProbability(evidence, of.id, priors) : null;
  const seen = evidence[piece];
  return seen ? colourProbability(piece, seen.colour, of.id, priors, seen.errorRate) : null;
}

/** Probability of seeing something no likelier than what was seen, were it this metal: small where it clashes. */
export function seenTail(piece: SeenId, evidence: Evidence, of: Hypothesis, priors: Priors): number {
  const here = seenProbability(piece, evidence, of, priors) ?? 1;
  if (piece === 'marking') return 1; // a false claim is what the bench is for, no clash of evidence
  const all: number[] =
    piece === 'magnet'
      ? magnetOutcomes.map((outcome) => magnetProbability(outcome, of, priors))
      : colours.map((colour) => colourProbability(piece, colour, of.id, priors, evidence[piece]?.errorRate));
  return all.reduce((sum, one) => (one <= here * (1 + 1e-9) ? sum + one : sum), 0);
}

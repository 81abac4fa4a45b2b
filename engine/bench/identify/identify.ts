import type { CandidateId, Evidence, PieceId } from './evidence.ts';
import { type Fit, fitOf } from './fit.ts';
import { mixture } from './line.ts';
import { type NextMeasurement, nextMeasurement } from './next.ts';
import { type Priors, usualPriors } from './priors.ts';
import { type MassTimesResistance, massTimesResistance } from './product.ts';
import {
  type AgainstMarking,
  againstMarking,
  type EqualCopper,
  equalCopper,
  type Interval,
  intervalOf,
  referenceOf,
  type SizeStanding,
  standingOf,
} from './size.ts';
import { measuredIn, type Weighed, weigh } from './weigh.ts';
import { type Witness, witnesses } from './witness.ts';

/** How one piece of evidence speaks of one metal. */
export interface Mark {
  readonly piece: PieceId;
  /** ln of how likely the piece is by this metal over how likely it is in all, given the rest: above 0 for it, below against. −∞ where it rules it out. */
  readonly forIt: number;
}

/** One metal as the evidence leaves it. */
export interface Candidate {
  readonly metal: CandidateId;
  readonly name: string;
  readonly probability: number;
  /** Metal area [m²]; null where no piece tells of it. */
  readonly area: Interval | null;
  /** Resistance at 20 °C of a metre of one core [Ω/m]; null where no piece tells of it. */
  readonly R20: Interval | null;
  /** Copper by volume, of a clad metal. */
  readonly copperShare: Interval | null;
  /** Against the marked size: undersized where the area lies below what sound copper of that size needs. */
  readonly size: { readonly standing: SizeStanding; readonly below: number } | null;
  readonly marks: readonly Mark[];
}

/** What a conductor is, as far as the evidence tells. */
export interface Identification {
  /** All metals, likeliest first; something else among them. */
  readonly candidates: readonly Candidate[];
  /** Over all metals by their probabilities; null where no piece tells of it. */
  readonly area: Interval | null;
  readonly R20: Interval | null;
  readonly equalCopper: EqualCopper | null;
  readonly againstMarking: AgainstMarking | null;
  readonly fit: Fit;
  readonly massTimesResistance: MassTimesResistance;
  /** The next measurement that tells most; null where none is worth while. */
  readonly nextBest: NextMeasurement | null;
}

/** Finest step of the logarithm at which the metals' densities are added up. */
const finest = 0.0004;

/** Copper shares of a clad metal, each make's weight spread over its own part of the range. */
function shareInterval({ of, posterior }: Weighed): Interval | null {
  const shares = of.makes.map(({ share }) => share);
  const [first, second] = shares;
  if (typeof first !== 'number' || typeof second !== 'number') return null;
  const { median, low, high } = intervalOf({ from: first, step: second - first, p: posterior.makes });
  return { median: Math.log(median), low: Math.log(low), high: Math.log(high) };
}

function candidate(one: Weighed, all: readonly Witness[], known: boolean, evidence: Evidence): Candidate {
  const { of, posterior, probability } = one;
  const told = known && posterior.log > Number.NEGATIVE_INFINITY;
  const reference = referenceOf(evidence.marking);
  return {
    metal: of.id,
    name: of.name,
    probability,
    area: told ? intervalOf(posterior.area) : null,
    R20: told ? intervalOf(posterior.R20) : null,
    copperShare: told ? shareInterval(one) : null,
    size: told && reference ? standingOf(posterior.area, reference) : null,
    marks: all.map(({ piece, marks }) => ({ piece, forIt: marks.get(of.id) ?? 0 })),
  };
}

/**
 * What this conductor is: every metal by its probability, with area, R'20 and copper share, how each piece of evidence
 * speaks, whether any metal fits at all, and what to measure next. Priors that are not given are the usual ones.
 * `OutOfRange` for a value or an uncertainty that cannot be.
 */
export function identify(evidence: Evidence, given: Partial<Priors> = {}): Identification {
  const priors = { ...usualPriors, ...given };
  const weighed = weigh(evidence, priors);
  const all = witnesses(weighed, evidence, priors);
  // a count of strands alone, or a marking, tells of no area; nor do readings that no metal at all could give
  const known =
    measuredIn(weighed).length > 0 && weighed.some(({ posterior }) => posterior.log > Number.NEGATIVE_INFINITY);
  const probabilities = weighed.map(({ probability }) => probability);
  const over = (line: 'area' | 'R20') =>
    known
      ? intervalOf(
          mixture(
            weighed.map(({ posterior }) => posterior[line]),
            probabilities,
            finest,
          ),
        )
      : null;
  const R20 = over('R20');
  const reference = referenceOf(evidence.marking);
  const fit = fitOf(all, probabilities.at(-1) as number);
  return {
    candidates: weighed
      .map((one) => candidate(one, all, known, evidence))
      .sort((a, b) => b.probability - a.probability || (a.metal < b.metal ? -1 : 1)),
    area: over('area'),
    R20,
    equalCopper: R20 ? equalCopper(R20) : null,
    againstMarking: R20 && reference ? againstMarking(R20, reference) : null,
    fit,
    massTimesResistance: massTimesResistance(
      evidence,
      weighed.map(({ of }) => of),
      priors,
    ),
    nextBest: nextMeasurement(weighed, evidence, priors),
  };
}

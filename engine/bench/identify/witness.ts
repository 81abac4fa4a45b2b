import type { CandidateId, Evidence, PieceId } from './evidence.ts';
import { moments } from './line.ts';
import type { Priors } from './priors.ts';
import { seenProbability, seenTail } from './seen.ts';
import { bothTails } from './student.ts';
import {
  leaderOf,
  type MeasuredId,
  measuredIn,
  probabilitiesWithout,
  seenIn,
  type Weighed,
  weighWithout,
} from './weigh.ts';

/** How one piece of evidence speaks, given all the rest. */
export interface Witness {
  readonly piece: PieceId;
  /** For each metal: ln of how likely the piece is, were it this metal, over how likely it is in all; above 0 speaks for it. */
  readonly marks: ReadonlyMap<CandidateId, number>;
  /** The metal that the rest of the evidence speaks for. */
  readonly restSays: CandidateId;
  /** Probability of a piece as far off as this one or farther: were it the metal that the rest speaks for, and were it the likeliest of all. */
  readonly tailByRest: number;
  readonly tailByAll: number;
}

const idsOf = (weighed: readonly Weighed[]) => weighed.map(({ of }) => of.id);

/** ln p(piece | metal, rest) − ln p(piece | rest), from how likely the piece is by each metal and the shares without it. */
function marksOf(
  ids: readonly CandidateId[],
  logs: readonly number[],
  without: readonly number[],
): Map<CandidateId, number> {
  const top = Math.max(...logs.filter(Number.isFinite));
  const mean = logs.reduce((sum, log, i) => sum + (without[i] as number) * Math.exp(log - top), 0);
  return new Map(ids.map((id, i) => [id, (logs[i] as number) - top - Math.log(mean)]));
}

function seenWitness(
  piece: ReturnType<typeof seenIn>[number],
  weighed: readonly Weighed[],
  evidence: Evidence,
  priors: Priors,
  best: number,
): Witness {
  const ids = idsOf(weighed);
  const without = probabilitiesWithout(piece, weighed, evidence, priors);
  const logs = weighed.map(({ of }) => Math.log(seenProbability(piece, evidence, of, priors) ?? 1));
  const rest = leaderOf(ids, without);
  const tail = (i: number) => seenTail(piece, evidence, (weighed[i] as Weighed).of, priors);
  return {
    piece,
    marks: marksOf(ids, logs, without),
    restSays: ids[rest] as CandidateId,
    tailByRest: tail(rest),
    tailByAll: tail(best),
  };
}

/** Which line of a posterior a measured piece is a reading of. */
const lineOf = { strands: 'area', bundle: 'area', resistance: 'R20', mass: 'massPerMetre' } as const;

/** Where the piece itself puts its quantity: mean and standard deviation of the logarithm. */
function ownReading(piece: MeasuredId, { pieces }: Weighed): { mean: number; sd: number } {
  const own = pieces[piece];
  if (!own) return { mean: 0, sd: Number.POSITIVE_INFINITY };
  if ('centre' in own) return { mean: own.centre, sd: own.width };
  const { x, weight, step } = own.nodes;
  return moments({ from: x[0] as number, step, p: weight });
}

function measuredWitness(
  piece: MeasuredId,
  weighed: readonly Weighed[],
  evidence: Evidence,
  priors: Priors,
  best: number,
): Witness {
  const ids = idsOf(weighed);
  const { posteriors, probabilities } = weighWithout(piece, weighed, evidence, priors);
  const logs = weighed.map(({ posterior }, i) => {
    const rest = posteriors[i]?.log ?? Number.NEGATIVE_INFINITY;
    return rest === Number.NEGATIVE_INFINITY ? rest : posterior.log - rest;
  });
  const rest = leaderOf(ids, probabilities);
  const tail = (i: number) => {
    const expected = posteriors[i]?.[lineOf[piece]];
    const reading = ownReading(piece, weighed[i] as Weighed);
    if (!expected || posteriors[i]?.log === Number.NEGATIVE_INFINITY) return 0;
    const { mean, sd } = moments(expected);
    return bothTails((reading.mean - mean) / Math.hypot(reading.sd, sd));
  };
  return {
    piece,
    marks: marksOf(ids, logs, probabilities),
    restSays: ids[rest] as CandidateId,
    tailByRest: tail(rest),
    tailByAll: tail(best),
  };
}

/** Every piece of evidence as a witness, held against all the rest. */
export function witnesses(weighed: readonly Weighed[], evidence: Evidence, priors: Priors): Witness[] {
  const best = leaderOf(
    idsOf(weighed),
    weighed.map(({ probability }) => probability),
  );
  return [
    ...measuredIn(weighed).map((piece) => measuredWitness(piece, weighed, evidence, priors, best)),
    ...seenIn(evidence).map((piece) => seenWitness(piece, weighed, evidence, priors, best)),
  ];
}

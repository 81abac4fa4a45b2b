import type { SketchKnot, SketchQuantity } from '#engine';
import type { Practice } from '../../lib/practice.ts';
import type { Facts } from '../ember/facts.ts';

/** Four facts of a curve. */
export interface LockedFacts {
  readonly kind: 'facts';
  readonly facts: Facts;
}

/** A curve that was drawn: its knots in SI, in order of time. */
export interface LockedSketch {
  readonly kind: 'sketch';
  readonly quantity: SketchQuantity;
  readonly knots: readonly SketchKnot[];
}

/** What was answered to an ask: a number in the ask's unit, the option chosen, or the items in their order. */
export type Said = number | string | readonly string[];

/** Answers by the ids of their asks. */
export interface LockedAnswers {
  readonly kind: 'answers';
  readonly answers: Readonly<Record<string, Said>>;
}

/** A prediction that was locked in before the answer was shown. */
export type Locked = LockedFacts | LockedSketch | LockedAnswers;

/** The predictions of one id: each practice has a case of its own, and so a prediction of its own. */
export type ByPractice = Readonly<Partial<Record<Practice, Locked>>>;

const fewest = 2;
const most = 9; // knots

/** What a notebook has, as far as it can be trusted: anybody may have written it. */
export function readKept(kept: unknown): ByPractice {
  if (!isRecord(kept)) return {};
  const [iec, na] = [lockedOf(kept.iec), lockedOf(kept.na)];
  return { ...(iec && { iec }), ...(na && { na }) };
}

function lockedOf(value: unknown): Locked | undefined {
  if (!isRecord(value)) return undefined;
  if (value.kind === 'facts') return factsOf(value.facts);
  if (value.kind === 'sketch') return sketchOf(value);
  if (value.kind === 'answers' && isRecord(value.answers) && Object.values(value.answers).every(isSaid))
    return { kind: 'answers', answers: value.answers as LockedAnswers['answers'] };
  return undefined;
}

function factsOf(facts: unknown): LockedFacts | undefined {
  if (!isRecord(facts)) return undefined;
  const { start, minute, end, share } = facts;
  return isNumber(start) && isNumber(minute) && isNumber(end) && isNumber(share)
    ? { kind: 'facts', facts: { start, minute, end, share } }
    : undefined;
}

function sketchOf({ quantity, knots }: Record<string, unknown>): LockedSketch | undefined {
  if (quantity !== 'temperature' && quantity !== 'current') return undefined;
  if (!Array.isArray(knots) || knots.length < fewest || knots.length > most) return undefined;
  const read: SketchKnot[] = [];
  for (const knot of knots) {
    if (!isRecord(knot)) return undefined;
    const { t, value } = knot;
    if (!isNumber(t) || !isNumber(value) || t <= (read.at(-1)?.t ?? Number.NEGATIVE_INFINITY)) return undefined;
    read.push({ t, value });
  }
  return { kind: 'sketch', quantity, knots: read };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
const isSaid = (value: unknown): value is Said =>
  isNumber(value) ||
  typeof value === 'string' ||
  (Array.isArray(value) && value.every((item) => typeof item === 'string'));

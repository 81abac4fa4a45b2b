import {
  type CurveFacts,
  curveFacts,
  momentAt,
  type Prediction,
  type SketchKnot,
  sketchAt,
  sketchFacts,
} from '#engine';
import type { TableTwin } from '../../charts/sheet.ts';
import { clock, fixed, type Practice, timeInWords } from '../../lib/format.ts';
import { shareOfRise } from '../ember/facts.ts';
import type { PadQuantity } from './quantities.ts';

const minute = 60; // s

/** A sketch beside the computed curve: the same facts of both, in SI, and when the on-time ends [s]. */
export interface Compared {
  readonly yours: CurveFacts;
  readonly computed: CurveFacts;
  readonly on: number;
}

/** The facts of a sketch (knots in SI) and of the curve it was to be. */
export function comparedOf(knots: readonly SketchKnot[], { run }: Prediction, on: number, of: PadQuantity): Compared {
  const values = run.curves[of.curve];
  const until = Math.min(run.end, on);
  return { yours: sketchFacts(knots, until), computed: curveFacts(run.curves.t, values, until), on: until };
}

/** What a sketch and the computed curve say at the same places, in a few sentences. Nothing is marked. */
export function comparedWords(compared: Compared, of: PadQuantity, practice: Practice): string {
  const { yours, computed, on } = compared;
  const pair = (when: string, a: number, b: number) => {
    const [mine, theirs] = [of.told(of.shown(a), practice), of.told(of.shown(b), practice)];
    return mine === theirs ? `${when} both are at ${mine}.` : `${when} yours is at ${mine}, the computed at ${theirs}.`;
  };
  const early = on > minute ? [pair('After 1\u00A0min', yours.minute, computed.minute)] : [];
  return [
    pair('At the start', yours.start, computed.start),
    ...early,
    pair(`After ${timeInWords(on)}`, yours.end, computed.end),
    shareWords(compared, of),
  ].join(' ');
}

/** True where a curve stays within what is written of it, so that it has no time to a share of its change. */
const isLevel = ({ start, end, share }: CurveFacts, of: PadQuantity): boolean =>
  share === null || Math.abs(end - start) < of.step / 2;

function shareWords({ yours, computed }: Compared, of: PadQuantity): string {
  const time = (facts: CurveFacts) => (isLevel(facts, of) ? undefined : clock(facts.share ?? 0));
  const [mine, theirs] = [time(yours), time(computed)];
  const share = `${shareOfRise}\u00A0% of its change`;
  if (mine === undefined && theirs === undefined) return 'Both stay level.';
  if (theirs === undefined) return `Yours makes ${share} by ${mine}. The computed curve stays level.`;
  if (mine === undefined) return `Yours stays level. The computed curve makes ${share} by ${theirs}.`;
  return mine === theirs
    ? `Both make ${share} by ${mine}.`
    : `Yours makes ${share} by ${mine}, the computed by ${theirs}.`;
}

/** The same as a table: facts first, then both curves at round times. */
export function comparedTable(
  knots: readonly SketchKnot[],
  { run }: Prediction,
  compared: Compared,
  of: PadQuantity,
  times: readonly number[],
): TableTwin {
  const { yours, computed } = compared;
  const value = (si: number) => fixed(of.shown(si), of.places);
  const share = (facts: CurveFacts) => (isLevel(facts, of) ? '–' : clock(facts.share ?? 0));
  const rows = times.map((t) => [clock(t), value(sketchAt(knots, t)), value(momentAt(run.curves, t)[of.curve])]);
  return {
    caption: `Your sketch and the computed ${of.name}`,
    columns: ['Time', `Yours, ${of.unit}`, `Computed, ${of.unit}`],
    rows: [...rows, [`${shareOfRise}\u00A0% of the change`, share(yours), share(computed)]],
  };
}

import type { BenchLog } from '../log.ts';
import { bridged, switches } from './drive.ts';

/** A step of a bench run, from just after the supply is switched to just before it is switched again [s]. */
export interface StepSpan {
  readonly from: number;
  readonly to: number;
}

/** A current held for less than this is no step [s] (our choice). */
const shortest = 60;
/** Last share of a step that counts as its plateau (our choice). */
export const plateauShare = 0.2;

/** The steps of a log, by its current alone: what lies between two switches and lasts a minute. `u` of the current [A]. */
export function stepsOfLog({ t, I }: BenchLog, u: number): StepSpan[] {
  const filled = bridged(t, I);
  if (filled === null) return [];
  const switched = switches(filled, u);
  const spans: StepSpan[] = [];
  let first = 0;
  for (let k = 0; k < t.length; k++) {
    if (!switched[k] && k < t.length - 1) continue;
    if (t[k] - t[first] >= shortest) spans.push({ from: t[first], to: t[k] });
    first = k + 1;
  }
  return spans;
}

/** The last part of a step, where it has settled as far as it will. */
export const plateauOf = ({ from, to }: StepSpan): StepSpan => ({ from: to - plateauShare * (to - from), to });

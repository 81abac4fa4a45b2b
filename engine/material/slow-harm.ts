import { kelvin } from '../quantity.ts';
import type { SourceId } from '../sources.ts';
import type { PlasticId } from './plastics.ts';
import type { Confidence } from './property.ts';

/** What a temperature that passes no limit at once has done to an insulation that was held at it: a report, not a limit. */
export interface SlowHarm {
  readonly id: string;
  readonly name: string;
  /** Temperature held [K], and for about how long [s]. */
  readonly T: number;
  readonly t: number;
  /** That time in words. */
  readonly duration: string;
  readonly source: SourceId;
  readonly confidence: Confidence;
}

const hour = 3600;
const pvc: readonly SlowHarm[] = [
  {
    id: 'fails',
    name: 'failures reported',
    T: kelvin(110),
    t: 30 * 24 * hour,
    duration: 'about a month',
    source: 'babrauskas2005',
    confidence: 'seen',
  },
  {
    id: 'chars',
    name: 'char that conducts',
    T: kelvin(160),
    t: 10 * hour,
    duration: 'about 10 h',
    source: 'babrauskas2005',
    confidence: 'seen',
  },
];

/** Reports of slow harm by insulation, coolest first; none are known for the others. */
export const slowHarms: Readonly<Partial<Record<PlasticId, readonly SlowHarm[]>>> = { pvc70: pvc, pvc90: pvc };

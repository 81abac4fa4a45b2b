import { within } from '../../errors.ts';
import type { Confidence } from '../../material/property.ts';
import type { SourceId } from '../../sources.ts';
import { fromLimit, fromStep } from '../uncertainty/distributions.ts';
import { type Reading, readingFrom } from './meter.ts';

/** A tape whose limit of error grows by the metre. */
export interface TapeMeasure {
  readonly id: string;
  readonly name: string;
  /** Limit of error: fixed part [m], and what each metre begun adds [m]. */
  readonly fixed: number;
  readonly perMetre: number;
  /** Division it is read to [m]. */
  readonly step: number;
  /** Limit of what is lost by a lead that does not lie straight, as a share of the length. */
  readonly lay: number;
  readonly source: SourceId;
  readonly confidence: Confidence;
  readonly note: string;
}

/** Limit of error of the tape alone at `length` [m]: a + b·L, with L rounded up to whole metres; [m]. */
export const tapeLimit = ({ fixed, perMetre }: TapeMeasure, length: number): number =>
  fixed + perMetre * Math.ceil(length);

/** A length [m], 1 mm to 100 m, read off a tape: the tape's own error, a lead that does not lie straight, both ends read off. */
export function readTape(tape: TapeMeasure, length: number): Reading {
  within('length read off a tape', length, [1e-3, 100], 'm');
  const lasting = fromLimit(tapeLimit(tape, length));
  const each = Math.hypot(fromLimit(tape.lay * length), Math.SQRT2 * fromStep(tape.step));
  return readingFrom(length, lasting, each);
}

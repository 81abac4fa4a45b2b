import type { Confidence } from '../material/property.ts';
import type { SourceId } from '../sources.ts';

/** Where a rule or a single value stands, and how sure we are of it. */
export interface Cited {
  readonly source: SourceId;
  /** Clause or table. */
  readonly where: string;
  readonly confidence: Confidence;
}

/** One cited number; its unit is told where it is used. */
export interface CitedValue extends Cited {
  readonly value: number;
}

/** Shorthand for a citation. */
export const cite = (source: SourceId, where: string, confidence: Confidence): Cited => ({ source, where, confidence });

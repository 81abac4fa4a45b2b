import type { SourceId } from '../sources.ts';

/**
 * How sure we are of a value: `seen` in a published document, `computed` from such values, `from memory` (not yet
 * checked against its document, and said so wherever it is shown), or `our choice` (argued in the note).
 */
export type Confidence = 'seen' | 'computed' | 'from memory' | 'our choice';

/** A physical number: value, unit, standard uncertainty `u` (0 when exact by definition), source, and how sure we are. */
export interface Property {
  readonly value: number;
  readonly unit: string;
  readonly u: number;
  readonly source: SourceId;
  readonly confidence: Confidence;
  /** Clause, table or page in the source. */
  readonly where?: string;
  readonly note?: string;
}

/** Shorthand for a property whose unit is shared by a table; `u` is the standard uncertainty in that unit. */
export function property(
  unit: string,
  value: number,
  u: number,
  source: SourceId,
  confidence: Confidence,
  where?: string,
): Property {
  return where === undefined ? { value, unit, u, source, confidence } : { value, unit, u, source, confidence, where };
}

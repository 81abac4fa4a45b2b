import type { TradeSize } from '../conductor/area-scale.ts';
import type { SourceId } from '../sources.ts';
import type { Cable } from './cable.ts';

/** The current a standard allows a flexible cord, as one cited value. */
export interface CordRating {
  /** Rated current, two cores loaded [A]. */
  readonly I: number;
  readonly source: SourceId;
  readonly where: string;
}

// rated current of a cord by its size, both seen in copies of the tables
const squareMillimetres: Record<string, number> = { 0.5: 3, 0.75: 6, 1: 10, 1.25: 13, 1.5: 16, 2.5: 25, 4: 32 };
const gauges: Record<string, number> = { 18: 10, 16: 13, 14: 18, 12: 25, 10: 30 };

/**
 * Rated current of a copper cord of a trade size, two cores loaded, at 30 °C: BS 7671 Table 4F3A (single phase) by mm²,
 * NFPA 70 Table 400.5(A)(1) column B by AWG. Null where the tables have no such size.
 */
export function cordCurrent({ system, size }: Pick<TradeSize, 'system' | 'size'>): CordRating | null {
  const gauge = system === 'AWG';
  const I = (gauge ? gauges : squareMillimetres)[size];
  if (I === undefined) return null;
  return gauge
    ? { I, source: 'nfpa70', where: 'Table 400.5(A)(1), two current-carrying cores' }
    : { I, source: 'bs7671', where: 'Table 4F3A, single phase' };
}

/** The same for a copper cord of the construction table with two cores loaded. Null for any other cable. */
export function cordRating({ row, conductor, loaded }: Cable): CordRating | null {
  if (!row?.sheath || conductor.metal.id !== 'copper' || loaded.length !== 2) return null;
  if (row.table === 'H07RN-F') return null;
  return cordCurrent({ system: row.gauge ? 'AWG' : 'mm2', size: row.size });
}

import { within } from '../errors.ts';
import type { Confidence } from '../material/property.ts';
import type { Factor } from './factors.ts';

/** A factor that holds up to a length [mm]. */
type Row = readonly [upTo_mm: number, value: number, confidence: Confidence];

// older editions of BS 7671 print 0.89, 0.81, 0.68 and 0.55 for the four lengths
const rows: readonly Row[] = [
  [0, 1, 'our choice'],
  [50, 0.88, 'from memory'],
  [100, 0.78, 'from memory'],
  [200, 0.63, 'from memory'],
  [400, 0.51, 'from memory'],
  [Number.POSITIVE_INFINITY, 0.5, 'seen'],
];

/**
 * Factor Ci for a cable of 10 mm² at most that is surrounded by thermal insulation over `length_mm`: BS 7671 Table 52.2, and
 * 0.5 from half a metre on (523.9). Between two printed lengths the longer one holds. `OutOfRange` below 0 mm.
 */
export function thermalInsulationFactor(length_mm: number): Factor {
  within('length in thermal insulation', length_mm, [0, Number.POSITIVE_INFINITY], 'mm');
  const [, value, confidence] = rows.find(([upTo]) => length_mm <= upTo) as Row;
  const words = `${length_mm}\u00A0mm in thermal insulation`;
  return { symbol: 'Ci', value, words, source: 'bs7671', where: 'Table 52.2 and 523.9', confidence };
}

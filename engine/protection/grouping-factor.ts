import { within } from '../errors.ts';
import type { Factor } from './factors.ts';

/** A factor that holds up to a count. */
type Row = readonly [upTo: number, value: number];

// IEC 60364-5-52 Table B.52.17 item 1 and BS 7671 Table 4C1 item 1 print the same row; seen in three copies
const bunched: readonly Row[] = [
  [1, 1],
  [2, 0.8],
  [3, 0.7],
  [4, 0.65],
  [5, 0.6],
  [6, 0.57],
  [7, 0.54],
  [8, 0.52],
  [9, 0.5],
  [12, 0.45],
  [16, 0.41],
  [20, 0.38],
];

// NFPA 70 Table 310.15(C)(1), the same series as Table 400.5(A)(3) for cords; seen in copies
const together: readonly Row[] = [
  [3, 1],
  [6, 0.8],
  [9, 0.7],
  [20, 0.5],
  [30, 0.45],
  [40, 0.4],
  [Number.POSITIVE_INFINITY, 0.35],
];

const holding = (rows: readonly Row[], count: number) => (rows.find(([upTo]) => count <= upTo) as Row)[1];

/**
 * Grouping factor Cg of `circuits` alike, bunched in air, on a surface or in one enclosure: IEC 60364-5-52 Table B.52.17 item 1
 * (BS 7671 Table 4C1). Between two printed numbers the greater one holds. `OutOfRange` outside 1 to 20 circuits.
 */
export function groupingFactor(circuits: number): Factor {
  within('number of circuits in one bunch', circuits, [1, 20], 'circuits');
  const cited = { source: 'iec60364-5-52', where: 'Table B.52.17, item 1', confidence: 'seen' } as const;
  const words = circuits === 1 ? 'one circuit alone' : `${circuits} circuits in one bunch`;
  return { symbol: 'Cg', value: holding(bunched, circuits), words, ...cited };
}

/**
 * Adjustment for `conductors` that carry current side by side, in one raceway or bundle: NFPA 70 Table 310.15(C)(1). 1 up to
 * three conductors; 0.35 above forty. `OutOfRange` below one.
 */
export function adjustmentFactor(conductors: number): Factor {
  within('number of current-carrying conductors', conductors, [1, Number.POSITIVE_INFINITY], 'conductors');
  const cited = { source: 'nfpa70', where: 'Table 310.15(C)(1)', confidence: 'seen' } as const;
  const words = conductors === 1 ? 'one conductor' : `${conductors} conductors together`;
  return { symbol: 'Cg', value: holding(together, conductors), words, ...cited };
}

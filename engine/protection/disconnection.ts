import { type Cited, cite } from './cited.ts';

/** How long a fault to earth may last at most, and by which rule. */
export interface TimeLimit extends Cited {
  /** [s] */
  readonly t: number;
  readonly words: string;
}

/** Earthing of the supply: TN, a metal path back to the source; TT, back through the ground. */
export type Earthing = 'TN' | 'TT';

// upper end of a range of U0 [V], longest times for alternating current [s]; seen in a copy of the table
const table: readonly (readonly [upTo: number, tn: number, tt: number])[] = [
  [120, 0.8, 0.3],
  [230, 0.4, 0.2],
  [400, 0.2, 0.07],
  [Number.POSITIVE_INFINITY, 0.1, 0.04],
];

/**
 * Longest disconnection time [s] by IEC 60364-4-41 411.3.2 (BS 7671 Table 41.1) for a nominal voltage to earth `U0` [V]. `final`
 * circuits (sockets to 63 A, fixed loads to 32 A) by the table; others 5 s (TN) or 1 s (TT). Null up to 50 V, where the table
 * asks nothing.
 */
export function disconnectionTime(U0: number, earthing: Earthing = 'TN', final = true): TimeLimit | null {
  if (U0 <= 50) return null;
  const clause = 'Table 41.1 and 411.3.2';
  if (!final) {
    const t = earthing === 'TN' ? 5 : 1;
    return { t, words: 'a distribution circuit', ...cite('iec60364-4-41', clause, 'seen') };
  }
  const [, tn, tt] = table.find(([end]) => U0 <= end) as (typeof table)[number];
  return { t: earthing === 'TN' ? tn : tt, words: 'a final circuit', ...cite('iec60364-4-41', clause, 'seen') };
}

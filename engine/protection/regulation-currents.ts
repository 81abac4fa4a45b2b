import { type CitedValue, cite } from './cited.ts';

// Currents behind the greatest loop impedances that British tables print: 230 V over the printed ohms, of tables without Cmin.
// Family, rated current [A], current for 0.4 s and for 5 s [A]; null where the table has none. A few single values.
type Row = readonly [family: 'bs1362' | 'gG' | 'bs3036', In: number, fast: number | null, slow: number];
const rows: readonly Row[] = [
  ['bs1362', 3, 14, 9.9],
  ['bs1362', 13, 95, 60],
  ['gG', 6, 28, 18],
  ['gG', 10, 47, 32],
  ['gG', 16, 90, 55],
  ['gG', 20, 130, 78],
  ['gG', 25, 170, 100],
  ['gG', 32, 221, 125],
  ['gG', 63, null, 280],
  ['bs3036', 15, 90, 43],
  ['bs3036', 30, 211, 87],
];

/** Multiple of In at which a breaker of each type surely acts at once [1]: IEC 60898-1 Table 7, test e. */
export const instantaneous: Readonly<Record<'B' | 'C' | 'D', number>> = { B: 5, C: 10, D: 20 };

/**
 * Current Ia [A] that British rules take for a device and a time of 0.4 or 5 s, as one cited value; null where none is held.
 * For gG it follows the slowest device of its own standard, and lies below the gates of IEC 60269. For a breaker it is the
 * upper end of its instantaneous zone, whichever the time.
 */
export function regulationCurrent(family: string, In: number, t: 0.4 | 5): CitedValue | null {
  if (family === 'B' || family === 'C' || family === 'D')
    return { value: instantaneous[family] * In, ...cite('iec60898-1', 'Table 7, instantaneous tripping', 'seen') };
  const row = rows.find((one) => one[0] === family && one[1] === In);
  const value = row?.[t === 5 ? 3 : 2];
  return value === undefined || value === null
    ? null
    : { value, ...cite('bs7671', 'Tables 41.2 and 41.4, 230 V over the printed ohms', 'computed') };
}

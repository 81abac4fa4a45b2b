/**
 * Rated currents that devices are made in [A], up to 125 A, by usage of the trade: IEC 60898-1, 5.3.2, preferred values (from
 * memory); NFPA 70, 240.6(A) (seen).
 */
const values = {
  iec: [6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125],
  na: [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125],
} as const;

/** Standard rated currents of devices, rising [A]. */
export const usualRatings = (practice: 'iec' | 'na'): readonly number[] => values[practice];

/** The next standard rating at or above `I` [A]; null above the list. */
export const nextStandardRating = (practice: 'iec' | 'na', I: number): number | null =>
  values[practice].find((one) => one >= I * (1 - 1e-9)) ?? null;

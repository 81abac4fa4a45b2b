import { within } from '../errors.ts';
import { inch } from '../quantity.ts';

/**
 * Diameter [m] of solid wire of American wire gauge `n` (24 to 4, whole or not): d = 0.005 in · 92^((36 − n)/39).
 * ASTM B258. `OutOfRange` outside 4 to 40.
 */
export function awgDiameter(n: number): number {
  within('wire gauge', n, [4, 40], 'AWG');
  return 0.005 * inch * 92 ** ((36 - n) / 39);
}

/** Area [m²] of gauge `n`: π d²/4 with d by `awgDiameter`. */
export function awgArea(n: number): number {
  return (Math.PI / 4) * awgDiameter(n) ** 2;
}

/** The even gauges of the trade that we table, thin to thick. */
export const awgSizes = [24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4] as const;

import { foot } from '../quantity.ts';
import { amount, given, rounded } from './figures.ts';
import type { Practice } from './types.ts';
import { unitSpace } from './words.ts';

// Resistance, heat and length as each practice tells them: by the metre, or by the foot.

/** The length that a practice counts by [m], its unit and name, and the units of what is told by it. */
export const perLength = {
  iec: { length: 1, resistance: 'mΩ/m', heat: 'W/m', unit: 'm', name: 'metre' },
  na: { length: foot, resistance: 'mΩ/ft', heat: 'W/ft', unit: 'ft', name: 'foot' },
} as const satisfies Record<
  Practice,
  Readonly<Record<'resistance' | 'heat' | 'unit' | 'name', string>> & { length: number }
>;

/** A resistance by the length, rounded to three figures as a table tells it: its value [Ω/m] and its words. */
export function toldResistance(R: number, practice: Practice): { readonly R: number; readonly text: string } {
  const { length, resistance } = perLength[practice];
  const number = rounded(R * length * 1e3, 3);
  return { R: number / length / 1e3, text: amount(number, 3, resistance) };
}

/** A round length of a practice: its value [m] and its words. `count` in metres or feet. */
export function toldLength(count: number, practice: Practice): { readonly L: number; readonly text: string } {
  const { length, unit } = perLength[practice];
  return { L: count * length, text: given(count, unit) };
}

/** How a practice marks a size: '1.5 mm²', '14 AWG'. */
export const markedAs = (size: number, practice: Practice): string =>
  `${size}${unitSpace}${practice === 'iec' ? 'mm²' : 'AWG'}`;

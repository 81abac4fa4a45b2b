import { type CitedValue, cite } from './cited.ts';
import { leastMelting } from './gg-fuse.ts';

/** Pre-arcing I²t of a gG fuse-link at 10 ms, least and greatest [A²s]. */
export interface MeltingEnergy {
  readonly least: CitedValue;
  readonly greatest: CitedValue;
}

// greatest pre-arcing I²t by rated current [A], in A²s; the least ones stand with the fuse
const greatestMelting: Readonly<Record<number, number>> = {
  16: 1000,
  20: 1800,
  25: 3000,
  32: 5000,
  40: 9000,
  50: 16_000,
  63: 27_000,
  80: 46_000,
  100: 86_000,
  125: 140_000,
};

/** What melts a gG fuse-link in 10 ms by IEC 60269-1 [A²s]; null for a rating that the table lacks. */
export function meltingEnergy(In: number): MeltingEnergy | null {
  const [least, greatest] = [leastMelting[In], greatestMelting[In]];
  if (least === undefined || greatest === undefined) return null;
  const cited = cite('iec60269-1', 'pre-arcing I²t at 0.01 s', 'seen');
  return { least: { value: least, ...cited }, greatest: { value: greatest, ...cited } };
}

// let-through of breakers of energy class 3, by rated short-circuit capacity [A]: B and C to 16 A, B and C above to 32 A [A²s]
const classThree: readonly (readonly [Icn: number, ...values: readonly [number, number, number, number]])[] = [
  [3000, 15_000, 18_000, 18_000, 22_000],
  [4500, 25_000, 30_000, 32_000, 39_000],
  [6000, 35_000, 42_000, 45_000, 55_000],
  [10_000, 70_000, 84_000, 90_000, 110_000],
];

/**
 * Greatest I²t [A²s] that a breaker of energy class 3 lets through at its rated short-circuit capacity `Icn` [A]: EN 60898-1
 * Annex ZA. Types B and C to 32 A; null for anything else. Only the two values of 10 kA up to 16 A were seen in print. At a
 * smaller fault current the maker's curve tells less.
 */
export function classThreeEnergy(type: 'B' | 'C', In: number, Icn: number): CitedValue | null {
  const row = classThree.find(([one]) => one === Icn);
  if (!row || In > 32) return null;
  const small = In <= 16;
  const value = row[(small ? 1 : 3) + (type === 'B' ? 0 : 1)] as number;
  const confidence = Icn === 10_000 && small ? 'seen' : 'from memory';
  return { value, ...cite('iec60898-1', 'EN edition, Annex ZA, class 3', confidence) };
}

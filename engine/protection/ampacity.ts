import { type TradeSize, tradeSize } from '../conductor/area-scale.ts';
import { type Cited, type CitedValue, cite } from './cited.ts';

/** A temperature column of the ampacity tables [°C]. */
export type AmpacityColumn = 60 | 75 | 90;

/** What the ampacity tables tell apart: copper from the other two, which share one column. */
export type AmpacityMetal = 'copper' | 'aluminium';

/** Ampacity by gauge, one row a size: 60, 75 and 90 °C [A]; null where no copy was seen. */
type Row = readonly [gauge: number, ...A: readonly [number | null, number | null, number | null]];

// single values as seen in copies of the table; 14 and 12 AWG copper at 60 °C print 20 and 25 in older editions
const copper: readonly Row[] = [
  [18, null, null, 14],
  [16, null, null, 18],
  [14, 15, 20, 25],
  [12, 20, 25, 30],
  [10, 30, 35, 40],
  [8, 40, 50, 55],
  [6, 55, 65, 75],
  [4, 70, 85, 95],
];
// aluminium and copper-clad aluminium; older copies print 20 (12 AWG, 60 °C), 30 (8, 60 °C) and 60 (6, 90 °C)
const aluminium: readonly Row[] = [
  [12, 15, 20, 25],
  [10, 25, 30, 35],
  [8, 35, 40, 45],
  [6, 40, 50, 55],
  [4, 55, 65, 75],
];
const tables = { copper, aluminium } as const;
const column: Readonly<Record<AmpacityColumn, 1 | 2 | 3>> = { 60: 1, 75: 2, 90: 3 };
const cited = (of: AmpacityColumn) => cite('nfpa70', `Table 310.16, ${of} °C column`, 'seen');

/** The metal's column, for a metal by its id; null where the table has none (steel, copper-clad steel, own values). */
export function ampacityMetal(id: string): AmpacityMetal | null {
  if (id === 'copper') return 'copper';
  return id === 'aluminium' || id.startsWith('cca') ? 'aluminium' : null;
}

/**
 * Ampacity [A] of a gauge with up to three current-carrying conductors in raceway or cable at 30 °C: NFPA 70 Table 310.16, as
 * one cited value. Null where no value was seen.
 */
export function ampacity(gauge: number, metal: AmpacityMetal, of: AmpacityColumn): CitedValue | null {
  const value = tables[metal].find(([one]) => one === gauge)?.[column[of]];
  return value === undefined || value === null ? null : { value, ...cited(of) };
}

/** Gauges that the table has for a metal in a column, thin to thick. */
export const ampacitySizes = (metal: AmpacityMetal, of: AmpacityColumn): TradeSize[] =>
  tables[metal].flatMap((row) => (row[column[of]] === null ? [] : (tradeSize('AWG', row[0]) ?? [])));

// what a device may be rated at, for small conductors [A]
type Cap = readonly [gauge: number, A: number, confidence: Cited['confidence']];
const smallCopper: readonly Cap[] = [
  [18, 7, 'seen'],
  [16, 10, 'from memory'],
  [14, 15, 'seen'],
  [12, 20, 'seen'],
  [10, 30, 'seen'],
];
const smallAluminium: readonly Cap[] = [
  [14, 10, 'from memory'],
  [12, 15, 'seen'],
  [10, 25, 'seen'],
];

/**
 * The greatest device [A] for a small conductor, whatever its ampacity: NFPA 70 240.4(D). Null for a thicker one, which the
 * rule leaves alone. 14 AWG holds for copper-clad aluminium of the 2023 edition only.
 */
export function smallConductorCap(gauge: number, metal: AmpacityMetal): CitedValue | null {
  const found = (metal === 'copper' ? smallCopper : smallAluminium).find(([one]) => one === gauge);
  return found ? { value: found[1], ...cite('nfpa70', '240.4(D), small conductors', found[2]) } : null;
}

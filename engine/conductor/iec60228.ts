import type { Confidence } from '../material/property.ts';

/** Conductor class of IEC 60228: 1 solid, 2 stranded, 5 flexible, 6 extra flexible. */
export type ConductorClass = 1 | 2 | 5 | 6;

/** One row of IEC 60228: greatest resistance at 20 °C [Ω/km] by class and finish, usual make-up, greatest bundle diameter. */
export interface StandardSize {
  readonly area_mm2: number;
  /** Classes 1 and 2, plain copper (Tables 1 and 2). */
  readonly solid: number;
  readonly solidTinned: number;
  /** Classes 1 and 2, aluminium; null where the standard has none. */
  readonly solidAluminium: number | null;
  /** Classes 5 and 6, plain copper (Tables 3 and 4). */
  readonly flexible: number;
  readonly flexibleTinned: number;
  /** Usual make-up: strand count and diameter [mm]; counts are not binding. */
  readonly class5: readonly [number, number];
  readonly class6: readonly [number, number];
  /** Greatest diameter of a class 5 or 6 conductor [mm], Annex C, from memory. */
  readonly maxDiameter_mm: number;
}

/** IEC 60228, 0.5 to 35 mm². Make-up after VDE 0295. */
export const standardSizes: readonly StandardSize[] = [
  {
    area_mm2: 0.5,
    solid: 36,
    solidTinned: 36.7,
    solidAluminium: null,
    flexible: 39,
    flexibleTinned: 40.1,
    class5: [16, 0.2],
    class6: [28, 0.15],
    maxDiameter_mm: 1.1,
  },
  {
    area_mm2: 0.75,
    solid: 24.5,
    solidTinned: 24.8,
    solidAluminium: null,
    flexible: 26,
    flexibleTinned: 26.7,
    class5: [24, 0.2],
    class6: [42, 0.15],
    maxDiameter_mm: 1.3,
  },
  {
    area_mm2: 1,
    solid: 18.1,
    solidTinned: 18.2,
    solidAluminium: null,
    flexible: 19.5,
    flexibleTinned: 20,
    class5: [32, 0.2],
    class6: [56, 0.15],
    maxDiameter_mm: 1.5,
  },
  {
    area_mm2: 1.5,
    solid: 12.1,
    solidTinned: 12.2,
    solidAluminium: 18.1,
    flexible: 13.3,
    flexibleTinned: 13.7,
    class5: [30, 0.25],
    class6: [84, 0.15],
    maxDiameter_mm: 1.8,
  },
  {
    area_mm2: 2.5,
    solid: 7.41,
    solidTinned: 7.56,
    solidAluminium: 12.1,
    flexible: 7.98,
    flexibleTinned: 8.21,
    class5: [50, 0.25],
    class6: [140, 0.15],
    maxDiameter_mm: 2.4,
  },
  {
    area_mm2: 4,
    solid: 4.61,
    solidTinned: 4.7,
    solidAluminium: 7.41,
    flexible: 4.95,
    flexibleTinned: 5.09,
    class5: [56, 0.3],
    class6: [224, 0.15],
    maxDiameter_mm: 3,
  },
  {
    area_mm2: 6,
    solid: 3.08,
    solidTinned: 3.11,
    solidAluminium: 4.61,
    flexible: 3.3,
    flexibleTinned: 3.39,
    class5: [84, 0.3],
    class6: [192, 0.2],
    maxDiameter_mm: 3.9,
  },
  {
    area_mm2: 10,
    solid: 1.83,
    solidTinned: 1.84,
    solidAluminium: 3.08,
    flexible: 1.91,
    flexibleTinned: 1.95,
    class5: [80, 0.4],
    class6: [320, 0.2],
    maxDiameter_mm: 5.1,
  },
  {
    area_mm2: 16,
    solid: 1.15,
    solidTinned: 1.16,
    solidAluminium: 1.91,
    flexible: 1.21,
    flexibleTinned: 1.24,
    class5: [128, 0.4],
    class6: [512, 0.2],
    maxDiameter_mm: 6.3,
  },
  {
    area_mm2: 25,
    solid: 0.727,
    solidTinned: 0.734,
    solidAluminium: 1.2,
    flexible: 0.78,
    flexibleTinned: 0.795,
    class5: [200, 0.4],
    class6: [800, 0.2],
    maxDiameter_mm: 7.8,
  },
  {
    area_mm2: 35,
    solid: 0.524,
    solidTinned: 0.529,
    solidAluminium: 0.868,
    flexible: 0.554,
    flexibleTinned: 0.565,
    class5: [280, 0.4],
    class6: [1120, 0.2],
    maxDiameter_mm: 9.2,
  },
];

/** The standard's row for a size [mm²], or undefined when the size is not standard. */
export function standardSize(area_mm2: number): StandardSize | undefined {
  return standardSizes.find((row) => row.area_mm2 === area_mm2);
}

/** A table maximum of resistance at 20 °C [Ω/km] with how sure we are. */
export interface TableResistance {
  readonly R20_ohmPerKm: number;
  readonly confidence: Confidence;
}

/**
 * Greatest R20 by IEC 60228 of a standard size, or undefined where the standard has none: plain or tinned copper of every
 * class, plain aluminium of classes 1 and 2. 1.25 mm² is a trade size, from memory.
 */
export function tableResistance(
  area_mm2: number,
  conductorClass: ConductorClass,
  metal: 'copper' | 'aluminium' = 'copper',
  tinned = false,
): TableResistance | undefined {
  const flexible = conductorClass >= 5;
  if (area_mm2 === 1.25 && metal === 'copper' && flexible && !tinned)
    return { R20_ohmPerKm: 15.6, confidence: 'from memory' };
  const row = standardSize(area_mm2);
  if (!row) return undefined;
  if (metal === 'aluminium') {
    if (flexible || row.solidAluminium === null) return undefined;
    return { R20_ohmPerKm: row.solidAluminium, confidence: area_mm2 < 10 ? 'from memory' : 'seen' };
  }
  const classSix = conductorClass === 6;
  if (!tinned)
    return { R20_ohmPerKm: flexible ? row.flexible : row.solid, confidence: classSix ? 'from memory' : 'seen' };
  const memory = classSix || (flexible && area_mm2 < 1);
  return { R20_ohmPerKm: flexible ? row.flexibleTinned : row.solidTinned, confidence: memory ? 'from memory' : 'seen' };
}

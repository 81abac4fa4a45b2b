import type { PlasticId } from '../material/plastics.ts';
import type { Confidence } from '../material/property.ts';
import type { SourceId } from '../sources.ts';

/** One cord or wire of the construction table. Thicknesses are the standard's nominal walls [mm]; overall limits [mm] are a check, not an input. */
export interface Construction {
  readonly table: string;
  readonly description: string;
  readonly layout: 'single' | 'round' | 'flat';
  readonly cores: number;
  /** Size in mm², or an AWG number where `gauge` is true. */
  readonly size: number;
  readonly gauge: boolean;
  readonly insulation: PlasticId;
  readonly insulation_mm: number;
  readonly sheath: PlasticId | null;
  readonly sheath_mm: number;
  /** Smallest and greatest overall diameter (flat cords: greater width) allowed by the standard [mm]. */
  readonly overall_mm: readonly [number, number];
  readonly source: SourceId;
  /** How sure we are of the walls. Overall limits of SJT cords, and least ones of H05V-K, are from memory throughout. */
  readonly confidence: Confidence;
}

type Row = readonly [number, number, number, number, number, number, Confidence];
const seen = 'seen' as const;
const memory = 'from memory' as const;

// cores, size, insulation, sheath, least and greatest overall diameter [mm], how sure we are
const h03vvfRows: readonly Row[] = [
  [2, 0.5, 0.5, 0.6, 4.6, 5.9, memory],
  [2, 0.75, 0.5, 0.6, 4.9, 6.3, memory],
  [3, 0.5, 0.5, 0.6, 4.9, 6.3, memory],
  [3, 0.75, 0.5, 0.6, 5.2, 6.7, memory],
  [4, 0.5, 0.5, 0.6, 5.4, 6.9, memory],
  [4, 0.75, 0.5, 0.6, 5.7, 7.3, memory],
];

const h05vvfRows: readonly Row[] = [
  [2, 0.75, 0.6, 0.8, 5.7, 7.2, seen],
  [2, 1, 0.6, 0.8, 5.9, 7.5, seen],
  [2, 1.5, 0.7, 0.8, 6.8, 8.6, seen],
  [2, 2.5, 0.8, 1, 8.4, 10.6, seen],
  [2, 4, 0.8, 1.1, 9.7, 12.1, memory],
  [3, 0.75, 0.6, 0.8, 6, 7.6, seen],
  [3, 1, 0.6, 0.8, 6.3, 8, seen],
  [3, 1.5, 0.7, 0.9, 7.4, 9.4, seen],
  [3, 2.5, 0.8, 1.1, 9.2, 11.4, seen],
  [3, 4, 0.8, 1.2, 10.5, 13.1, memory],
  [4, 0.75, 0.6, 0.8, 6.6, 8.3, seen],
  [4, 1, 0.6, 0.9, 7.1, 9, seen],
  [4, 1.5, 0.7, 1, 8.4, 10.5, seen],
  [4, 2.5, 0.8, 1.1, 10.1, 12.5, seen],
  [5, 0.75, 0.6, 0.9, 7.4, 9.3, seen],
  [5, 1, 0.6, 0.9, 7.8, 9.8, seen],
  [5, 1.5, 0.7, 1.1, 9.3, 11.6, seen],
  [5, 2.5, 0.8, 1.2, 11.2, 13.9, seen],
];

const h05rrfRows: readonly Row[] = [
  [2, 0.75, 0.6, 0.8, 5.7, 7.4, memory],
  [2, 1, 0.6, 0.9, 6.1, 8, memory],
  [2, 1.5, 0.8, 1, 7.6, 9.8, memory],
  [2, 2.5, 0.9, 1.1, 9, 11.6, memory],
  [3, 0.75, 0.6, 0.9, 6.2, 8.1, memory],
  [3, 1, 0.6, 0.9, 6.5, 8.5, memory],
  [3, 1.5, 0.8, 1, 8, 10.4, memory],
  [3, 2.5, 0.9, 1.1, 9.6, 12.4, memory],
];

const h07rnfRows: readonly Row[] = [
  [1, 1.5, 0.8, 1.4, 5.7, 7.1, memory],
  [1, 2.5, 0.9, 1.4, 6.3, 7.9, memory],
  [1, 4, 1, 1.5, 7.2, 9, memory],
  [1, 6, 1, 1.6, 7.9, 9.8, memory],
  [1, 10, 1.2, 1.8, 9.5, 11.9, memory],
  [1, 16, 1.2, 1.9, 10.8, 13.4, memory],
  [1, 25, 1.4, 2, 12.7, 15.8, memory],
  [2, 1, 0.8, 1.3, 7.7, 10, memory],
  [2, 1.5, 0.8, 1.5, 8.5, 11, memory],
  [2, 2.5, 0.9, 1.7, 10.2, 13.1, memory],
  [2, 4, 1, 1.8, 11.8, 15.1, memory],
  [2, 6, 1, 2, 13.1, 16.8, memory],
  [2, 10, 1.2, 3.1, 17.7, 22.6, memory],
  [2, 16, 1.2, 3.3, 20.2, 25.7, memory],
  [2, 25, 1.4, 3.6, 24.3, 30.7, memory],
  [3, 1, 0.8, 1.4, 8.3, 10.7, memory],
  [3, 1.5, 0.8, 1.6, 9.2, 11.9, memory],
  [3, 2.5, 0.9, 1.8, 10.9, 14, memory],
  [3, 4, 1, 1.9, 12.7, 16.2, memory],
  [3, 6, 1, 2.1, 14.1, 18, memory],
  [3, 10, 1.2, 3.3, 19.1, 24.2, memory],
  [3, 16, 1.2, 3.5, 21.8, 27.6, memory],
  [3, 25, 1.4, 3.8, 26.1, 33, memory],
];

const h05vkRows: readonly Row[] = [
  [1, 0.5, 0.6, 0, 2.1, 2.5, seen],
  [1, 0.75, 0.6, 0, 2.2, 2.7, seen],
  [1, 1, 0.6, 0, 2.4, 2.8, seen],
];

const h07vkRows: readonly Row[] = [
  [1, 1.5, 0.7, 0, 2.8, 3.4, memory],
  [1, 2.5, 0.8, 0, 3.4, 4.1, memory],
  [1, 4, 0.8, 0, 3.9, 4.8, memory],
  [1, 6, 0.8, 0, 4.4, 5.3, memory],
  [1, 10, 1, 0, 5.7, 6.8, memory],
  [1, 16, 1, 0, 6.7, 8.1, memory],
  [1, 25, 1.2, 0, 8.4, 10.2, memory],
];

const sjtRows: readonly Row[] = [
  [2, 18, 0.76, 0.76, 6.8, 7.4, seen],
  [3, 18, 0.76, 0.76, 7.2, 7.9, seen],
  [2, 16, 0.76, 0.76, 7.4, 8, seen],
  [3, 16, 0.76, 0.76, 7.8, 8.5, seen],
  [2, 14, 0.76, 0.76, 8.1, 8.9, seen],
  [3, 14, 0.76, 0.76, 8.6, 9.4, seen],
  [2, 12, 0.76, 1.14, 9.3, 10.7, memory],
  [3, 12, 0.76, 1.14, 9.9, 11.2, memory],
  [2, 10, 1.14, 1.14, 12, 14, memory],
  [3, 10, 1.14, 1.14, 12.6, 14.6, memory],
];
// flat cords: least and greatest overall width
const h03vvh2fRows: readonly Row[] = [
  [2, 0.5, 0.5, 0.6, 4.9, 5.9, memory],
  [2, 0.75, 0.5, 0.6, 5.2, 6.3, memory],
];

const h05vvh2fRows: readonly Row[] = [[2, 0.75, 0.6, 0.8, 6.0, 7.2, memory]];

const h03vhhRows: readonly Row[] = [
  [2, 0.5, 0.8, 0, 4.9, 5.9, memory],
  [2, 0.75, 0.8, 0, 5.2, 6.3, memory],
];

type Family = Pick<Construction, 'table' | 'description' | 'layout' | 'insulation' | 'sheath' | 'gauge' | 'source'>;

function family(of: Family, rows: readonly Row[]): Construction[] {
  return rows.map(([cores, size, insulation_mm, sheath_mm, least, greatest, confidence]) => ({
    ...of,
    sheath: sheath_mm > 0 ? of.sheath : null,
    layout: cores === 1 ? 'single' : of.layout,
    cores,
    size,
    insulation_mm,
    sheath_mm,
    overall_mm: [least, greatest],
    confidence,
  }));
}

const metric = { gauge: false, layout: 'round' } as const;
const pvc = { insulation: 'pvc70', sheath: 'pvc70', ...metric } as const;
const rubber = { insulation: 'rubber60', sheath: 'rubber60', ...metric } as const;
const cords = 'iec60227-5';

/** The construction table: designations of the harmonised standards and, for AWG cords, the cord type of NFPA 70 Table 400.4. */
export const constructions: readonly Construction[] = [
  ...family({ table: 'H03VV-F', description: 'light PVC cord', source: cords, ...pvc }, h03vvfRows),
  ...family({ table: 'H05VV-F', description: 'ordinary PVC cord', source: cords, ...pvc }, h05vvfRows),
  ...family({ table: 'H05RR-F', description: 'ordinary rubber cord', source: 'iec60245-4', ...rubber }, h05rrfRows),
  ...family({ table: 'H07RN-F', description: 'heavy rubber cable', source: 'iec60245-4', ...rubber }, h07rnfRows),
  ...family(
    { table: 'H03VVH2-F', description: 'light flat PVC cord', source: cords, ...pvc, layout: 'flat' },
    h03vvh2fRows,
  ),
  ...family(
    { table: 'H05VVH2-F', description: 'ordinary flat PVC cord', source: cords, ...pvc, layout: 'flat' },
    h05vvh2fRows,
  ),
  ...family({ table: 'H03VH-H', description: 'flat twin cord', source: cords, ...pvc, layout: 'flat' }, h03vhhRows),
  ...family({ table: 'H05V-K', description: 'flexible single wire', source: 'iec60227-3', ...pvc }, h05vkRows),
  ...family({ table: 'H07V-K', description: 'flexible single wire', source: 'iec60227-3', ...pvc }, h07vkRows),
  ...family({ table: 'SJT', description: 'junior hard-service cord', source: 'ul62', ...pvc, gauge: true }, sjtRows),
];

/** The row of a designation, core count and size (mm², or AWG where `gauge`), or undefined when the table has none. */
export function construction(table: string, cores: number, size: number, gauge: boolean): Construction | undefined {
  return constructions.find((c) => c.table === table && c.cores === cores && c.size === size && c.gauge === gauge);
}

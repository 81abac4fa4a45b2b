import { construction } from '../cable/constructions.ts';
import { inMetal } from '../cable/in-metal.ts';
import type { MetalId } from '../material/metals.ts';
import type { CableSpec } from '../scenario/schema.ts';

/** Walls of one size [mm]: about each core, and the sheath about all. */
type Walls = readonly [size: number, insulation: number, sheath: number];

/** Sizes of a matrix by practice, thin to thick: mm², and gauges. */
export const matrixSizes = {
  iec: [0.5, 0.75, 1, 1.25, 1.5, 2.5, 4, 6, 10, 16, 25, 35],
  na: [24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4],
} as const;

/** Metals of a matrix, best conductor first. */
export const matrixMetals = ['copper', 'cca10', 'aluminium', 'steel'] as const satisfies readonly MetalId[];

/** Walls of sizes that no cord table has: the trend of those it has, carried on (own choice); 1.25 mm² from memory. */
const walls: Readonly<Record<'iec' | 'na', readonly Walls[]>> = {
  iec: [
    [1.25, 0.65, 0.85],
    [6, 1, 1.3],
    [10, 1.2, 1.5],
    [16, 1.2, 1.6],
    [25, 1.4, 1.8],
    [35, 1.4, 2],
  ],
  na: [
    [24, 0.76, 0.76],
    [22, 0.76, 0.76],
    [20, 0.76, 0.76],
    [8, 1.14, 1.52],
    [6, 1.14, 1.52],
    [4, 1.14, 1.52],
  ],
};

/**
 * A lead of a matrix: three cores under a sheath of 70 °C PVC, two of them loaded, as the cord tables have it or, where they
 * have no such size, with walls of ours. Other metals are drawn to the strands of the copper lead. Null for a size without walls.
 * @param size in mm², or a gauge where `practice` is `na`
 */
export function matrixLead(size: number, metal: MetalId, practice: 'iec' | 'na'): CableSpec | null {
  const copper = practice === 'na' ? american(size) : metric(size);
  return copper && (metal === 'copper' ? copper : inMetal(copper, metal));
}

const cores = 3;
const loaded = 2;

function metric(size_mm2: number): CableSpec | null {
  const table = ['H05VV-F', 'H03VV-F'].find((name) => construction(name, cores, size_mm2, false));
  return table ? { table, cores, size_mm2, loaded } : ownWalls('iec', size_mm2, { size_mm2 });
}

function american(size_AWG: number): CableSpec | null {
  if (construction('SJT', cores, size_AWG, true)) return { table: 'SJT', cores, size_AWG, loaded };
  return ownWalls('na', size_AWG, { size_AWG });
}

function ownWalls(
  practice: 'iec' | 'na',
  size: number,
  conductor: { size_mm2: number } | { size_AWG: number },
): CableSpec | null {
  const found = walls[practice].find(([one]) => one === size);
  if (!found) return null;
  const [, insulation_mm, sheath_mm] = found;
  return {
    layout: 'round',
    cores,
    loaded,
    conductor,
    insulation: { material: 'pvc70', thickness_mm: insulation_mm },
    sheath: { material: 'pvc70', thickness_mm: sheath_mm },
  };
}

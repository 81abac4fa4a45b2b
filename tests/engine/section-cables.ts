import { roundLayout } from '../../engine/cable/layout.ts';
import type { RoundSection } from '../../engine/cable/section.ts';

/** Cores, conductor area [mm²], insulation and sheath [mm]: IEC 60227-5 (60227 IEC 52, the 0.5 mm² rows, and IEC 53). */
export const cords = [
  [2, 0.5, 0.5, 0.6],
  [2, 0.75, 0.6, 0.8],
  [2, 1, 0.6, 0.8],
  [2, 1.5, 0.7, 0.8],
  [2, 2.5, 0.8, 1.0],
  [2, 4, 0.8, 1.1],
  [3, 0.75, 0.6, 0.8],
  [3, 1, 0.6, 0.8],
  [3, 1.5, 0.7, 0.9],
  [3, 2.5, 0.8, 1.1],
  [4, 0.75, 0.6, 0.8],
  [4, 1.5, 0.7, 1.0],
  [4, 2.5, 0.8, 1.1],
  [5, 0.75, 0.6, 0.9],
  [5, 2.5, 0.8, 1.2],
] as const;

/** Small cables: the walls of IEC 60245-4 (60245 IEC 66); the walls of the four-core row are taken as the three-core one's. */
export const cables = [
  [2, 25, 1.4, 3.6],
  [3, 25, 1.4, 3.8],
  [4, 16, 1.2, 3.5],
] as const;

/** Every choice of loaded cores that no turn or mirror image makes equal to another. */
export const choices: Record<number, number[][]> = {
  1: [[0]],
  2: [[0], [0, 1]],
  3: [[0], [0, 1], [0, 1, 2]],
  4: [[0], [0, 1], [0, 2], [0, 1, 2], [0, 1, 2, 3]],
  5: [[0], [0, 1], [0, 2], [0, 1, 2], [0, 1, 3], [0, 1, 2, 3], [0, 1, 2, 3, 4]],
};

/** A strand bundle is taken as 1.13 times the diameter of a solid wire of its area; PVC of 5 K·m/W throughout, h that of still air. */
export function cable(
  [cores, area_mm2, insulation_mm, sheath_mm]: readonly [number, number, number, number],
  loaded: readonly number[],
  { k = 0.2, kSheath = 0.2, h = 18 } = {},
): RoundSection & { a: number } {
  const rc = 1.13e-3 * Math.sqrt(area_mm2 / Math.PI);
  const layout = roundLayout(cores, rc + 1e-3 * insulation_mm);
  const layers = sheath_mm > 0 ? [{ k: kSheath, r1: layout.R + 1e-3 * sheath_mm }] : [];
  return { ...layout, rc, k, layers, h, loaded };
}

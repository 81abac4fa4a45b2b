import { linearScale } from '../linear-scale.ts';
import type { Scale } from '../types.ts';

/** One conductor on the area scale. */
export interface AreaMark {
  id: string;
  /** As marked, without its unit: '1.5', '16'. */
  name: string;
  area_mm2: number;
  /** Temperature it settles at [°C]; null where it does not settle. */
  T: number | null;
  chosen: boolean;
}

/** The sizes of one system. */
export interface AreaRow {
  unit: string;
  marks: readonly AreaMark[];
}

/** Where everything stands on the scale [px]. */
export interface AreaLayout {
  /** Place of an area [mm²], by its logarithm: equal steps are equal ratios. */
  x: Scale;
  /** Radius of a solid round wire of an area [mm²], by its root. */
  radius: Scale;
}

const close = 0.92; // share of the room between two neighbours that they may fill

/** Diameter of a solid round wire of `area_mm2` [mm]. */
export function diameterOf(area_mm2: number): number {
  return Math.sqrt((4 * area_mm2) / Math.PI);
}

/**
 * The one scale of both rows between `left` and `right` [px]: as large as it can be with no two circles of a row touching and
 * none wider than `most` [px].
 */
export function areaLayout(rows: readonly AreaRow[], left: number, right: number, most: number): AreaLayout {
  const areas = rows.flatMap(({ marks }) => marks.map(({ area_mm2 }) => area_mm2));
  const [least, greatest] = areas.length > 0 ? [Math.min(...areas), Math.max(...areas)] : [1, 1];
  const whole = Math.log(greatest / least) || 1;
  const ends = (diameterOf(least) + diameterOf(greatest)) / 2;
  let perMm = most / diameterOf(greatest);
  for (const { marks } of rows) {
    const row = marks.map(({ area_mm2 }) => area_mm2).sort((a, b) => a - b);
    for (let i = 1; i < row.length; i++) {
      const [a, b] = [row[i - 1] ?? 1, row[i] ?? 1];
      const share = (close * Math.log(b / a)) / whole;
      const between = (diameterOf(a) + diameterOf(b)) / 2;
      perMm = Math.min(perMm, ((right - left) * share) / (between + share * ends));
    }
  }
  const at = linearScale(
    [Math.log(least), Math.log(least) + whole],
    [left + (perMm * diameterOf(least)) / 2, right - (perMm * diameterOf(greatest)) / 2],
  );
  return { x: (area) => at(Math.log(area)), radius: (area) => (perMm * diameterOf(area)) / 2 };
}

const round = [0.2, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 15, 20, 30, 40];

/** Round areas [mm²] from a little under `least` to a little over `greatest`. */
export function areaTicks(least: number, greatest: number): number[] {
  return round.filter((area) => area >= least / 1.12 && area <= greatest * 1.12);
}

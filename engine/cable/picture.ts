import type { Outside } from '../surroundings/outside.ts';
import type { Cable } from './cable.ts';
import type { SectionField } from './section-field.ts';
import { sectionField } from './section-of.ts';

/** Where a point of the section lies. */
export type Part = 'conductor' | 'insulation' | 'filling' | 'sheath' | 'outside';

/**
 * The section as a picture shows it [m]: turned so that its first two cores lie side by side on top, x to the right, y up.
 * Its outlines are stadiums, two half circles joined by straight runs; a circle has no run.
 */
export interface SectionShape {
  /** Core centres. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Radius of the strand bundle, and of the core with its insulation. */
  readonly conductorRadius: number;
  readonly coreRadius: number;
  /** Half the straight run of both outlines. */
  readonly halfRun: number;
  /** Radius of the outline under the sheath, and of the cable's own surface. */
  readonly bodyRadius: number;
  readonly outerRadius: number;
  /** Height of the cut A–A, through the hottest loaded core. */
  readonly cut: number;
  /** Which part a point belongs to, and the core's index in a conductor or its insulation. */
  partAt(x: number, y: number): { readonly part: Part; readonly core?: number };
  /** Distance from the cable's own surface, negative inside. */
  distance(x: number, y: number): number;
  /** Steady u at a point, 1 in the hottest loaded conductor, 0 on the mean of the surface; outside, that of the nearest surface. */
  uAt(x: number, y: number): number;
}

const around = 1 - 1e-9; // of the outer radius: just inside, where rounding cannot lead outside

/**
 * The shape of a cable's section with its steady field.
 * @param outside,h as in `sectionField`; h to two figures, so that the field of a cable is the same while its air grows a little warmer
 */
export function sectionShape(cable: Cable, outside: Outside, h: number): SectionShape {
  const flat = cable.layout === 'flat';
  const turn = flat || cable.cores < 3 ? 0 : turnOf(cable);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const x = cable.x.map((xi, i) => c * xi - s * (cable.y[i] as number));
  const y = cable.y.map((yi, i) => s * (cable.x[i] as number) + c * yi);
  const field = sectionField(cable, outside, Number(h.toPrecision(2)));
  const { coreRadius, halfRun, halfHeight } = cable;
  const conductorRadius = cable.conductor.rc;
  const bodyRadius = flat ? halfHeight : cable.bodyRadius;
  const outerRadius = bodyRadius + (cable.outerRadius - cable.bodyRadius);

  /** From the middle line of the stadium, and the nearest point of that line. */
  const nearest = (px: number) => Math.max(-halfRun, Math.min(halfRun, px));
  const fromLine = (px: number, py: number) => Math.hypot(px - nearest(px), py);

  function partAt(px: number, py: number): { part: Part; core?: number } {
    const away = fromLine(px, py);
    if (away > outerRadius) return { part: 'outside' };
    for (let i = 0; i < x.length; i++) {
      const d = Math.hypot(px - (x[i] as number), py - (y[i] as number));
      if (d <= conductorRadius) return { part: 'conductor', core: i };
      if (d <= coreRadius) return { part: 'insulation', core: i };
    }
    return { part: away <= bodyRadius ? 'filling' : 'sheath' };
  }

  function uAt(px: number, py: number): number {
    if (!field) return 1;
    const away = fromLine(px, py);
    const limit = outerRadius * around;
    if (away <= limit) return field.at(c * px + s * py, c * py - s * px);
    const nx = nearest(px) + ((px - nearest(px)) * limit) / away;
    const ny = (py * limit) / away;
    return field.at(c * nx + s * ny, c * ny - s * nx);
  }

  return {
    x,
    y,
    conductorRadius,
    coreRadius,
    halfRun,
    bodyRadius,
    outerRadius,
    cut: cutOf(cable, field, y),
    partAt,
    distance: (px, py) => fromLine(px, py) - outerRadius,
    uAt,
  };
}

/** The turn [rad] that puts cores 0 and 1 side by side on top. */
function turnOf({ x, y, cores }: Cable): number {
  return Math.PI / 2 + Math.PI / cores - Math.atan2(y[0] as number, x[0] as number);
}

/** The height of the hottest loaded conductor; of several as hot, the first. */
function cutOf({ loaded }: Cable, field: SectionField | null, y: Float64Array): number {
  const first = loaded[0] ?? 0;
  if (!field) return y[first] as number;
  const core = loaded.reduce((best, i) => ((field.G[i] ?? 0) > (field.G[best] ?? 0) + 1e-9 ? i : best), first);
  return y[core] as number;
}

/** Steady u at the points of an even grid, row by row from the top left. */
export interface ShareGrid {
  readonly columns: number;
  readonly rows: number;
  readonly u: Float32Array;
}

/**
 * Lays a grid over the rectangle of half width `halfWidth` and half height `halfHeight` [m] about the middle; its outermost
 * points lie on the rectangle's edges.
 */
export function shareGrid(
  shape: SectionShape,
  halfWidth: number,
  halfHeight: number,
  columns: number,
  rows: number,
): ShareGrid {
  const u = new Float32Array(columns * rows);
  let n = 0;
  for (let row = 0; row < rows; row++) {
    const y = halfHeight * (1 - (2 * row) / (rows - 1));
    for (let column = 0; column < columns; column++)
      u[n++] = shape.uAt(halfWidth * ((2 * column) / (columns - 1) - 1), y);
  }
  return { columns, rows, u };
}

import type { Outside } from '../surroundings/outside.ts';
import type { Cable } from './cable.ts';
import type { SectionField } from './section-field.ts';
import { sectionField } from './section-of.ts';

/** Where a point of the section lies. */
export type SectionPart = 'conductor' | 'insulation' | 'filling' | 'sheath' | 'outside';

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
  partAt(x: number, y: number): { readonly part: SectionPart; readonly core?: number };
  /** Distance from the cable's own surface, negative inside. */
  distance(x: number, y: number): number;
  /** Steady u at a point, 1 in the hottest loaded conductor, 0 on the mean of the surface; outside, that of the nearest surface. */
  uAt(x: number, y: number): number;
}

const around = 1 - 1e-9; // of the outer radius: just inside, where rounding cannot lead outside
const outlinePoints = 240; // at which the outline's u is kept
const kept = new Map<string, SectionShape>();
const mostKept = 12;

/**
 * The shape of a cable's section with its steady field; the same object again for geometries lately asked for.
 * @param outside,h as in `sectionField`; h is taken to two figures, so that the field stays while the air grows a little warmer
 */
export function sectionShape(cable: Cable, outside: Outside, h: number): SectionShape {
  const rounded = Number(h.toPrecision(2));
  const { conductor, coreRadius, bodyRadius, outerRadius, halfRun, insulation, sheath, loaded, cores } = cable;
  const walls = [insulation?.rhoT.value, sheath?.rhoT.value, ...outside.rings.flatMap(({ k, r1 }) => [k, r1])];
  const sizes = [conductor.rc, coreRadius, bodyRadius, outerRadius, halfRun, cores, rounded];
  const key = [cable.layout, ...sizes, ...walls, 'loaded', ...loaded].join();
  const known = kept.get(key);
  if (known) return known;
  const shape = makeShape(cable, sectionField(cable, outside, rounded));
  if (kept.size >= mostKept) kept.delete(kept.keys().next().value as string);
  kept.set(key, shape);
  return shape;
}

function makeShape(cable: Cable, field: SectionField | null): SectionShape {
  const flat = cable.layout === 'flat';
  const turn = flat || cable.cores < 3 ? 0 : turnOf(cable);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const x = cable.x.map((xi, i) => c * xi - s * (cable.y[i] as number));
  const y = cable.y.map((yi, i) => s * (cable.x[i] as number) + c * yi);
  const { coreRadius, halfRun, halfHeight } = cable;
  const conductorRadius = cable.conductor.rc;
  const bodyRadius = flat ? halfHeight : cable.bodyRadius;
  const outerRadius = bodyRadius + (cable.outerRadius - cable.bodyRadius);

  /** Nearest abscissa of the stadium's middle line, and the distance from there. */
  const nearest = (px: number) => Math.max(-halfRun, Math.min(halfRun, px));
  function fromLine(px: number, py: number): number {
    const dx = px - nearest(px);
    return Math.sqrt(dx * dx + py * py);
  }

  function partAt(px: number, py: number): { part: SectionPart; core?: number } {
    const away = fromLine(px, py);
    if (away > outerRadius) return { part: 'outside' };
    for (let i = 0; i < x.length; i++) {
      const d = Math.hypot(px - (x[i] as number), py - (y[i] as number));
      if (d <= conductorRadius) return { part: 'conductor', core: i };
      if (d <= coreRadius) return { part: 'insulation', core: i };
    }
    return { part: away <= bodyRadius ? 'filling' : 'sheath' };
  }

  const inside = (px: number, py: number) => (field ? field.at(c * px + s * py, c * py - s * px) : 1);
  const half = Math.PI * outerRadius + 2 * halfRun; // of the outline's length
  let outline: Float64Array | undefined;

  /** Where along the outline a point's nearest surface lies, from the right end over the top: 0 to 2. */
  function placeOf(px: number, py: number): number {
    const mid = nearest(px);
    const angle = Math.atan2(Math.abs(py), px - mid);
    const share = (angle * outerRadius + halfRun - mid) / half;
    return py >= 0 ? share : 2 - share;
  }

  /** u round the outline, at even steps of its upper and lower half. */
  function outlineShares(): Float64Array {
    const limit = outerRadius * around;
    const arc = (Math.PI / 2) * outerRadius;
    return Float64Array.from({ length: outlinePoints + 1 }, (_, i) => {
      const place = (2 * i) / outlinePoints;
      const along = (place <= 1 ? place : 2 - place) * half;
      const run = Math.max(0, Math.min(2 * halfRun, along - arc));
      const angle = (along - run) / outerRadius;
      const up = place <= 1 ? 1 : -1;
      return inside(halfRun - run + limit * Math.cos(angle), up * limit * Math.sin(angle));
    });
  }

  function uAt(px: number, py: number): number {
    if (!field) return 1;
    if (fromLine(px, py) <= outerRadius * around) return inside(px, py);
    outline ??= outlineShares();
    const place = (placeOf(px, py) / 2) * outlinePoints;
    const i = Math.min(outlinePoints - 1, Math.floor(place));
    return (outline[i] as number) + (place - i) * ((outline[i + 1] as number) - (outline[i] as number));
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

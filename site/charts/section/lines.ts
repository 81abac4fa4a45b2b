import type { SectionShape } from '#engine';
import { contours, framed, type Grid, type Line, thinned } from './contours.ts';
import { round, type Scene } from './scene.ts';
import { gridOf, type SectionState } from './state.ts';

/** Temperatures [°C] on the grid of a picture, `step` px apart. */
export interface Field extends Grid {
  /** px from point to point. */
  readonly stepX: number;
  readonly stepY: number;
}

/** The field of a section over the painted rectangle of its scene. */
export function fieldOf(state: SectionState, scene: Scene, step: number): Field {
  const { halfWidth, halfHeight, scale } = scene;
  const columns = Math.max(9, Math.round((2 * halfWidth) / step) + 1);
  const rows = Math.max(9, Math.round((2 * halfHeight) / step) + 1);
  const { u } = gridOf(state.shape, halfWidth / scale, halfHeight / scale, columns, rows);
  const read = readerOf(state);
  return {
    columns,
    rows,
    values: u.map(read),
    stepX: (2 * halfWidth) / (columns - 1),
    stepY: (2 * halfHeight) / (rows - 1),
  };
}

/** Lowest share that occurs: the cool side of the surface of a cable with one core loaded. */
export const lowestShare = -1;
const entries = 4096;

/** Temperatures of evenly spaced shares from the lowest to 1, so that a whole picture is read by look-ups. */
export function readerOf({ at }: SectionState): (u: number) => number {
  const table = Float32Array.from({ length: entries + 1 }, (_, i) =>
    at(lowestShare + ((1 - lowestShare) * i) / entries),
  );
  const slope = entries / (1 - lowestShare);
  return (u) => {
    const place = Math.max(0, Math.min(entries, (u - lowestShare) * slope));
    const i = Math.min(entries - 1, place | 0);
    return (table[i] as number) + (place - i) * ((table[i + 1] as number) - (table[i] as number));
  };
}

/** SVG path of lines on a field, in sheet coordinates. */
function pathOf(lines: readonly Line[], { cx, cy, halfWidth, halfHeight }: Scene, field: Field, shift: number): string {
  const [left, top] = [cx - halfWidth, cy - halfHeight];
  let d = '';
  for (const line of lines) {
    const points = thinned(line, 0.06);
    for (let i = 0; i < points.length; i += 2) {
      const x = round(left + ((points[i] as number) - shift) * field.stepX);
      const y = round(top + ((points[i + 1] as number) - shift) * field.stepY);
      d += `${i === 0 ? 'M' : 'L'}${x} ${y}`;
    }
  }
  return d;
}

/** One isotherm: its temperature [°C], its path, and where its figure stands [px], if it has room. */
export interface Isotherm {
  readonly T: number;
  readonly d: string;
  readonly figure?: readonly [x: number, y: number];
}

const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500];
const fewest = 2;

/**
 * Kelvins from isotherm to isotherm: ten, more where they would stand closer than `gap` px, less where fewer than two would show.
 * @param range K from the coolest to the hottest of the upward axis
 * @param steepest K per px where the field is steepest
 */
export function isothermStep(range: number, steepest: number, gap: number): number {
  const room = (step: number) => step >= steepest * gap;
  const usual = steps.findIndex((step) => step >= 10 && room(step));
  const finer = steps.findLastIndex((step, i) => (usual < 0 || i <= usual) && range / step >= fewest && room(step));
  return steps[finer >= 0 ? finer : usual] ?? 500;
}

/** The greatest slope of temperatures a pixel apart, over four pixels [K/px]. */
function steepestOf(T: readonly number[]): number {
  let most = 0;
  for (let i = 4; i < T.length; i++) most = Math.max(most, Math.abs((T[i] as number) - (T[i - 4] as number)) / 4);
  return most;
}

/** Temperatures along the upward axis [°C], from the middle to the surface, a pixel apart. */
export function upwardAxis(state: SectionState, { radius, scale }: Scene): number[] {
  return Array.from({ length: Math.max(2, Math.floor(radius)) }, (_, i) => state.atPoint(0, i / scale));
}

/** The isotherms of a field inside the cable, with figures on the upward axis where they have room. */
export function isotherms(state: SectionState, scene: Scene, field: Field): { step: number; lines: Isotherm[] } {
  const upward = upwardAxis(state, scene);
  const [low, high] = extremes(field);
  const { cut } = state.shape;
  const along = Array.from({ length: Math.floor(scene.run + scene.radius) }, (_, i) =>
    state.atPoint(-i / scene.scale, cut),
  );
  const steepest = Math.max(steepestOf(upward), steepestOf(along) * 0.5);
  const step = isothermStep(Math.max(...upward) - Math.min(...upward), steepest, scene.detail === 'full' ? 9 : 7);
  const first = Math.ceil((low + 1e-6) / step);
  const levels = Array.from(
    { length: Math.max(0, Math.ceil((high - 1e-6) / step) - first) },
    (_, i) => (first + i) * step,
  );
  const found = contours(field, levels);
  const figures = figurePlaces(levels, upward, found, field, state.shape, scene);
  const lines = found.map((each, i): Isotherm => {
    const figure = figures[i];
    return { T: levels[i] as number, d: pathOf(each, scene, field, 0), ...(figure ? { figure } : {}) };
  });
  return { step, lines };
}

const figureHigh = 14; // px from figure to figure
const figureHalf = 9; // px, half a figure's width
const wanted = 2; // figures, before others than those of the upward axis are looked for

type Place = readonly [x: number, y: number];

/** Where the figures of isotherms stand [px]: on the upward axis, or along their lines where that meets too few of them. */
function figurePlaces(
  levels: readonly number[],
  upward: readonly number[],
  lines: readonly Line[][],
  field: Field,
  shape: SectionShape,
  scene: Scene,
): (Place | undefined)[] {
  const { cx, cy, halfWidth, halfHeight } = scene;
  const taken: Place[] = [];
  const free = ([x, y]: Place) =>
    shape.distance((x - cx) / scene.scale, (cy - y) / scene.scale) * scene.scale < -figureHalf &&
    taken.every(([ox, oy]) => Math.abs(oy - y) >= figureHigh || Math.abs(ox - x) >= 2.5 * figureHalf);
  const take = (place: Place) => {
    taken.push(place);
    return place;
  };
  const onAxis = levels.map((T) => {
    const up = crossingOf(upward, T);
    const place: Place | undefined = up === undefined ? undefined : [round(cx), round(cy - up)];
    return place && free(place) && (taken.length === 0 || !onCore(place, shape, scene, false))
      ? take(place)
      : undefined;
  });
  if (taken.length >= wanted) return onAxis;
  return onAxis.map((place, i) => {
    if (place) return place;
    const points = (lines[i] ?? []).flatMap((line) =>
      Array.from(
        { length: Math.floor(line.length / 2) },
        (_, n): Place => [
          round(cx - halfWidth + (line[2 * n] as number) * field.stepX),
          round(cy - halfHeight + (line[2 * n + 1] as number) * field.stepY),
        ],
      ),
    );
    const open = points.filter((point) => free(point) && !onCore(point, shape, scene, true));
    const height = ([x, y]: Place) => y + Math.abs(x - cx) / 2;
    return open.length > 0 ? take(open.reduce((a, b) => (height(b) < height(a) ? b : a))) : undefined;
  });
}

/** Whether a figure would lie on a core: on its ring, or on any part of it where `whole`. */
function onCore(
  [px, py]: Place,
  { x, y, coreRadius, conductorRadius }: SectionShape,
  scene: Scene,
  whole: boolean,
): boolean {
  const inner = whole ? 0 : ((coreRadius + conductorRadius) / 2) * scene.scale;
  return Array.from(x).some((cx, i) =>
    [-figureHalf, figureHalf].some((side) => {
      const away = Math.hypot(px + side - scene.x(cx), py - scene.y(y[i] as number));
      return away >= inner && away < coreRadius * scene.scale;
    }),
  );
}

function extremes({ values }: Grid): [low: number, high: number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) {
    low = Math.min(low, values[i] as number);
    high = Math.max(high, values[i] as number);
  }
  return [low, high];
}

/** Where the axis passes `T`, the outermost place. */
function crossingOf(upward: readonly number[], T: number): number | undefined {
  for (let i = upward.length - 1; i > 0; i--) {
    const [a, b] = [upward[i - 1] as number, upward[i] as number];
    if (a >= T !== b >= T) return i - 1 + (T - a) / (b - a);
  }
  return undefined;
}

/** A filled region, at and above a temperature [°C]. */
export interface Band {
  readonly T: number;
  readonly d: string;
}

/** The field in filled bands, coldest first, each laid over the one before, for where no pixels can be painted. */
export function bands(scene: Scene, field: Field, count: number): Band[] {
  const [low, high] = extremes(field);
  const wide = (high - low) / count;
  if (!(wide > 0.02)) return [{ T: high, d: '' }];
  const closed = { ...field, ...framed(field, low - 1e3) };
  const levels = Array.from({ length: count - 1 }, (_, i) => low + wide * (i + 1));
  const regions = contours(closed, levels).map((found, i) => ({
    T: (levels[i] as number) + wide / 2,
    d: `${pathOf(found, scene, field, 1)}Z`,
  }));
  return [{ T: low + wide / 2, d: '' }, ...regions];
}

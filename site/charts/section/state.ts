import {
  celsius,
  type Prediction,
  profileAt,
  type SectionShape,
  type ShareGrid,
  sectionShape,
  shareGrid,
  temperatureAt,
} from '#engine';

/** What lies between the cable's own surface and the air. */
export type Cover = 'lagging' | 'coil' | null;

/** A cable's section at one time of a run; temperatures in °C. */
export interface SectionState {
  /** Time shown [s]. */
  readonly t: number;
  readonly shape: SectionShape;
  readonly conductor: number;
  /** Mean of the cable's own surface. */
  readonly surface: number;
  readonly ambient: number;
  readonly cover: Cover;
  /** Temperature of points whose steady share is `u`. */
  readonly at: (u: number) => number;
  /** Temperature at a point [m] of the section; beyond the surface, that of the nearest surface. */
  readonly atPoint: (x: number, y: number) => number;
  /** Temperature and opacity at part `s` (0 to 1) of the way through the layer outside, not to scale; `edge` is the surface there. */
  readonly film: (s: number, edge: number) => { T: number; shown: number };
}

/** Where the cover ends and the air begins, as a part of the layer that is drawn. */
export const coverEnd = 0.5;
const plainRise = 8; // K of the surface over ambient from which the air is drawn in full

const last = new WeakMap<Prediction, { t: number; state: SectionState }>();

/**
 * The section of a prediction at `t` [s]: the steady field's pattern, read at the run's own radial profile. Picture, words
 * and table ask for the same moment in turn, so the last one of each prediction is kept.
 */
export function sectionState(prediction: Prediction, t: number): SectionState {
  const known = last.get(prediction);
  if (known?.t === t) return known.state;
  const state = stateAt(prediction, t);
  last.set(prediction, { t, state });
  return state;
}

function stateAt({ thermal }: Prediction, t: number): SectionState {
  const { cable, outside, h } = thermal;
  const shape = sectionShape(cable, outside, h);
  const profile = profileAt(thermal, t);
  const at = (u: number) => celsius(temperatureAt(profile, u));
  const ambient = celsius(outside.Ta);
  const cover: Cover = outside.rings.length > 0 ? 'lagging' : outside.series > 0 ? 'coil' : null;
  const outer = celsius(outside.outsideOf(profile.T[profile.T.length - 1] as number));

  function film(s: number, edge: number): { T: number; shown: number } {
    const from = cover ? outer : edge;
    const whole = Math.min(1, Math.abs(from - ambient) / plainRise);
    if (cover && s < coverEnd) return { T: edge + (s / coverEnd) * (outer - edge), shown: 0.85 };
    const part = Math.min(1, cover ? (s - coverEnd) / (1 - coverEnd) : s);
    return { T: ambient + (from - ambient) * (1 - part) ** 2, shown: 0.85 * whole * (1 - part) };
  }

  return {
    t: profile.t,
    shape,
    conductor: celsius(profile.T[0] as number),
    surface: celsius(profile.T[profile.surface] as number),
    ambient,
    cover,
    at,
    atPoint: (x, y) => at(shape.uAt(x, y)),
    film,
  };
}

const grids = new WeakMap<SectionShape, Map<string, ShareGrid>>();

/** Steady u on a grid over a rectangle of the section; the same again while the geometry and the picture's size stay. */
export function gridOf(
  shape: SectionShape,
  halfWidth: number,
  halfHeight: number,
  columns: number,
  rows: number,
): ShareGrid {
  const known = grids.get(shape) ?? new Map<string, ShareGrid>();
  grids.set(shape, known);
  const key = [halfWidth.toPrecision(9), halfHeight.toPrecision(9), columns, rows].join();
  const grid = known.get(key) ?? shareGrid(shape, halfWidth, halfHeight, columns, rows);
  known.set(key, grid);
  return grid;
}

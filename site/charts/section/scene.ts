import type { SectionShape } from '#engine';

/** How much a picture shows: all of it, or only field, walls and rings where there is little room. */
export type Detail = 'full' | 'small';

/** The section's place on the sheet; lengths in px unless said. */
export interface Scene {
  readonly detail: Detail;
  readonly width: number;
  readonly height: number;
  /** The middle of the section. */
  readonly cx: number;
  readonly cy: number;
  /** px for one metre. */
  readonly scale: number;
  /** Thickness of the layer outside, not to scale. */
  readonly film: number;
  /** Half the straight run, and the surface's radius. */
  readonly run: number;
  readonly radius: number;
  /** Half the rectangle that is painted: section and layer. */
  readonly halfWidth: number;
  readonly halfHeight: number;
  /** Sheet coordinates of a point of the section [m]. */
  readonly x: (x: number) => number;
  readonly y: (y: number) => number;
}

const filmShare = 0.34; // of the surface's radius
const margin = 26; // for the cut marks
const labelRow = 24;

/** Lays a section out in `width` px. */
export function sceneOf(shape: SectionShape, width: number, detail: Detail): Scene {
  const side = detail === 'full' ? margin : 1;
  const halfWidth = width / 2 - side;
  const scale = halfWidth / (shape.halfRun + shape.outerRadius * (1 + filmShare));
  const radius = shape.outerRadius * scale;
  const film = radius * filmShare;
  const halfHeight = radius + film;
  const rows = detail === 'full' && shape.halfRun > 0 ? labelRow : 0;
  const [cx, cy] = [width / 2, rows + halfHeight + 1];
  return {
    detail,
    width,
    height: 2 * (rows + halfHeight + 1),
    cx,
    cy,
    scale,
    film,
    run: shape.halfRun * scale,
    radius,
    halfWidth,
    halfHeight,
    x: (x) => cx + x * scale,
    y: (y) => cy - y * scale,
  };
}

/** Path of a stadium of half run `run` and radius `radius` about (cx, cy). */
export function stadium({ cx, cy, run }: Pick<Scene, 'cx' | 'cy' | 'run'>, radius: number): string {
  const r = round(radius);
  const [left, right, top, bottom] = [cx - run, cx + run, cy - radius, cy + radius].map(round);
  return `M${left} ${top}H${right}A${r} ${r} 0 0 1 ${right} ${bottom}H${left}A${r} ${r} 0 0 1 ${left} ${top}Z`;
}

/** A tenth of a pixel is enough. */
export const round = (value: number): number => Math.round(value * 10) / 10;

/** A name outside the section with the point it leads to. */
export interface Callout {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'end';
  /** The leader, from beside the text to its end [px]. */
  readonly leader: readonly [x0: number, y0: number, x1: number, y1: number];
}

/** Something to be named: its middle [px], the radius of the ring that the leader ends on, the corner it is best named in. */
export interface ToName {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly side: 'left' | 'right';
  readonly half: 'top' | 'bottom';
}

const line = 18; // px from one name to the next in a corner

/** Names in the four corners of the sheet, those of one corner under each other. */
export function callouts(scene: Scene, things: readonly ToName[]): Callout[] {
  const used = new Map<string, number>();
  return things.map(({ text, x, y, radius, side, half }) => {
    const corner = `${side} ${half}`;
    const before = used.get(corner) ?? 0;
    used.set(corner, before + 1);
    const tx = side === 'left' ? 2 : scene.width - 2;
    const ty = half === 'top' ? 13 + before * line : scene.height - 5 - before * line;
    const x0 = tx + (side === 'left' ? 1 : -1) * Math.min(scene.width * 0.13, 6 + text.length * 6);
    const y0 = half === 'top' ? ty + 4 : ty - 13;
    const away = Math.hypot(x0 - x, y0 - y) || 1;
    return {
      text,
      x: tx,
      y: ty,
      anchor: side === 'left' ? 'start' : 'end',
      leader: [x0, y0, x + ((x0 - x) * radius) / away, y + ((y0 - y) * radius) / away],
    };
  });
}

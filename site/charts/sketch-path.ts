import { sketchAt } from '#engine';
import { path } from './curve-path.ts';

const every = 4; // px: finer than a dash can show

/** SVG path of the curve that a sketch stands for, through its points [px] from left to right: the very curve that is marked. */
export function sketchPath(points: readonly (readonly [number, number])[]): string {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return '';
  const knots = points.map(([x, y]) => ({ t: x, value: y }));
  const n = Math.max(1, Math.ceil((last[0] - first[0]) / every));
  return path(
    Array.from({ length: n + 1 }, (_, i) => {
      const x = first[0] + ((last[0] - first[0]) * i) / n;
      return [x, sketchAt(knots, x)] as const;
    }),
  );
}

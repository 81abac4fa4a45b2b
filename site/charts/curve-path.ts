import { readCurve } from './read-curve.ts';
import type { Curve, Scale } from './types.ts';

/** Points [px] of a curve from time `from` to `to` [s], both ends read off exactly, none closer than 0.7 px in x unless it turns. */
export function curvePoints(curve: Curve, from: number, to: number, x: Scale, y: Scale): [number, number][] {
  const points: [number, number][] = [];
  const add = (t: number, T: number | undefined) => {
    if (T !== undefined && Number.isFinite(T)) points.push([x(t), y(T)]);
  };
  add(from, readCurve(curve, from));
  for (let i = 0; i < curve.t.length; i++) {
    const t = curve.t[i] ?? 0;
    if (t > from && t < to) add(t, curve.T[i]);
  }
  add(to, readCurve(curve, to) ?? (curve.T.length ? curve.T[curve.T.length - 1] : undefined));
  return thinned(points);
}

/** SVG path through points, to a tenth of a pixel. */
export const path = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${r(x)} ${r(y)}`).join('');

const r = (value: number): number => Math.round(value * 10) / 10;

function thinned(points: [number, number][]): [number, number][] {
  return points.filter(([px, py], i) => {
    if (i === 0 || i === points.length - 1) return true;
    const [lx, ly] = points[i - 1] ?? [0, 0];
    return Math.abs(px - lx) + Math.abs(py - ly) > 0.35;
  });
}

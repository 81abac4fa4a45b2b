import { bisector } from 'd3-array';
import type { Curve } from './types.ts';

const place = bisector((t: number) => t).right;

/** The temperature [°C] of a curve at time `t` [s], straight between its points; undefined before or after it. */
export function readCurve({ t, T }: Pick<Curve, 't' | 'T'>, at: number): number | undefined {
  const n = Math.min(t.length, T.length);
  const last = n - 1;
  if (n === 0 || at < (t[0] ?? 0) || at > (t[last] ?? 0) + 1e-9) return undefined;
  const i = Math.min(last, Math.max(1, place(t, at, 0, n)));
  const [t0, t1] = [t[i - 1] ?? 0, t[i] ?? 0];
  const [T0, T1] = [T[i - 1] ?? 0, T[i] ?? T[i - 1] ?? 0];
  return t1 > t0 ? T0 + ((T1 - T0) * (at - t0)) / (t1 - t0) : T1;
}

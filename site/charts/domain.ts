import { ticks } from 'd3-array';
import type { Curve, Limit, Settling } from './types.ts';

const least = 40; // K, so that a nearly cold lead is not drawn as a drama
const air = 1.06; // room above the hottest point
const next = 1.6; // a limit that lies this near above the curves is shown too

/** Lowest and highest temperature [°C] of a sheet: the curves inside the model, and the first limit above them if near. */
export function temperatureSpan(
  curves: readonly Curve[],
  limits: readonly Limit[],
  settling: readonly Settling[],
  end: number,
): [low: number, high: number] {
  let low = 0;
  let high = least;
  for (const { t, T, past = Number.POSITIVE_INFINITY } of curves) {
    for (let i = 0; i < T.length; i++) {
      const time = t[i] ?? 0;
      const value = T[i] ?? 0;
      if (time > end || (time > past && i > 0) || !Number.isFinite(value)) continue;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }
  for (const { T } of settling) if (Number.isFinite(T) && T <= high * next) high = Math.max(high, T);
  const above = limits.map(({ T }) => T).filter((T) => T >= high && T <= high * next);
  return nice(low, air * (above.length ? Math.min(...above) : high));
}

/** Round temperatures [°C] on the axis, about one for each 48 px. */
export function temperatureTicks(low: number, high: number, height: number): number[] {
  return ticks(low, high, Math.max(2, Math.round(height / 48)));
}

function nice(low: number, high: number): [number, number] {
  const step = high - low > 400 ? 100 : high - low > 100 ? 20 : 10;
  return [Math.floor(low / step) * step, Math.ceil(high / step) * step];
}

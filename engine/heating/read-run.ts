import type { Curves } from './run.ts';

/** What the curves of a run say at one time; temperatures in K, current in A, volts in V, heat in W/m. */
export type Moment = { readonly [Name in keyof Curves]: number };

/**
 * Reads a run's curves at `t` [s], straight between samples; held at the ends. Where a supply step changes at `t`, the
 * values after the change.
 */
export function momentAt(curves: Curves, t: number): Moment {
  const times = curves.t;
  const last = times.length - 1;
  let low = 0;
  let high = last;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((times[middle] as number) <= t) low = middle;
    else high = middle - 1;
  }
  const next = Math.min(last, low + 1);
  const t0 = times[low] as number;
  const t1 = times[next] as number;
  const part = t1 > t0 ? Math.min(1, Math.max(0, (t - t0) / (t1 - t0))) : 0;
  const read = (values: Float64Array) => (values[low] as number) * (1 - part) + (values[next] as number) * part;
  return {
    t,
    conductor: read(curves.conductor),
    surface: read(curves.surface),
    outside: read(curves.outside),
    I: read(curves.I),
    U: read(curves.U),
    heat: read(curves.heat),
  };
}

/**
 * Time [s] at which the conductor has made `share` (0 to 1) of its way from where it started to `end` [K], while the first
 * supply lasts; null when it does not get there. With share 0.632 it is the time to 63 % of the rise.
 */
export function timeToShare(curves: Curves, share: number, end: number): number | null {
  const start = curves.conductor[0] as number;
  const target = start + share * (end - start);
  const rising = end > start;
  for (let i = 1; i < curves.t.length; i++) {
    const before = curves.conductor[i - 1] as number;
    const after = curves.conductor[i] as number;
    if (rising ? before < target && after >= target : before > target && after <= target) {
      const part = (target - before) / (after - before);
      return (curves.t[i - 1] as number) + part * ((curves.t[i] as number) - (curves.t[i - 1] as number));
    }
  }
  return null;
}

/** The moment when the conductor is at its hottest; of several the last, and where the supply changes there, before the change. */
export function hottestMoment(curves: Curves): Moment {
  const { t, conductor } = curves;
  let best = 0;
  for (let i = 1; i < t.length; i++) {
    const later = (t[i] as number) > (t[best] as number);
    if (later && (conductor[i] as number) >= (conductor[best] as number)) best = i;
  }
  const read = (values: Float64Array) => values[best] as number;
  return {
    t: read(t),
    conductor: read(conductor),
    surface: read(curves.surface),
    outside: read(curves.outside),
    I: read(curves.I),
    U: read(curves.U),
    heat: read(curves.heat),
  };
}

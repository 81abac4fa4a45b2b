import type { Curves, Run } from '#engine/heating/run.ts';

/** The places a curve is drawn for. */
export const places = ['conductor', 'surface', 'outside'] as const;

/** A curve's value at time `t` [s], by straight lines between its samples; `from` is where to begin looking. */
function valueAt(curves: Curves, y: Float64Array, t: number, from: number): { value: number; at: number } {
  const { t: times } = curves;
  let i = from;
  while (i < times.length - 2 && (times[i + 1] as number) < t) i++;
  const [t0, t1] = [times[i] as number, times[i + 1] as number];
  const [y0, y1] = [y[i] as number, y[i + 1] as number];
  return { value: t1 > t0 ? y0 + ((y1 - y0) * (t - t0)) / (t1 - t0) : y0, at: i };
}

/** The greatest distance of one curve from another [K], and where it lies. */
export interface Distance {
  readonly size: number;
  readonly place: string;
  readonly t: number;
}

/** The greatest distance between two runs' temperatures over the time they share, looked for at the samples of both. */
export function distance(a: Curves, b: Curves): Distance {
  let worst: Distance = { size: 0, place: '', t: 0 };
  const end = Math.min(a.t.at(-1) as number, b.t.at(-1) as number);
  for (const [own, other] of [
    [a, b],
    [b, a],
  ] as const) {
    for (const place of places) {
      let at = 0;
      for (let i = 0; i < own.t.length; i++) {
        const t = own.t[i] as number;
        if (t > end) break;
        const found = valueAt(other, other[place], t, at);
        at = found.at;
        const size = Math.abs((own[place][i] as number) - found.value);
        if (!(size <= worst.size)) worst = { size, place, t };
      }
    }
  }
  return worst;
}

/** What is left over when every event of one run is set beside the same event of another. */
export interface EventGap {
  /** Greatest difference in time as a share of what is allowed: 0.1 % or 0.1 s, whichever is more. */
  readonly share: number;
  readonly what: string;
}

/** Compares the events of two runs, pair by pair; an event that only one of them has counts as infinite. */
export function eventGap(a: Run, b: Run): EventGap {
  const key = (run: Run) =>
    new Map(run.events.map((event) => [`${event.limit.id} ${event.limit.place} ${event.end}`, event] as const));
  const [left, right] = [key(a), key(b)];
  let worst: EventGap = { share: 0, what: '' };
  for (const what of new Set([...left.keys(), ...right.keys()])) {
    const [x, y] = [left.get(what), right.get(what)];
    const share = x && y ? Math.abs(x.t - y.t) / Math.max(0.1, 1e-3 * y.t) : Number.POSITIVE_INFINITY;
    if (share > worst.share) worst = { share, what };
  }
  return worst;
}

/** The integral of made heat over time by the trapezoid rule on a curve's samples [J/m]. */
export function heatByTrapezoids({ t, heat }: Curves): number {
  let sum = 0;
  for (let i = 1; i < t.length; i++) {
    sum += 0.5 * ((heat[i] as number) + (heat[i - 1] as number)) * ((t[i] as number) - (t[i - 1] as number));
  }
  return sum;
}

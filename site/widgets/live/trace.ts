import { celsius, type LiveState } from '#engine';

const ends = [120, 300, 600, 1200, 1800, 3600, 7200, 14_400, 28_800, 86_400, 172_800, 432_000, 864_000] as const;
const points = 200; // on the whole width: about 3 px apart

/** Temperatures of one place over time [s], [°C]. */
export interface Column {
  t: number[];
  T: number[];
}

/** End of the time axis [s] on which a run of `t` seconds has room. */
export const axisEnd = (t: number): number => ends.find((end) => end > t) ?? t * 1.25;

/** The past of a live run, kept as finely as its time axis can show. */
export class Trace {
  #t: number[] = [];
  #rows: { conductor: number[]; surface: number[]; outside: number[] } = { conductor: [], surface: [], outside: [] };
  #end = ends[0] as number;

  get end(): number {
    return this.#end;
  }

  /** Adds a moment where it stands apart from the last one kept, or always where `corner` is set. */
  add(now: LiveState, corner = false): void {
    const last = this.#t.at(-1);
    if (axisEnd(now.t) > this.#end) this.#widen(axisEnd(now.t));
    if (last !== undefined && (now.t <= last || (!corner && now.t - last < this.#end / points))) return;
    this.#t.push(now.t);
    for (const place of ['conductor', 'surface', 'outside'] as const) this.#rows[place].push(celsius(now[place]));
  }

  /** What was kept of one place, as it stands now. */
  column(place: 'conductor' | 'surface' | 'outside'): Column {
    return { t: this.#t.slice(), T: this.#rows[place].slice() };
  }

  #widen(end: number): void {
    this.#end = end;
    let kept = Number.NEGATIVE_INFINITY;
    const stays = this.#t.map((t, i) => {
      const apart = i === this.#t.length - 1 || t - kept >= end / points;
      if (apart) kept = t;
      return apart;
    });
    const thin = (row: number[]) => row.filter((_, i) => stays[i]);
    const { conductor, surface, outside } = this.#rows;
    this.#t = thin(this.#t);
    this.#rows = { conductor: thin(conductor), surface: thin(surface), outside: thin(outside) };
  }
}

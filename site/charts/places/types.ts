/** The surroundings that there is a drawing of. */
export type DrawnPlace = 'stillAir' | 'draught' | 'clipped' | 'touching' | 'lagged' | 'coiled';

/** One lead in one of several surroundings, as its row shows it. Temperatures in °C. */
export interface PlaceRow {
  id: DrawnPlace;
  /** 'on a reel', and what is to be added where there is room: '25 m in 4.3 layers'. */
  name: string;
  detail: string;
  /** Where the conductor settles; null where there is no credible steady state. */
  T: number | null;
  /** The lead's own surface, and the outside of lagging or coil. */
  surface: number | null;
  outside: number | null;
  /** What is known of the end no better than so: both ends, each null past the model; null where nothing is to be said. */
  estimate: readonly [number | null, number | null] | null;
  /** What the row says in words, in one or two parts. */
  says: string;
  passes: string;
  /** Layers on the reel. */
  layers: number;
}

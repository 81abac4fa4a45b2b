import type { PlanePoint } from './edges.ts';

/** A device in the plane: both edges guaranteed, as staircases, and as they are if straight between the points. */
export interface DrawnDevice {
  /** '13 A plug fuse'. */
  readonly name: string;
  readonly slow: readonly PlanePoint[];
  readonly fast: readonly PlanePoint[];
  readonly assumedSlow: readonly PlanePoint[];
  readonly assumedFast: readonly PlanePoint[];
  /** Currents at which it holds for ever, and from which it must act, with what is written over them. */
  readonly hold: { readonly I: number; readonly text: string };
  readonly acts: { readonly I: number; readonly text: string } | null;
}

/** Where harm can come first: between the conductor's curve below and the device's slow edge above. */
export interface DrawnHarm {
  readonly upper: readonly PlanePoint[];
  readonly lower: readonly PlanePoint[];
  /** True where its end was not found, so that it is drawn open to the right. */
  readonly open: boolean;
}

/** An interval of currents as it is told below the axis; `to` null where its end was not found. */
export interface ToldBar {
  readonly from: number;
  readonly to: number | null;
  readonly fromText: string;
  readonly toText: string;
}

/** What stands at the operating point: times of the device's two edges and of the conductor [s]. */
export interface PlaneReading {
  readonly I: number;
  readonly conductor: number;
  readonly fastest: number;
  readonly slowest: number;
}

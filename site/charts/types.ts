/** What a curve is the temperature of; it sets how heavy the line is. */
export type Weight = 'conductor' | 'surface' | 'outside';

/** The line a limit is drawn with, the same on ladder, chart, profile and paper. */
export type LimitStyle = 'touch' | 'rating' | 'softening' | 'fumes' | 'ignition' | 'other';

/** One temperature over time: `t` in seconds, `T` in °C, both of one length, `t` rising. */
export interface Curve {
  id: string;
  /** Named at the curve, for example 'conductor'. */
  name: string;
  t: ArrayLike<number>;
  T: ArrayLike<number>;
  weight: Weight;
  /** Which case the curve belongs to, where several stand on one sheet. */
  case?: string;
  /** Time [s] from which the curve is outside the model: drawn as dots from there. */
  past?: number;
}

/** A temperature [°C] that the insulation or a hand stands. */
export interface Limit {
  id: string;
  name: string;
  T: number;
  style: LimitStyle;
}

/** Something that happens at time `t` [s] and temperature `T` [°C]. */
export interface ChartEvent {
  id: string;
  t: number;
  T: number;
  text: string;
}

/** A temperature [°C] that a curve tends to. */
export interface Settling {
  id: string;
  name: string;
  T: number;
}

/** A point of a person's own prediction: time [s], temperature [°C]. */
export interface YourPoint {
  id: string;
  t: number;
  T: number;
}

/** The shape of a reading's mark, which tells one thermometer from another. */
export type MarkShape = 'circle' | 'square' | 'diamond' | 'triangle';

/** A reading that was taken: time [s], temperature [°C]. */
export interface Dot {
  id: string;
  t: number;
  T: number;
  /** A circle unless it says otherwise. */
  shape?: MarkShape;
  /** Half of its size [px]; 4 unless it says otherwise, less where many stand close. */
  size?: number;
}

/** Where a curve that is still growing stands at this moment: time [s], temperature [°C]. */
export interface Head extends Dot {
  /** The curve it leads. */
  curve: string;
  weight: Weight;
}

/** A linear scale, as the parts of a picture need it. */
export type Scale = (value: number) => number;

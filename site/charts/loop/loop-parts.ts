/** One leg of the loop, or the source before it, as it is drawn. */
export interface LoopLeg {
  id: string;
  /** Short name: 'line, lead'. */
  name: string;
  /** Ohms at 20 °C, and as warm as asked. */
  cold: number;
  warm: number;
  /** Ohms in words, warm. */
  text: string;
  /** Out from the source, or back to it. */
  way: 'out' | 'back';
}

/** A figure on the scale of ohms: a limit, or another reading. */
export interface OhmMark {
  id: string;
  at: number;
  text: string;
}

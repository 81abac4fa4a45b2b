import type { Confidence } from '../material/property.ts';
import type { SourceId } from '../sources.ts';

/** One point at which a standard, or a maker's curve, pins a device: it must have acted by `t`, or must not have before. */
export interface Gate {
  /** Current [A]. */
  readonly I: number;
  /** Time [s]. */
  readonly t: number;
  readonly confidence: Confidence;
}

/** The families of devices that the engine tables. */
export type DeviceFamily =
  | 'bs1362'
  | 'gG'
  | 'iec60127F'
  | 'iec60127T'
  | 'iec60127F high'
  | 'iec60127T high'
  | 'ul248'
  | 'ul248 delay'
  | 'ul248 CC'
  | 'ul248-14'
  | 'ul248-14 delay'
  | 'ul489'
  | 'B'
  | 'C'
  | 'D'
  | 'bs3036';

/** A fuse or breaker as the harm set and the solver take it: the points that pin it, and nothing between them. */
export interface Device {
  readonly family: DeviceFamily | 'own';
  readonly kind: 'fuse' | 'breaker';
  /** Rated current [A]. */
  readonly In: number;
  /** In words, to follow 'the': '13 A plug fuse', the number bound to its unit. */
  readonly name: string;
  /** Conventional non-operating current and the time of its test: at and below it the device is taken to hold for ever. */
  readonly hold: Gate;
  /** Points before which it must not have acted, by rising current. */
  readonly notBefore: readonly Gate[];
  /**
   * Points by which it must have acted, by rising current; the first is the conventional operating current where `agreed`
   * says so. Empty where none was found.
   */
  readonly by: readonly Gate[];
  /** Whether the first of `by` is a conventional operating current, as against a point of a curve. */
  readonly agreed: boolean;
  /** Conventional operating current I2 [A], as the 1.45 rule takes it; null where none was found. */
  readonly I2: number | null;
  readonly source: SourceId;
  /** Clause or table. */
  readonly where: string;
  /** What was not found, in a sentence. */
  readonly silent: string;
}

/** How sure we are of a device as a whole: as sure as of the least sure of its points. */
export function deviceConfidence({ hold, notBefore, by }: Device): Confidence {
  const all = [hold, ...notBefore, ...by].map(({ confidence }) => confidence);
  return (['from memory', 'our choice', 'computed'] as const).find((one) => all.includes(one)) ?? 'seen';
}

/** The last current [A] at which anything makes the device act; beyond it only a maker's curve can say more. */
export function lastGate({ by }: Device): Gate | null {
  return by.at(-1) ?? null;
}

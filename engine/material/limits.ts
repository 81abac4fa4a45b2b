import { kelvin } from '../quantity.ts';
import type { SourceId } from '../sources.ts';
import type { Confidence } from './property.ts';

/** Where a temperature is taken: the conductor (the insulation's hottest), the cable's own surface, or outside its covering or coil. */
export type Place = 'conductor' | 'surface' | 'outside';

/** What a limit is about; each kind has its own line style wherever it is drawn. */
export type LimitKind = 'touch' | 'rating' | 'softening' | 'shortTime' | 'fumes' | 'ignition' | 'melting' | 'other';

/** A temperature that means something: its range [K] (one value when low = high), where it is taken, and what test and duration it belongs to. */
export interface Limit {
  readonly id: string;
  readonly kind: LimitKind;
  readonly name: string;
  readonly place: Place;
  readonly low: number;
  readonly high: number;
  readonly test: string;
  readonly duration: string;
  readonly source: SourceId;
  readonly confidence: Confidence;
}

const names: Record<Exclude<LimitKind, 'other'>, string> = {
  touch: 'touch limit',
  rating: 'rating',
  softening: 'softening',
  shortTime: 'short-circuit limit',
  fumes: 'fume onset',
  ignition: 'ignition',
  melting: 'melting',
};

/** A limit of an insulation, degrees Celsius at the edge; taken at the conductor. */
export function insulationLimit(
  kind: Exclude<LimitKind, 'other' | 'touch'>,
  range_degC: number | readonly [number, number],
  test: string,
  duration: string,
  source: SourceId,
  confidence: Confidence,
): Limit {
  const [low, high] = typeof range_degC === 'number' ? [range_degC, range_degC] : range_degC;
  const heights = { low: kelvin(low), high: kelvin(high) };
  return { id: kind, kind, name: names[kind], place: 'conductor', ...heights, test, duration, source, confidence };
}

/** The hand-held limit for non-metallic parts, taken at the outside of whatever can be touched. */
export const touchLimit: Limit = {
  id: 'touch',
  kind: 'touch',
  name: names.touch,
  place: 'outside',
  low: kelvin(65),
  high: kelvin(65),
  test: 'hand-held part, non-metallic, Table 42.1',
  duration: 'in normal service',
  source: 'iec60364-4-42',
  confidence: 'seen',
};

import { OutOfRange } from '../errors.ts';
import { kelvin } from '../quantity.ts';
import type { SourceId } from '../sources.ts';
import type { Confidence } from './property.ts';

/** What skin touches. */
export type TouchedSurface = 'metal' | 'glass' | 'plastic' | 'wood';

/** A burn threshold of healthy adult skin on a surface: between `low` and `high` [K] a contact of `t` [s] begins to burn. */
export interface BurnThreshold {
  readonly t: number;
  readonly low: number;
  readonly high: number;
  readonly confidence: Confidence;
}

const minute = 60;
/** From one minute on the thresholds of all surfaces are single values; from ten minutes on they are the same for all. */
const longContacts = (atOneMinute: number) =>
  [
    [minute, atOneMinute, atOneMinute],
    [10 * minute, 48, 48],
    [8 * 3600, 43, 43],
  ] as const;

const thresholdsOf = (rows: readonly (readonly [t: number, low: number, high: number])[]): readonly BurnThreshold[] =>
  rows.map(([t, low, high]) => ({ t, low: kelvin(low), high: kelvin(high), confidence: 'from memory' }));

/**
 * Burn thresholds by ISO 13732-1 (2006), for smooth surfaces without a coating; from memory, those below a minute as read from
 * its figures. They are thresholds for small areas of skin, not limits for a product.
 */
export const burnThresholds: Readonly<Record<TouchedSurface, readonly BurnThreshold[]>> = {
  metal: thresholdsOf([[0.5, 67, 73], [1, 65, 70], [10, 55, 57], ...longContacts(51)]),
  glass: thresholdsOf([[0.5, 84, 90], [1, 80, 86], [10, 66, 70], ...longContacts(56)]),
  plastic: thresholdsOf([[0.5, 91, 99], [1, 85, 93], [10, 71, 77], ...longContacts(60)]),
  wood: thresholdsOf([[0.5, 128, 155], [1, 110, 125], [10, 89, 107], ...longContacts(60)]),
};

/** Source of the thresholds. */
export const burnSource = { source: 'iso13732-1' satisfies SourceId, where: 'burn thresholds, uncoated' } as const;

/** How long a contact may last before it burns: somewhere between the two times [s]; infinite where no listed time burns. */
export interface TimeToBurn {
  readonly from: number;
  readonly to: number;
  /** True where the shortest contact told of burns already: it may take less than `from`. */
  readonly orLess: boolean;
}

/**
 * Time [s] after which skin on `surface` at `T` [K] begins to burn, by the lower and by the upper edge of the thresholds; between
 * two printed times a threshold is taken as straight over ln t, our assumption. Throws `OutOfRange` for what is no temperature in K.
 */
export function timeToBurn(surface: TouchedSurface, T: number): TimeToBurn {
  if (!(T > 0)) throw new OutOfRange('surface temperature', T, [0, Number.POSITIVE_INFINITY], 'K');
  const rows = burnThresholds[surface];
  const [from, to] = [crossing(rows, T, 'low'), crossing(rows, T, 'high')];
  return { from, to, orLess: T >= (rows[0] as BurnThreshold).low };
}

function crossing(rows: readonly BurnThreshold[], T: number, edge: 'low' | 'high'): number {
  const after = rows.findIndex((row) => row[edge] <= T);
  const next = rows[after];
  if (!next) return Number.POSITIVE_INFINITY;
  const before = rows[after - 1];
  if (!before) return next.t;
  const share = (before[edge] - T) / (before[edge] - next[edge]);
  return before.t * (next.t / before.t) ** share;
}

import { OutOfRange } from '../errors.ts';
import { type PlaceKind, usualSurroundings } from '../heating/surroundings-compared.ts';
import type { MetalId } from '../material/metals.ts';
import type { Scenario } from '../scenario/schema.ts';
import type { DeviceFamily } from './device.ts';
import { matrixLead, matrixMetals, matrixSizes } from './matrix-leads.ts';

/** What a matrix of harm sets is asked for: every size in every metal in every place, behind every device. Plain data. */
export interface MatrixAsk {
  readonly practice: 'iec' | 'na';
  /** In mm², or gauges where the practice is `na`; thin to thick. */
  readonly sizes: readonly number[];
  readonly metals: readonly MetalId[];
  readonly places: readonly PlaceKind[];
  readonly devices: readonly { readonly family: DeviceFamily; readonly rating_A: number }[];
  readonly limit: 'rating' | 'shortTime';
  readonly ambient_degC: number;
  /** Greatest current looked at [A]. */
  readonly prospective: number;
}

/** Which lead in which place: where a row of a matrix stands. */
export interface MatrixLead {
  readonly metal: MetalId;
  readonly place: PlaceKind;
  /** In mm², or a gauge. */
  readonly size: number;
}

const places = ['stillAir', 'draught', 'clipped', 'lagged', 'coiled'] as const satisfies readonly PlaceKind[];

/** Twelve of each practice, those whose points were found (own choice). */
const devices: Readonly<Record<MatrixAsk['practice'], readonly (readonly [DeviceFamily, number])[]>> = {
  iec: [
    ['bs1362', 3],
    ['bs1362', 13],
    ['gG', 6],
    ['gG', 10],
    ['gG', 16],
    ['gG', 32],
    ['B', 6],
    ['B', 16],
    ['B', 32],
    ['C', 20],
    ['D', 32],
    ['bs3036', 30],
  ],
  na: [
    ['ul489', 15],
    ['ul489', 20],
    ['ul489', 30],
    ['ul489', 50],
    ['ul248', 15],
    ['ul248', 20],
    ['ul248', 30],
    ['ul248 delay', 15],
    ['ul248 delay', 20],
    ['ul248 delay', 30],
    ['ul248 CC', 10],
    ['ul248-14', 10],
  ],
};

/** What a socket far from its transformer can give [A] (own choice). */
const usualProspective = 1000;

/** The matrix of a practice: its sizes, four metals, five places as lessons meet them, and twelve usual devices. */
export function usualMatrix(practice: 'iec' | 'na', limit: MatrixAsk['limit'], ambient_degC: number): MatrixAsk {
  return {
    practice,
    sizes: matrixSizes[practice],
    metals: matrixMetals,
    places,
    devices: devices[practice].map(([family, rating_A]) => ({ family, rating_A })),
    limit,
    ambient_degC,
    prospective: usualProspective,
  };
}

/** How many harm sets an ask has. */
export const matrixCases = ({ sizes, metals, places: where, devices: behind }: MatrixAsk): number =>
  sizes.length * metals.length * where.length * behind.length;

/** Metres on the reel, where the place is one (own choice, the lead of lesson 2.4). */
const reelMetres = 25;

/**
 * The very case of a cell, with nothing flowing yet, so that it starts from cold as the matrix does. Throws `OutOfRange` for a
 * size whose walls we do not hold.
 */
export function matrixScenario(
  { practice, ambient_degC }: MatrixAsk,
  { metal, place, size }: MatrixLead,
  device?: MatrixAsk['devices'][number],
): Scenario {
  const cable = matrixLead(size, metal, practice);
  if (!cable) {
    const all: readonly number[] = matrixSizes[practice];
    throw new OutOfRange(
      'size of a lead',
      size,
      [Math.min(...all), Math.max(...all)],
      practice === 'na' ? 'AWG' : 'mm²',
    );
  }
  return {
    practice,
    cable,
    lead: { length_m: reelMetres },
    surroundings: usualSurroundings(place, ambient_degC, reelMetres),
    supply: [{ kind: 'off', duration_s: 1800 }],
    ...(device ? { device: { family: device.family, rating_A: device.rating_A } } : {}),
  };
}

import { cableOf } from '../../cable/cable.ts';
import { cordRating } from '../../cable/cord-ratings.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import type { Confidence } from '../../material/property.ts';
import type { CableSpec } from '../../scenario/schema.ts';
import type { SourceId } from '../../sources.ts';
import { cordOf, cordsOf } from '../cords.ts';
import { given } from '../figures.ts';
import type { Practice } from '../types.ts';

/** A cable and the current that its table allows one such circuit at 30 °C. */
export interface TableCurrent {
  readonly id: string;
  readonly practice: Practice;
  /** 'a three-core 1.5 mm² cord', or 'a flat 2.5 mm² cable, clipped to timber'. */
  readonly words: string;
  /** The table's current [A]. */
  readonly It: number;
  /** Where the current stands: 'It: BS 7671, Table 4F3A, single phase'. */
  readonly cited: string;
  /** Conductor temperature the table is for [°C]. */
  readonly limit_degC: number;
  /** A fixed cable may pass through thermal insulation; a cord should not. */
  readonly fixed: boolean;
  readonly cable: CableSpec;
}

const titles: Partial<Record<SourceId, string>> = {
  'iec60364-5-52': 'IEC 60364-5-52',
  bs7671: 'BS 7671',
  nfpa70: 'NFPA 70',
};

/** Where a value stands, in words: 'Ca: BS 7671, Table 4F3A, note'. */
export const citation = (symbol: string, source: SourceId, where: string, confidence: Confidence = 'seen'): string =>
  `${symbol}: ${titles[source] ?? source}, ${where}${confidence === 'from memory' ? ', from memory' : ''}`;

const ofCord = (key: CastKey): TableCurrent => {
  const { practice, words, rating } = cordOf(key);
  const row = cordRating(cableOf(cast[key]));
  const cited = row ? citation('It', row.source, row.where) : 'It: as published in trade tables, from memory';
  return { id: key, practice, words, It: rating, cited, limit_degC: 60, fixed: false, cable: cast[key] };
};

type Clipped = readonly [size_mm2: number, It: number, confidence: Confidence];

// BS 7671 Table 4D5, reference method C: single cited values; 1.5 and 2.5 mm² as seen in copies, the others from memory
const clippedFlat: readonly Clipped[] = [
  [1.5, 20, 'seen'],
  [2.5, 27, 'seen'],
  [4, 37, 'from memory'],
  [6, 47, 'from memory'],
];

const ofFlat = ([size_mm2, It, confidence]: Clipped): TableCurrent => ({
  id: `flat ${size_mm2}`,
  practice: 'iec',
  words: `a flat ${given(size_mm2, 'mm²')} cable, clipped to timber`,
  It,
  cited: citation('It', 'bs7671', 'Table 4D5, method C', confidence),
  limit_degC: 70,
  fixed: true,
  // walls after the trade's flat cables, from memory
  cable: {
    layout: 'flat',
    cores: 2,
    conductor: { size_mm2, class: size_mm2 < 4 ? 1 : 2 },
    insulation: { material: 'pvc70', thickness_mm: size_mm2 < 2.5 ? 0.7 : 0.8 },
    sheath: { material: 'pvc70', thickness_mm: size_mm2 < 4 ? 0.9 : 1.1 },
  },
});

const all: readonly TableCurrent[] = [
  ...cordsOf('iec').map(({ key }) => ofCord(key)),
  ...clippedFlat.map(ofFlat),
  ...cordsOf('na').map(({ key }) => ofCord(key)),
];

/** The cables of a practice, cords and fixed ones. */
export const tableCurrentsOf = (practice: Practice): readonly TableCurrent[] =>
  all.filter((one) => one.practice === practice);

/** The cable of an id. */
export function tableCurrentOf(id: string): TableCurrent {
  const found = all.find((one) => one.id === id);
  if (!found) throw new Error(`there is no table current of ${id}`);
  return found;
}

import { cordCurrent } from '../cable/cord-ratings.ts';
import { type SizeSystem, tradeSizes } from '../conductor/area-scale.ts';
import type { TableRating } from './table-rating.ts';

/** Conductor limit that tables of cords are for [°C]: BS 7671 Table 4F3A and NFPA 70 Table 400.5(A)(1). */
const cordLimit_degC = 60;

/** Tabled currents of copper cords with two loaded cores, thin to thick. BS 7671 Table 4F3A by mm², NFPA 70 by gauge. */
export function cordRatings(system: SizeSystem): TableRating[] {
  return tradeSizes.flatMap((size) => {
    const rated = size.system === system ? cordCurrent(size) : null;
    if (!rated) return [];
    const { I, source, where } = rated;
    const words = 'flexible cord';
    return [
      { size, I, limit_degC: cordLimit_degC, metal: 'copper', words, source, where, confidence: 'seen' } as const,
    ];
  });
}

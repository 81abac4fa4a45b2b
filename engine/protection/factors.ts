import type { Confidence } from '../material/property.ts';
import type { SourceId } from '../sources.ts';

/** One factor on a table's current, as a single cited value. */
export interface Factor {
  /** Its usual symbol: Ca ambient, Cg grouping, Ci thermal insulation. */
  readonly symbol: 'Ca' | 'Cg' | 'Ci';
  /** What the table's current is multiplied by [1]. */
  readonly value: number;
  /** What it is for, to follow 'for': '40 °C'. */
  readonly words: string;
  readonly source: SourceId;
  readonly where: string;
  readonly confidence: Confidence;
}

/** All factors together: Ca · Cg · Ci [1]. Each acts on what the others leave, so they multiply; 1 where there are none. */
export const factorProduct = (factors: readonly Factor[]): number =>
  factors.reduce((product, { value }) => product * value, 1);

/** Current a cable may carry in its place, Iz = It · Ca · Cg · Ci [A]; `It` is the table's current [A]. */
export const ratingInPlace = (It: number, factors: readonly Factor[]): number => It * factorProduct(factors);

/** Least table current that leaves `In` [A] in its place, It = In/(Ca · Cg · Ci) [A]. */
export const tableCurrentNeeded = (In: number, factors: readonly Factor[]): number => In / factorProduct(factors);

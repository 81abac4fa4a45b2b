import { squareMetres } from '../quantity.ts';
import { awgArea, awgSizes } from './awg.ts';
import { standardSizes } from './iec60228.ts';

/** Which system a size is told in: square millimetres of metal, or American wire gauge, whose numbers run backwards. */
export type SizeSystem = 'mm2' | 'AWG';

/** A size of the trade with its metal area, so that both systems stand on one scale. */
export interface TradeSize {
  readonly system: SizeSystem;
  /** As marked: 1.5 for 1.5 mm², 16 for 16 AWG. */
  readonly size: number;
  /** Metal area [m²]: of mm² sizes the nominal one, since IEC 60228 sets their resistance; of gauges by ASTM B258. */
  readonly area: number;
  /** As marked, in words: '1.5 mm²', '16 AWG'. */
  readonly name: string;
}

/** 1.25 mm² is a size of cords that IEC 60228 does not list; from memory. */
const cordSize_mm2 = 1.25;

const inSquareMillimetres = (size: number): TradeSize => ({
  system: 'mm2',
  size,
  area: squareMetres(size),
  name: `${size} mm²`,
});
const inGauge = (size: number): TradeSize => ({ system: 'AWG', size, area: awgArea(size), name: `${size} AWG` });

/** All sizes of both systems that we table, thin to thick: IEC 60228 with 1.25 mm², and the even gauges of ASTM B258. */
export const tradeSizes: readonly TradeSize[] = [
  ...standardSizes.map(({ area_mm2 }) => inSquareMillimetres(area_mm2)),
  inSquareMillimetres(cordSize_mm2),
  ...awgSizes.map(inGauge),
].sort((a, b) => a.area - b.area);

/** The size marked `size` in `system`, or undefined where we table none. */
export function tradeSize(system: SizeSystem, size: number): TradeSize | undefined {
  return tradeSizes.find((one) => one.system === system && one.size === size);
}

/** The sizes of the other system about a given one; null where the table ends. */
export interface AreaNeighbours {
  /** The thickest that has no more metal. */
  readonly below: TradeSize | null;
  /** The thinnest that has no less metal. */
  readonly above: TradeSize | null;
  /** The nearer of the two by the ratio of areas. */
  readonly nearest: TradeSize;
}

/** Which sizes of the other system come nearest to `of` in metal area. */
export function areaNeighbours(of: TradeSize): AreaNeighbours {
  const others = tradeSizes.filter(({ system }) => system !== of.system);
  const below = others.findLast(({ area }) => area <= of.area) ?? null;
  const above = others.find(({ area }) => area >= of.area) ?? null;
  const ratio = (one: TradeSize | null) => (one ? Math.max(one.area / of.area, of.area / one.area) : Infinity);
  return { below, above, nearest: (ratio(below) <= ratio(above) ? below : above) as TradeSize };
}

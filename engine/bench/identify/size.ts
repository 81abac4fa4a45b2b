import { type TradeSize, tradeSizes } from '../../conductor/area-scale.ts';
import { conductorOf } from '../../conductor/conductor.ts';
import { standardSizes, tableResistance } from '../../conductor/iec60228.ts';
import { metals } from '../../material/metals.ts';
import { ohmsPerMetre } from '../../quantity.ts';
import type { Marking } from './evidence.ts';
import { type Line, quantile, total } from './line.ts';

/** A quantity as the evidence leaves it: median, and the ends of its 95 % interval. */
export interface Interval {
  readonly median: number;
  readonly low: number;
  readonly high: number;
}

/** Median and 95 % interval of a density over the logarithm of a quantity. */
export const intervalOf = (line: Line): Interval => ({
  median: Math.exp(quantile(line, 0.5)),
  low: Math.exp(quantile(line, 0.025)),
  high: Math.exp(quantile(line, 0.975)),
});

/** Interval of `over` divided by the quantity. */
const inverse = ({ median, low, high }: Interval, over: number): Interval => ({
  median: over / median,
  low: over / high,
  high: over / low,
});

/** The copper size that a conductor is equal to by resistance. */
export interface EqualCopper {
  /** Area of annealed copper of the same resistance a metre, lay left out [m²]. */
  readonly area: Interval;
  /** The nearest sizes of the trade by that area. */
  readonly nearest_mm2: TradeSize;
  readonly nearest_AWG: TradeSize;
  /** The thickest size whose greatest class 5 resistance it does not pass [mm²], at the median; null below all. */
  readonly meets_mm2: number | null;
}

function nearest(area: number, system: TradeSize['system']): TradeSize {
  const far = (one: TradeSize) => Math.abs(Math.log(one.area / area));
  return tradeSizes.filter((one) => one.system === system).reduce((best, one) => (far(one) < far(best) ? one : best));
}

/** Annealed copper of the same resistance [Ω/m, at 20 °C, one core]. */
export function equalCopper(R20: Interval): EqualCopper {
  const area = inverse(R20, metals.copper.rho20.value);
  const met = standardSizes.findLast(({ area_mm2 }) => {
    const most = tableResistance(area_mm2, 5)?.R20_ohmPerKm;
    return most !== undefined && R20.median <= ohmsPerMetre(most);
  });
  return {
    area,
    nearest_mm2: nearest(area.median, 'mm2'),
    nearest_AWG: nearest(area.median, 'AWG'),
    meets_mm2: met?.area_mm2 ?? null,
  };
}

/** What the marked size asks of a copper conductor. */
export interface Reference {
  readonly marked: string;
  /** Greatest resistance at 20 °C [Ω/m], class 5; of a gauge, which has none, that of annealed copper of its area with 2 % lay. */
  readonly R20: number;
  readonly basis: string;
  /** Whether that resistance is a limit of the standard, and no mere comparison. */
  readonly isLimit: boolean;
  /** Area of annealed copper that just has that resistance [m²]: less metal than this is undersized, whatever the metal. */
  readonly leastArea: number;
}

/** What the marking asks; null where it names no size of ours. */
export function referenceOf(marking: Marking | undefined): Reference | null {
  if (!marking || (marking.size_mm2 === undefined && marking.size_AWG === undefined)) return null;
  const { size_mm2, size_AWG } = marking;
  const { R20, basis, marked } = conductorOf({ size_mm2, size_AWG, class: 5 }, 'marking');
  const isLimit = size_mm2 !== undefined && tableResistance(size_mm2, 5) !== undefined;
  return { marked, R20, basis, isLimit, leastArea: metals.copper.rho20.value / R20 };
}

/** How a sample stands to its marked size. */
export interface AgainstMarking extends Reference {
  /** R'20 over the reference. */
  readonly ratio: Interval;
}

/** How R'20 stands to what the marking asks. */
export const againstMarking = (R20: Interval, reference: Reference): AgainstMarking => ({
  ...reference,
  ratio: { median: R20.median / reference.R20, low: R20.low / reference.R20, high: R20.high / reference.R20 },
});

/** Whether a conductor holds as much metal as a sound copper one of its marked size must: by the weight of area below that. */
export type SizeStanding = 'undersized' | 'full size' | 'not established';

const sure = 0.975; // all of the 95 % interval lies on one side

/** Standing of the area [over ln m²] to the least that the marked size asks. */
export function standingOf(area: Line, { leastArea }: Reference): { standing: SizeStanding; below: number } {
  const limit = Math.log(leastArea);
  let sum = 0;
  for (let i = 0; i < area.p.length; i++) {
    const from = area.from + (i - 0.5) * area.step;
    sum += (area.p[i] as number) * Math.min(1, Math.max(0, (limit - from) / area.step));
  }
  const below = sum / total(area);
  return { standing: below > sure ? 'undersized' : below < 1 - sure ? 'full size' : 'not established', below };
}

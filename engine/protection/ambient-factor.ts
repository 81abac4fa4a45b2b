import { within } from '../errors.ts';
import type { Confidence } from '../material/property.ts';
import { celsius, kelvin } from '../quantity.ts';
import type { SourceId } from '../sources.ts';
import type { Factor } from './factors.ts';

/** Ambient that the current tables are for [K]. */
const tableAmbient = kelvin(30);

/**
 * Ambient correction by the rule the tables follow, Ca = √((θmax − θa)/(θmax − θref)), for a conductor limit `Tmax`, ambient
 * `Ta` and the table's ambient `Tref` [K]; returns [1]. It takes heat shed as proportional to the rise; in still air the film
 * grows with the rise, so a free cord falls 1 to 4 % below it close to its limit. `OutOfRange` when ambient is above the limit.
 * IEC 60364-5-52 Table B.52.14; NFPA 70 Equation 310.15(B) (from memory).
 */
export function ambientCorrection(Tmax: number, Ta: number, Tref = tableAmbient): number {
  within('ambient temperature', celsius(Ta), [-273, celsius(Tmax)], '°C');
  return Math.sqrt((Tmax - Ta) / (Tmax - Tref));
}

/** A column of a printed table: which limit it is for, and the ambients it is printed for [°C]. */
interface Column {
  readonly practice: 'iec' | 'na';
  readonly limit_degC: number;
  readonly first_degC: number;
  readonly last_degC: number;
  /** What holds below the first row: its own factor, or nothing, because the table does not say. */
  readonly below: 'as the first' | 'not printed';
  /** Rows that were seen in a published copy [°C]; the others are from memory. */
  readonly seen_degC: readonly [number, number];
  readonly source: SourceId;
  readonly where: string;
}

const column = (practice: 'iec' | 'na', limit_degC: number, source: SourceId, where: string) => ({
  practice,
  limit_degC,
  source,
  where,
});
const columns: readonly Column[] = [
  {
    ...column('iec', 60, 'bs7671', 'Table 4F3A, note'),
    ...{ first_degC: 30, last_degC: 55, below: 'as the first', seen_degC: [30, 55] },
  },
  {
    ...column('iec', 70, 'iec60364-5-52', 'Table B.52.14'),
    ...{ first_degC: 10, last_degC: 60, below: 'not printed', seen_degC: [10, 60] },
  },
  {
    ...column('iec', 90, 'iec60364-5-52', 'Table B.52.14'),
    ...{ first_degC: 10, last_degC: 80, below: 'not printed', seen_degC: [35, 65] },
  },
  ...([60, 75, 90] as const).map((limit_degC): Column => {
    const last_degC = limit_degC - 5;
    const rows = { first_degC: 10, last_degC, below: 'as the first', seen_degC: [10, last_degC] } as const;
    return { ...column('na', limit_degC, 'nfpa70', 'Table 310.15(B)(1)'), ...rows };
  }),
];

/** Coldest ambient that any case may have [°C]. */
const coldest = -60;
/** Both tables print a row for every so many degrees [K]. */
const step = 5;

/**
 * Ambient factor Ca as printed, for a conductor limit of `limit_degC` at `ambient_degC` [°C]. Between two rows the warmer one
 * holds. The printed values are the rule's own, rounded to a hundredth (`ambientCorrection`), so they are computed here.
 * `iec`: 70 and 90 °C by IEC 60364-5-52 Table B.52.14, 60 °C cords by BS 7671; at 25 °C British tables print less (1.03 where
 * this one has 1.06). `na`: 60, 75 and 90 °C by NFPA 70 Table 310.15(B)(1). `OutOfRange` beyond a column or for another limit.
 */
export function ambientFactor(practice: 'iec' | 'na', limit_degC: number, ambient_degC: number): Factor {
  const { first_degC, last_degC, below, seen_degC, source, where } = columnFor(practice, limit_degC);
  const least = below === 'as the first' ? coldest : first_degC;
  within(`ambient in ${where} at ${limit_degC} °C`, ambient_degC, [least, last_degC], '°C');
  const row = Math.max(first_degC, step * Math.ceil((ambient_degC - 1e-6) / step));
  const value = Math.round(100 * ambientCorrection(kelvin(limit_degC), kelvin(row))) / 100;
  const confidence: Confidence = row >= seen_degC[0] && row <= seen_degC[1] ? 'seen' : 'from memory';
  return { symbol: 'Ca', value, words: `an ambient of ${ambient_degC}\u00A0°C`, source, where, confidence };
}

function columnFor(practice: 'iec' | 'na', limit_degC: number): Column {
  const own = columns.filter((one) => one.practice === practice);
  const found = own.find((one) => one.limit_degC === limit_degC);
  if (found) return found;
  const limits = own.map((one) => one.limit_degC);
  const nearest = limits.reduce((a, b) => (Math.abs(b - limit_degC) < Math.abs(a - limit_degC) ? b : a));
  within(`conductor limit (columns: ${limits.join(', ')} °C)`, limit_degC, [nearest, nearest], '°C');
  throw new Error('unreachable');
}

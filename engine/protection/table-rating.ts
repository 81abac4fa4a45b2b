import type { TradeSize } from '../conductor/area-scale.ts';
import { type Cited, cite } from './cited.ts';

/** A current that a table allows a cable, before any factor, at the table's ambient of 30 °C. */
export interface TableRating extends Cited {
  readonly size: TradeSize;
  /** It [A]. */
  readonly I: number;
  /** Conductor limit the table is for [°C]. */
  readonly limit_degC: number;
  readonly metal: 'copper' | 'aluminium';
  /** How the cable lies, as a phrase: 'clipped to a surface'. */
  readonly words: string;
}

/** A way to lay a fixed cable, by its letter in IEC 60364-5-52. */
export type MethodLetter = 'A2' | 'B2' | 'C' | 'E';

/** What a letter means. */
export const methodWords: Readonly<Record<MethodLetter, string>> = {
  A2: 'in conduit in an insulated wall',
  B2: 'in conduit on a wall',
  C: 'clipped to a surface',
  E: 'in free air',
};

type Values = Readonly<Record<number, number>>;

/** One row of values: a few sizes [mm²] with the current of each [A]. */
interface MethodRow extends Cited {
  readonly method: MethodLetter;
  readonly metal: TableRating['metal'];
  readonly values: Values;
}

// PVC 70 °C, a cable of two loaded cores, 30 °C: a few sizes of each method, all from memory
const rows: readonly MethodRow[] = [
  ...(
    [
      ['A2', 'copper', 'Table B.52.2, method A2', { 1.5: 14, 2.5: 18.5, 4: 25, 6: 32, 10: 43 }],
      ['B2', 'copper', 'Table B.52.2, method B2', { 1.5: 16.5, 2.5: 23, 4: 30, 6: 38, 10: 52 }],
      ['C', 'copper', 'Table B.52.2, method C', { 1.5: 19.5, 2.5: 27, 4: 36, 6: 46, 10: 63 }],
      ['E', 'copper', 'Table B.52.10, method E', { 1.5: 22, 2.5: 30, 4: 40, 6: 51, 10: 70, 16: 94 }],
      ['C', 'aluminium', 'Table B.52.2, method C', { 2.5: 21, 4: 28, 6: 36, 10: 49 }],
    ] as const
  ).map(([method, metal, where, values]) => ({
    method,
    metal,
    values,
    ...cite('iec60364-5-52', where, 'from memory'),
  })),
];

/** Flat twin and earth clipped to a surface, as British tables print it: a few sizes [mm²]. */
const flatTwin: Values = { 1: 16, 1.5: 20, 2.5: 27, 4: 37, 6: 47, 10: 64 };

/** Those of its sizes that were seen in a copy; the others are from memory. */
const flatTwinSeen = [1, 1.5];

const inOrder = (values: Values) => Object.entries(values).sort(([a], [b]) => Number(a) - Number(b));

function sized(size: number): TradeSize {
  return { system: 'mm2', size, area: size * 1e-6, name: `${size} mm²` };
}

/** Tabled currents of a fixed PVC cable with two loaded cores, laid by `method`, thin to thick. Single cited values. */
export function methodRatings(method: MethodLetter, metal: TableRating['metal'] = 'copper'): TableRating[] {
  const row = rows.find((one) => one.method === method && one.metal === metal);
  if (!row) return [];
  const { values, source, where, confidence } = row;
  const words = methodWords[method];
  return inOrder(values).map(([size, I]) => ({
    size: sized(Number(size)),
    ...{ I, limit_degC: 70, metal, words, source, where, confidence },
  }));
}

/** Tabled currents of flat twin and earth clipped to a surface, thin to thick: BS 7671 Table 4D5. Single cited values. */
export function flatTwinRatings(): TableRating[] {
  const words = methodWords.C;
  return inOrder(flatTwin).map(([size, I]) => ({
    size: sized(Number(size)),
    ...{ I, limit_degC: 70, metal: 'copper', words },
    ...cite('bs7671', 'Table 4D5, method C', flatTwinSeen.includes(Number(size)) ? 'seen' : 'from memory'),
  }));
}

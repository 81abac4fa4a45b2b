import type { Device, DeviceFamily, Gate } from './device.ts';
import { gatesOf, hour, memory, minute, type PrintedGate, seen } from './gates.ts';

/** A row of a sheet of IEC 60127-2: up to which rating it holds [A], and its gates in times the rating. */
interface SheetRow {
  readonly upTo: number;
  readonly notBefore: readonly PrintedGate[];
  readonly by: readonly PrintedGate[];
}

interface Sheet {
  readonly sheet: number;
  readonly words: string;
  readonly from: number;
  readonly confidence: 'seen' | 'from memory';
  readonly rows: readonly SheetRow[];
}

/** A sheet's row from its printed times [s]: at 2.1, 2.75, 4 and 10 times the rating. */
function row(
  confidence: 'seen' | 'from memory',
  upTo: number,
  by21: number,
  at275: readonly [number, number],
  at4: readonly [number, number],
  at10: readonly [number | null, number],
): SheetRow {
  const [least, most] = at10;
  return {
    upTo,
    notBefore: [
      [2.75, at275[0], confidence],
      [4, at4[0], confidence],
      ...(least === null ? [] : ([[10, least, confidence]] as const)),
    ],
    by: [
      [2.1, by21, confidence],
      [2.75, at275[1], confidence],
      [4, at4[1], confidence],
      [10, most, confidence],
    ],
  };
}

const halfHour = 30 * minute;
type MiniatureFamily = Extract<DeviceFamily, `iec60127${string}`>;

const sheets: Record<MiniatureFamily, Sheet> = {
  iec60127F: {
    sheet: 2,
    words: 'F miniature fuse',
    from: 0.032,
    confidence: memory,
    rows: [
      row(memory, 0.1, halfHour, [0.01, 0.5], [0.003, 0.1], [null, 0.02]),
      row(memory, 6.3, halfHour, [0.05, 2], [0.01, 0.3], [null, 0.02]),
    ],
  },
  iec60127T: {
    sheet: 3,
    words: 'T miniature fuse',
    from: 0.032,
    confidence: seen,
    rows: [
      row(seen, 0.1, 2 * minute, [0.2, 10], [0.04, 3], [0.01, 0.3]),
      row(seen, 6.3, 2 * minute, [0.6, 10], [0.15, 3], [0.02, 0.3]),
    ],
  },
  'iec60127F high': {
    sheet: 1,
    words: 'high-breaking F miniature fuse',
    from: 0.05,
    confidence: memory,
    rows: [
      row(memory, 3.15, halfHour, [0.01, 2], [0.003, 0.3], [null, 0.02]),
      row(memory, 6.3, halfHour, [0.01, 3], [0.003, 0.3], [null, 0.02]),
    ],
  },
  'iec60127T high': {
    sheet: 5,
    words: 'high-breaking T miniature fuse',
    from: 1,
    confidence: seen,
    rows: [
      row(seen, 3.15, halfHour, [0.75, 80], [0.095, 5], [0.01, 0.15]),
      row(seen, 6.3, halfHour, [0.75, 80], [0.15, 5], [0.02, 0.15]),
    ],
  },
};

const decade = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8];
/** Ratings of miniature fuses [A]: the R10 series, 32 mA to 6.3 A. */
const series = [0.01, 0.1, 1]
  .flatMap((scale) => decade.map((x) => +(x * scale).toPrecision(3)))
  .map((x) => ({ 0.0315: 0.032 })[x] ?? x)
  .filter((x) => x >= 0.032 && x <= 6.3);

/** Ratings of one miniature family [A]. */
export const miniatureRatings = (family: MiniatureFamily): number[] => series.filter((x) => x >= sheets[family].from);

/** A miniature fuse of IEC 60127-2, sheets 1, 2, 3 and 5: carries 1.5 times its rating for an hour at least. */
export function miniatureFuse(family: MiniatureFamily, In: number): Device {
  const { sheet, words, confidence, rows } = sheets[family];
  const { notBefore, by } = rows.find(({ upTo }) => In <= upTo) as SheetRow;
  const size = In < 1 ? `${Math.round(1000 * In)}\u00A0mA` : `${In}\u00A0A`;
  return {
    family,
    kind: 'fuse',
    In,
    name: `${size} ${words}`,
    hold: gatesOf(In, [[1.5, hour, confidence]])[0] as Gate,
    notBefore: gatesOf(In, notBefore),
    by: gatesOf(In, by),
    agreed: true,
    I2: 2.1 * In,
    source: 'iec60127-2',
    where: `sheet ${sheet}`,
    silent: 'IEC 60127-2 has no point above 10 times the rating.',
  };
}

import {
  type FoundOnLead,
  type Identification,
  type IdentifiedMetal,
  type IdentifySentence,
  type Interval,
  type PieceId,
  tradeSize,
} from '#engine';
import type { FinderRow } from '../../charts/finder/finder-row.ts';
import type { Cell, TableTwin } from '../../charts/sheet.ts';
import { fixed, type Practice, significant, thin } from '../../lib/format.ts';

/** A probability as it is told: '97 %', 'over 99 %', 'under 1 %'. */
export function probabilityWords(p: number): string {
  if (p > 0.99) return `over 99${thin}%`;
  if (p < 0.01) return `under 1${thin}%`;
  return `${fixed(100 * p, 0)}${thin}%`;
}

const mm2 = ({ median, low, high }: Interval) => ({ median: median * 1e6, low: low * 1e6, high: high * 1e6 });
const spanWords = (interval: Interval | null, scale: number): string =>
  interval
    ? `${significant(interval.median * scale, 3)} (${significant(interval.low * scale, 3)} to ${significant(interval.high * scale, 3)})`
    : '–';

/** The rows of the picture, likeliest first. */
export const finderRows = ({ candidates }: Identification): FinderRow[] =>
  candidates.map(({ metal, name, probability, area }) => ({
    id: metal,
    name,
    probability,
    told: probabilityWords(probability),
    area: area && mm2(area),
  }));

/** How pieces of evidence are called. */
export const pieceNames: Readonly<Record<PieceId, string>> = {
  resistance: 'resistance',
  strands: 'strands',
  bundle: 'bundle',
  mass: 'mass',
  magnet: 'magnet',
  skin: 'skin',
  under: 'under the skin',
  marking: 'marking',
};

/** How a piece speaks of a metal: 'for', 'strongly against'. */
export function speaksWords(forIt: number): string {
  if (forIt === Number.NEGATIVE_INFINITY || forIt < -5) return 'rules it out';
  if (forIt < -1.6) return 'strongly against';
  if (forIt < -0.3) return 'against';
  if (forIt > 1.6) return 'strongly for';
  return forIt > 0.3 ? 'for' : 'either way';
}

/** The figure as a table: every metal with its probability, area, resistance, and how each piece speaks. */
export function finderTable({ candidates }: Identification): TableTwin {
  const pieces = candidates[0]?.marks.map(({ piece }) => piece) ?? [];
  return {
    caption: 'Each metal as the evidence leaves it; 95 % intervals in brackets',
    columns: ['Metal', 'Probability', 'Area, mm²', 'R′ at 20 °C, mΩ/m', ...pieces.map((piece) => pieceNames[piece])],
    rows: candidates.map(({ name, probability, area, R20, marks }) => [
      name,
      probabilityWords(probability),
      spanWords(area, 1e6),
      spanWords(R20, 1e3),
      ...marks.map(({ forIt }) => speaksWords(forIt)),
    ]),
  };
}

/** The marked size as an area [mm²]; null where nothing is marked. */
export function markedArea(marking: { size_mm2?: number; size_AWG?: number } | undefined): number | null {
  if (marking?.size_mm2 !== undefined) return marking.size_mm2;
  if (marking?.size_AWG === undefined) return null;
  return (tradeSize('AWG', marking.size_AWG)?.area ?? 0) * 1e6 || null;
}

/** The metals that are named by an identification, for a plan or a report: 'clad aluminium'. */
export const metalWords: Readonly<Record<IdentifiedMetal, string>> = {
  copper: 'copper',
  tinnedCopper: 'tinned copper',
  aluminium: 'aluminium',
  cladAluminium: 'clad aluminium',
  ccs40: 'clad steel',
  ccs30: 'clad steel',
  ccs21: 'clad steel',
  steel: 'steel',
  brass: 'brass',
  other: 'something else',
};

/** What stands in the title block: the practice's own size. */
export const markedWords = (
  marking: { size_mm2?: number; size_AWG?: number } | undefined,
  _practice: Practice,
): string =>
  marking?.size_mm2 !== undefined
    ? `${marking.size_mm2}${thin}mm²`
    : marking?.size_AWG !== undefined
      ? `${marking.size_AWG}${thin}AWG`
      : 'no marking';

/** What stands in the title block of a finder. */
export const finderCells = ({ marking }: FoundOnLead, { candidates }: Identification, practice: Practice): Cell[] => {
  const pieces = candidates[0]?.marks.map(({ piece }) => pieceNames[piece]) ?? [];
  return [
    { name: 'Marked', value: markedWords(marking, practice) },
    { name: 'Evidence', value: pieces.length > 0 ? pieces.join(', ') : 'none yet' },
    { name: 'Prior', value: 'our choice: copper most often, each other metal less' },
  ];
};

const advising = ['next', 'photograph', 'outcome'];

/** The sentences of an identification: what it says, and apart from that what to measure next. */
export function toldApart(sentences: readonly IdentifySentence[]) {
  return {
    said: sentences.filter(({ id }) => !advising.includes(id)),
    advice: sentences.filter(({ id }) => advising.includes(id)),
  };
}

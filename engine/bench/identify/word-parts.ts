import type { CandidateId } from './evidence.ts';
import type { Interval } from './size.ts';

/** What a sentence of the identification is about. */
export type IdentifySentenceId =
  | 'none fits'
  | 'clash'
  | 'behaves as'
  | 'not established'
  | 'marked material'
  | 'area'
  | 'equal copper'
  | 'table'
  | 'product'
  | 'next'
  | 'photograph'
  | 'outcome';

/** One sentence of the identification. */
export interface IdentifySentence {
  readonly id: IdentifySentenceId;
  readonly text: string;
}

/** Most metals that one sentence names. */
export const mostNamed = 3;

/** What each metal is called in a sentence. */
export const metalName: Record<CandidateId, string> = {
  copper: 'copper',
  tinnedCopper: 'tinned copper',
  aluminium: 'plain aluminium',
  cladAluminium: 'clad aluminium',
  ccs40: 'clad steel',
  ccs30: 'clad steel',
  ccs21: 'clad steel',
  steel: 'steel',
  brass: 'brass',
  other: 'something else',
};

/** A number of so many figures, in full. */
export const figures = (x: number, count = 3) => (x < 10 ** count ? x.toPrecision(count) : `${Math.round(x)}`);
/** A probability as it is told: never as certain. */
export const percent = (p: number) => (p > 0.99 ? 'over 99 %' : `${Math.round(100 * p)} %`);
/** An area [m²] as it is told. */
export const mm2 = (area: number) => `${figures(area * 1e6)} mm²`;
/** A list whose last is parted by “or”. */
export const or = (names: readonly string[]) =>
  [names.slice(0, -1).join(', '), ...names.slice(-1)].filter(Boolean).join(' or ');
/** A sentence from its words: a space that holds a number to its unit, and a capital to begin with. */
export const sentence = (text: string) =>
  (text.charAt(0).toUpperCase() + text.slice(1)).replace(/(\d) (?=mm|mΩ|nΩ|g\/m|%|AWG)/g, '$1\u00A0');
/** Both ends of an interval, the unit once. */
export const span = ({ low, high }: Interval, of: (x: number) => string) =>
  `${of(low).replace(/ mm²$/, '')} to ${of(high)}`;

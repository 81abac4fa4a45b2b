import type { Cited } from '../../protection/cited.ts';
import type { SourceId } from '../../sources.ts';

// The standards that these questions cite, as a trade calls them. Their full titles are in the bibliography.
const names: Partial<Record<SourceId, string>> = {
  'iec60364-4-43': 'IEC 60364-4-43',
  'iec60364-5-52': 'IEC 60364-5-52',
  'iec60898-1': 'IEC 60898-1',
  'iec60269-1': 'IEC 60269-1',
  bs1362: 'BS 1362',
  bs1363: 'BS 1363-1',
  bs7671: 'BS 7671',
  nfpa70: 'NFPA 70',
  ul489: 'UL 489',
};

/** Where something stands, in words: 'BS 7671, Table 4F3A'. Says so where it is from memory. */
export const citedWords = ({ source, where, confidence }: Cited): string =>
  `${names[source] ?? source}, ${bound(where)}${confidence === 'from memory' ? ', from memory' : ''}`;

/** A text of the engine's with its numbers bound to their units. */
export const bound = (text: string): string => text.replace(/(\d) (A|V|°C|mm²|%)(?![a-z])/g, '$1\u00A0$2');

/** What follows every answer that a rule gives. */
export const checkYours = 'Editions change: check yours.';

/** Who decides, to be shown with every question in which something is chosen for use. */
export const whoDecides =
  'A wrong size can start a fire. This is for learning: the rules where you work and a licensed electrician decide.';

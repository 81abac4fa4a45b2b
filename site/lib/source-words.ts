import { type Cited, sources } from '#engine';

/** Where a number comes from, short: 'IEC 60364-4-43, 433.1'; '' for what the reader gave. Said where it is from memory. */
export function sourceWords({ source, where, confidence }: Cited): string {
  if (source === 'user') return '';
  const title = source === 'own' ? 'worked out' : (sources[source].title.split(',')[0] ?? '');
  return `${title}, ${where}${confidence === 'from memory' ? ' (from memory)' : ''}`;
}

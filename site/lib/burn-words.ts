import type { TimeToBurn } from '#engine';
import { timeInWords } from './format.ts';

/** How long a touch may last before it burns, in words: '12 s to 21 s', '0.50 s to 1.0 s, or less'. */
export function burnWords({ from, to, orLess }: TimeToBurn): string {
  if (!Number.isFinite(from)) return 'no time that is told';
  if (!Number.isFinite(to)) return `${timeInWords(from)} at the soonest`;
  return `${from === to ? '' : `${timeInWords(from)} to `}${timeInWords(to)}${orLess ? ', or less' : ''}`;
}

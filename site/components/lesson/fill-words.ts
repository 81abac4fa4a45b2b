import type { Practice } from '../../lib/format.ts';
import { type ByPractice, isEach } from './by-practice.ts';

/** Words of a practice with what is told filled in: 'at {amps}' → 'at 20 A'. Throws where there is nothing to fill in. */
export function filledWith(
  words: ByPractice<string>,
  practice: Practice,
  told: Readonly<Record<string, string | undefined>>,
): string {
  const text = isEach(words) ? words[practice] : words;
  return text.replace(/\{(\w+)\}/g, (all, given: string) => {
    const value = told[given];
    if (value === undefined) throw new Error(`there is nothing to fill in for ${all} in “${text}”`);
    return value;
  });
}

import { staysApart } from '../guard.ts';
import type { NumberAnswer, WrongValue } from '../types.ts';

/** Whether slips keep the rule's distance, and none becomes the right answer when it is rounded to two figures. */
export function staysApartRounded(answer: NumberAnswer, wrong: readonly WrongValue[]): boolean {
  const alike = ({ value }: WrongValue) => {
    const place = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 1);
    const rounded = Math.round(value / place) * place;
    return Math.abs(rounded - answer.value) <= 0.55 * place;
  };
  return staysApart(answer, wrong) && !wrong.some(alike);
}

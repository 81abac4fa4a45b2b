import type { Question, TypedQuestion } from '#engine/question/types.ts';
import { plainText } from '#engine/question/words.ts';
import type { Slip } from './slips.ts';

// Reading a stem as a learner does: its words and the numbers in them, and nothing else of the question.

/** A stem as a learner reads it, with plain spaces. */
export const stemOf = (question: Question): string =>
  question.stem
    .map(plainText)
    .join(' ')
    .replaceAll('\u00A0', ' ')
    .replace(/(\d) (?=\d{3}\b)/g, '$1');

/** Every number that a form catches in a text, in its order. The form has the flag `g` and one group. */
export const numbers = (text: string, form: RegExp): number[] =>
  [...text.matchAll(form)].map((found) => Number(found[1]));

/** The first number that a form catches; an error where there is none. */
export function number(text: string, form: RegExp): number {
  const [first] = numbers(text, new RegExp(form, 'g'));
  if (first === undefined) throw new Error(`no ${form} in: ${text}`);
  return first;
}

/** The temperatures of a text in °C, and in °F. */
export const celsius = (text: string): number[] => numbers(text, /(\d+) °C/g);
export const fahrenheit = (text: string): number[] => numbers(text, /(\d+) °F/g);

/** Absolute temperature [K] of one in °C, or in °F. */
export const ofC = (C: number): number => C + 273.15;
export const ofF = (F: number): number => ((F - 32) * 5) / 9 + 273.15;

/** What the stem alone leads to: the right answer, or the estimate that it asks for, and each slip's [SI]. */
export interface Worked {
  readonly right: number;
  readonly slips: readonly Slip[];
}

/** Ways to work questions out from the words of their stems, by template. */
export type Works = Readonly<Record<string, (stem: string) => Worked>>;

/** A question worked out from its words. */
export function workedBy(works: Works, question: TypedQuestion): Worked {
  const work = works[question.ref.id];
  if (!work) throw new Error(`no way to work out ${question.ref.id}`);
  return work(stemOf(question));
}

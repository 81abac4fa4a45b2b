import type { Practice, Question, QuestionRef, Template } from './types.ts';

/** Why a question cannot be made again. */
export interface QuestionFault {
  readonly fault: string;
}

/**
 * The question of a ref from the templates at hand, or in words why there is none: an unknown template, another version, a
 * practice it is not for.
 */
export function questionOf(
  { id, version, practice, seed }: QuestionRef,
  among: readonly Template[],
): Question | QuestionFault {
  const template = among.find((one) => one.id === id);
  if (!template) return { fault: `There is no question ${id}.` };
  if (template.version !== version) return { fault: `Question ${id} has changed since this link was made.` };
  if (!template.practices.includes(practice)) return { fault: `Question ${id} is not asked in this region.` };
  return template.question(seed, practice);
}

/** A ref as text for an address: 'Q28.1.iec.a7k'. */
export function refToText({ id, version, practice, seed }: QuestionRef): string {
  return `${id}.${version}.${practice}.${encodeURIComponent(seed.toWellFormed())}`;
}

const refForm = /^([A-Z]\d{2}[a-z]?)\.(\d{1,4})\.(iec|na)\.(.{1,600})$/;

/** The ref of a text from an address, or undefined when it is none. */
export function refFromText(text: string): QuestionRef | undefined {
  const [, id, version, practice, seed] = refForm.exec(text) ?? [];
  if (id === undefined || seed === undefined) return undefined;
  try {
    return { id, version: Number(version), practice: practice as Practice, seed: decodeURIComponent(seed) };
  } catch {
    return undefined;
  }
}

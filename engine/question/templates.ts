import { onOffCurrent } from './on-off-current.ts';
import { partWayUp } from './part-way-up.ts';
import { timeOffTrace } from './time-off-trace.ts';
import type { Practice, Question, QuestionRef, Template } from './types.ts';

const all: readonly Template[] = [partWayUp, onOffCurrent, timeOffTrace];

/** Every template by its id. */
export const templates: Readonly<Record<string, Template>> = Object.fromEntries(
  all.map((template) => [template.id, template]),
);

/** The templates of a lesson, in the curriculum's order. */
export const templatesOfLesson = (lesson: string): readonly Template[] => all.filter((one) => one.lesson === lesson);

/** Why a question cannot be made again. */
export interface QuestionFault {
  readonly fault: string;
}

/** The question of a ref, or in words why there is none: an unknown template, another version, a practice it is not for. */
export function questionFrom({ id, version, practice, seed }: QuestionRef): Question | QuestionFault {
  const template = Object.hasOwn(templates, id) ? templates[id] : undefined;
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

import type { Practice, Template } from '../types.ts';

/** A template as a plan of practice sees it: plain data, so that a page can hold all of them without their code. */
export type Listed = Pick<Template, 'id' | 'lesson' | 'difficulty' | 'practices' | 'objectives'>;

/** What the templates are about. */
export const catalogueOf = (templates: readonly Template[]): Listed[] =>
  templates.map(({ id, lesson, difficulty, practices, objectives }) => ({
    id,
    lesson,
    difficulty,
    practices,
    objectives,
  }));

/** The templates that serve an objective in that practice. */
export function serving(catalogue: readonly Listed[], objective: string, practice: Practice): Listed[] {
  return catalogue.filter((one) => one.objectives.includes(objective) && one.practices.includes(practice));
}

/** The objectives that can be asked in that practice, in the course's order. */
export function objectivesOf(catalogue: readonly Listed[], practice: Practice): string[] {
  return [...new Set(catalogue.filter((one) => one.practices.includes(practice)).flatMap((one) => one.objectives))];
}

/** The lesson of an objective, which begins with its number: '4.5 find Zs at working temperature'. */
export const lessonOf = (objective: string): string => objective.slice(0, 3);

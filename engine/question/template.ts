import { hashText, randomOf } from './random.ts';
import type { Practice, Question, QuestionRef, Template, TemplateSpec } from './types.ts';

/** How often a case may be drawn before a fallback is taken. */
export const mostDraws = 50;

/** The case of a seed: the first of at most 50 draws to pass the template's guard, else one of its fallbacks. */
export function drawCase<C>(spec: TemplateSpec<C>, seed: string, practice: Practice): { drawn: C; fallback: boolean } {
  const text = `${spec.id} ${spec.version} ${practice} ${seed}`;
  const random = randomOf(text);
  for (let i = 0; i < mostDraws; i++) {
    const drawn = spec.draw(random, practice);
    if (drawn !== null) return { drawn, fallback: false };
  }
  const listed = spec.fallbacks[practice] ?? [];
  if (listed.length === 0) throw new Error(`${spec.id} has no fallback for ${practice}`);
  return { drawn: listed[(hashText(text, 5) >>> 0) % listed.length] as C, fallback: true };
}

/** Closes a template over its own kind of case, so that templates of all kinds stand in one list. */
export function defineTemplate<C>(spec: TemplateSpec<C>): Template {
  const { draw: _draw, fallbacks: _fallbacks, build, ...facts } = spec;
  return {
    ...facts,
    question(seed: string, practice: Practice): Question {
      const { drawn, fallback } = drawCase(spec, seed, practice);
      const ref: QuestionRef = { id: spec.id, version: spec.version, practice, seed };
      const { lesson, difficulty, objectives, title } = spec;
      return { ref, lesson, difficulty, objectives, title, fallback, ...build(drawn, practice) };
    },
  };
}

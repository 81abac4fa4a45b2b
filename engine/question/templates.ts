import { questions11 } from './lesson-1-1.ts';
import { questions12 } from './lesson-1-2.ts';
import { questions13 } from './lesson-1-3.ts';
import { questions14 } from './lesson-1-4.ts';
import { questions21 } from './lesson-2-1.ts';
import { questions22 } from './lesson-2-2.ts';
import { questions23 } from './lesson-2-3.ts';
import { questions24 } from './lesson-2-4.ts';
import { questions31 } from './lesson-3-1.ts';
import { questions32 } from './lesson-3-2.ts';
import { questions33 } from './lesson-3-3.ts';
import { questions41 } from './lesson-4-1.ts';
import { questions42 } from './lesson-4-2.ts';
import { questions43 } from './lesson-4-3.ts';
import { questions44 } from './lesson-4-4.ts';
import { questions45 } from './lesson-4-5.ts';
import { questions51 } from './lesson-5-1.ts';
import { questions52 } from './lesson-5-2.ts';
import { questions53 } from './lesson-5-3.ts';
import { questions54 } from './lesson-5-4.ts';
import { type QuestionFault, questionOf } from './ref.ts';
import type { Question, QuestionRef, Template } from './types.ts';

const all: readonly Template[] = [
  ...questions11,
  ...questions12,
  ...questions13,
  ...questions14,
  ...questions21,
  ...questions22,
  ...questions23,
  ...questions24,
  ...questions31,
  ...questions32,
  ...questions33,
  ...questions41,
  ...questions42,
  ...questions43,
  ...questions44,
  ...questions45,
  ...questions51,
  ...questions52,
  ...questions53,
  ...questions54,
];

/** Every template by its id. A page that asks a lesson's questions alone takes that lesson's list: this one is all of them. */
export const templates: Readonly<Record<string, Template>> = Object.fromEntries(
  all.map((template) => [template.id, template]),
);

/** The templates of a lesson, in the curriculum's order. */
export const templatesOfLesson = (lesson: string): readonly Template[] => all.filter((one) => one.lesson === lesson);

/** The question of a ref, or in words why there is none. */
export const questionFrom = (ref: QuestionRef): Question | QuestionFault => questionOf(ref, all);

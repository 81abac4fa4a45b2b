/** How sure a learner said they were, before the answer. */
export type Sureness = 'guess' | 'think so' | 'sure';

/** How an answer went: 1 wrong, 2 right after a hint or on a second try, 3 right, 4 right the first time by one who was sure. */
export type Grade = 1 | 2 | 3 | 4;

/** What is known of an answer when it has been marked. How long it took is not among it: speed says nothing here. */
export interface Answered {
  /** Full marks are 1. */
  readonly marks: 0 | 1;
  /** A step was shown before it. */
  readonly hinted: boolean;
  /** Tries at this question that counted, this one included. */
  readonly tries: number;
  /** Undefined where nobody asked. */
  readonly sure?: Sureness | undefined;
}

/** The grade of an answer (curriculum, section 5). */
export function gradeOf({ marks, hinted, tries, sure }: Answered): Grade {
  if (marks < 1) return 1;
  if (hinted || tries > 1) return 2;
  return sure === 'sure' ? 4 : 3;
}

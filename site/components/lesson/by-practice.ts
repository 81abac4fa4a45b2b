import type { Practice } from '../../lib/practice.ts';

/** A value of each practice, as a lesson writes it: `{ iec: 1.5, na: 14 }`. */
export interface EachPractice<T> {
  readonly iec: T;
  readonly na: T;
}

/** One value for both practices, or one for each. */
export type ByPractice<T> = T | EachPractice<T>;

/** True where a value is written for each practice. */
export function isEach(value: unknown): value is EachPractice<unknown> {
  return typeof value === 'object' && value !== null && Object.keys(value).sort().join() === 'iec,na';
}

/** Props as one practice has them: each value that is written by practice becomes that practice's. */
export function forPractice(props: unknown, practice: Practice): Record<string, unknown> {
  const entries = Object.entries((props ?? {}) as Record<string, unknown>);
  return Object.fromEntries(entries.map(([name, value]) => [name, isEach(value) ? value[practice] : value]));
}

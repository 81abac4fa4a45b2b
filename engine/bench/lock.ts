import { hashText } from '../question/random.ts';
import { type Refusal, refusals } from './plan.ts';
import type { TestPlan } from './plan-schema.ts';

/** A plan that has been locked in, or why it cannot be. */
export type Locked =
  | { readonly plan: TestPlan; readonly refusals?: undefined }
  | { readonly plan?: undefined; readonly refusals: readonly Refusal[] };

/** Locks a plan at the time `at`, ISO 8601, before any reading: with that, its prediction stands. A plan that is refused is not locked. */
export function lockPlan(plan: TestPlan, at: string): Locked {
  const refused = refusals(plan);
  if (refused.length > 0) return { refusals: refused };
  return { plan: { ...plan, locked: { at, mark: markOf(plan) } } };
}

/** Whether a plan is locked, and still what was locked in. A change after that shows; who made it does not. */
export function lockState(plan: TestPlan): 'open' | 'locked' | 'changed since' {
  if (!plan.locked) return 'open';
  return plan.locked.mark === markOf(plan) ? 'locked' : 'changed since';
}

/** A short mark of everything a plan says but its lock. It shows slips, not forgery. */
function markOf({ locked: _, ...rest }: TestPlan): string {
  const text = JSON.stringify(rest, (_key, value: unknown) => (isRecord(value) ? sorted(value) : value));
  return [1, 2, 3, 4].map((salt) => (hashText(text, salt) >>> 0).toString(36).padStart(7, '0')).join('-');
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const sorted = (record: Record<string, unknown>) =>
  Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));

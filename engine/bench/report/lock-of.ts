import type { BenchJob } from '../job-schema.ts';
import { lockState } from '../lock.ts';
import type { BenchLog } from '../log.ts';

/** How a job's prediction was locked in. */
export interface ReportLock {
  /** `none` where there is no plan. */
  readonly state: 'none' | 'open' | 'locked' | 'changed since';
  /** When it was locked, ISO 8601. */
  readonly at: string | null;
  /** Whether the readings began after that; null where one of the two times is not known. */
  readonly before: boolean | null;
}

/** The lock of a job's plan, set against the time at which its log begins. */
export function lockOf({ plan }: BenchJob, log: BenchLog | null): ReportLock {
  if (!plan) return { state: 'none', at: null, before: null };
  const at = plan.locked?.at ?? null;
  const [locked, begun] = [Date.parse(at ?? ''), Date.parse(log?.startedAt ?? '')];
  const known = Number.isFinite(locked) && Number.isFinite(begun);
  return { state: lockState(plan), at, before: known ? locked <= begun : null };
}

/** Whether readings may be held against the prediction as one that was made before them. */
export const standsLocked = ({ state, before }: ReportLock): boolean => state === 'locked' && before !== false;

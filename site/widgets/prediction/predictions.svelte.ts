import type { Practice } from '../../lib/practice.ts';
import { type ByPractice, type Locked, readKept } from './locked.ts';
import { lockedEvent, predictionPrefix } from './names.ts';

const locked = $state<Record<string, ByPractice>>({});
const known = new Set<string>();

/** What is locked in under `id` for the case of `practice`, if it is of that kind; undefined until it is locked in or recalled. */
export function predictionOf<K extends Locked['kind']>(
  id: string,
  practice: Practice,
  kind: K,
): Extract<Locked, { kind: K }> | undefined {
  const found = locked[id]?.[practice];
  return found?.kind === kind ? (found as Extract<Locked, { kind: K }>) : undefined;
}

/** Reads what this device has kept under `id`, once a page; to be called in the browser only. */
export function recallPrediction(id: string): void {
  if (known.has(id)) return;
  known.add(id);
  try {
    locked[id] = readKept(JSON.parse(localStorage.getItem(predictionPrefix + id) ?? 'null'));
  } catch {
    // kept by another version, or nothing may be kept here
  }
}

/** Locks a prediction in. False when the browser keeps nothing, so that it lasts only as long as the page. */
export function lockPrediction(id: string, practice: Practice, prediction: Locked): boolean {
  recallPrediction(id);
  const all = { ...locked[id], [practice]: prediction };
  locked[id] = all;
  document.dispatchEvent(new CustomEvent(lockedEvent, { detail: id }));
  try {
    localStorage.setItem(predictionPrefix + id, JSON.stringify(all));
    return true;
  } catch {
    return false;
  }
}

/** Forgets the prediction of one practice, here and on the device. */
export function forgetPrediction(id: string, practice: Practice): void {
  const { [practice]: _, ...others } = locked[id] ?? {};
  locked[id] = others;
  try {
    if (Object.keys(others).length > 0) localStorage.setItem(predictionPrefix + id, JSON.stringify(others));
    else localStorage.removeItem(predictionPrefix + id);
  } catch {
    // nothing was kept
  }
}

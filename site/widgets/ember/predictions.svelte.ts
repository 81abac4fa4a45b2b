import type { Practice } from '../../lib/format.ts';
import type { Facts } from './facts.ts';
import { lockedEvent, predictionPrefix } from './prediction-names.ts';

/** A prediction that was locked in before the answer was shown. */
export interface Locked {
  facts: Facts;
  practice: Practice;
}

const locked = $state<Record<string, Locked | undefined>>({});
const known = new Set<string>();

/** The locked prediction of `id`, for every figure of the page; undefined until it is locked in or recalled. */
export function predictionOf(id: string): Locked | undefined {
  return locked[id];
}

/** Reads what this device has kept under `id`, once a page; to be called in the browser only. */
export function recallPrediction(id: string): void {
  if (known.has(id)) return;
  known.add(id);
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(predictionPrefix + id) ?? 'null');
    if (isLocked(kept)) locked[id] = kept;
  } catch {
    // kept by another version, or nothing may be kept here
  }
}

/** Locks a prediction in. False when the browser keeps nothing, so that it lasts only as long as the page. */
export function lockPrediction(id: string, prediction: Locked): boolean {
  known.add(id);
  locked[id] = prediction;
  document.dispatchEvent(new CustomEvent(lockedEvent, { detail: id }));
  try {
    localStorage.setItem(predictionPrefix + id, JSON.stringify(prediction));
    return true;
  } catch {
    return false;
  }
}

/** Forgets a prediction, here and on the device. */
export function forgetPrediction(id: string): void {
  locked[id] = undefined;
  try {
    localStorage.removeItem(predictionPrefix + id);
  } catch {
    // nothing was kept
  }
}

function isLocked(value: unknown): value is Locked {
  if (typeof value !== 'object' || value === null) return false;
  const { facts, practice } = value as Partial<Locked>;
  if (practice !== 'iec' && practice !== 'na') return false;
  const numbers = [facts?.start, facts?.minute, facts?.end, facts?.share];
  return numbers.every((number) => typeof number === 'number' && Number.isFinite(number));
}

import { type AmountReading, readAmount } from '../prediction/read-amount.ts';
import type { Facts } from './facts.ts';

/** Reads a fact as typed, in °C or s. The field already names °C, so a bare number is one; a bare number of time is asked about. */
export function readFact(key: keyof Facts, typed: string): AmountReading {
  return readAmount(typed, key === 'share' ? 'min:s' : '°C');
}

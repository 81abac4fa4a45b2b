import { fixed, quantity } from '../../lib/format.ts';
import type { FieldUnit } from '../prediction/read-amount.ts';

const parts: readonly (readonly [below: number, words: string])[] = [
  [0.09, 'far below it'],
  [0.15, 'about a tenth of it'],
  [0.22, 'about a fifth of it'],
  [0.29, 'about a quarter of it'],
  [0.4, 'about a third of it'],
  [0.6, 'about half of it'],
  [0.72, 'about two thirds of it'],
  [0.9, 'a little below it'],
  [1.1, 'within 10\u00A0%'],
  [1.3, 'a little above it'],
  [1.75, 'about half as much again'],
  [2.4, 'about twice it'],
  [9.5, 'times'],
  [Number.POSITIVE_INFINITY, 'far above it'],
];

/**
 * How a predicted number lies to the computed one, both in `unit`: '7 K high' for a temperature, which has no zero of its own;
 * 'within 10 %' or 'about half of it' for anything else. It says where, and judges nothing.
 */
export function besideComputed(yours: number, computed: number, unit: FieldUnit): string {
  if (yours === computed) return 'the same';
  if (unit === '°C') {
    const off = Math.round(yours) - Math.round(computed);
    return off === 0 ? 'the same' : `${quantity(Math.abs(off), 'K', 0)} ${off > 0 ? 'high' : 'low'}`;
  }
  if (computed === 0) return 'it is none';
  const ratio = yours / computed;
  if (ratio <= 0) return ratio < 0 ? 'on the other side of none' : 'far below it';
  const words = parts.find(([below]) => ratio < below)?.[1] ?? '';
  return words === 'times' ? `about ${fixed(ratio, 0)} times it` : words;
}

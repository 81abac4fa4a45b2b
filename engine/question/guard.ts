import type { NumberAnswer, Tolerance, WrongValue } from './types.ts';

/** Whether `value` counts as the right answer `right` [both SI]. */
export function isWithin(tolerance: Tolerance, right: number, value: number, times = 1): boolean {
  switch (tolerance.kind) {
    case 'relative':
      return Math.abs(value - right) <= times * tolerance.part * Math.abs(right) * (1 + 1e-9);
    case 'absolute':
      return Math.abs(value - right) <= times * tolerance.by * (1 + 1e-9);
    case 'factor':
      return value > 0 && Math.abs(Math.log(value / right)) <= times * Math.log(tolerance.by) * (1 + 1e-9);
  }
}

// A little more than the rule's 2, so that rounding what is typed does not close the gap.
const clear = 2.1;

/** Whether every slip's answer keeps at least twice the tolerance from the right one and from every other slip's. */
export function staysApart({ tolerance, value }: NumberAnswer, wrong: readonly WrongValue[]): boolean {
  const near = (a: number, b: number) => isWithin(tolerance, a, b, clear);
  return wrong.every((one, i) => {
    const others = wrong.slice(i + 1).filter(({ id }) => id !== one.id);
    return !near(value, one.value) && others.every((other) => !near(one.value, other.value));
  });
}

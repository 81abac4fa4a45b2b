import type { Curve } from './types.ts';

/** A letter for each case on a sheet, in order of appearance, for pictures too narrow for their names. */
export function caseLetters(curves: readonly Pick<Curve, 'case'>[]): Map<string, string> {
  const names = new Set(curves.flatMap((curve) => curve.case ?? []));
  return new Map([...names].map((name, i) => [name, String.fromCharCode(65 + i)]));
}

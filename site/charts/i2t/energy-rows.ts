/** One row of the scale of A²s: what a conductor stands, or what a device lets through. */
export interface EnergyRow {
  id: string;
  name: string;
  /** What is told of it, beside the name where there is room. */
  text: string;
  kind: 'stands' | 'lets through';
  /** Ends [A²s]; null where nothing is told. A conductor has one figure at both. */
  from: number | null;
  to: number | null;
}

/** Decades about everything on the scale [A²s], two at least. */
export function decadesAbout(values: readonly number[]): readonly [low: number, high: number] {
  const known = values.filter((value) => value > 0 && Number.isFinite(value));
  if (known.length === 0) return [100, 10_000];
  const low = Math.floor(Math.log10(Math.min(...known) * 0.999));
  const high = Math.ceil(Math.log10(Math.max(...known) * 1.001));
  return [10 ** low, 10 ** Math.max(high, low + 2)];
}

/** A power of ten as it stands on an axis: '100', '10 000', '10⁶'. */
export function decadeWords(value: number): string {
  const power = Math.round(Math.log10(value));
  if (power >= 0 && power <= 3) return String(10 ** power);
  return `10${[...String(power)].map((digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)] ?? '⁻').join('')}`;
}

/** A caller's mistake: says what was out of range, its value, the range and the unit. Nature's answers are values, never exceptions. */
export class OutOfRange extends Error {
  readonly what: string;
  readonly value: number;
  readonly range: readonly [number, number];
  readonly unit: string;

  constructor(what: string, value: number, range: readonly [number, number], unit: string) {
    super(`${what} is ${value} ${unit}; it must lie from ${range[0]} to ${range[1]} ${unit}`);
    this.name = 'OutOfRange';
    this.what = what;
    this.value = value;
    this.range = range;
    this.unit = unit;
  }
}

/** Throws `OutOfRange` unless `value` [unit] lies in `range` (both ends allowed; NaN never does). */
export function within(what: string, value: number, range: readonly [number, number], unit: string): void {
  if (!(value >= range[0] && value <= range[1])) throw new OutOfRange(what, value, range, unit);
}

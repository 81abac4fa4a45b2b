/** A logarithmic scale from `domain` to pixels, with its way back. Values at or below 0 lie at the low end, infinite ones at the high end. */
export interface LogScale {
  (value: number): number;
  /** The value at a pixel. */
  at(px: number): number;
  readonly domain: readonly [number, number];
}

/** Maps [a, b] (both above 0) to [p, q] by ratio; what lies beyond is held at the ends. */
export function logScale([a, b]: readonly [number, number], [p, q]: readonly [number, number]): LogScale {
  const whole = Math.log(b / a);
  const part = (value: number) => (value <= a ? 0 : value >= b ? 1 : Math.log(value / a) / whole);
  const scale = (value: number) => p + part(value) * (q - p);
  return Object.assign(scale, {
    at: (px: number) => a * (b / a) ** Math.min(1, Math.max(0, (px - p) / (q - p))),
    domain: [a, b] as const,
  });
}

/** A line of a logarithmic grid: a decade, or one of the 2 to 9 between. */
export interface LogTick {
  readonly value: number;
  /** Its leading figure, 1 to 9. */
  readonly figure: number;
}

/** Every 1 to 9 times a power of ten within [low, high]. */
export function logTicks(low: number, high: number): LogTick[] {
  const list: LogTick[] = [];
  for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power++)
    for (let figure = 1; figure <= 9; figure++) {
      const value = Number(`${figure}e${power}`);
      if (value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9)) list.push({ value, figure });
    }
  return list;
}

/** Ticks that carry a figure: as fine a row of 1; 1-3; 1-2-5; 1-2-3-5-8 as keeps them `gap` pixels apart. */
export function namedTicks(ticks: readonly LogTick[], scale: LogScale, gap: number): number[] {
  const rows = [[1, 1.5, 2, 3, 4, 6, 8], [1, 2, 3, 5, 8], [1, 2, 5], [1, 3], [1]];
  for (const row of rows) {
    const named = ticks.filter(({ figure }) => row.includes(figure)).map(({ value }) => value);
    if (named.every((value, i) => i === 0 || Math.abs(scale(value) - scale(named[i - 1] ?? 0)) >= gap)) return named;
  }
  return [];
}

const steps = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];

/** The next round value at or below, or at or above, `value`. */
export function roundOff(value: number, way: 'down' | 'up'): number {
  const decade = 10 ** Math.floor(Math.log10(value) + 1e-9);
  const whole = steps.map((step) => Number((step * decade).toPrecision(3)));
  return way === 'down'
    ? (whole.findLast((one) => one <= value * (1 + 1e-9)) ?? value)
    : (whole.find((one) => one >= value * (1 - 1e-9)) ?? value);
}

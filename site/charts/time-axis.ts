const steps = [
  0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14400, 21600, 43200,
  86400, 172800, 432000, 864000,
];

/** The step [s] of a clock's own kind (5 s, 30 s, 10 min …) that divides `span` [s] into at most `count` parts. */
export function timeStep(span: number, count: number): number {
  return steps.find((step) => span / step <= count + 1e-9) ?? span;
}

/** Ticks [s] from 0 to `end` at a clock's own steps, at most `count` intervals. */
export function timeTicks(end: number, count: number): number[] {
  const step = timeStep(end, count);
  return Array.from({ length: Math.floor(end / step + 1e-9) + 1 }, (_, i) => i * step);
}

/** How times up to `end` [s] are written on an axis, and what the axis says of it. */
export function timeWriting(end: number): { unit: string; write: (t: number) => string } {
  if (end < 20) return { unit: 's', write: (t) => String(Number(t.toPrecision(4))) };
  if (end < 3600) return { unit: 'min:s', write: (t) => pair(t, 60) };
  return { unit: 'h:min', write: (t) => pair(t / 60, 60) };
}

function pair(value: number, base: number): string {
  const whole = Math.round(value);
  return `${Math.floor(whole / base)}:${String(whole % base).padStart(2, '0')}`;
}

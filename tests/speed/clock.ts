/** Shortest time of one call [µs] over `rounds` rounds of `calls` calls, after warming up; the shortest is the least disturbed. */
export function microseconds(work: () => unknown, calls: number, rounds = 15): number {
  for (let i = 0; i < calls; i++) work();
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    for (let i = 0; i < calls; i++) work();
    best = Math.min(best, performance.now() - start);
  }
  return (1000 * best) / calls;
}

/**
 * A loop whose work is always the same, to set a machine's speed beside the figures: 1000 dependent steps of multiply, add
 * and divide on doubles [µs].
 */
export function calibration(): number {
  let sink = 0;
  const time = microseconds(() => {
    let x = 1.5;
    for (let i = 0; i < 1000; i++) x = 1 + 1 / (x * 1.000001 + 0.25);
    sink += x;
  }, 2000);
  if (!Number.isFinite(sink)) throw new Error('the calibration loop went astray');
  return time;
}

/** One line of the report. */
export function line(what: string, figure: string): void {
  process.stdout.write(`${what.padEnd(62)} ${figure}\n`);
}

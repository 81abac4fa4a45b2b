import { guessMapping } from '#engine/bench/readings/guess.ts';
import { readLog } from '#engine/bench/readings/reader.ts';
import { calibration, line } from './clock.ts';

const rows = 1_000_000;

/** A log of a million rows in five columns, as a logger of ten readings a second writes it in a day. */
export function longLog(count: number): string {
  const text = Array.from({ length: count }, (_, i) => {
    const at = new Date(1_772_443_800_000 + 100 * i).toISOString();
    return `${at},${(10 + (i % 17) / 100).toFixed(2)},${(3 + (i % 23) / 1000).toFixed(3)},${(41 + (i % 31) / 10).toFixed(1)},${(20 + (i % 5) / 10).toFixed(1)}`;
  });
  return `Time,I [A],U [V],Sheath [°C],Ambient [°C]\n${text.join('\n')}\n`;
}

/** Reads a long log from its bytes, guess and all. */
export function readings(): void {
  const bytes = new TextEncoder().encode(longLog(rows));
  const times = [1, 2, 3].map(() => {
    const from = performance.now();
    const mapping = guessMapping(bytes);
    const guessed = performance.now();
    const { counts } = readLog(bytes, mapping);
    if (counts.read !== rows) throw new Error(`${counts.read} rows were read`);
    return { guess: guessed - from, read: performance.now() - guessed };
  });
  const best = times.reduce((a, b) => (b.read < a.read ? b : a));
  line(`log of ${rows} rows, 5 columns, ${(bytes.length / 1e6).toFixed(0)} MB: guess`, `${best.guess.toFixed(0)} ms`);
  line('  read, every row accounted for', `${best.read.toFixed(0)} ms`);
  line('  calibration loop', `${calibration().toFixed(2)} µs`);
}

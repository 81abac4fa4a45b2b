// `npm run study -- malformed 10000`: broken files of readings. Prints what went wrong with which seed, and the longest time.
import { faultOfSeed } from '../engine/malformed.ts';

const count = Number(process.argv.find((word) => /^\d+$/.test(word)) ?? 10_000);
let faults = 0;
let longest = { seed: 0, ms: 0 };
for (let seed = 0; seed < count; seed++) {
  const from = performance.now();
  const fault = answer(seed);
  const ms = performance.now() - from;
  if (ms > longest.ms) longest = { seed, ms };
  if (fault === null) continue;
  faults += 1;
  console.log(`  seed ${seed}: ${fault}`);
}
console.log(
  `${count} broken files of readings: ${faults} with a fault; the longest took ${longest.ms.toFixed(0)} ms (seed ${longest.seed})`,
);

function answer(seed: number): string | null {
  try {
    return faultOfSeed(seed);
  } catch (error) {
    return `threw ${String(error)}`;
  }
}

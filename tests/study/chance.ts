import { type Random, randomOf } from '#engine';

/** Draws of real numbers from a seed. */
export interface Chance {
  /** Even between two numbers. */
  even(from: number, to: number): number;
  /** Normal about 0, of standard deviation 1. */
  normal(): number;
  /** True so often. */
  often(p: number): boolean;
  pick: Random['pick'];
  /** One of the keys, by their weights. */
  weighted<K extends string>(weights: Readonly<Record<K, number>>): K;
}

/** A source of chance from a text: the same text gives the same draws. */
export function chanceOf(seed: string): Chance {
  const random = randomOf(seed);
  const most = 2 ** 31 - 1;
  const unit = () => (random.whole(0, most - 1) + 0.5) / most;
  return {
    even: (from, to) => from + (to - from) * unit(),
    normal: () => Math.sqrt(-2 * Math.log(unit())) * Math.cos(2 * Math.PI * unit()),
    often: (p) => unit() < p,
    pick: (items) => random.pick(items),
    weighted(weights) {
      const entries = Object.entries(weights) as [keyof typeof weights, number][];
      let left = unit() * entries.reduce((sum, [, weight]) => sum + weight, 0);
      for (const [key, weight] of entries) {
        left -= weight;
        if (left <= 0) return key;
      }
      return (entries.at(-1) as (typeof entries)[number])[0];
    },
  };
}

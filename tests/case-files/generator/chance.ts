import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Chance for a generated log: the same seed gives the same log. */
export interface Chance {
  /** Even between 0 and 1. */
  even(): number;
  /** Normal, mean 0, standard deviation 1, by the polar method of Marsaglia. */
  normal(): number;
}

export function chanceOf(seed: number): Chance {
  const generator = xoroshiro128plus(seed);
  const even = () => (generator.next() >>> 0) / 2 ** 32;
  const normal = (): number => {
    for (;;) {
      const [x, y] = [2 * even() - 1, 2 * even() - 1];
      const s = x * x + y * y;
      if (s > 0 && s < 1) return x * Math.sqrt((-2 * Math.log(s)) / s);
    }
  };
  return { even, normal };
}

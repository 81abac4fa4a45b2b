import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';

/** A source of chance. The same seed gives the same draws on every machine: integers only, no floating point on the way. */
export interface Random {
  /** A whole number from `least` to `most`, both included. */
  whole(least: number, most: number): number;
  /** One of `items`, all alike likely. */
  pick<T>(items: readonly T[]): T;
}

const rounds = 0x9e3779b1;

/** 32 bits of a text and a salt: FNV-1a over its UTF-16 units, then the finaliser of MurmurHash3 (both published, from memory). */
export function hashText(text: string, salt: number): number {
  let h = (0x811c9dc5 ^ Math.imul(salt, rounds)) | 0;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    h = Math.imul(h ^ (unit & 0xff), 0x01000193);
    h = Math.imul(h ^ (unit >>> 8), 0x01000193);
  }
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) | 0;
}

/** A source of chance from a text: xoroshiro128+ of pure-rand, its 128 bits of state from four hashes of the text. */
export function randomOf(seed: string): Random {
  const generator = xoroshiro128plusFromState([1, 2, 3, 4].map((salt) => hashText(seed, salt)));
  const whole = (least: number, most: number) => uniformInt(generator, least, most);
  return {
    whole,
    pick<T>(items: readonly T[]): T {
      return items[whole(0, items.length - 1)] as T;
    },
  };
}

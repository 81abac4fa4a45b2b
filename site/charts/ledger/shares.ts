import { spread } from '../spread.ts';
import { textWidth } from '../text-width.ts';

/** One part of a bar: what it is and how much [W/m]. */
export interface Share {
  id: string;
  name: string;
  heat: number;
}

/** The same with its place on the bar and its words' centre [px]. */
export interface PlacedShare extends Share {
  x0: number;
  x1: number;
  text: string;
  at: number;
}

const gap = 12; // px between the words of neighbours

/** Parts of a bar of `width` [px] that stands for `total` [W/m], with words kept apart; parts of no heat are left out. */
export function placedShares(
  shares: readonly Share[],
  total: number,
  width: number,
  write: (share: Share) => string,
): PlacedShare[] {
  let x0 = 0;
  const placed = shares
    .filter(({ heat }) => heat > total * 5e-4)
    .map((share) => {
      const x1 = x0 + (share.heat / total) * width;
      const one = { ...share, x0, x1, text: write(share), at: (x0 + x1) / 2 };
      x0 = x1;
      return one;
    });
  const wide = placed.map(({ text }) => textWidth(text));
  const most = Math.max(0, ...wide) + gap;
  const at = spread(
    placed.map((one) => one.at),
    Math.min(most, width / Math.max(1, placed.length)),
    Math.min(width / 2, (wide[0] ?? 0) / 2),
    Math.max(width / 2, width - (wide.at(-1) ?? 0) / 2),
  );
  return placed.map((one, i) => ({ ...one, at: at[i] ?? one.at }));
}

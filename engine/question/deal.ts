import { randomOf } from './random.ts';

/** The items dealt anew: Fisher and Yates, the same for the same `deal`, which is any whole number drawn with the case. */
export function dealt<T>(items: readonly T[], deal: number): readonly T[] {
  const random = randomOf(`deal ${deal}`);
  const hand = [...items];
  for (let i = hand.length - 1; i > 0; i--) {
    const j = random.whole(0, i);
    [hand[i], hand[j]] = [hand[j] as T, hand[i] as T];
  }
  return hand;
}

/**
 * Three items or more dealt so that their order tells nothing: neither `right` nor its reverse, nor any of the `wrong` orders.
 * Deals on from `deal` until one is found; with few items and many wrong orders any that is not right will do.
 */
export function dealtOrder(
  right: readonly string[],
  wrong: readonly (readonly string[])[],
  deal: number,
): readonly string[] {
  const key = (order: readonly string[]) => order.join('\n');
  const plain = new Set([right, [...right].reverse()].map(key));
  const telling = new Set([...plain, ...wrong.map(key)]);
  const hands = Array.from({ length: 40 }, (_, i) => dealt(right, deal + 1000 * i));
  const found = hands.find((hand) => !telling.has(key(hand))) ?? hands.find((hand) => !plain.has(key(hand)));
  return found ?? [...right.slice(1), right[0] as string];
}

/** The greatest `deal` that a case is drawn with. */
export const mostDeals = 999;

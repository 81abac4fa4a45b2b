import { dealt } from './deal.ts';
import type { ChooseOption, ChoosePart, Said } from './types.ts';

/** An option with what is said of it when it is chosen. */
export type Offer = readonly [id: string, text: string, said: Said];

/** A part of a choice: the first of the offers is right, and they are dealt by `deal`. */
export function partOf(id: string, label: string, offers: readonly Offer[], deal: number): ChoosePart {
  const [right] = offers[0] as Offer;
  const options = offers.map(
    ([one, text, said]): ChooseOption => (one === right ? { id: one, text } : { id: one, text, said }),
  );
  return { id, label, options: dealt(options, deal), right };
}

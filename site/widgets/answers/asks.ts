import type { Practice } from '../../lib/practice.ts';
import type { FieldUnit } from '../prediction/read-amount.ts';

/** Something told for each practice. */
export type Each<T> = Readonly<Record<Practice, T>>;

/** A number to be predicted. */
export interface NumberAsk {
  readonly kind: 'number';
  readonly id: string;
  readonly words: Each<string>;
  readonly unit: FieldUnit;
  /** The computed number in that unit, and in words: '40 K'. */
  readonly computed: Each<{ readonly value: number; readonly told: string }>;
}

/** One of a few things to choose. */
export interface ChoiceAsk {
  readonly kind: 'choice';
  readonly id: string;
  readonly words: Each<string>;
  readonly options: readonly { readonly id: string; readonly words: Each<string> }[];
  /** The option that the engine finds, and the numbers it finds it by: '51 W, then 102 W'. */
  readonly computed: Each<{ readonly id: string; readonly told: string }>;
}

/** Things to put in order. */
export interface OrderAsk {
  readonly kind: 'order';
  readonly id: string;
  readonly words: Each<string>;
  /** What the first place is and what the last: 'coolest', 'hottest'. */
  readonly ends: readonly [string, string];
  /** As they stand at first, which is the right order in no practice. */
  readonly items: readonly { readonly id: string; readonly words: Each<string> }[];
  /** The ids in their computed order, and the number of each. */
  readonly computed: Each<{ readonly ids: readonly string[]; readonly told: Readonly<Record<string, string>> }>;
}

/** What a reader is asked to commit to. The computed answer comes with it: it was worked out when the page was built. */
export type Ask = NumberAsk | ChoiceAsk | OrderAsk;

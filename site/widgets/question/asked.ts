import type { Snippet } from 'svelte';
import type { Answered, MisconceptionId, Question } from '#engine';

/** An answer that counted as a try. */
export interface CountedAnswer extends Answered {
  readonly question: Question;
  readonly tags: readonly MisconceptionId[];
  /** The working had been shown before. */
  readonly copied: boolean;
}

/** A question asked outside its lesson: nothing of it goes into the address, and whoever asks keeps what came of it. */
export interface Practising {
  /** Stands before the answer. */
  before: Snippet;
  marked: (answer: CountedAnswer) => void;
  /** New numbers were drawn. */
  fresh: () => void;
}

/** A question as a page asks it: one template, from one seed. */
export interface Asked {
  /** Name of the question on its page: the element's id and its part of the address's fragment. */
  id: string;
  /** The template: 'Q28'. */
  template: string;
  /** The seed it opens with. */
  seed: string;
  number: number;
  /** How many questions the page has. */
  of: number;
  /** How many steps are given from the start: all but the last worked, the last one told. */
  given?: number;
  /** Where the bench is: an address that a scenario's link can follow. */
  bench: string;
  practising?: Practising;
}

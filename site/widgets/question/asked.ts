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
}

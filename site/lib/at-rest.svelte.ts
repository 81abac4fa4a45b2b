import { untrack } from 'svelte';

const settle = 150; // ms without a change

/** Something made of a figure's case, and whether it is of the case shown now. */
export interface AtRest<T> {
  readonly value: T;
  /** False from a change until the figure has come to rest. */
  readonly current: boolean;
}

/** Whether two plain records hold the same things. */
function same<D extends object>(a: D, b: D): boolean {
  if (a === b) return true;
  const keys = Object.keys(a) as (keyof D)[];
  return keys.length === Object.keys(b).length && keys.every((key) => a[key] === b[key]);
}

/**
 * What `make` makes of `from`: at once at first, then again only when `from` has come to rest. It is also made again where
 * `from` has changed before the first effect, as it does where a page opens in the other practice. For what is dear to make
 * and nobody reads while a slider moves. To be called while a component is set up.
 */
export function atRest<D extends object, T>(from: () => D, make: (from: D) => T): AtRest<T> {
  const madeOf = (of: D) => ({ of, value: make(of) });
  let made = $state.raw(madeOf(from()));
  $effect(() => {
    const now = from(); // read here, so that each change starts the wait again
    if (
      same(
        untrack(() => made.of),
        now,
      )
    )
      return;
    const timer = setTimeout(() => {
      made = madeOf(now);
    }, settle);
    return () => clearTimeout(timer);
  });
  return {
    get value() {
      return made.value;
    },
    get current() {
      return same(made.of, from());
    },
  };
}

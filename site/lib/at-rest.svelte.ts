const settle = 150; // ms without a change

/**
 * What `make` makes of `from`, made again only once `from` has come to rest; at first it is made at once. For what is dear to
 * make and nobody reads while a slider moves. To be called while a component is set up.
 */
export function atRest<D, T>(from: () => D, make: (from: D) => T): { readonly value: T } {
  let value = $state.raw(make(from()));
  let first = true;
  $effect(() => {
    const now = from(); // read here, so that each change starts the wait again
    if (first) {
      first = false;
      return;
    }
    const timer = setTimeout(() => {
      value = make(now);
    }, settle);
    return () => clearTimeout(timer);
  });
  return {
    get value() {
      return value;
    },
  };
}

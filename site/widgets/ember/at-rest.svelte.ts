const settle = 150; // ms without a change

/**
 * A value that follows `make` once what it is made from has come to rest; at first it is made at once. To be called while a
 * component is set up.
 */
export function atRest<T>(make: () => T): { readonly value: T } {
  let value = $state.raw(make());
  let first = true;
  $effect(() => {
    // what `make` reads is read here, so that each change starts the wait again
    const next = make();
    if (first) {
      first = false;
      value = next;
      return;
    }
    const timer = setTimeout(() => {
      value = next;
    }, settle);
    return () => clearTimeout(timer);
  });
  return {
    get value() {
      return value;
    },
  };
}

import { readFragment, withFragment } from './fragment.ts';

/** One of a few words that lives in the address's fragment beside a figure's case. */
export interface FragmentWord<T extends string> {
  value: T;
}

/**
 * Keeps a choice of a figure in the fragment under `name`, left out while it is the `initial` one; a word that is not among
 * `words` is left unread. To be called while a component is set up.
 */
export function fragmentWord<const T extends string>(
  name: string,
  initial: NoInfer<T>,
  words: readonly T[],
): FragmentWord<T> {
  let value = $state<T>(initial);

  function read(): void {
    const text = readFragment(location.hash, name);
    value = words.find((word) => encodeURIComponent(word) === text) ?? initial;
  }

  $effect(() => {
    read();
    addEventListener('hashchange', read);
    return () => removeEventListener('hashchange', read);
  });

  return {
    get value() {
      return value;
    },
    set value(next: T) {
      value = next;
      const hash = withFragment(location.hash, name, next === initial ? undefined : encodeURIComponent(next));
      history.replaceState(history.state, '', `${location.pathname}${location.search}${hash}`);
    },
  };
}

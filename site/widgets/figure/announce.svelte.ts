const settle = 1200; // ms without a change before anything is said
const apart = 5000; // ms between two sayings at least

/**
 * A sentence for a live region that follows `sentence` without chatter: silent at first, then said once the figure has come
 * to rest, at most every five seconds. To be called while a component is set up.
 */
export function announced(sentence: () => string): { readonly text: string } {
  let text = $state('');
  let first: string | undefined;
  let last = 0;
  $effect(() => {
    const now = sentence();
    first ??= now;
    if (now === (text || first)) return;
    const wait = Math.max(settle, last + apart - performance.now());
    const timer = setTimeout(() => {
      text = now;
      last = performance.now();
    }, wait);
    return () => clearTimeout(timer);
  });
  return {
    get text() {
      return text;
    },
  };
}

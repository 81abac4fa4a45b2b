import { untrack } from 'svelte';
import { type Practice, practiceEvent, practiceKey } from '../lib/practice.ts';

let now = $state<Practice>('iec');
let alive = false;

const shown = (): Practice => (document.documentElement.dataset.practice === 'na' ? 'na' : 'iec');

/** The reader's practice: one value for every figure, question and word of a page, `iec` until the page is alive. */
export const practice = {
  get value(): Practice {
    return now;
  },
  /** Keeps the choice and turns the page; in a browser that keeps nothing it lasts as long as the page. */
  set value(next: Practice) {
    now = next;
    document.documentElement.dataset.practice = next;
    document.dispatchEvent(new CustomEvent(practiceEvent));
    try {
      localStorage.setItem(practiceKey, next);
    } catch {
      // a browser may refuse to keep anything
    }
  },
  /** What the page shows, followed from then on; to be called in the browser only, when a component has come alive. */
  recall(): Practice {
    if (!alive) {
      alive = true;
      now = shown();
      document.addEventListener(practiceEvent, () => {
        now = shown();
      });
    }
    return now;
  },
};

/**
 * Lets what a component shows turn with the page's practice: `turn` is told the practice at first and whenever another is
 * chosen. What a link brought (`sent`, asked once) stays as it was sent until then. To be called while a component is set up.
 */
export function turnWithPractice(sent: () => boolean, turn: (to: Practice) => void): void {
  let first = true;
  $effect(() => {
    const chosen = practice.recall();
    untrack(() => {
      const stays = first && sent();
      first = false;
      if (!stays) turn(chosen);
    });
  });
}

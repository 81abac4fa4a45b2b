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

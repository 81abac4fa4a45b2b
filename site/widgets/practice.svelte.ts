import type { Practice } from '../lib/format.ts';

/** Where the reader's practice is kept, in this browser only. */
export const practiceKey = 'ampere-and-ember:practice';

/** The two practices as a choice; `adjective` stands before 'practice' in a sentence. */
export const practices: readonly { value: Practice; label: string; adjective: string }[] = [
  { value: 'iec', label: 'UK and IEC', adjective: 'UK and IEC' },
  { value: 'na', label: 'North America', adjective: 'North American' },
];

let now = $state<Practice>('iec');
let read = false;

/** The reader's practice: one value for every figure and question of a page, `iec` until it is chosen. */
export const practice = {
  get value(): Practice {
    return now;
  },
  /** Keeps the choice; in a browser that keeps nothing it lasts as long as the page. */
  set value(next: Practice) {
    now = next;
    try {
      localStorage.setItem(practiceKey, next);
    } catch {
      // a browser may refuse to keep anything
    }
  },
  /** Reads the kept choice, once a page; to be called in the browser only, when a component has come alive. */
  recall(): Practice {
    if (!read) {
      read = true;
      try {
        const kept = localStorage.getItem(practiceKey);
        if (kept === 'iec' || kept === 'na') now = kept;
      } catch {
        // nothing kept, nothing recalled
      }
    }
    return now;
  },
};

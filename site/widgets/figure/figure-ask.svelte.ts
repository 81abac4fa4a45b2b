import type { Practice } from '../../lib/format.ts';
import { readFragment, withFragment } from '../../lib/fragment.ts';
import { practicePart } from '../../lib/practice.ts';
import { turnWithPractice } from '../practice.svelte.ts';
import { type Accepts, type Ask, askFromText, askToText } from './ask-text.ts';

/** What a figure asks, where that is no scenario: the page's own ask of the reader's practice, until it is changed. */
export interface FigureAsk<T extends Ask> {
  readonly value: T;
  /** The practice it is told in. */
  readonly usage: Practice;
  /** Changes parts of it and, moments later, the address. */
  set(change: Partial<T>): void;
  /** True while it is the page's own. */
  readonly asBuilt: boolean;
  reset(): void;
  /** This page's address with this ask in it. */
  address(): Promise<string>;
  /** Why a link's ask could not be used; empty when there is nothing to say. */
  readonly faults: readonly string[];
}

const settle = 250; // ms without a change before the address is written

/**
 * The ask of the figure `id`, with one opening ask a practice. It lives in the address's fragment as a scenario does. When the
 * page's practice turns, the parts named in `kept` go along where they were changed. To be called while a component is set up.
 */
export function figureAsk<T extends Ask>(
  id: string,
  opening: Readonly<Record<Practice, T>>,
  accepts: Readonly<Record<Practice, Accepts<T>>>,
  kept: readonly (keyof T & string)[],
): FigureAsk<T> {
  let usage = $state<Practice>('iec');
  let value = $state.raw(opening.iec);
  let faults = $state.raw<readonly string[]>([]);
  let timer: ReturnType<typeof setTimeout> | undefined;

  const text = () => askToText(usage, value, opening[usage]);
  const asBuilt = () => JSON.stringify(value) === JSON.stringify(opening[usage]);

  function readLink(): boolean {
    const link = readFragment(location.hash, id);
    if (link === undefined) return false;
    const read = askFromText(link, opening, accepts);
    faults = read.faults;
    if (read.faults.length > 0) return false;
    usage = read.usage;
    value = read.value;
    return true;
  }

  turnWithPractice(readLink, (chosen) => {
    if (chosen === usage) return;
    const changed = kept.filter((key) => value[key] !== opening[usage][key]);
    const carried = Object.fromEntries(changed.map((key) => [key, value[key]])) as Partial<T>;
    usage = chosen;
    value = { ...opening[chosen], ...carried };
  });
  $effect(() => {
    addEventListener('hashchange', readLink);
    return () => removeEventListener('hashchange', readLink);
  });

  function write(): void {
    clearTimeout(timer);
    timer = setTimeout(() => {
      const hash = withFragment(location.hash, id, asBuilt() ? undefined : text());
      if (hash !== location.hash)
        history.replaceState(history.state, '', `${location.pathname}${location.search}${hash}`);
    }, settle);
  }

  return {
    get value() {
      return value;
    },
    get usage() {
      return usage;
    },
    set(change) {
      value = { ...value, ...change };
      faults = [];
      write();
    },
    get asBuilt() {
      return asBuilt();
    },
    reset() {
      value = opening[usage];
      faults = [];
      write();
    },
    async address() {
      const hash = withFragment(withFragment(location.hash, id, text()), practicePart, usage);
      return `${location.origin}${location.pathname}${location.search}${hash}`;
    },
    get faults() {
      return faults;
    },
  };
}

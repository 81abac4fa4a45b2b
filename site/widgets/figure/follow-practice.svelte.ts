import { untrack } from 'svelte';
import type { Scenario } from '#engine';
import type { Practice } from '../../lib/format.ts';
import { readFragment } from '../../lib/fragment.ts';
import { practice } from '../practice.svelte.ts';
import { sameKind, withOwnCurrent } from './carry.ts';
import type { CarryOver, FigureCase } from './figure-case.svelte.ts';

/**
 * Lets a figure in which cords change their size or metal turn with the page's practice too: as long as its cord is of the
 * kind that the page gives. A case that a link brought stays as it was sent. To be called after `figureCase`, while a
 * component is set up.
 */
export function followPractice(
  id: string,
  held: FigureCase,
  opening: Readonly<Record<Practice, Scenario>>,
  carry: CarryOver,
): void {
  let first = true;
  $effect(() => {
    const chosen = practice.recall();
    untrack(() => {
      const sent = first && readFragment(location.hash, id) !== undefined;
      first = false;
      const now = held.usage;
      if (sent || chosen === now || !sameKind(held.value.cable, opening[now].cable)) return;
      held.value = withOwnCurrent(carry(held.value, opening[chosen]), held.value, opening);
    });
  });
}

import { mount } from 'svelte';
import type { LadderLimit, Pointer } from '../../charts/ladder.ts';

/** What the ladder beside the page shows. */
export interface Followed {
  note: string;
  limits: readonly LadderLimit[];
  pointers: readonly Pointer[];
}

/** Marks the place of the ladder in the page's right column; what is built there stands until a figure takes over. */
export const ladderPlace = 'data-page-ladder';

let shown = $state.raw<{ id: string; what: () => Followed }>();
let mounted = false;

/** What the ladder follows now; undefined while no figure has come into view. */
export function followed(): Followed | undefined {
  return shown?.what();
}

/** Lets the page's ladder follow the figure `id`. Where a page has no ladder, nothing happens. */
export function followOnLadder(id: string, what: () => Followed): void {
  if (shown?.id !== id) shown = { id, what };
  const place = mounted ? null : document.querySelector<HTMLElement>(`[${ladderPlace}]`);
  if (!place?.offsetParent) return; // none here, or hidden on a narrow screen
  mounted = true;
  import('./FollowingLadder.svelte').then(({ default: FollowingLadder }) => {
    place.replaceChildren();
    mount(FollowingLadder, { target: place });
  });
}

/** Follows `figure` whenever a good part of it is in view. To be called in the browser; returns how to stop. */
export function followInView(id: string, figure: Element, what: () => Followed): () => void {
  const observer = new IntersectionObserver(
    (entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) followOnLadder(id, what);
    },
    { rootMargin: '-35% 0px -35% 0px' },
  );
  observer.observe(figure);
  return () => observer.disconnect();
}

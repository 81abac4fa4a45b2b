import type { LimitKind } from '#engine';

/** The limits that the ladder beside a lesson shows. */
export const ladderKinds: readonly LimitKind[] = ['touch', 'rating', 'softening', 'fumes', 'ignition'];

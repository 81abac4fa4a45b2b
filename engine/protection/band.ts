import type { Device, Gate } from './device.ts';

/**
 * The two forms of an edge. `guaranteed`: the staircase of the gates, all that a standard promises. `assumed`: straight on
 * log–log between two gates, our assumption; null where there is no second gate to draw a line to ('not found').
 */
export type EdgeForm = 'guaranteed' | 'assumed';

/** Index of the last of `gates` (rising currents) whose current is at most `I`; −1 when there is none. */
function lastBelow(gates: readonly Gate[], I: number): number {
  let i = gates.length - 1;
  while (i >= 0 && (gates[i] as Gate).I > I) i--;
  return i;
}

/** Time [s] at `I` [A] on the line through two gates, straight on log–log. */
export function onLine(a: Gate, b: Gate, I: number): number {
  const part = Math.log(I / a.I) / Math.log(b.I / a.I);
  return a.t * (b.t / a.t) ** part;
}

/**
 * The longest a device may take at a held current `I` [A]: [s], infinite where it may hold for ever. Guaranteed: the time of
 * the gate at the next lower current. Assumed: the line between the two gates about it; beyond a fuse's last gate the heat
 * that opens it, I²t, is taken not to grow with current.
 */
export function slowest({ by, kind }: Device, I: number, form: 'guaranteed'): number;
export function slowest({ by, kind }: Device, I: number, form: EdgeForm): number | null;
export function slowest({ by, kind }: Device, I: number, form: EdgeForm): number | null {
  const i = lastBelow(by, I);
  if (i < 0) return Number.POSITIVE_INFINITY;
  const gate = by[i] as Gate;
  if (form === 'guaranteed') return gate.t;
  const next = by[i + 1];
  if (next) return onLine(gate, next, I);
  if (kind === 'breaker') return gate.I === I ? gate.t : null;
  return gate.t * (gate.I / I) ** 2;
}

/**
 * The least time in which a device may act at a held current `I` [A]: [s], infinite where it holds, 0 where nothing keeps it
 * from acting at once. Guaranteed: the time of the gate at the next higher current. Assumed: the line between the gates, but
 * never above the slow edge's.
 */
export function fastest(of: Device, I: number, form: 'guaranteed'): number;
export function fastest(of: Device, I: number, form: EdgeForm): number | null;
export function fastest(of: Device, I: number, form: EdgeForm): number | null {
  const { hold, notBefore } = of;
  if (I <= hold.I) return Number.POSITIVE_INFINITY;
  const i = lastBelow(notBefore, I);
  const below = i < 0 ? hold : (notBefore[i] as Gate);
  if (below.I === I) return below.t;
  const above = notBefore[i + 1];
  if (form === 'guaranteed') return above?.t ?? 0;
  return above ? Math.min(onLine(below, above, I), slowest(of, I, form) ?? slowest(of, I, 'guaranteed')) : null;
}

/** What a device does at a held current: it must hold, it may act between two times, or it must have acted by one. */
export interface BandAt {
  /** Guaranteed: not before `fastest` [s], by `slowest` [s]. */
  readonly fastest: number;
  readonly slowest: number;
  /** If the curve is straight between gates [s]; null where there is no line to draw. */
  readonly assumed: { readonly fastest: number | null; readonly slowest: number | null };
}

/** The band of a device at a held current `I` [A]. */
export function bandAt(of: Device, I: number): BandAt {
  return {
    fastest: fastest(of, I, 'guaranteed'),
    slowest: slowest(of, I, 'guaranteed'),
    assumed: { fastest: fastest(of, I, 'assumed'), slowest: slowest(of, I, 'assumed') },
  };
}

import type { Scenario } from '#engine';
import type { Practice } from '../../lib/format.ts';
import { carriedSize, type SizesByPractice } from './carry.ts';
import { currentOf, withCurrent } from './edit.ts';
import type { CarryOver } from './figure-case.svelte.ts';
import { metalIdOf, withMetal } from './metal.ts';

const known = ['copper', 'cca10', 'cca15', 'aluminium', 'steel'] as const;

/**
 * How a case goes over to the other practice: that practice's own cord in the size of the same place, with this one's metal,
 * air and current.
 */
export function carrier(opening: Readonly<Record<Practice, Scenario>>, sizes: SizesByPractice) {
  return (from: Scenario, to: Scenario): Scenario => {
    const own = opening[from.practice ?? 'iec'];
    const sized = carriedSize(from, to, sizes);
    const metal = known.find((id) => id === metalIdOf(from));
    const cable = metal === undefined || metal === metalIdOf(sized) ? sized.cable : withMetal(sized.cable, metal);
    const moved =
      JSON.stringify(from.surroundings) === JSON.stringify(own.surroundings) ? {} : { surroundings: from.surroundings };
    const amps = currentOf(from);
    const next = { ...sized, cable, ...moved };
    return amps === undefined ? next : withCurrent(next, amps);
  };
}

/** A way over to the other practice that leaves a cable which was never changed to the page: it has its own there. */
export function withOwnCable(opening: Readonly<Record<Practice, Scenario>>, carry: CarryOver): CarryOver {
  return (from, to) => {
    const own = opening[from.practice ?? 'iec'];
    const same = JSON.stringify(own.cable) === JSON.stringify(from.cable);
    return same ? { ...carry(from, to), cable: to.cable } : carry(from, to);
  };
}

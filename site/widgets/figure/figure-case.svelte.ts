import { type CableSpec, type Scenario, ScenarioFault } from '#engine';
import type { Practice } from '../../lib/format.ts';
import { readFragment, withFragment } from '../../lib/fragment.ts';
import { practicePart } from '../../lib/practice.ts';
import { scenarioState } from '../../lib/scenario-state.svelte.ts';
import { turnWithPractice } from '../practice.svelte.ts';
import { withOwnCurrent } from './carry.ts';

/** The case a figure shows: the one its page gives for the reader's practice, until the reader or a link changes it. */
export interface FigureCase {
  /** The case; setting it changes the figure and, moments later, the address. */
  value: Scenario;
  /** The practice it is told in. */
  readonly usage: Practice;
  /** True while it is the page's own case. */
  readonly asBuilt: boolean;
  /** Back to the page's own case. */
  reset(): void;
  /** This page's address with this case in it, also while it is the one the page was built with. */
  address(): Promise<string>;
  /**
   * What `compute` makes of the case, and why a link's case could not be used (empty when there is nothing to say): a link may
   * hold parts that do not fit each other, and then the page's own case stands.
   */
  solve<T>(compute: (scenario: Scenario) => T): Solved<T>;
}

/** A result, and in words what was wrong with the case asked for; then the result is of the page's own. */
export interface Solved<T> {
  readonly result: T;
  readonly faults: readonly string[];
}

/** How a case goes over to the other practice: `to` is that practice's own, `from` the one on the screen. */
export type CarryOver = (from: Scenario, to: Scenario) => Scenario;

/** Whether a cable may still be taken for the page's own, so that the figure turns with the practice. */
export type Kin = (cable: CableSpec, own: CableSpec) => boolean;
const sameCable: Kin = (cable, own) => JSON.stringify(cable) === JSON.stringify(own);

/**
 * The case of the figure `id`, with one opening case a practice. A link's case is shown as it was sent; a practice chosen on
 * the page turns every figure that still has the page's own cable, or one that `kin` takes for it where a figure changes sizes
 * or metals. To be called while a component is set up.
 */
export function figureCase(
  id: string,
  opening: Readonly<Record<Practice, Scenario>>,
  carry: CarryOver,
  kin: Kin = sameCable,
): FigureCase {
  const held = scenarioState(id, opening.iec);
  const plain = { iec: JSON.stringify(opening.iec), na: JSON.stringify(opening.na) };

  const usage = $derived<Practice>(held.value.practice ?? 'iec');
  const asBuilt = $derived(JSON.stringify(held.value) === plain[usage]);

  turnWithPractice(
    () => readFragment(location.hash, id) !== undefined,
    (chosen) => {
      if (chosen === usage || !kin(held.value.cable, opening[usage].cable)) return;
      held.value = withOwnCurrent(carry(held.value, opening[chosen]), held.value, opening);
    },
  );

  return {
    get value() {
      return held.value;
    },
    set value(next: Scenario) {
      held.value = next;
    },
    get usage() {
      return usage;
    },
    get asBuilt() {
      return asBuilt;
    },
    reset() {
      held.value = opening[usage];
    },
    async address() {
      const { scenarioToLink } = await import('../../lib/write-link.ts');
      const hash = withFragment(withFragment(location.hash, id, scenarioToLink(held.value)), practicePart, usage);
      return `${location.origin}${location.pathname}${location.search}${hash}`;
    },
    solve(compute) {
      const unread = held.faults.map(({ message }) => message);
      try {
        return { result: compute(held.value), faults: unread };
      } catch (fault) {
        if (!(fault instanceof ScenarioFault)) throw fault;
        return { result: compute(opening[usage]), faults: [...unread, fault.message] };
      }
    },
  };
}

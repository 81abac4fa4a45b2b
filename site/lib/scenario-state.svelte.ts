import type { Fault, Scenario } from '#engine';
import { readFragment, withFragment } from './fragment.ts';

const settle = 250; // ms without a change before the address is written

/** A scenario that lives in the address's fragment. */
export interface ScenarioState {
  value: Scenario;
  /** What was wrong with the link the page was opened with; empty when nothing was. */
  readonly faults: readonly Fault[];
  /** True once a scenario differs from the one the page was built with. */
  readonly changed: boolean;
  reset(): void;
}

/**
 * Keeps a figure's scenario in the fragment under `name`: read once when the figure comes alive (a bad link is reported, not
 * thrown), written without a new history entry some moments after a change, left out while it is the `initial` one.
 * To be called while a component is set up.
 */
export function scenarioState(name: string, initial: Scenario): ScenarioState {
  const plain = JSON.stringify(initial);
  let value = $state.raw(initial);
  let faults = $state.raw<readonly Fault[]>([]);
  let timer: ReturnType<typeof setTimeout> | undefined;

  async function readLink(): Promise<void> {
    const text = readFragment(location.hash, name);
    if (text === undefined) return;
    const { scenarioFromLink } = await import('./read-link.ts');
    const parsed = scenarioFromLink(text);
    if (parsed.faults) faults = parsed.faults;
    else value = parsed.scenario;
  }

  $effect(() => {
    readLink();
    addEventListener('hashchange', readLink);
    return () => removeEventListener('hashchange', readLink);
  });

  function write(): void {
    clearTimeout(timer);
    timer = setTimeout(async () => {
      const { scenarioToLink } = await import('./write-link.ts');
      const link = JSON.stringify(value) === plain ? undefined : scenarioToLink(value);
      const hash = withFragment(location.hash, name, link);
      if (hash !== location.hash)
        history.replaceState(history.state, '', `${location.pathname}${location.search}${hash}`);
    }, settle);
  }

  return {
    get value() {
      return value;
    },
    set value(next: Scenario) {
      value = next;
      faults = [];
      write();
    },
    get faults() {
      return faults;
    },
    get changed() {
      return value !== initial;
    },
    reset() {
      value = initial;
      faults = [];
      write();
    },
  };
}

import type { BenchLog, Instruments, Scenario } from '#engine';
import { uncertaintyBy } from '#engine';
import { besideInWorker } from '../../../lib/fit-log.ts';
import type { Beside, LogQuestion } from '../../../workers/fit-work.ts';

const settle = 200; // ms without a change

/** What a comparison is of. */
export interface BesideOf {
  /** Undefined where there is nothing to compare. */
  readonly log: BenchLog | undefined;
  readonly scenario: Scenario;
  readonly instruments: Instruments;
}

/** The question that a log, its lead and the instruments put. */
export const questionOf = (log: BenchLog, scenario: Scenario, instruments: Instruments): LogQuestion => ({
  scenario,
  log,
  u: uncertaintyBy(instruments, log),
});

/** A log beside its prediction, worked out in a worker each time the page has come to rest. */
export class BesideState {
  value = $state.raw<Beside>();
  /** False from a change until the comparison is of it. */
  current = $state(false);
  fault = $state('');

  constructor(of: () => BesideOf) {
    let first = true;
    $effect(() => {
      const { log, scenario, instruments } = of();
      this.current = false;
      if (!log) return;
      const ending = new AbortController();
      const timer = setTimeout(
        () => void this.#compare(questionOf(log, scenario, instruments), ending.signal),
        first ? 0 : settle,
      );
      first = false;
      return () => {
        clearTimeout(timer);
        ending.abort(new Error('changed'));
      };
    });
  }

  async #compare(question: LogQuestion, signal: AbortSignal): Promise<void> {
    try {
      this.value = await besideInWorker(question, {}, { signal });
      this.current = true;
      this.fault = '';
    } catch (error) {
      if (!signal.aborted) this.fault = `The comparison could not be made: ${String(error)}`;
    }
  }
}

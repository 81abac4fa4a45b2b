import type { FitParameterId } from '#engine';
import { fitInWorker } from '../../../lib/fit-log.ts';
import type { FitReport, FitStage, LogQuestion } from '../../../workers/fit-work.ts';

/** A fit on its way. */
export class FitSession {
  stage = $state.raw<FitStage>();
  /** The last fit; of what the page shows until something is changed. */
  report = $state.raw<FitReport>();
  fault = $state('');
  #ending: AbortController | undefined;

  /** Fits; the answer of an earlier call that still runs is dropped. */
  async fit(question: LogQuestion, free: readonly FitParameterId[], here = false): Promise<void> {
    this.stop();
    const ending = new AbortController();
    this.#ending = ending;
    this.fault = '';
    this.stage = { part: 'fit', steps: 0 };
    const onprogress = (stage: FitStage) => {
      if (!ending.signal.aborted) this.stage = stage;
    };
    try {
      const report = await fitInWorker(question, free, { signal: ending.signal, here, onprogress });
      if (!ending.signal.aborted) this.report = report;
    } catch (error) {
      if (!ending.signal.aborted) this.fault = `The fit could not be made: ${String(error)}`;
    } finally {
      if (this.#ending === ending) this.stage = undefined;
    }
  }

  stop(): void {
    this.#ending?.abort(new Error('stopped'));
    this.stage = undefined;
  }

  /** Forgets the fit, since what it was of has changed. */
  clear(): void {
    this.stop();
    this.report = undefined;
    this.fault = '';
  }
}

import {
  type BenchJob,
  type BenchLog,
  caseOfJob,
  fitParameterIds,
  guessMapping,
  handHeld,
  type Scenario,
  uncertaintyBy,
} from '#engine';
import { besideInWorker, fitInWorker } from '../../../lib/fit-log.ts';
import { readLogFile } from '../../../lib/read-log-file.ts';
import type { Beside, FitReport, LogQuestion } from '../../../workers/fit-work.ts';

/** What is worked out of a job's log, away from the page: read, compared, and fitted where the job frees something. */
export class ReportWork {
  log = $state.raw<BenchLog | null>(null);
  beside = $state.raw<Beside | null>(null);
  fit = $state.raw<FitReport | null>(null);
  /** What is being done. */
  doing = $state<'' | 'reading' | 'comparing' | 'fitting'>('');
  /** Why it could not be done; empty where it could. */
  fault = $state('');

  /** Follows the job: each part is done again when what it is made of changes. To be called while a component is set up. */
  constructor(job: () => BenchJob) {
    const kept = $derived(job().log);
    const scenario = $derived(caseOfJob(job()));
    const fitted = $derived(job().fitted.join());
    $effect(() => this.#during(async (signal) => this.#read(kept, signal)));
    $effect(() => {
      const { log } = this;
      return this.#during(async (signal) => this.#compare(log, scenario, fitted, signal));
    });
  }

  /** Does something until what it is made of changes. */
  #during(work: (signal: AbortSignal) => Promise<void>): () => void {
    const ending = new AbortController();
    work(ending.signal).catch((error) => {
      if (ending.signal.aborted) return;
      this.doing = '';
      this.fault = `The readings could not be worked out: ${String(error)}`;
    });
    return () => ending.abort(new Error('changed'));
  }

  async #read(kept: BenchJob['log'], signal: AbortSignal): Promise<void> {
    this.log = null;
    this.fault = '';
    if (!kept) return;
    this.doing = 'reading';
    const { log } = await readLogFile(new Blob([kept.csv]), guessMapping(kept.csv), { signal });
    this.doing = '';
    this.log = log.t.length > 0 ? log : null;
  }

  async #compare(log: BenchLog | null, scenario: Scenario | null, fitted: string, signal: AbortSignal): Promise<void> {
    this.beside = null;
    this.fit = null;
    if (!log || !scenario) return;
    this.doing = 'comparing';
    const question: LogQuestion = { scenario, log, u: uncertaintyBy(handHeld, log) };
    this.beside = await besideInWorker(question, {}, { signal });
    const free = fitParameterIds.filter((id) => fitted.split(',').includes(id));
    if (free.length > 0) {
      this.doing = 'fitting';
      this.fit = await fitInWorker(question, free, { signal });
    }
    this.doing = '';
  }
}

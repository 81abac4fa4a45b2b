import { onMount } from 'svelte';
import { type BenchJob, emptyJob } from '#engine';
import { keepJob, keptJob } from '../../store/job.ts';
import { practice } from '../practice.svelte.ts';

const settle = 300; // ms from the last change until it is kept

/** The bench job that the pages of a job share: read when the page comes alive, kept a moment after each change. */
export class JobState {
  /** The job as it stands. */
  value = $state.raw<BenchJob>(emptyJob('iec'));
  /** Read, so that what is shown is what was kept. */
  ready = $state(false);
  /** False where this browser keeps nothing: the job lasts as long as the page. */
  kept = $state(true);
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    onMount(() => {
      void this.#read();
      const now = () => void this.flush();
      addEventListener('pagehide', now);
      return () => {
        removeEventListener('pagehide', now);
        now();
      };
    });
  }

  async #read(): Promise<void> {
    const found = await keptJob();
    this.value = found ?? emptyJob(practice.recall());
    this.ready = true;
  }

  /** Changes parts of the job. */
  change(parts: Partial<BenchJob>): void {
    this.value = { ...this.value, ...parts };
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), settle);
  }

  /** Keeps what has not been kept yet, at once. */
  async flush(): Promise<void> {
    if (this.#timer === undefined) return;
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.kept = await keepJob($state.snapshot(this.value) as BenchJob);
  }
}

import {
  type BenchLog,
  type CaseFile,
  type Correction,
  caseScenario,
  correctColumn,
  guessMapping,
  type LogMapping,
  parseJob,
  type ReadLog,
} from '#engine';
import { guessLogFile, readLogFile, takeLogFile } from '../../../lib/read-log-file.ts';
import type { JobState } from '../job-state.svelte.ts';
import { countWords, thinWords } from './read-words.ts';

/** Rows that are kept of a log, at most about. */
export const mostKept = 12_000;
/** Our own columns are known by their heads. */
const headOfKept = 20_000;
const mostNotes = 40;
const mostNote = 400;

/** What the page is doing with a file. */
export type Stage = 'none' | 'reopening' | 'guessing' | 'mapping' | 'reading' | 'read';

/** A log on its way from a file into the job. */
export class LogSession {
  stage = $state<Stage>('none');
  /** 0 to 1, of what is being done. */
  share = $state(0);
  /** Why something could not be done, a sentence. */
  fault = $state('');
  /** Name of the file in hand. */
  name = $state('');
  mapping = $state.raw<LogMapping>();
  /** What was read of the file; undefined for a log that was kept from an earlier visit. */
  result = $state.raw<ReadLog>();
  /** The log of the job, as it is kept. */
  log = $state.raw<BenchLog>();
  #source: Blob | undefined;
  #case: CaseFile | undefined;
  #ending: AbortController | undefined;
  readonly #job: JobState;

  constructor(job: JobState) {
    this.#job = job;
  }

  /** Takes a file, and guesses what it holds. A case file brings its lead, and what is said of its columns. */
  async take(source: Blob, name: string, of?: CaseFile): Promise<void> {
    this.#source = source;
    this.#case = of;
    this.name = name;
    this.mapping = undefined;
    this.stage = 'guessing';
    const mapping = await this.#following((following) => guessLogFile(source, {}, following));
    if (!mapping) return;
    this.mapping = mapping.columns.reduce((all, { index, header }) => {
      const one = of?.said[header];
      return one ? correctColumn(all, index, one) : all;
    }, mapping);
    this.stage = 'mapping';
  }

  /** Fetches one of the case files; its lead becomes the lead of the job once it is read. */
  async takeCase(of: CaseFile, address: string): Promise<void> {
    this.fault = '';
    const found = await fetch(address).catch(() => undefined);
    if (!found?.ok) {
      this.fault = 'The case file could not be fetched. Look whether you are online, and try again.';
      return;
    }
    await this.take(await found.blob(), of.file, of);
  }

  correct(index: number, correction: Correction): void {
    if (this.mapping) this.mapping = correctColumn(this.mapping, index, correction);
  }

  /** Changes how the file is taken to be written. */
  write(parts: Partial<LogMapping['dialect']>): void {
    if (this.mapping) this.mapping = { ...this.mapping, dialect: { ...this.mapping.dialect, ...parts } };
  }

  /** Reads the file by the mapping, and puts the log into the job. */
  async read(): Promise<void> {
    const [source, mapping] = [this.#source, this.mapping];
    if (!source || !mapping) return;
    this.stage = 'reading';
    const taken = await this.#following((following) => takeLogFile(source, mapping, mostKept, following));
    if (!taken) return;
    const { result, csv, rows, every } = taken;
    if (result.counts.read === 0) {
      this.fault = 'No row could be read so. Look at the columns, above all at the time.';
      this.stage = 'mapping';
      return;
    }
    this.result = result;
    const notes = [countWords(result), ...thinWords(rows, every), ...mapping.notes, ...result.notes];
    this.#keep(result.log, csv, notes);
  }

  #keep(log: BenchLog, csv: string, notes: readonly string[]): void {
    const cut = notes.slice(0, mostNotes).map((note) => note.slice(0, mostNote));
    const kept = { file: this.name.slice(0, 200), csv, notes: cut };
    const lead = this.#case && { found: this.#case.found, scenario: caseScenario(this.#case) };
    this.#job.change({ log: kept, fitted: [], ...lead });
    this.log = log;
    this.stage = 'read';
    if (parseJob(this.#job.value).faults)
      this.fault = 'The log is too long to be kept on this device; it goes with the page.';
  }

  /** Shows the log that the job keeps. */
  async reopen(): Promise<void> {
    const kept = this.#job.value.log;
    if (!kept || this.stage !== 'none') return;
    this.stage = 'reopening';
    this.name = kept.file;
    const source = new Blob([kept.csv]);
    const result = await this.#following((following) =>
      readLogFile(source, guessMapping(kept.csv.slice(0, headOfKept)), following),
    );
    if (!result) return;
    this.log = result.log;
    this.stage = 'read';
  }

  /** Back to the columns of the file in hand. */
  again(): void {
    this.stage = 'mapping';
  }

  /** Back to the log that the job keeps. */
  leave(): void {
    this.fault = '';
    this.name = this.#job.value.log?.file ?? this.name;
    this.stage = this.log ? 'read' : 'none';
  }

  /** Ends what is being done. */
  cancel(): void {
    this.#ending?.abort(new Error('cancelled'));
  }

  async #following<T>(
    work: (following: { signal: AbortSignal; onprogress: (share: number) => void }) => Promise<T>,
  ): Promise<T | undefined> {
    this.cancel();
    const ending = new AbortController();
    this.#ending = ending;
    this.fault = '';
    this.share = 0;
    try {
      const onprogress = (share: number) => {
        this.share = share;
      };
      return await work({ signal: ending.signal, onprogress });
    } catch (error) {
      if (this.#ending !== ending) return undefined; // another file has been taken since
      if (this.stage === 'reading') this.stage = 'mapping';
      else this.leave();
      if (!ending.signal.aborted) this.fault = `The file could not be read: ${String(error)}`;
      return undefined;
    }
  }
}

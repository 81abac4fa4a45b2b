import { type Memory, retentions } from '../question/practice/review.ts';
import type { Practice, QuestionRef } from '../question/types.ts';

/** What a document of ours says it is, so that a file of another kind is refused by name. */
export const notebookFormat = 'ampere-and-ember notebook';

/** The version that is written. An older one is brought up to it by `migrated`. */
export const notebookVersion = 2;

/** What every entry has: its name within its lesson, and when it last changed (ISO 8601, in the reader's own clock). */
interface EntryBase {
  readonly id: string;
  /** The lesson it was made in: '2.2'. */
  readonly lesson: string;
  readonly at: string;
}

/** A few lines in the reader's own words. */
export interface WordsEntry extends EntryBase {
  readonly kind: 'words';
  readonly text: string;
}

/** A prediction as it was locked in, for the case of each practice. What it holds is plain data of the widget that asked. */
export interface PredictionEntry extends EntryBase {
  readonly kind: 'prediction';
  readonly said: Readonly<Partial<Record<Practice, unknown>>>;
}

/** A question and all answers given to it, first to last. No mark is kept: whoever opens the notebook marks them again. */
export interface QuestionEntry extends EntryBase {
  readonly kind: 'question';
  readonly ref: QuestionRef;
  readonly given: readonly unknown[];
}

/** What is remembered of an objective, by its own words: `id` is the objective. It is computed from answers, and kept because they are not. */
export interface MemoryEntry extends EntryBase {
  readonly kind: 'memory';
  readonly memory: Memory;
}

/** An entry of a kind that this version does not know: kept as it is, and left alone. */
export interface OtherEntry {
  readonly kind: string;
  readonly [key: string]: unknown;
}

/** An entry of a kind that this version knows. */
export type KnownEntry = WordsEntry | PredictionEntry | QuestionEntry | MemoryEntry;

/** How far a reader came in a lesson. */
export interface Place {
  /** The heading last read, by its name on the page. */
  readonly step: string;
  /** How many things there are to do in the lesson, as its page counted them. */
  readonly of: number;
  readonly at: string;
}

/** What a reader has chosen for practice. */
export interface NotebookSettings {
  /** The share of answers that is to be right when a question comes back, 0.8 to 0.95. */
  readonly retention: number;
  /** The day of an exam: '2031-06-12'. */
  readonly exam?: string | undefined;
}

/** The one document: an ordered list of entries, and how far its reader came. */
export interface Notebook {
  readonly format: typeof notebookFormat;
  readonly version: typeof notebookVersion;
  readonly entries: readonly (KnownEntry | OtherEntry)[];
  /** By lesson number. */
  readonly places: Readonly<Record<string, Place>>;
  readonly settings: NotebookSettings;
}

/** What stands until something is chosen. */
export const usualSettings: NotebookSettings = { retention: retentions.usual };

/** A notebook with nothing in it. */
export const emptyNotebook: Notebook = {
  format: notebookFormat,
  version: notebookVersion,
  entries: [],
  places: {},
  settings: usualSettings,
};

import type { Practice, QuestionRef } from '../question/types.ts';

/** What a document of ours says it is, so that a file of another kind is refused by name. */
export const notebookFormat = 'ampere-and-ember notebook';

/** The version that is written. An older one is brought up to it by `migrated`. */
export const notebookVersion = 1;

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

/** An entry of a kind that this version does not know: kept as it is, and left alone. */
export interface OtherEntry {
  readonly kind: string;
  readonly [key: string]: unknown;
}

/** An entry of a kind that this version knows. */
export type KnownEntry = WordsEntry | PredictionEntry | QuestionEntry;

/** How far a reader came in a lesson. */
export interface Place {
  /** The heading last read, by its name on the page. */
  readonly step: string;
  /** How many things there are to do in the lesson, as its page counted them. */
  readonly of: number;
  readonly at: string;
}

/** The one document: an ordered list of entries, and how far its reader came. */
export interface Notebook {
  readonly format: typeof notebookFormat;
  readonly version: typeof notebookVersion;
  readonly entries: readonly (KnownEntry | OtherEntry)[];
  /** By lesson number. */
  readonly places: Readonly<Record<string, Place>>;
}

/** A notebook with nothing in it. */
export const emptyNotebook: Notebook = { format: notebookFormat, version: notebookVersion, entries: [], places: {} };

import type { BenchLog, ProbePlace } from '../log.ts';
import type { Encoding } from './encoding.ts';

/** What a column of a log tells. */
export type ColumnQuantity =
  | 'time'
  | 'I'
  | 'U'
  | 'R'
  | 'P'
  | 'probe'
  | 'ambient'
  | 'remark'
  | 'step'
  | 'set current'
  | 'origin'
  | 'ignored';

/** How a column of time is written. `date` and `clock` stand for each other's missing half. */
export type TimeForm = 'date-time' | 'date' | 'clock' | 'elapsed' | 'epoch' | 'sample';

/** In what order a date names day, month and year. */
export type DateOrder = 'dmy' | 'mdy' | 'ymd';

/** What one column is taken for. A reading is `scale` times the figure as written, plus `offset`, in SI. */
export interface LogColumn {
  /** Place in the row, from 0. */
  readonly index: number;
  /** The header as written; several header rows are joined by a space. */
  readonly header: string;
  /** The header without its unit. */
  readonly name: string;
  /** The unit as understood ('mA', '°C'); empty where none was found. */
  readonly unit: string;
  readonly quantity: ColumnQuantity;
  /** Of a column of time. */
  readonly form?: TimeForm;
  readonly scale: number;
  readonly offset: number;
  /** Of a probe. */
  readonly place?: ProbePlace;
  /** How sure the guess is, 0 to 1; 1 where the log is of our own making or a person said so. */
  readonly confidence: number;
  /** The first few cells that are not empty. */
  readonly samples: readonly string[];
  /** Why it was taken so, a sentence. */
  readonly why: string;
}

/** How the file is written. Rows are counted as lines of the file, from 1. */
export interface LogDialect {
  readonly encoding: Encoding;
  readonly delimiter: string;
  readonly decimal: '.' | ',';
  readonly dateOrder: DateOrder;
  /** The first line below the header. */
  readonly firstRow: number;
  /** The header rows as cells, to know them again further down. */
  readonly header: readonly (readonly string[])[];
  /** Cells in a full row. */
  readonly width: number;
  /** Time from one sample to the next [s], where time is a sample number or there is none; null where nobody said. */
  readonly interval: number | null;
}

/** What a file is taken for: plain data, which a person may correct before reading. */
export interface LogMapping {
  readonly dialect: LogDialect;
  readonly columns: readonly LogColumn[];
  /** Lines above the header, as written. */
  readonly preamble: readonly string[];
  /** True where the header is that of our own logs. */
  readonly own: boolean;
  /** What was decided, and what is ambiguous, in sentences. */
  readonly notes: readonly string[];
}

/** Why a cell holds no reading. */
export type GapKind = 'empty' | 'missing' | 'dashes' | 'overload' | 'not a number' | 'error';

/** What is wrong with a row. */
export type RowFaultKind =
  | 'header again'
  | 'not readings'
  | 'no time'
  | 'too many cells'
  | 'too few cells'
  | 'cut short'
  | 'cell not understood';

/** A row with something wrong in it. */
export interface RowFault {
  /** Line of the file, from 1. */
  readonly row: number;
  readonly kind: RowFaultKind;
  /** What is wrong, a sentence. */
  readonly what: string;
  /** The row as written. */
  readonly text: string;
  /** True where the rest of the row was read all the same. */
  readonly kept: boolean;
}

/** Every row of the file is in exactly one of `head`, `blank`, `read`, `remarks` and `setAside`. */
export interface ReadCounts {
  /** Rows of the file; a row whose remark holds line ends is one row. */
  readonly rows: number;
  /** Preamble, header and units. */
  readonly head: number;
  readonly blank: number;
  readonly read: number;
  /** Rows with a time and a remark, and no cell for a reading filled. */
  readonly remarks: number;
  /** Rows that were not read; each has a fault. */
  readonly setAside: number;
  /** Faults by kind, those of rows that were kept among them. */
  readonly faults: Readonly<Record<RowFaultKind, number>>;
  /** Cells without a reading, by kind, in the columns that were read. */
  readonly gaps: Readonly<Record<GapKind, number>>;
  /** Rows with the very time of the row before. */
  readonly repeatedTimes: number;
  /** Rows that stood after a later one. */
  readonly outOfOrder: number;
  /** Lines looked at: each once, and again where a quote was left open. */
  readonly looked: number;
}

/** A log as read, with everything that was not. */
export interface ReadLog {
  readonly log: BenchLog;
  /** The first faults in full; `counts.faults` counts them all. */
  readonly faults: readonly RowFault[];
  readonly counts: ReadCounts;
  readonly notes: readonly string[];
}

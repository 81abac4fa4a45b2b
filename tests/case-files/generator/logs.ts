import { type BenchRow, type BenchSpec, runBench } from './bench.ts';
import { polisher, sander, worklight } from './cases.ts';
import { clockLog, plainLog, wideLog } from './write.ts';

/** A log that is kept: its file, the lead it is of, and how its instrument writes. */
export interface KeptLog {
  readonly file: string;
  readonly spec: BenchSpec;
  readonly write: (rows: readonly BenchRow[]) => Uint8Array;
}

const lateEvening = 23 * 3600 + 41 * 60 + 12;

/** The three case files' logs. */
export const keptLogs: readonly KeptLog[] = [
  { file: 'sander.csv', spec: sander, write: (rows) => plainLog(rows, '2026-03-12T09:31:00Z') },
  { file: 'polisher.csv', spec: polisher, write: (rows) => clockLog(rows, lateEvening) },
  { file: 'worklight.tsv', spec: worklight, write: wideLog },
];

/** Where they are kept. */
export const logFolder = new URL('../../../site/public/case-files/', import.meta.url);

/** A log whole, or its first `most` seconds. */
export const logOf = ({ spec, write }: KeptLog, most?: number): Uint8Array => write(runBench(spec, most));

import { within } from '../errors.ts';
import type { BenchLog } from './log.ts';

/** A log of which every so many rows was kept. */
export interface ThinLog {
  readonly log: BenchLog;
  /** Every how many rows one was kept; 1 where all were. */
  readonly every: number;
}

/** Keeps every n-th row of a log and its last, so that at most about `most` are left, each as it was read, and every remark. */
export function thinned(log: BenchLog, most: number): ThinLog {
  within('rows to keep', most, [2, Number.MAX_SAFE_INTEGER], '');
  const many = log.t.length;
  const every = Math.ceil(many / most);
  if (every <= 1) return { log, every: 1 };
  const rows = Array.from({ length: Math.ceil(many / every) }, (_, i) => i * every);
  if (rows.at(-1) !== many - 1) rows.push(many - 1);
  const pick = (column: Float64Array) => Float64Array.from(rows, (i) => column[i] as number);
  const { set, step, R, P } = log;
  const columns = Object.fromEntries(
    Object.entries({ set, step, R, P }).flatMap(([name, column]) => (column ? [[name, pick(column)]] : [])),
  );
  return {
    every,
    log: {
      ...log,
      ...columns,
      ...{ t: pick(log.t), I: pick(log.I), U: pick(log.U), ambient: log.ambient && pick(log.ambient) },
      probes: log.probes.map((probe) => ({ ...probe, T: pick(probe.T) })),
    },
  };
}

/** Where a thermometer of a log sits. */
export type ProbePlace = 'surface' | 'outside' | 'plug' | 'other';

/** One thermometer of a log. */
export interface Probe {
  readonly name: string;
  readonly place: ProbePlace;
  /** Its readings [K], one a row; NaN where it read nothing. */
  readonly T: Float64Array;
}

/** What happened at a moment of a log, in the words of whoever wrote it down. */
export interface Remark {
  /** Elapsed time [s]. */
  readonly t: number;
  readonly text: string;
}

/** Readings of a bench run, in order of time. Columns are as long as `t`; NaN stands where nothing was read. */
export interface BenchLog {
  /** Elapsed time since the first row [s], rising. */
  readonly t: Float64Array;
  /** How long the run had gone on before the first row, where the log's own count of time says so [s]. */
  readonly before?: number;
  /** Current [A] and volts across the lead [V]. */
  readonly I: Float64Array;
  readonly U: Float64Array;
  readonly probes: readonly Probe[];
  /** Air beside the lead [K], the mean of its thermometers; null where there was none. */
  readonly ambient: Float64Array | null;
  /** Where the log has them: current set [A], number of the setting, and what an ohmmeter [Ω] and a wattmeter [W] read. */
  readonly set?: Float64Array;
  readonly step?: Float64Array;
  readonly R?: Float64Array;
  readonly P?: Float64Array;
  readonly remarks: readonly Remark[];
  /** When the first row was taken, ISO 8601; null where the log tells no date. */
  readonly startedAt: string | null;
  /** True where the log says of itself that it was simulated. */
  readonly simulated: boolean;
}

/** A point of the standard at a current [A], with what is written at it. */
export interface HoldMark {
  readonly I: number;
  readonly text: string;
}

/** One device on the line: up to `hold` it must hold, from `acts` on it must have opened, between them it may do either. */
export interface HoldRow {
  readonly id: string;
  readonly name: string;
  /** Infinite for a device that no current opens. */
  readonly hold: number;
  /** Null where no current was found at which it must open. */
  readonly acts: number | null;
  readonly marks: readonly HoldMark[];
}

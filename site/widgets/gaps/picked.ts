/** A cell of the table that is shown. */
export interface Picked {
  readonly size: number;
  /** Which of the ask's devices. */
  readonly column: number;
}

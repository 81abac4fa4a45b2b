/** One of several things to choose. */
export interface Option<T extends string | number> {
  value: T;
  label: string;
  /** A few words more, below or after the label. */
  note?: string;
}

/** One metal of a finder: how probable it is, and the areas it would have. */
export interface FinderRow {
  readonly id: string;
  readonly name: string;
  /** 0 to 1. */
  readonly probability: number;
  /** That probability in words. */
  readonly told: string;
  /** Metal area with its interval [mm²]; null where nothing tells of it. */
  readonly area: { readonly low: number; readonly median: number; readonly high: number } | null;
}

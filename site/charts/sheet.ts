/** One cell of a sheet's title block. */
export interface Cell {
  name: string;
  value: string;
  /** 'yours' for what the reader wrote or sketched. */
  voice?: 'yours';
}

/** The table that says the same as a picture; columns carry their units, the first column heads each row. */
export interface TableTwin {
  caption: string;
  columns: readonly string[];
  rows: readonly (readonly (string | number)[])[];
}

/** Heat over conductor temperature: `T` in °C, rising, and W/m, all of one length. */
export interface LedgerLines {
  T: ArrayLike<number>;
  made: ArrayLike<number>;
  lost: ArrayLike<number>;
}

/** Heat made at another current, over the same temperatures, and where it crosses the heat lost. */
export interface OtherCurrent {
  id: string;
  /** '5 A'. */
  name: string;
  made: ArrayLike<number>;
  crossing: Point | null;
}

/** A place in the picture: conductor temperature [°C], heat [W/m]. */
export interface Point {
  T: number;
  heat: number;
}

/** Where the heat of one conductor temperature goes [W/m]; `ways` is null where the law cannot tell air and radiation apart. */
export interface Watts {
  made: number;
  lost: number;
  ways: { air: number; radiated: number } | null;
}

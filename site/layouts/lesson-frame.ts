/** A way to another page. */
export interface Way {
  label: string;
  href: string;
}

/** A line of the rail: the lessons of a unit, or the steps of one. */
export interface RailEntry extends Way {
  number: string;
  current?: boolean;
}

import type { Measured } from '../measured.ts';

/** A value and its uncertainty as they are written. */
export interface Written {
  readonly value: number;
  readonly u: number;
  /** Decimals both are written with; below zero where the last figure is tens or more. */
  readonly decimals: number;
}

/** Power of ten of the last of `figures` significant figures of `u` > 0, once it is rounded to so many. */
function lastPlace(u: number, figures: number): number {
  return Number(u.toExponential(figures - 1).split('e')[1]) - (figures - 1);
}

const toPlace = (x: number, place: number): number =>
  place < 0 ? Number(x.toFixed(Math.min(100, -place))) : Math.round(x / 10 ** place) * 10 ** place;

/**
 * A result as it is written: `u` to `figures` significant figures, the value to the same place (JCGM 100, 7.2.6). Without
 * an uncertainty nothing says where to stop, and `decimals` is null.
 */
export function written(
  { value, u }: Measured,
  figures = 2,
): Written | (Omit<Written, 'decimals'> & { decimals: null }) {
  if (!(u > 0)) return { value, u, decimals: null };
  const place = lastPlace(u, figures);
  return { value: toPlace(value, place), u: toPlace(u, place), decimals: 0 - place };
}

/** Half a unit of the last of `figures` significant figures of `u`: the numerical tolerance δ of JCGM 101, 7.9.2; 0 where u is 0. */
export const toleranceOf = (u: number, figures = 2): number => (u > 0 ? 0.5 * 10 ** lastPlace(u, figures) : 0);

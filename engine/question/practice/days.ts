const dayLength = 86_400_000; // ms

/** The number of a day written '2031-05-04', counted from 1970-01-01; undefined when it is no day. */
export function dayNumber(date: string): number | undefined {
  const at = /^\d{4}-\d\d-\d\d$/.test(date) ? Date.parse(`${date}T00:00:00Z`) : Number.NaN;
  return Number.isNaN(at) || dateOf(at / dayLength) !== date ? undefined : at / dayLength;
}

/** The day of a number, written '2031-05-04'. */
export const dateOf = (day: number): string => new Date(day * dayLength).toISOString().slice(0, 10);

import { dayNumber } from '#engine';

/** A date as it is written in a notebook: '2031-05-04', in the reader's own calendar. */
export function dateHere(at = new Date()): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** The number of this day in the reader's own calendar. */
export const today = (): number => dayNumber(dateHere()) ?? 0;

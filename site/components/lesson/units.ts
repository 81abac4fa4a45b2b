/** Names of the course's units by their number. */
export const units: Readonly<Record<number, string>> = {
  1: 'Where the heat comes from',
  2: 'How hot, how soon',
  3: 'Choosing the size',
};

/** A unit as the page says it: '2 How hot, how soon'. */
export function unitName(unit: number): string {
  return `${unit} ${units[unit] ?? ''}`.trim();
}

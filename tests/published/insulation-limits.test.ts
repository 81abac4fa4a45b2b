// Temperature limits of insulations, and the touch limit. A range in print is a range in the engine.
import { expect } from 'vitest';
import { celsius, type Limit, type Plastic, plastics, touchLimit } from '#engine';
import { checkTable, type Row, text } from './table.ts';

function limitOf(row: Row): Limit {
  const { limits }: Plastic = plastics[text(row, 'plastic') as keyof typeof plastics];
  const found = limits.find(({ kind }) => kind === text(row, 'kind'));
  if (!found) throw new Error(`${row.id}: the engine has no such limit`);
  return found;
}

/** The lower end, once the upper end is seen to be the printed one. */
function lowEnd(row: Row, { low, high }: Limit): number {
  const [printedLow, printedHigh = printedLow] = row.published.split(' to ').map(Number);
  expect(celsius(high)).toBeCloseTo(printedHigh, 9);
  expect(celsius(low)).toBeCloseTo(printedLow, 9);
  return printedLow;
}

checkTable('insulation-limits.csv', {
  limit: (row) => lowEnd(row, limitOf(row)),
  'touch limit': (row) => lowEnd(row, touchLimit),
});

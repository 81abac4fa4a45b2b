// Cord and wire constructions: walls as transcribed, and the overall size that follows from them inside the standard's limits.
import { expect } from 'vitest';
import { type Cable, cableOf, construction } from '#engine';
import { checkTable, num, type Row, text } from './table.ts';

/** The row's cable; its walls and limits in the engine must be those of the print. */
function cable(row: Row): Cable {
  const [table, cores, size] = [text(row, 'table'), num(row, 'cores'), num(row, 'size')];
  const gauge = row.inputs.gauge === 'yes';
  expect(construction(table, cores, size, gauge)).toMatchObject({
    insulation_mm: num(row, 'insulation_mm'),
    sheath_mm: num(row, 'sheath_mm'),
    overall_mm: row.published.split(' to ').map(Number),
  });
  return cableOf({ table, cores, ...(gauge ? { size_AWG: size } : { size_mm2: size }) });
}

checkTable('constructions.csv', {
  'overall diameter': (row) => 2e3 * cable(row).outerRadius,
  'overall width': (row) => {
    const { halfRun, halfHeight } = cable(row);
    return 2e3 * (halfRun + halfHeight) + 2 * num(row, 'sheath_mm');
  },
});

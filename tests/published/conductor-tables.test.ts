// IEC 60228 (maxima of resistance at 20 °C) with VDE 0295 (usual make-up), 0.5 to 35 mm², and lists of R1 + R2.
import { conductorOf, type StandardSize, standardSize, tableResistance } from '#engine';
import { checkTable, num, type Row } from './table.ts';

function size(row: Row): StandardSize {
  const found = standardSize(num(row, 'area_mm2'));
  if (!found) throw new Error(`${row.id}: no such size`);
  return found;
}

function greatest(row: Row, conductorClass: 1 | 2 | 5 | 6, column = 'area_mm2'): number {
  return tableResistance(num(row, column), conductorClass)?.R20_ohmPerKm ?? Number.NaN;
}

const conductor = (row: Row) => conductorOf({ size_mm2: num(row, 'area_mm2'), class: 5 }, 'conductor');

function wires(row: Row): number {
  const [count, diameter_mm] = size(row).class5;
  return 1e6 * conductorOf({ strands: { count, diameter_mm } }, 'conductor').area;
}

checkTable('conductor-tables.csv', {
  'classes 1 and 2, plain copper': (row) => greatest(row, 1) + (greatest(row, 2) - size(row).solid),
  'classes 1 and 2, metal-coated copper': (row) => size(row).solidTinned,
  aluminium: (row) => size(row).solidAluminium ?? Number.NaN,
  'class 5, plain copper': (row) => greatest(row, 5),
  'class 5, metal-coated copper': (row) => size(row).flexibleTinned,
  'class 6, plain copper': (row) => greatest(row, 6),
  'class 5, number of wires': (row) => size(row).class5[0],
  'class 5, wire diameter': (row) => size(row).class5[1],
  'class 6, number of wires': (row) => size(row).class6[0],
  'class 6, wire diameter': (row) => size(row).class6[1],
  'class 5, area of the wires': wires,
  'class 5, wire against its greatest diameter': (row) => size(row).class5[1],
  'class 6, wire against its greatest diameter': (row) => size(row).class6[1],
  'class 5, greatest conductor diameter': (row) => size(row).maxDiameter_mm,
  'class 5, strand bundle against the greatest diameter': (row) => 2e3 * conductor(row).rc,
  'line and protective conductor together': (row) => greatest(row, 1) + greatest(row, 1, 'second_mm2'),
});

// IEC 60287-2-1, cables in free air: the constants, a constructed check of the standard's own iteration, and how near the law
// comes to printed ratings and to still air from first principles.
import { type Arrangement, arrangements, kelvin, stillAir } from '#engine';
import { caseOf, ratingAt_degC } from './cases.ts';
import { checkTable, num, type Row, text } from './table.ts';

function constant(row: Row, key: 'Z' | 'E' | 'g'): number {
  const arrangement: Arrangement = arrangements[text(row, 'arrangement') as keyof typeof arrangements];
  return arrangement[key];
}

/** One PVC-covered class 5 wire, 70 °C in 30 °C, by the law for a cable clear of the wall. */
function rating(row: Row): number {
  const bundle_mm = num(row, 'dc_mm');
  const thickness_mm = (num(row, 'De_mm') - bundle_mm) / 2;
  const conductor = { size_mm2: num(row, 'size_mm2'), class: 5, bundle_mm };
  const cable = { layout: 'single', conductor, insulation: { material: 'pvc70', thickness_mm } };
  return ratingAt_degC(caseOf(cable, 30, { kind: 'clipped', arrangement: 'single' }), 70);
}

function shed(row: Row): number {
  const diameter = num(row, 'De_mm') / 1e3;
  const surface = { diameter, perimeter: Math.PI * diameter, emissivity: 0.9, Ta: kelvin(30) };
  return stillAir(surface, 'kuehnGoldstein')(kelvin(30) + num(row, 'rise_K'));
}

checkTable('iec60287-air.csv', {
  'constant Z': (row) => constant(row, 'Z'),
  'constant E': (row) => constant(row, 'E'),
  'constant g': (row) => constant(row, 'g'),
  'rating, 70 °C in 30 °C': rating,
  'heat shed in still air, emissivity 0.9': shed,
});

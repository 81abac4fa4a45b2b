// Copper-clad aluminium and steel against ASTM B566, B227, B869 and data sheets. The standards give greatest resistivities;
// two metals in parallel sit 2 to 4 % below them.
import { conductorOf, foot, inch, type Metal, metals } from '#engine';
import { checkTable, num, type Row, text } from './table.ts';

const metalOf = (row: Row): Metal => metals[text(row, 'metal') as keyof typeof metals];
const { copper } = metals;
const iacs = (metal: Metal) => (100 * copper.rho20.value) / metal.rho20.value;
const round = (diameter: number) => (Math.PI / 4) * diameter ** 2;

function strandedMass(row: Row): number {
  const strands = { count: num(row, 'count'), diameter_mm: num(row, 'diameter_mm') };
  const { area, metal } = conductorOf({ metal: text(row, 'metal'), strands }, 'conductor');
  return 1e3 * area * metal.density.value;
}

checkTable('clad-wire.csv', {
  resistivity: (row) => 1e8 * metalOf(row).rho20.value,
  conductivity: (row) => iacs(metalOf(row)),
  density: (row) => metalOf(row).density.value,
  'copper by mass': (row) => (100 * num(row, 'share') * copper.density.value) / metalOf(row).density.value,
  'resistance over copper of the same size': (row) => metalOf(row).rho20.value / copper.rho20.value,
  'mass of a 2 mm wire': (row) => 1e3 * round(2e-3) * metalOf(row).density.value,
  'heat capacity by mass': (row) => metalOf(row).heatCapacity.value / metalOf(row).density.value,
  'resistance of a 0.0641 in wire': (row) => (1000 * foot * metalOf(row).rho20.value) / round(0.0641 * inch),
  'mass of a stranded core': strandedMass,
});

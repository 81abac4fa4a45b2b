// What a conductor stands in a short circuit, and what devices let through: k²S², least areas of solved problems, the
// correction of IEC 60949 for heat lost, melting energies of gG fuses, energy class 3 of breakers.
import {
  classThreeEnergy,
  kOf,
  leastArea,
  meltingEnergy,
  metals,
  nonAdiabaticCurrent,
  nonAdiabaticFactor,
  type Plastic,
  type PlasticId,
  plastics,
  squareMetres,
  usualContacts,
  withstand,
} from '#engine';
import { checkTable, num, type Row, text } from './table.ts';

const { copper } = metals;
const plasticOf = (row: Row): Plastic => plastics[text(row, 'plastic') as PlasticId];
const area = (row: Row) => squareMetres(num(row, 'S_mm2'));

function k(row: Row): number {
  const found = kOf(copper, plasticOf(row), area(row));
  if (!found) throw new Error(`${row.id}: no k`);
  return found.k;
}

function fuseAtOneWatt(row: Row): number {
  const fuse = usualContacts.find(({ kind }) => kind === 'fuse');
  return num(row, 'In_A') === 13 && fuse ? 1e3 * fuse.poor : Number.NaN;
}

const energy = (row: Row) =>
  classThreeEnergy(text(row, 'family') as 'B' | 'C', num(row, 'In_A'), num(row, 'Icn_A'))?.value ?? Number.NaN;

checkTable('withstand.csv', {
  'k²S² of copper in PVC': (row) => withstand(k(row), area(row)),
  'k²S² of copper in rubber': (row) => withstand(k(row), area(row)),
  'least area': (row) => 1e6 * leastArea(1e6 * num(row, 'k'), num(row, 'I_A'), num(row, 't_s')).value,
  'least pre-arcing I²t of gG': (row) => meltingEnergy(num(row, 'In_A'))?.least.value ?? Number.NaN,
  'greatest pre-arcing I²t of gG': (row) => meltingEnergy(num(row, 'In_A'))?.greatest.value ?? Number.NaN,
  'let-through of energy class 3': energy,
  'non-adiabatic factor': (row) => nonAdiabaticFactor(copper, plasticOf(row), area(row), num(row, 't_s')),
  'adiabatic current': (row) => (k(row) * area(row)) / Math.sqrt(num(row, 't_s')),
  'non-adiabatic current': (row) => nonAdiabaticCurrent(k(row), copper, plasticOf(row), area(row), num(row, 't_s')),
  'resistance of a fuse that loses 1 W': fuseAtOneWatt,
});

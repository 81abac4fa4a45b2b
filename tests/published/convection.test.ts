// Convection from a horizontal cylinder: the correlations at printed inputs, and worked examples with the engine's own air.
import {
  draught,
  film,
  kelvin,
  nusseltChurchillBernstein,
  nusseltChurchillChu,
  nusseltKuehnGoldstein,
  stillAir,
} from '#engine';
import { checkTable, num, type Row } from './table.ts';

const Ts = (row: Row) => kelvin(num(row, 'surface_degC'));
const Ta = (row: Row) => kelvin(num(row, 'ambient_degC'));

function shedding(row: Row, emissivity: number) {
  const diameter = num(row, 'D_m');
  return { diameter, perimeter: Math.PI * diameter, emissivity, Ta: Ta(row) };
}

/** Heat shed by the row's length [W]. */
function heat(row: Row, correlation: 'kuehnGoldstein' | 'churchillChu', emissivity = 0): number {
  return num(row, 'length_m') * stillAir(shedding(row, emissivity), correlation)(Ts(row));
}

const total = (row: Row) => heat(row, 'churchillChu', num(row, 'emissivity'));

checkTable('convection.csv', {
  'Nusselt number, Kuehn and Goldstein': (row) => nusseltKuehnGoldstein(num(row, 'Ra'), num(row, 'Pr')),
  'Nusselt number, Churchill and Chu': (row) => nusseltChurchillChu(num(row, 'Ra'), num(row, 'Pr')),
  'Nusselt number, Churchill and Bernstein': (row) => nusseltChurchillBernstein(num(row, 'Re'), num(row, 'Pr')),
  'Rayleigh number': (row) => film(num(row, 'D_m'), Ts(row), Ta(row)).Ra,
  'convection, Churchill and Chu': (row) => heat(row, 'churchillChu'),
  'convection, Kuehn and Goldstein': (row) => heat(row, 'kuehnGoldstein') / 1e3,
  radiation: (row) => total(row) - heat(row, 'churchillChu'),
  'convection and radiation': total,
  'convection in a draught': (row) =>
    num(row, 'length_m') * draught(shedding(row, 0), num(row, 'speed_mPerS'), 'kuehnGoldstein')(Ts(row)),
});

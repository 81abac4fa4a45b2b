// Correction factors, voltage drop per ampere and metre, and temperature rise found from resistance.
import { kelvin, type Metal, metals, resistanceRatio, standardSize } from '#engine';
import { checkTable, num, type Row, text } from './table.ts';

const metalOf = (row: Row): Metal => metals[text(row, 'metal') as keyof typeof metals];

function ratio(metal: Metal, T_degC: number): number {
  return resistanceRatio(metal.alpha20.value, metal.beta20.value, kelvin(T_degC));
}

/** Temperature [°C] at which the metal's resistance is `times` that at `t1` [°C], by halving. */
function temperatureBehind(metal: Metal, t1: number, times: number): number {
  let [low, high] = [-273, 1000];
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (ratio(metal, middle) < times * ratio(metal, t1)) low = middle;
    else high = middle;
  }
  return low;
}

function rise(row: Row): number {
  const times = num(row, 'R2_ohm') / num(row, 'R1_ohm');
  return temperatureBehind(metalOf(row), num(row, 't1_degC'), times) - num(row, 't2_degC');
}

/** `conductors` times the table maximum at the row's temperature [mV/(A·m) = Ω/km]. */
function drop(row: Row, kind: 'solid' | 'flexibleTinned', conductors: number): number {
  const size = standardSize(num(row, 'area_mm2'));
  return conductors * (size?.[kind] ?? Number.NaN) * ratio(metals.copper, num(row, 'T_degC'));
}

checkTable('resistance-at-temperature.csv', {
  'correction to 20 °C': (row) => 1 / ratio(metalOf(row), num(row, 'T_degC')),
  'multiplier from 20 °C': (row) => ratio(metalOf(row), num(row, 'T_degC')),
  'multiplier from 60 °C': (row) => ratio(metalOf(row), num(row, 'T_degC')) / ratio(metalOf(row), 60),
  'voltage drop, single phase, coated class 5': (row) => drop(row, 'flexibleTinned', 2),
  'voltage drop, three phase, coated class 5': (row) => drop(row, 'flexibleTinned', Math.sqrt(3)),
  'voltage drop, single phase, plain solid': (row) => drop(row, 'solid', 2),
  'temperature of no resistance': (row) => -temperatureBehind(metalOf(row), 20, 0),
  'rise by resistance': rise,
});

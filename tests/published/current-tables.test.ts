// Currents of tables, caps and rules as the engine quotes them, single values only; and the share of Iz that an acting current
// leaves a device, found by trying.
import {
  type AmpacityColumn,
  ampacity,
  ampacityMetal,
  conductorOf,
  coordination,
  cordRatings,
  type DropTable,
  dropPerAmpereMetre,
  flatTwinRatings,
  foot,
  kelvin,
  type MethodLetter,
  methodRatings,
  plugRow,
  printedDrop,
  type SizeSystem,
  smallConductorCap,
  type TableRating,
} from '#engine';
import type { DeviceFamily } from '#engine/protection/device.ts';
import { device } from '#engine/protection/devices.ts';
import { checkTable, num, type Row, text } from './table.ts';

const systemOf = (row: Row): SizeSystem => (text(row, 'system') === 'AWG' ? 'AWG' : 'mm2');

const currentOf = (row: Row, ratings: readonly TableRating[]): number =>
  ratings.find(({ size }) => size.size === num(row, 'size'))?.I ?? Number.NaN;

function method(row: Row): number {
  const metal = text(row, 'metal') === 'aluminium' ? 'aluminium' : 'copper';
  return currentOf(row, methodRatings(text(row, 'method') as MethodLetter, metal));
}

const columnOf = (row: Row) => ampacityMetal(text(row, 'metal')) ?? 'copper';

/** Printed drop in V/(A·m). */
function drop(row: Row): number {
  const of = { system: systemOf(row), size: num(row, 'size') };
  return printedDrop(text(row, 'table') as DropTable, of)?.value ?? Number.NaN;
}

/** Ohms of 1000 ft from volts per ampere and metre, out and back. */
const perThousandFeet = (perAmpereMetre: number) => (perAmpereMetre / 2) * 1000 * foot;

/** Stranded copper of a gauge at 75 °C. */
function byResistivity(row: Row): number {
  const conductor = conductorOf({ size_AWG: num(row, 'size'), class: 2 }, 'conductor');
  return perThousandFeet(dropPerAmpereMetre(conductor, kelvin(75)));
}

/** The greatest In/Iz at which coordination is met, by halving; Iz is moved and the device stays. */
function share(row: Row): number {
  const of = device(text(row, 'family') as DeviceFamily, num(row, 'In_A'));
  const model = flatTwinRatings()[0];
  if (!of || !model) throw new Error(`${row.id}: no such device`);
  const met = (Iz: number) =>
    coordination({ Ib: 0, device: of, table: { ...model, I: Iz }, factors: [] }).outcome === 'met';
  let [low, high] = [of.In / 2, of.In * 4];
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (met(middle)) high = middle;
    else low = middle;
  }
  return of.In / high;
}

checkTable('current-tables.csv', {
  'flat twin and earth on a surface': (row) => currentOf(row, flatTwinRatings()),
  'fixed cable, two loaded cores': method,
  'cord, two loaded cores': (row) => currentOf(row, cordRatings(systemOf(row))),
  'ampacity in raceway': (row) =>
    ampacity(num(row, 'size'), columnOf(row), num(row, 'T_degC') as AmpacityColumn)?.value ?? Number.NaN,
  'greatest device of a small conductor': (row) =>
    smallConductorCap(num(row, 'size'), columnOf(row))?.value ?? Number.NaN,
  'greatest plug fuse of a cord': (row) => plugRow(num(row, 'size'))?.mostFuse ?? Number.NaN,
  'rated current of plug and cord': (row) => plugRow(num(row, 'size'))?.rated ?? Number.NaN,
  'voltage drop as printed': (row) => 1e3 * drop(row),
  'ohms of one conductor in 1000 ft at 75 °C': (row) => perThousandFeet(drop(row)),
  'ohms of one conductor in 1000 ft, by its resistivity': byResistivity,
  'greatest In over Iz that I2 allows': share,
});

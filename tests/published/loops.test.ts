// Fault loops: greatest impedances as British tables print them, disconnection times, solved loops, and the longest run of the
// conventional method. Breakers go the whole way: their gates, the current that surely opens them in time, then the ohms.
import {
  actingCurrent,
  conventionalRho,
  disconnectionTime,
  greatestLoop,
  kelvin,
  longestRun,
  loopOf,
  regulationCurrent,
  squareMetres,
} from '#engine';
import { slowest } from '#engine/protection/band.ts';
import type { DeviceFamily } from '#engine/protection/device.ts';
import { device } from '#engine/protection/devices.ts';
import { checkTable, num, type Row, text } from './table.ts';

/** Current that the rule quotes for the row's device and time. */
function quoted(row: Row): number {
  const t = num(row, 't_s') === 5 ? 5 : 0.4;
  return regulationCurrent(text(row, 'family'), num(row, 'In_A'), t)?.value ?? Number.NaN;
}

/** Least current that surely opens the row's device in time, by the gates of its standard. */
function byGates(row: Row): number {
  const of = device(text(row, 'family') as DeviceFamily, num(row, 'In_A'));
  if (!of) throw new Error(`${row.id}: no such device`);
  return actingCurrent((I) => slowest(of, I, 'guaranteed'), num(row, 't_s')) ?? Number.NaN;
}

/** A run told by its milliohms a metre; warm by a multiplier, which is 1 + α20 (θ − 20). */
function run(row: Row, multiplier: number) {
  const R20 = 1e-3 * num(row, 'R_mohmPerM') * num(row, 'length_m');
  const part = { name: 'run', R20, alpha20: (multiplier - 1) / 50 };
  return loopOf({ U0: 230, Ze: Number(row.inputs.Ze_ohm || 0), parts: [part], T: kelvin(70) });
}

function time(row: Row): number {
  const earthing = text(row, 'earthing') === 'TT' ? 'TT' : 'TN';
  return disconnectionTime(num(row, 'U0_V'), earthing, text(row, 'circuit') === 'final')?.t ?? Number.NaN;
}

function longest(row: Row): number {
  const S = num(row, 'S_mm2');
  const metal = squareMetres(S === 50 ? 47.5 : S);
  return longestRun({ U0: 230, S: metal, ratio: 1, rho: conventionalRho, share: 0.8, Ia: 1.2 * num(row, 'Im_A') });
}

checkTable('loops.csv', {
  'greatest loop by British rules, without Cmin': (row) => greatestLoop(230, quoted(row), 1),
  'greatest loop by British rules': (row) => greatestLoop(230, quoted(row)),
  'greatest loop by the gates, without Cmin': (row) => greatestLoop(230, byGates(row), 1),
  'greatest loop of a breaker': (row) => greatestLoop(230, byGates(row)),
  'greatest loop of a breaker current': (row) => greatestLoop(230, num(row, 'Ia_A')),
  'longest disconnection time': time,
  'warm loop of line and protective conductor': (row) => run(row, num(row, 'multiplier')).Zs,
  'cold resistance of a run': (row) => run(row, 1).cold,
  'fault current': (row) => loopOf({ U0: num(row, 'U0_V'), Ze: num(row, 'Zs_ohm'), parts: [], T: kelvin(70) }).greatest,
  'longest run by the conventional method': longest,
});

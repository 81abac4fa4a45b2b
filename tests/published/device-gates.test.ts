// Gates of fuses and breakers, read off the bands: a current from which, a time by which. BS 1362, IEC 60269, IEC 60127-2,
// IEC 60898-1, UL 248, UL 489, and what BS 7671 lets one know of BS 3036.
import { fastest, slowest } from '#engine/protection/band.ts';
import type { Device, DeviceFamily } from '#engine/protection/device.ts';
import { device } from '#engine/protection/devices.ts';
import { checkTable, num, type Row, text } from './table.ts';

function deviceIn(row: Row): Device {
  const found = device(text(row, 'family') as DeviceFamily, num(row, 'rating_A'));
  if (!found) throw new Error(`${row.id}: no such device`);
  return found;
}

/** The current at which `past` turns true, rising from a thousandth of the rating to a hundred times it [A]. */
function turn(of: Device, past: (I: number) => boolean): number {
  let [low, high] = [of.In / 1000, of.In * 100];
  while (high / low > 1 + 1e-9) {
    const middle = Math.sqrt(low * high);
    if (past(middle)) high = middle;
    else low = middle;
  }
  return high;
}

const slow = (of: Device, I: number) => slowest(of, I, 'guaranteed');
const fast = (of: Device, I: number) => fastest(of, I, 'guaranteed');
const actsFrom = (of: Device, t: number) => turn(of, (I) => slow(of, I) <= t * (1 + 1e-9));
const holdsTo = (of: Device, t: number) => turn(of, (I) => fast(of, I) < t * (1 - 1e-9));
const holdsForEverTo = (of: Device) => turn(of, (I) => fast(of, I) < Number.POSITIVE_INFINITY);
/** As if the multiple were one figure: 2.75 · 0.05 is a bit off in binary. */
const times = (row: Row) => +(num(row, 'at') * num(row, 'rating_A')).toPrecision(12);

checkTable('device-gates.csv', {
  'holds for ever up to': (row) => holdsForEverTo(deviceIn(row)),
  'holds for ever up to, times the rating': (row) => holdsForEverTo(deviceIn(row)) / num(row, 'rating_A'),
  'holds the time up to': (row) => holdsTo(deviceIn(row), num(row, 'at')),
  'acts by the time from': (row) => actsFrom(deviceIn(row), num(row, 'at')),
  'acts by the time from, times the rating': (row) => actsFrom(deviceIn(row), num(row, 'at')) / num(row, 'rating_A'),
  'by at': (row) => slow(deviceIn(row), num(row, 'at')),
  'by at times the rating': (row) => slow(deviceIn(row), times(row)),
  'by at if straight': (row) => slowest(deviceIn(row), num(row, 'at'), 'assumed') as number,
  'not before at': (row) => fast(deviceIn(row), num(row, 'at')),
  'not before at times the rating': (row) => fast(deviceIn(row), times(row)),
  'middle of the band at': (row) => {
    const [of, I] = [deviceIn(row), num(row, 'at')];
    return Math.sqrt(slow(of, I) * fast(of, I));
  },
  'least I2t in 10 ms': (row) => holdsTo(deviceIn(row), 0.01) ** 2 * 0.01,
  'loop impedance that acts by the time': (row) => 230 / actsFrom(deviceIn(row), num(row, 'at')),
});

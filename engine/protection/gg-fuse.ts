import type { Device, Gate } from './device.ts';
import { gatesOf, hour, memory, type PrintedGate, seen } from './gates.ts';

/** Gates of IEC 60269 in ampere: not before 10 s, by 5 s, not before 0.1 s, by 0.1 s. */
type GateRow = readonly [notBefore10: number, by5: number, notBefore01: number, by01: number];

// IEC 60269-1 and -2. The by-5-s column is seen for 6 to 100 A and 2 A; see `confidenceOf`
const rows: Record<number, GateRow | null> = {
  2: [3.7, 9.2, 6, 23],
  4: [7.8, 18.5, 14, 47],
  6: [11, 28, 26, 72],
  8: null, // gates known too weakly to rest on
  10: [22, 46.5, 58, 111],
  12: null,
  16: [33, 65, 85, 150],
  20: [42, 85, 110, 200],
  25: [52, 110, 150, 260],
  32: [75, 150, 200, 350],
  40: [95, 190, 260, 450],
  50: [125, 250, 350, 610],
  63: [160, 320, 450, 820],
  80: [215, 425, 610, 1100],
  100: [290, 580, 820, 1450],
  125: [355, 715, 1100, 1910],
};

/** Ratings [A]. */
export const gGRatings = Object.keys(rows).map(Number);

/** Least pre-arcing I²t at 10 ms [A²s], IEC 60269-1: seen in two editions. */
export const leastMelting: Readonly<Record<number, number>> = {
  16: 300,
  20: 500,
  25: 1000,
  32: 1800,
  40: 3000,
  50: 5000,
  63: 9000,
  80: 16_000,
  100: 27_000,
  125: 46_000,
};

const shortest = 0.01;

function conventional(In: number): { hold: PrintedGate; operate: PrintedGate } {
  const t = In > 63 ? 2 * hour : hour;
  if (In >= 16) return { hold: [1.25, t, memory], operate: [1.6, t, memory] };
  const how = In === 2 || In === 4 || In === 6 || In === 10 ? seen : memory;
  return { hold: [1.5, t, how], operate: [In > 4 ? 1.9 : 2.1, t, how] };
}

/**
 * A general-purpose fuse-link gG of IEC 60269, 2 to 125 A: its conventional currents, the four gates of the standard and, from
 * 16 A, the least heat that melts it in 10 ms. Gates of 8 and 12 A were not found.
 */
export function gGFuse(In: number): Device {
  const row = rows[In];
  const { hold, operate } = conventional(In);
  const fiveSeconds = In === 2 || (In >= 6 && In <= 100) ? seen : memory;
  const others = In === 2 ? seen : memory;
  const melting = leastMelting[In];
  const short: Gate[] =
    melting === undefined ? [] : [{ I: Math.sqrt(melting / shortest), t: shortest, confidence: seen }];
  const [notBefore10, by5, notBefore01, by01] = row ?? [0, 0, 0, 0];
  const slow: PrintedGate[] = row
    ? [
        [by5, 5, fiveSeconds],
        [by01, 0.1, others],
      ]
    : [];
  const fast: PrintedGate[] = row
    ? [
        [notBefore10, 10, others],
        [notBefore01, 0.1, others],
      ]
    : [];
  return {
    family: 'gG',
    kind: 'fuse',
    In,
    name: `${In}\u00A0A gG fuse`,
    hold: gatesOf(In, [hold])[0] as Gate,
    notBefore: [...gatesOf(1, fast), ...short],
    by: [...gatesOf(In, [operate]), ...gatesOf(1, slow)],
    agreed: true,
    I2: operate[0] * In,
    source: 'iec60269-1',
    where: In < 16 ? 'conventional currents and gates, with IEC 60269-2' : 'conventional currents and gates',
    silent: row
      ? `IEC 60269 has no operating time above ${by01} A, only the heat that melts the fuse.`
      : 'No gates of this rating were found, only its conventional currents.',
  };
}

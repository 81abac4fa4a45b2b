import type { Device, Gate } from './device.ts';
import { gatesOf, hour, memory, minute, seen } from './gates.ts';

/** Standard ratings of NFPA 70 240.6(A) up to 225 A [A]. */
export const ulBreakerRatings = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225,
] as const;

/** Minutes at 200 % up to a rating; the first row was seen. */
const at200: readonly (readonly [upTo: number, minutes: number])[] = [
  [30, 2],
  [50, 4],
  [100, 6],
  [150, 8],
  [225, 10],
];

/**
 * A moulded-case breaker of UL 489, calibrated at 25 °C: holds its rating, trips at 135 % within an hour (two above 50 A) and
 * at 200 % within 2 to 10 minutes. The standard names no least time above 100 %, and no level for the magnet.
 */
export function ulBreaker(In: number): Device {
  const [, minutes] = at200.find(([most]) => In <= most) as (typeof at200)[number];
  return {
    family: 'ul489',
    kind: 'breaker',
    In,
    name: `${In}\u00A0A breaker (UL 489)`,
    hold: gatesOf(In, [[1, hour, seen]])[0] as Gate,
    notBefore: [],
    by: gatesOf(In, [
      [1.35, In <= 50 ? hour : 2 * hour, In <= 50 ? seen : memory],
      [2, minutes * minute, In <= 30 ? seen : memory],
    ]),
    agreed: true,
    I2: 1.35 * In,
    source: 'ul489',
    where: 'calibration tests at 25 °C',
    silent:
      'UL 489 has no point above 200 %, where the maker’s curve begins. Its change with ambient was not found; the tests are at 25 °C.',
  };
}

import type { Device, Gate } from './device.ts';
import { gatesOf, hour, memory, minute, type PrintedGate, seen } from './gates.ts';

/** Ratings of household breakers that are tabled [A]. */
export const iecBreakerRatings = [6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63] as const;

/** Where the magnet may and must act, in times the rating, and by when it must have acted at the first, up to 32 A and above [s]. */
const magnets = { B: [3, 5, 45, 90], C: [5, 10, 15, 30], D: [10, 20, 4, 8] } as const;

/**
 * A circuit-breaker of IEC 60898-1 Table 7, type B, C or D, 6 to 63 A, from cold at 30 °C: holds 1.13 In for an hour, trips at
 * 1.45 In within one; at 2.55 In within one or two minutes but not in a second; the magnet between the type's two currents.
 */
export function iecBreaker(type: 'B' | 'C' | 'D', In: number): Device {
  const [may, must, small, large] = magnets[type];
  const big = In > 32;
  const fast: PrintedGate[] = [
    [2.55, 1, seen],
    [may, 0.1, seen],
  ];
  const slow: PrintedGate[] = [
    [1.45, hour, seen],
    [2.55, (big ? 2 : 1) * minute, seen],
    [may, big ? large : small, memory],
    [must, 0.1, seen],
  ];
  return {
    family: type,
    kind: 'breaker',
    In,
    name: `${In}\u00A0A type ${type} breaker`,
    hold: gatesOf(In, [[1.13, hour, seen]])[0] as Gate,
    notBefore: gatesOf(In, fast),
    by: gatesOf(In, slow),
    agreed: true,
    I2: 1.45 * In,
    source: 'iec60898-1',
    where: 'Table 7',
    silent:
      'Below 0.1 s the standard gives no time, only what the breaker lets through. Its change with ambient was not found; the table is for 30 °C.',
  };
}

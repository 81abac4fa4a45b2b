import type { Device } from './device.ts';
import { gatesOf, hour, type PrintedGate } from './gates.ts';

// currents that open it in 5 s and 0.4 s, from the greatest loop impedances printed for 230 V (230 V over the ohms)
const curve: Record<number, readonly PrintedGate[]> = {
  5: [
    [13, 5, 'computed'],
    [24, 0.4, 'computed'],
  ],
  15: [
    [43, 5, 'computed'],
    [90.2, 0.4, 'computed'],
  ],
  20: [
    [60.1, 5, 'computed'],
    [129.9, 0.4, 'computed'],
  ],
  30: [
    [87.1, 5, 'computed'],
    [211, 0.4, 'computed'],
  ],
  45: [[144.7, 5, 'computed']],
  60: [[205.4, 5, 'computed']],
};

/** Ratings that are tabled [A]. */
export const rewirableRatings = Object.keys(curve).map(Number);

/**
 * A semi-enclosed (rewirable) fuse of BS 3036, as far as published: two points of the curve that BS 7671 takes its loop
 * impedances from. Its fusing factor of 2 is known, the time that goes with it was not found, so 2 In is no gate here.
 */
export function rewirableFuse(In: number): Device {
  return {
    family: 'bs3036',
    kind: 'fuse',
    In,
    name: `${In}\u00A0A rewirable fuse`,
    hold: { I: In, t: hour, confidence: 'our choice' },
    notBefore: [],
    by: gatesOf(1, curve[In] as readonly PrintedGate[]),
    agreed: false,
    I2: 2 * In,
    source: 'bs7671',
    where: 'Tables 41.2 and 41.4 at 230 V, and 433.1.202',
    silent: 'Of BS 3036 no holding current and no conventional time were found; it is taken to carry its rating.',
  };
}

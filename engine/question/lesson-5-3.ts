import type { Template } from './types.ts';
import { benchVolts } from './unit-5/bench-volts.ts';
import { benchWatts } from './unit-5/bench-watts.ts';
import { coolProbe } from './unit-5/cool-probe.ts';
import { hotSpot } from './unit-5/hot-spot.ts';

/** Questions of lesson 5.3, predict, then power. */
export const questions53: readonly Template[] = [benchVolts, benchWatts, hotSpot, coolProbe];

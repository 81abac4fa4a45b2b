import type { Template } from './types.ts';
import { onOffCurrent } from './unit-2/on-off-current.ts';
import { partWayUp } from './unit-2/part-way-up.ts';
import { timeOffTrace } from './unit-2/time-off-trace.ts';

/** Questions of lesson 2.2, the warm-up curve. */
export const questions22: readonly Template[] = [partWayUp, onOffCurrent, timeOffTrace];

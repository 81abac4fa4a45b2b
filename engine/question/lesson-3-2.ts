import type { Template } from './types.ts';
import { longestRun } from './unit-3/longest-run.ts';
import { pumpHums } from './unit-3/pump-hums.ts';
import { sizeForDrop } from './unit-3/size-for-drop.ts';
import { voltsLost } from './unit-3/volts-lost.ts';

/** Questions of lesson 3.2, volts along the run. */
export const questions32: readonly Template[] = [voltsLost, longestRun, sizeForDrop, pumpHums];

import type { Template } from './types.ts';
import { heatAllowed } from './unit-4/heat-allowed.ts';
import { mustHoldOrOpen } from './unit-4/must-hold-or-open.ts';

/** Questions of lesson 4.1, how a fuse decides. */
export const questions41: readonly Template[] = [mustHoldOrOpen, heatAllowed];

import type { Template } from './types.ts';
import { clearsInTimeOrNot } from './unit-4/clears-in-time.ts';
import { loopWhenWarm } from './unit-4/loop-when-warm.ts';
import { twoLeads } from './unit-4/two-leads.ts';

/** Questions of lesson 4.5, round the loop. */
export const questions45: readonly Template[] = [loopWhenWarm, clearsInTimeOrNot, twoLeads];

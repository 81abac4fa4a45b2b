import type { Template } from './types.ts';
import { areaOfStrands } from './unit-1/area-of-strands.ts';
import { gaugeSteps } from './unit-1/gauge-steps.ts';
import { longerLead } from './unit-1/longer-lead.ts';
import { loopResistance } from './unit-1/loop-resistance.ts';
import { sizesInOrder } from './unit-1/sizes-in-order.ts';

/** Questions of lesson 1.2, thick, thin, long, short. */
export const questions12: readonly Template[] = [loopResistance, sizesInOrder, gaugeSteps, longerLead, areaOfStrands];

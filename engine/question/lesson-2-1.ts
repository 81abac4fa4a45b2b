import type { Template } from './types.ts';
import { copperBehindSheath } from './unit-2/copper-behind-sheath.ts';
import { inADraught } from './unit-2/in-a-draught.ts';
import { thickerWall } from './unit-2/thicker-wall.ts';
import { warmerDay } from './unit-2/warmer-day.ts';

/** Questions of lesson 2.1, where the heat leaves. */
export const questions21: readonly Template[] = [copperBehindSheath, warmerDay, inADraught, thickerWall];

import type { Template } from './types.ts';
import { limitsInOrder } from './unit-2/limits-in-order.ts';
import { shareOfLife } from './unit-2/share-of-life.ts';
import { timeToSoften } from './unit-2/time-to-soften.ts';
import { whichInsulation } from './unit-2/which-insulation.ts';

/** Questions of lesson 2.3, what insulation stands. */
export const questions23: readonly Template[] = [limitsInOrder, whichInsulation, shareOfLife, timeToSoften];

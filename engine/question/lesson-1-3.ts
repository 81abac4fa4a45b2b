import type { Template } from './types.ts';
import { cladResistance } from './unit-1/clad-resistance.ts';
import { coolEnough } from './unit-1/cool-enough.ts';
import { equalCopper } from './unit-1/equal-copper.ts';
import { metalsInOrder } from './unit-1/metals-in-order.ts';

/** Questions of lesson 1.3, four metals, one size. */
export const questions13: readonly Template[] = [cladResistance, equalCopper, metalsInOrder, coolEnough];

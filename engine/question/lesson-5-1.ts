import type { Template } from './types.ts';
import { allReadHigh } from './unit-5/all-read-high.ts';
import { fourWires } from './unit-5/four-wires.ts';
import { howSure } from './unit-5/how-sure.ts';
import { twoWires } from './unit-5/two-wires.ts';

/** Questions of lesson 5.1, a thousandth of an ohm. */
export const questions51: readonly Template[] = [fourWires, twoWires, howSure, allReadHigh];

import type { Template } from './types.ts';
import { motorStart } from './unit-4/motor-start.ts';
import { whichPartActs } from './unit-4/which-part-acts.ts';

/** Questions of lesson 4.2, how a breaker decides. */
export const questions42: readonly Template[] = [motorStart, whichPartActs];

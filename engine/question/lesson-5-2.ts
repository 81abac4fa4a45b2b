import type { Template } from './types.ts';
import { areaByGrams } from './unit-5/area-by-grams.ts';
import { ohmsTimesGrams } from './unit-5/ohms-times-grams.ts';
import { trueConductor } from './unit-5/true-conductor.ts';
import { whichMetal } from './unit-5/which-metal.ts';

/** Questions of lesson 5.2, what is it really. */
export const questions52: readonly Template[] = [ohmsTimesGrams, whichMetal, areaByGrams, trueConductor];

import type { Template } from './types.ts';
import { factorsTogether } from './unit-2/factors-together.ts';
import { mostOnAReel } from './unit-2/most-on-a-reel.ts';
import { placesInOrder } from './unit-2/places-in-order.ts';
import { stageReel } from './unit-2/stage-reel.ts';
import { underLagging } from './unit-2/under-lagging.ts';

/** Questions of lesson 2.4, wound, wrapped, bundled. */
export const questions24: readonly Template[] = [placesInOrder, factorsTogether, mostOnAReel, underLagging, stageReel];

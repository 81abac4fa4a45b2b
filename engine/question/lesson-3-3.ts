import type { Template } from './types.ts';
import { blockOfOutlets } from './unit-3/block-of-outlets.ts';
import { cordAndFuse } from './unit-3/cord-and-fuse.ts';
import { hotPlug } from './unit-3/hot-plug.ts';
import { largerFuse } from './unit-3/larger-fuse.ts';

/** Questions of lesson 3.3, leads and plug fuses. */
export const questions33: readonly Template[] = [cordAndFuse, blockOfOutlets, hotPlug, largerFuse];

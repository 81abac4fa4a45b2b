import type { Template } from './types.ts';
import { halfTheHeat } from './unit-1/half-the-heat.ts';
import { heatByLength } from './unit-1/heat-by-length.ts';
import { heatRatio } from './unit-1/heat-ratio.ts';
import { riseAfterMore } from './unit-1/rise-after-more.ts';
import { riseAtMore } from './unit-1/rise-at-more.ts';

/** Questions of lesson 1.1, double the amps. */
export const questions11: readonly Template[] = [heatByLength, heatRatio, riseAtMore, riseAfterMore, halfTheHeat];

import type { Template } from './types.ts';

/** Questions of lesson 2.3, what insulation stands. */
export const questions23: readonly Template[] = [];

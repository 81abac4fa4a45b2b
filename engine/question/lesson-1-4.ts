import type { Template } from './types.ts';

/** Questions of lesson 1.4, hot metal resists more. */
export const questions14: readonly Template[] = [];

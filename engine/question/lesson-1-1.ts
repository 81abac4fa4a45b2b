import type { Template } from './types.ts';

/** Questions of lesson 1.1, double the amps. */
export const questions11: readonly Template[] = [];

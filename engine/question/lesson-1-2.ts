import type { Template } from './types.ts';

/** Questions of lesson 1.2, thick, thin, long, short. */
export const questions12: readonly Template[] = [];

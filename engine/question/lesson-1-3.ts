import type { Template } from './types.ts';

/** Questions of lesson 1.3, four metals, one size. */
export const questions13: readonly Template[] = [];

import type { Template } from './types.ts';

/** Questions of lesson 2.4, wound, wrapped, bundled. */
export const questions24: readonly Template[] = [];

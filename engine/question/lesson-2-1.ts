import type { Template } from './types.ts';

/** Questions of lesson 2.1, where the heat leaves. */
export const questions21: readonly Template[] = [];

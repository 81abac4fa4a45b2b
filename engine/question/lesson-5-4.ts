import type { Template } from './types.ts';
import { claimsTooMuch } from './unit-5/claims-too-much.ts';
import { fairVerdict } from './unit-5/fair-verdict.ts';
import { neverOpened } from './unit-5/never-opened.ts';
import { plateausAgree } from './unit-5/plateaus-agree.ts';

/** Questions of lesson 5.4, say what it means. */
export const questions54: readonly Template[] = [fairVerdict, claimsTooMuch, neverOpened, plateausAgree];

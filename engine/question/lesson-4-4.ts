import type { Template } from './types.ts';
import { allowedTimeOf } from './unit-4/allowed-time.ts';
import { endOfLead } from './unit-4/end-of-lead.ts';
import { formulaAllowed } from './unit-4/formula-allowed.ts';
import { leastSize } from './unit-4/least-size.ts';
import { scorchedEnd } from './unit-4/scorched-end.ts';
import { selectiveUpTo } from './unit-4/selective-up-to.ts';

/** Questions of lesson 4.4, fractions of a second. */
export const questions44: readonly Template[] = [
  allowedTimeOf,
  endOfLead,
  leastSize,
  formulaAllowed,
  selectiveUpTo,
  scorchedEnd,
];

import type { Template } from './types.ts';
import { gapBegins } from './unit-4/gap-begins.ts';
import { gapCloses } from './unit-4/gap-closes.ts';
import { remediesInOrder } from './unit-4/remedies-in-order.ts';
import { twoHeaters } from './unit-4/two-heaters.ts';

/** Questions of lesson 4.3, the gap. */
export const questions43: readonly Template[] = [gapBegins, gapCloses, remediesInOrder, twoHeaters];

import type { Template } from './types.ts';
import { actingCurrent } from './unit-3/acting-current.ts';
import { loadCurrent } from './unit-3/load-current.ts';
import { mostDevice } from './unit-3/most-device.ts';
import { sizeForLoad } from './unit-3/size-for-load.ts';
import { tableNeeded } from './unit-3/table-needed.ts';
import { underLoftLagging } from './unit-3/under-loft-lagging.ts';

/** Questions of lesson 3.1, from load to size. Q42 and D09 rest on rules of UK and IEC practice, Q43 on one of North America. */
export const questions31: readonly Template[] = [
  loadCurrent,
  tableNeeded,
  sizeForLoad,
  actingCurrent,
  mostDevice,
  underLoftLagging,
];

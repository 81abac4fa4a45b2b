import { fastest, slowest } from './band.ts';
import type { Device } from './device.ts';

/** What the points of a standard promise of a device: it still holds, it may do either, or it has acted. */
export type Promised = 'holds' | 'may' | 'acts';

/**
 * What is promised of a device that has carried `I` [A] for `t` [s], cold before; for ever unless `t` is given. On the
 * guaranteed edges alone, so where a standard is silent the answer is 'may'.
 */
export function promised(of: Device, I: number, t: number = Number.POSITIVE_INFINITY): Promised {
  if (t === Number.POSITIVE_INFINITY) {
    if (fastest(of, I, 'guaranteed') === t) return 'holds';
    return slowest(of, I, 'guaranteed') < t ? 'acts' : 'may';
  }
  if (fastest(of, I, 'guaranteed') > t) return 'holds';
  return slowest(of, I, 'guaranteed') <= t ? 'acts' : 'may';
}

import { linearScale } from '../../charts/linear-scale.ts';
import type { Scale } from '../../charts/types.ts';
import type { PadAxis } from './axis.ts';

/** Where everything on a pad stands [px]. */
export interface PadLayout {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: Scale;
  readonly y: Scale;
}

/** The layout of a pad of one size; a narrow one keeps more of it for the curve. */
export function padLayout(width: number, height: number, compact: boolean, { end, low, high }: PadAxis): PadLayout {
  const [left, right] = [compact ? 44 : 78, width - (compact ? 10 : 22)];
  const [top, bottom] = [compact ? 32 : 50, height - 48];
  return {
    left,
    right,
    top,
    bottom,
    x: linearScale([0, end], [left, right]),
    y: linearScale([low, high], [bottom, top]),
  };
}

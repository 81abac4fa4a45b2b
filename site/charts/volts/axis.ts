import { ticks } from 'd3-array';
import { linearScale } from '../linear-scale.ts';
import type { Scale } from '../types.ts';

/** The upright axis of volts. Where little is lost its foot is broken off, so that the fall can be seen, and it says so. */
export interface VoltsAxis {
  readonly low: number;
  readonly high: number;
  /** True where the axis does not run down to zero in one piece. */
  readonly broken: boolean;
  readonly y: Scale;
  readonly ticks: readonly number[];
}

const stub = 30; // px from the broken end down to zero
const room = 1.25; // the fall takes this part of the axis at the most
const least = 0.06; // share of the volts that is shown at the least, so that the guides stand on the sheet

/** An axis from `bottom` up to `top` [px] for volts that fall from `source` to `end`; whole from zero where half is lost. */
export function voltsAxis(source: number, end: number, bottom: number, top: number): VoltsAxis {
  const fall = Math.max(source - end, least * source) * room;
  const step = fall > source / 5 ? source / 12 : source / 46; // 5 V of 230 V
  const low = Math.floor((source - fall) / step) * step;
  const broken = low > source * 0.45;
  const foot = broken ? bottom - stub : bottom;
  const from = broken ? low : 0;
  const high = source * (broken ? 1 : 1.02);
  return {
    low: from,
    high,
    broken,
    y: linearScale([from, high], [foot, top]),
    ticks: ticks(from, high, Math.max(2, Math.round((foot - top) / 40))),
  };
}

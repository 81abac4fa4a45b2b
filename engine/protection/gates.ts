import type { Confidence } from '../material/property.ts';
import type { Gate } from './device.ts';

/** A gate as a table prints it: times the rating (or ampere, where `In` is 1), seconds, and whether it was seen. */
export type PrintedGate = readonly [times: number, t: number, confidence: Confidence];

/** Printed gates at a rating `In` [A]. */
export const gatesOf = (In: number, rows: readonly PrintedGate[]): Gate[] =>
  rows.map(([times, t, confidence]) => ({ I: +(times * In).toPrecision(12), t, confidence }));

export const seen = 'seen';
export const memory = 'from memory';
export const hour = 3600;
export const minute = 60;

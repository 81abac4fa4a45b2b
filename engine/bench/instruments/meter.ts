import { OutOfRange, within } from '../../errors.ts';
import type { Confidence } from '../../material/property.ts';
import type { SourceId } from '../../sources.ts';
import type { Measured } from '../measured.ts';
import { fromLimit, fromStep, type Limited } from '../uncertainty/distributions.ts';

/** What a meter reads. */
export type MeterQuantity = 'voltage' | 'current' | 'resistance' | 'length' | 'mass';

/** One range of a meter: how far it reads, in what steps, and how wrong it may be. */
export interface MeterRange {
  /** Greatest reading, in the meter's unit. */
  readonly top: number;
  /** Least step of the display or of reading off the scale, in the meter's unit. */
  readonly step: number;
  /** Limits of error as shares of the reading and of the range's top, and as steps of the last digit. */
  readonly ofReading: number;
  readonly ofTop: number;
  readonly digits: number;
}

/** An instrument with one scale or a few: a record, described by kind. */
export interface Meter {
  readonly id: string;
  readonly name: string;
  readonly quantity: MeterQuantity;
  /** SI unit of its readings, steps and tops. */
  readonly unit: string;
  /** From the lowest to the highest. */
  readonly ranges: readonly MeterRange[];
  /** How errors lie within the limits; rectangular unless the record says otherwise. */
  readonly shape?: Limited;
  readonly source: SourceId;
  readonly confidence: Confidence;
  /** Clause of the source, and what the figures suppose. */
  readonly note: string;
}

/** A reading with what a second reading by the same instrument shares of its error, and what it does not. */
export interface Reading extends Measured {
  /** Standard uncertainty of the error that stays from reading to reading (scale, zero), in the unit of the value. */
  readonly systematic: number;
  /** Standard uncertainty of the error that is new at each reading (resolution), in the unit of the value. */
  readonly random: number;
  /** That of the lasting error which does not turn with the sign (zero and digits); part of `systematic`. Nothing unless given. */
  readonly zero?: number;
  /** Of what shape the doubt is, where one part outweighs the other; taken for normal where not given. */
  readonly distribution?: Limited;
}

/** A reading from its two parts, which are independent. */
export function readingFrom(value: number, systematic: number, random: number): Reading {
  return { value, u: Math.hypot(systematic, random), dof: Number.POSITIVE_INFINITY, systematic, random };
}

const outweighs = 3; // times the other part: a rectangular one then still shows in the sum

/** The lowest range that holds a reading; refused above the highest, where the display would read over. */
export function rangeFor({ name, unit, ranges }: Meter, reading: number): MeterRange {
  const range = ranges.find(({ top }) => Math.abs(reading) <= top);
  if (!range) {
    const most = ranges[ranges.length - 1]?.top ?? 0;
    throw new OutOfRange(`reading of the ${name}`, reading, [-most, most], unit);
  }
  return range;
}

/** Limit of error of a reading on a range, in the meter's unit: share of reading, share of the top, and digits together. */
export const limitOfError = ({ ofReading, ofTop, top, digits, step }: MeterRange, reading: number): number =>
  ofReading * Math.abs(reading) + ofTop * top + digits * step;

/**
 * What a meter's reading is worth. Its limit of error is one lasting error, so it does not fall by reading again; the step of
 * the display is a rectangular one that is new each time. `further` [share of the reading] widens the limit, as a jaw held
 * askew does. The range is the lowest that holds the reading unless `range` is given.
 */
export function readMeter(
  meter: Meter,
  reading: number,
  { range = rangeFor(meter, reading), further = 0 }: { range?: MeterRange; further?: number } = {},
): Reading {
  within(`reading of the ${meter.name}`, reading, [-range.top, range.top], meter.unit);
  within('further share of the reading', further, [0, 1], '');
  const shape = meter.shape ?? 'rectangular';
  const limit = limitOfError(range, reading) + further * Math.abs(reading);
  const read = readingFrom(reading, fromLimit(limit, shape), fromStep(range.step));
  const zero = fromLimit(limitOfError(range, 0), shape);
  return { ...read, zero, ...(read.systematic > outweighs * read.random ? { distribution: shape } : {}) };
}

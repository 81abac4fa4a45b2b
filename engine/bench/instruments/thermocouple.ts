import { OutOfRange, within } from '../../errors.ts';
import type { Confidence } from '../../material/property.ts';
import { celsius, kelvin } from '../../quantity.ts';
import type { SourceId } from '../../sources.ts';
import { fromLimit, fromStep } from '../uncertainty/distributions.ts';
import { type Reading, readingFrom } from './meter.ts';

/** A type of thermocouple in a tolerance class. */
export interface ThermocoupleClass {
  readonly type: 'K' | 'T';
  readonly class: 1 | 2;
  /** Tolerance: ± the greater of `least` [K] and `ofReading` times the temperature in °C. */
  readonly least: number;
  readonly ofReading: number;
  /** Where the class holds [K]. */
  readonly range: readonly [number, number];
  readonly source: SourceId;
  readonly confidence: Confidence;
}

const printed = { source: 'iec60584-1', confidence: 'seen' } as const;

/** Tolerance classes 1 and 2 of types K and T (IEC 60584-1, tolerances as quoted by tables of it), new wire. */
export const thermocoupleClasses: readonly ThermocoupleClass[] = [
  { type: 'K', class: 1, least: 1.5, ofReading: 0.004, range: [kelvin(-40), kelvin(1000)], ...printed },
  { type: 'K', class: 2, least: 2.5, ofReading: 0.0075, range: [kelvin(-40), kelvin(1200)], ...printed },
  { type: 'T', class: 1, least: 0.5, ofReading: 0.004, range: [kelvin(-40), kelvin(350)], ...printed },
  { type: 'T', class: 2, least: 1, ofReading: 0.0075, range: [kelvin(-40), kelvin(350)], ...printed },
];

/** What turns a thermocouple's volts into a temperature. */
export interface ThermometerReader {
  readonly id: string;
  readonly name: string;
  /** Limits of its own error: share of the Celsius figure, and fixed [K]. */
  readonly ofReading: number;
  readonly fixed: number;
  /**
   * Limit of its error in the temperature of the cold junction [K], taken to pass to the reading one for one: within 5 % for
   * type K; for type T the reading near 100 °C takes up only 0.87 of it (slopes of the EMF from memory).
   */
  readonly coldJunction: number;
  /** Step of the display [K]. */
  readonly step: number;
  readonly range: readonly [number, number];
  readonly source: SourceId;
  readonly confidence: Confidence;
  readonly note: string;
}

/** The class of a thermocouple by its letter and number. */
export function thermocoupleClass(
  type: ThermocoupleClass['type'],
  number: ThermocoupleClass['class'],
): ThermocoupleClass {
  const found = thermocoupleClasses.find((one) => one.type === type && one.class === number);
  if (!found) throw new OutOfRange(`tolerance class of type ${type}`, number, [1, 2], '');
  return found;
}

/** Tolerance of a new thermocouple at `T` [K]: ± the greater of a fixed figure and a share of the Celsius temperature; [K]. */
export function thermocoupleTolerance({ type, least, ofReading, range }: ThermocoupleClass, T: number): number {
  within(`temperature of a type ${type} thermocouple`, T, range, 'K');
  return Math.max(least, ofReading * Math.abs(celsius(T)));
}

/**
 * A temperature [K] read by a thermocouple: wire, reader and cold junction last from reading to reading, the display's step
 * does not. How well the junction touches what it should measure is not in here, and is often the greatest error.
 */
export function readThermocouple(couple: ThermocoupleClass, reader: ThermometerReader, T: number): Reading {
  within(`reading of the ${reader.name}`, T, reader.range, 'K');
  const wire = fromLimit(thermocoupleTolerance(couple, T));
  const own = fromLimit(reader.fixed + reader.ofReading * Math.abs(celsius(T)));
  return readingFrom(T, Math.hypot(wire, own, fromLimit(reader.coldJunction)), fromStep(reader.step));
}

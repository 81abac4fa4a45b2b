import type { Measured } from '../measured.ts';
import { fromLimit, fromStep } from '../uncertainty/distributions.ts';
import { type Meter, type Reading, rangeFor, readingFrom, readMeter } from './meter.ts';
import { multimeterAmps, multimeterVolts, panelMeter, tapeMeasure, thermometerReader } from './records.ts';
import { readTape } from './tape.ts';
import { readThermocouple, thermocoupleClass } from './thermocouple.ts';

// What a low resistance is measured with, as sets: a voltmeter, an ammeter, a tape and a thermometer.

/** A set turns true values, SI, into readings with their standard uncertainties. */
export interface TestSet {
  volts(U: number): Reading;
  amps(I: number): Measured;
  length(L: number): Measured;
  temperature(T: number): Measured;
}

/** Limits of error: of volts, amps and length as shares of the reading, of the temperature in kelvin. */
export interface SetLimits {
  readonly U: number;
  readonly I: number;
  readonly L: number;
  readonly T: number;
}

/** A true value as the meter's display shows it. */
function displayed(meter: Meter, value: number): number {
  const { step } = rangeFor(meter, value);
  return Math.round(value / step) * step;
}

const share = (value: number, limit: number): Measured => ({ value, u: fromLimit(limit * Math.abs(value)) });
const byMultimeter = (U: number): Reading => readMeter(multimeterVolts, displayed(multimeterVolts, U));
const byCouple = (T: number): Reading => readThermocouple(thermocoupleClass('K', 1), thermometerReader, T);

/** Instruments known by their limits alone, every value within them alike likely; volts are shown in the steps of a multimeter. */
export function setByLimits(limits: SetLimits): TestSet {
  return {
    volts(U) {
      const shown = displayed(multimeterVolts, U);
      return readingFrom(shown, share(shown, limits.U).u, fromStep(rangeFor(multimeterVolts, U).step));
    },
    amps: (I) => share(I, limits.I),
    length: (L) => share(L, limits.L),
    temperature: (T) => ({ value: T, u: fromLimit(limits.T) }),
  };
}

/** Two hand-held multimeters, a tape, and a thermocouple on the conductor. */
export const handHeldSet: TestSet = {
  volts: byMultimeter,
  amps: (I) => readMeter(multimeterAmps, I),
  length: (L) => readTape(tapeMeasure, L),
  temperature: byCouple,
};

/** The same, but the amps are read on the panel of the bench supply. */
export const panelSet: TestSet = { ...handHeldSet, amps: (I) => readMeter(panelMeter, I) };

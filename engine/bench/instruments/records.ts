import { kelvin } from '../../quantity.ts';
import type { Meter, MeterRange } from './meter.ts';
import type { TapeMeasure } from './tape.ts';
import type { ThermometerReader } from './thermocouple.ts';

// Instruments as kinds. Where no standard fixes a kind's error, the figures are our own choice, usual for what an
// electrician carries; whoever has the real instrument should put its data sheet in their place.

const usual = { source: 'own', confidence: 'our choice' } as const;

/** Ranges with one specification, a decade apart: `tops` and `step` of the lowest; shares and digits of all. */
const ranges = (
  tops: readonly number[],
  step: number,
  ofReading: number,
  digits: number,
  ofTop = 0,
): readonly MeterRange[] =>
  tops.map((top) => ({ top, step: (step * top) / (tops[0] as number), ofReading, ofTop, digits }));

/** Hand-held digital multimeter, volts DC: ±(0.5 % of reading + 2 digits), 0.1 mV steps up to 0.6 V. */
export const multimeterVolts: Meter = {
  id: 'multimeterVolts',
  name: 'digital multimeter, volts DC',
  quantity: 'voltage',
  unit: 'V',
  ranges: ranges([0.6, 6, 60, 600], 1e-4, 0.005, 2),
  ...usual,
  note: 'own choice, usual for a hand-held meter of 6000 counts',
};

/** Hand-held digital multimeter, volts AC: ±(1 % + 3 digits). */
export const multimeterVoltsAc: Meter = {
  id: 'multimeterVoltsAc',
  name: 'digital multimeter, volts AC',
  quantity: 'voltage',
  unit: 'V',
  ranges: ranges([6, 60, 600], 1e-3, 0.01, 3),
  ...usual,
  note: 'own choice, usual for a hand-held meter; sine wave of 50 or 60 Hz',
};

/** Hand-held digital multimeter, amps DC: ±(1 % + 3 digits), by its own shunt. */
export const multimeterAmps: Meter = {
  id: 'multimeterAmps',
  name: 'digital multimeter, amps DC',
  quantity: 'current',
  unit: 'A',
  ranges: ranges([0.6, 6], 1e-4, 0.01, 3).concat({ top: 10, step: 0.01, ofReading: 0.015, ofTop: 0, digits: 3 }),
  ...usual,
  note: 'own choice, usual for a hand-held meter',
};

/** Hand-held digital multimeter, ohms by two wires: ±(0.9 % + 2 digits), 0.1 Ω steps; its leads are in the reading. */
export const multimeterOhms: Meter = {
  id: 'multimeterOhms',
  name: 'digital multimeter, ohms',
  quantity: 'resistance',
  unit: 'Ω',
  ranges: ranges([600, 6e3, 6e4, 6e5], 0.1, 0.009, 2),
  ...usual,
  note: 'own choice, usual for a hand-held meter; two wires, leads not taken off',
};

/** Clamp meter, amps AC: ±(2 % + 5 digits), wire in the middle of the jaw. */
export const clampMeter: Meter = {
  id: 'clampMeter',
  name: 'clamp meter, amps AC',
  quantity: 'current',
  unit: 'A',
  ranges: ranges([40, 400], 0.01, 0.02, 5),
  ...usual,
  note: 'own choice, usual for a clamp meter; 50 or 60 Hz',
};

/** What a wire away from the middle of the jaw may add, as a share of the reading: own choice, usual for a clamp meter. */
export const jawPlace = 0.01;

/** Clamp meter, amps DC by a Hall sensor, zeroed before each reading: ±(2.5 % + 8 digits). */
export const clampMeterDc: Meter = {
  id: 'clampMeterDc',
  name: 'clamp meter, amps DC',
  quantity: 'current',
  unit: 'A',
  ranges: ranges([40, 400], 0.01, 0.025, 8),
  ...usual,
  note: 'own choice, usual for a Hall clamp that is zeroed before each reading',
};

/** Milliohm meter, four terminals: ±(0.25 % + 3 digits), 10 µΩ steps up to 0.2 Ω. */
export const milliohmMeter: Meter = {
  id: 'milliohmMeter',
  name: 'milliohm meter, four terminals',
  quantity: 'resistance',
  unit: 'Ω',
  ranges: ranges([0.2, 2, 20], 1e-5, 0.0025, 3),
  ...usual,
  note: 'own choice, usual for a portable meter of 20 000 counts',
};

/** Ammeter of a bench supply: ±(0.5 % + 2 digits), 10 mA steps. */
export const panelMeter: Meter = {
  id: 'panelMeter',
  name: 'panel meter of a bench supply, amps',
  quantity: 'current',
  unit: 'A',
  ranges: [{ top: 30, step: 0.01, ofReading: 0.005, ofTop: 0, digits: 2 }],
  ...usual,
  note: 'own choice, usual for a bench supply',
};

/** Needle panel meter of accuracy class 1.5: ±1.5 % of full scale whatever it reads; read to a fifth of a division. */
export const needleMeter: Meter = {
  id: 'needleMeter',
  name: 'needle panel meter, class 1.5, amps',
  quantity: 'current',
  unit: 'A',
  ranges: [{ top: 20, step: 0.1, ofReading: 0, ofTop: 0.015, digits: 0 }],
  source: 'iec60051',
  confidence: 'from memory',
  note: 'class index as a percentage of full scale; scale of 0.5 A divisions is our choice',
};

/** Digital calliper: ±0.03 mm, 0.01 mm steps. */
export const calliper: Meter = {
  id: 'calliper',
  name: 'digital calliper',
  quantity: 'length',
  unit: 'm',
  ranges: [{ top: 0.15, step: 1e-5, ofReading: 0, ofTop: 0, digits: 3 }],
  ...usual,
  note: 'own choice, usual for a 150 mm calliper; soft insulation gives way under it, which is not in here',
};

/** Pocket scale: ±0.03 g, 0.01 g steps, up to 200 g. */
export const pocketScale: Meter = {
  id: 'pocketScale',
  name: 'pocket scale',
  quantity: 'mass',
  unit: 'kg',
  ranges: [{ top: 0.2, step: 1e-5, ofReading: 5e-4, ofTop: 0, digits: 3 }],
  ...usual,
  note: 'own choice, usual for a pocket scale that is zeroed and level',
};

/** Tape measure of accuracy class II, read to 1 mm. */
export const tapeMeasure: TapeMeasure = {
  id: 'tapeMeasure',
  name: 'tape measure, class II',
  fixed: 0.3e-3,
  perMetre: 0.2e-3,
  step: 1e-3,
  lay: 0.002,
  source: 'lengthMeasures',
  confidence: 'from memory',
  note: 'a + b·L with L in whole metres, rounded up; 0.2 % for a lead that does not lie straight is our choice',
};

/** Hand-held thermometer for thermocouples: ±(0.1 % of °C + 0.3 K), cold junction ±0.5 K, 0.1 K steps. */
export const thermometerReader: ThermometerReader = {
  id: 'thermometerReader',
  name: 'thermometer for thermocouples',
  ofReading: 0.001,
  fixed: 0.3,
  coldJunction: 0.5,
  step: 0.1,
  range: [kelvin(-40), kelvin(1000)],
  ...usual,
  note: 'own choice, usual for a hand-held thermometer kept a quarter of an hour in the room it is read in',
};

/** All meters. */
export const meters: readonly Meter[] = [
  multimeterVolts,
  multimeterVoltsAc,
  multimeterAmps,
  multimeterOhms,
  clampMeter,
  clampMeterDc,
  milliohmMeter,
  panelMeter,
  needleMeter,
  calliper,
  pocketScale,
];

// What a reading of each kind of instrument is worth.
import { describe, expect, it } from 'vitest';
import {
  calliper,
  clampMeter,
  jawPlace,
  kelvin,
  limitOfError,
  type Meter,
  meters,
  milliohmMeter,
  multimeterOhms,
  multimeterVolts,
  needleMeter,
  rangeFor,
  readMeter,
  readTape,
  readThermocouple,
  sources,
  tapeMeasure,
  thermocoupleClass,
  thermometerReader,
} from '#engine';

describe('a meter', () => {
  it('is worth its percentage and digits over √3, and a step over √12', () => {
    const { u, systematic, random } = readMeter(multimeterVolts, 0.215);
    expect(systematic).toBeCloseTo((0.005 * 0.215 + 2e-4) / Math.sqrt(3), 9);
    expect(random).toBeCloseTo(1e-4 / Math.sqrt(12), 9);
    expect(u).toBeCloseTo(Math.hypot(systematic, random), 12);
  });

  it('is worth less in the middle where its record says that errors gather there', () => {
    const gathered: Meter = { ...multimeterVolts, shape: 'triangular' };
    expect(readMeter(gathered, 0.215).systematic / readMeter(multimeterVolts, 0.215).systematic).toBeCloseTo(
      Math.SQRT1_2,
      9,
    );
  });

  it('tells the shape of its doubt where its limits outweigh its steps, and none where they do not', () => {
    expect(readMeter(multimeterVolts, 0.215).distribution).toBe('rectangular');
    expect(readMeter(needleMeter, 1).distribution).toBe('rectangular');
    expect(
      readMeter({ ...needleMeter, ranges: [{ ...rangeFor(needleMeter, 1), step: 0.5 }] }, 1).distribution,
    ).toBeUndefined();
  });

  it('takes the lowest range that holds the reading, of either sign', () => {
    expect(rangeFor(multimeterVolts, 0.6).top).toBe(0.6);
    expect(rangeFor(multimeterVolts, -0.61).top).toBe(6);
    expect(readMeter(multimeterVolts, -3).u).toBe(readMeter(multimeterVolts, 3).u);
  });

  it('reads no more than its highest range, and says so', () => {
    expect(() => readMeter(multimeterVolts, 601)).toThrow('reading of the digital multimeter, volts DC is 601 V');
    expect(() => readMeter(multimeterVolts, 5, { range: rangeFor(multimeterVolts, 0.1) })).toThrow(/0.6 V/);
  });

  it('says nothing of a thousandth of an ohm by two wires and much by four', () => {
    const R = 0.215;
    expect(readMeter(multimeterOhms, R).u / R).toBeGreaterThan(0.5);
    expect(readMeter(milliohmMeter, R).u / R).toBeLessThan(0.005);
  });

  it('is worth least at the bottom of a needle’s scale', () => {
    const relative = (I: number) => readMeter(needleMeter, I).u / I;
    expect(relative(2)).toBeGreaterThan(9 * relative(20));
  });

  it('is worth less with the wire askew in the jaw', () => {
    const limit = limitOfError(rangeFor(clampMeter, 10), 10);
    const askew = readMeter(clampMeter, 10, { further: jawPlace });
    expect(askew.systematic).toBeCloseTo((limit + 0.1) / Math.sqrt(3), 9);
  });

  it('has in every record rising ranges, a source, and figures that leave less than 5 % at full scale', () => {
    for (const meter of meters) {
      expect(sources[meter.source].title, meter.id).toBeTruthy();
      expect(meter.note, meter.id).toMatch(/own choice|our choice/);
      meter.ranges.forEach((range, i) => {
        expect(range.top, meter.id).toBeGreaterThan(meter.ranges[i - 1]?.top ?? 0);
        expect(readMeter(meter, range.top, { range }).u / range.top, meter.id).toBeLessThan(0.05);
        expect(range.step, meter.id).toBeGreaterThan(0);
      });
    }
    expect(new Set(meters.map(({ id }) => id)).size).toBe(meters.length);
  });

  it('measures a conductor’s diameter to a few hundredths of a millimetre', () => {
    expect(readMeter(calliper, 2e-3).u).toBeCloseTo(1.8e-5, 6);
  });
});

describe('a tape', () => {
  it('counts each metre begun, and a lead that does not lie straight', () => {
    expect(readTape(tapeMeasure, 8).systematic).toBeCloseTo(1.9e-3 / Math.sqrt(3), 9);
    expect(readTape(tapeMeasure, 8.01).systematic).toBeCloseTo(2.1e-3 / Math.sqrt(3), 9);
    expect(readTape(tapeMeasure, 8).u / 8).toBeGreaterThan(0.001);
    expect(() => readTape(tapeMeasure, 0)).toThrow(/length read off a tape/);
  });
});

describe('a thermocouple', () => {
  const at = (T_degC: number, type: 'K' | 'T', number: 1 | 2) =>
    readThermocouple(thermocoupleClass(type, number), thermometerReader, kelvin(T_degC)).u;

  it('is worth more in class 1 than in class 2, and in type T than in type K', () => {
    expect(at(60, 'K', 1)).toBeLessThan(at(60, 'K', 2));
    expect(at(60, 'T', 1)).toBeLessThan(at(60, 'K', 1));
  });

  it('adds its wire, its reader and the cold junction as independent parts', () => {
    const parts = [1.5, 0.3 + 0.001 * 60, 0.5].map((limit) => limit / Math.sqrt(3));
    expect(at(60, 'K', 1)).toBeCloseTo(Math.hypot(...parts, 0.1 / Math.sqrt(12)), 9);
  });

  it('is refused beyond its class', () => {
    expect(() => at(400, 'T', 1)).toThrow(/type T thermocouple/);
    expect(() => at(60, 'K', 3 as 1)).toThrow(/tolerance class/);
  });
});

// Plateaus and derived columns of logs whose answers are known beforehand.
import { describe, expect, it } from 'vitest';
import {
  conductorTemperature,
  conductorTemperatureByRise,
  energy,
  power,
  resistance,
  usualInterval,
} from '#engine/bench/derived.ts';
import type { BenchLog } from '#engine/bench/log.ts';
import { plateaus } from '#engine/bench/steps.ts';
import { OutOfRange } from '#engine/errors.ts';
import { buildCase, leadResistance } from '#engine/heating/thermal-case.ts';
import { resistanceRatio } from '#engine/material/resistivity.ts';
import { kelvin } from '#engine/quantity.ts';
import { randomOf } from '#engine/question/random.ts';

/** A log of a row a second of these currents and volts. */
const logOf = (I: readonly number[], U: (i: number) => number = () => 2): BenchLog => ({
  t: Float64Array.from(I, (_, i) => i),
  I: Float64Array.from(I),
  U: Float64Array.from(I, (_, i) => U(i)),
  probes: [],
  ambient: null,
  remarks: [],
  startedAt: null,
  simulated: false,
});
const held = (amps: number, rows: number): number[] => Array<number>(rows).fill(amps);

describe('plateaus of the current', () => {
  const random = randomOf('noise');
  const noisy = (amps: number, rows: number) =>
    held(amps, rows).map((I) => I + (random.whole(-10, 10) + random.whole(-10, 10)) / 1000);

  it('are found through noise, with their means, and the rows on the way between belong to none', () => {
    const found = plateaus(logOf([...noisy(4, 100), 5.1, 6.7, ...noisy(8, 100), ...noisy(0, 50)], (i) => i / 100));
    expect(found.map(({ first, last }) => [first, last])).toEqual([
      [0, 99],
      [102, 201],
      [202, 251],
    ]);
    expect(found.map(({ I }) => Math.abs(Math.round(100 * I)) / 100)).toEqual([4, 8, 0]);
    expect(found[0]).toMatchObject({ from: 0, to: 99, n: 100 });
    expect(found[0]?.U).toBeCloseTo(0.495, 10);
  });

  it('are not broken by an outlier, a gap or the slow fall of a supply that holds its volts', () => {
    const falling = Array.from({ length: 300 }, (_, i) => 10 - i / 600);
    falling[50] = 0;
    falling[120] = Number.NaN;
    expect(plateaus(logOf(falling))).toMatchObject([{ first: 0, last: 299, n: 298 }]);
  });

  it('of a current that only flickers by a place of the meter are one', () => {
    expect(plateaus(logOf(Array.from({ length: 90 }, (_, i) => (i % 3 ? 0.02 : 0.01))))).toHaveLength(1);
  });
});

describe('derived columns', () => {
  it('power and resistance are those of each row, none without current', () => {
    const log = logOf([10, 0, Number.NaN]);
    expect([...power(log).values]).toEqual([20, 0, Number.NaN]);
    expect([...resistance(log).values]).toEqual([0.2, Number.NaN, Number.NaN]);
    const meters = { ...log, R: Float64Array.of(9, 0.21, 0.22), P: Float64Array.of(1, 1, 7) };
    expect([...resistance(meters).values]).toEqual([0.2, 0.21, 0.22]);
    expect([...power(meters).values]).toEqual([20, 0, 7]);
  });

  it('energy is the area under the power, and what is too far apart is left out and told', () => {
    const ramp = logOf([0, 1, 2, 3, 4]);
    expect(energy(ramp, 1)).toEqual({ E: 16, over: 4, leftOut: 0 });
    const holed = logOf([0, 1, Number.NaN, 3, 4]);
    expect(energy(holed, 1)).toEqual({ E: 8, over: 2, leftOut: 2 });
    expect(energy(holed, 2)).toEqual({ E: 16, over: 4, leftOut: 0 });
    expect(usualInterval(ramp)).toBe(1);
    expect(() => energy(ramp, -1)).toThrow(OutOfRange);
  });

  it('the temperature by rise of resistance is the one at which the resistance was made', () => {
    const metal = { alpha20: 3.93e-3, beta20: 1e-7 };
    const temperatures = [kelvin(20), kelvin(45), kelvin(70)];
    const U = temperatures.map((T) => 10 * 0.3 * resistanceRatio(metal.alpha20, metal.beta20, T));
    const log = logOf(held(10, 3), (i) => U[i] as number);
    const cold = { R: 0.3 * resistanceRatio(metal.alpha20, metal.beta20, kelvin(15)), T: kelvin(15) };
    const found = conductorTemperatureByRise(log, metal, cold).values;
    expect(Array.from(found, (T) => Number(T.toFixed(8)))).toEqual(temperatures);
    expect(() => conductorTemperatureByRise(log, metal, { R: 0.3, T: 20 })).toThrow(OutOfRange);
  });

  it('the temperature by a case is the one the case gives that resistance', () => {
    const of = buildCase({
      cable: { table: 'H05VV-F', cores: 3, size_mm2: 0.75 },
      lead: { length_m: 5 },
      surroundings: { kind: 'stillAir', ambient_degC: 20 },
      supply: [{ kind: 'current', I_A: 10 }],
    });
    const R = leadResistance(of, kelvin(55));
    expect(
      conductorTemperature(
        logOf([10], () => 10 * R),
        of,
      ).values[0],
    ).toBeCloseTo(kelvin(55), 6);
  });
});

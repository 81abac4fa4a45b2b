// Factors on a table's current: what lies between the printed rows (published/derating.csv has the rows), beyond them, and how
// they act together.
import { describe, expect, it } from 'vitest';
import {
  adjustmentFactor,
  ambientCorrection,
  ambientFactor,
  factorProduct,
  groupingFactor,
  kelvin,
  OutOfRange,
  ratingInPlace,
  sources,
  tableCurrentNeeded,
  thermalInsulationFactor,
} from '#engine';

const columns = [
  ['iec', 60],
  ['iec', 70],
  ['iec', 90],
  ['na', 60],
  ['na', 75],
  ['na', 90],
] as const;

describe('the ambient correction', () => {
  it('is one at the table’s ambient, nothing at the limit, and falls on the way', () => {
    expect(ambientCorrection(kelvin(70), kelvin(30))).toBe(1);
    expect(ambientCorrection(kelvin(70), kelvin(70))).toBe(0);
    expect(ambientCorrection(kelvin(70), kelvin(20))).toBeGreaterThan(1);
    expect(ambientCorrection(kelvin(90), kelvin(50), kelvin(40))).toBeCloseTo(Math.sqrt(0.8), 12);
  });

  it('is refused in words above the limit', () => {
    expect(() => ambientCorrection(kelvin(70), kelvin(75))).toThrow(/ambient temperature is 75/);
    expect(() => ambientCorrection(kelvin(70), Number.NaN)).toThrow(OutOfRange);
  });
});

describe.each(columns)('the ambient factor of %s at %i °C', (practice, limit) => {
  const at = (ambient: number) => ambientFactor(practice, limit, ambient);

  it('takes the warmer of two rows, never more than the rule gives', () => {
    expect(at(30).value).toBe(1);
    expect(at(31).value).toBe(at(35).value);
    expect(at(30.2).value).toBe(at(35).value);
    for (let ambient = 30; ambient <= limit - 10; ambient++) {
      expect(at(ambient).value).toBeLessThanOrEqual(ambientCorrection(kelvin(limit), kelvin(ambient)) + 0.005);
      expect(at(ambient).value).toBeGreaterThan(0);
    }
  });

  it('cites a document, and is refused beyond the table', () => {
    expect(sources[at(40).source].kind).toBe('standard');
    expect(at(40)).toMatchObject({ symbol: 'Ca', confidence: 'seen' });
    expect(() => at(limit)).toThrow(new RegExp(`ambient in .* at ${limit} °C is ${limit} °C; it must lie from`));
  });
});

it('below its first row the North American table goes on, the international one says nothing', () => {
  expect(ambientFactor('na', 90, -20).value).toBe(ambientFactor('na', 90, 10).value);
  expect(ambientFactor('iec', 60, 20).value).toBe(1);
  expect(() => ambientFactor('iec', 70, 5)).toThrow(/must lie from 10 to 60 °C/);
});

it('a limit without a column is refused with those there are', () => {
  expect(() => ambientFactor('iec', 75, 40)).toThrow(/columns: 60, 70, 90 °C/);
  expect(() => ambientFactor('na', 70, 40)).toThrow(/columns: 60, 75, 90 °C/);
});

it('grouping never helps, and takes the greater count between two rows', () => {
  const all = Array.from({ length: 20 }, (_, i) => groupingFactor(i + 1).value);
  expect(all[0]).toBe(1);
  expect(all).toEqual([...all].sort((a, b) => b - a));
  expect(groupingFactor(10).value).toBe(groupingFactor(12).value);
  expect(() => groupingFactor(21)).toThrow(/circuits in one bunch is 21 circuits; it must lie from 1 to 20/);
  expect(() => groupingFactor(0)).toThrow(OutOfRange);
});

it('conductors together: three are free, and the last row goes on', () => {
  expect(adjustmentFactor(3).value).toBe(1);
  expect(adjustmentFactor(4).value).toBe(adjustmentFactor(6).value);
  expect(adjustmentFactor(500).value).toBe(adjustmentFactor(41).value);
  expect(() => adjustmentFactor(0)).toThrow(OutOfRange);
});

it('thermal insulation: the longer of two lengths holds, half a metre halves, and none is one', () => {
  expect(thermalInsulationFactor(0).value).toBe(1);
  expect(thermalInsulationFactor(60).value).toBe(thermalInsulationFactor(100).value);
  expect(thermalInsulationFactor(450).value).toBe(0.5);
  expect(thermalInsulationFactor(5000).value).toBe(0.5);
  expect(() => thermalInsulationFactor(-1)).toThrow(OutOfRange);
});

it('factors multiply; the table current needed is the rating in place turned about', () => {
  const factors = [ambientFactor('iec', 70, 35), groupingFactor(3)];
  expect(factorProduct(factors)).toBeCloseTo(0.94 * 0.7, 12);
  expect(factorProduct([])).toBe(1);
  expect(tableCurrentNeeded(20, factors)).toBeCloseTo(30.4, 1); // the welfare cabin of lesson 3.1
  expect(ratingInPlace(tableCurrentNeeded(20, factors), factors)).toBeCloseTo(20, 12);
  const attic = [ambientFactor('na', 90, 45), adjustmentFactor(8)];
  expect(ratingInPlace(30, attic)).toBeCloseTo(18.3, 1); // the attic of lesson 3.1
});

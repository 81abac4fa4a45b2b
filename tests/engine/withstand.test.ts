// The adiabatic rule: how k, time, area and energy hang together, where the formula stops, and what heat lost adds.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adiabaticConstant,
  adiabaticTime,
  allowedTime,
  buildCase,
  cast,
  castScenario,
  conductorOf,
  energyTest,
  kelvin,
  kOf,
  leastArea,
  leastAreaForEnergy,
  metals,
  nonAdiabaticCurrent,
  nonAdiabaticFactor,
  nonAdiabaticTime,
  plastics,
  shortRange,
  sources,
  squareMetres,
  withstand,
} from '#engine';

const { pvc70, xlpe, rubber60 } = plastics;
const small = squareMetres(1.5);
const trade = (k: number | undefined) => 1e-6 * (k ?? Number.NaN);

describe('k', () => {
  it('is the trade’s figure for copper and aluminium in PVC, and says where it comes from', () => {
    const found = kOf(metals.copper, pvc70, small);
    expect(trade(found?.k)).toBeCloseTo(114.8, 1);
    expect(found).toMatchObject({ from: kelvin(70), to: kelvin(160), source: 'iec60364-5-54' });
    expect(trade(kOf(metals.aluminium, pvc70, small)?.k)).toBeCloseTo(76.1, 1);
    expect(trade(kOf(metals.copper, rubber60, small)?.k)).toBeCloseTo(140.7, 1);
    expect(trade(kOf(metals.copper, xlpe, small)?.k)).toBeCloseTo(142.9, 1);
  });

  it('of a clad metal is our own mixing, between its two metals, and says so', () => {
    const clad = kOf(metals.cca10, pvc70, small);
    expect(clad?.statements.map(({ id }) => id)).toContain('own mixing');
    expect(clad).toMatchObject({ source: 'own', confidence: 'our choice' });
    expect(trade(clad?.k)).toBeCloseTo(80, 0);
    expect(kOf(metals.copper, pvc70, small)?.statements.map(({ id }) => id)).not.toContain('own mixing');
  });

  it('of PVC falls above 300 mm², where only 140 °C are allowed', () => {
    expect(trade(kOf(metals.copper, pvc70, squareMetres(300))?.k)).toBeCloseTo(114.8, 1);
    expect(trade(kOf(metals.copper, pvc70, squareMetres(301))?.k)).toBeCloseTo(102.7, 1);
  });

  it('shrinks as the start gets hotter, and is nothing from the final temperature on', () => {
    const warm = fc.tuple(fc.double({ min: -20, max: 250, noNaN: true }), fc.double({ min: 1, max: 100, noNaN: true }));
    fc.assert(
      fc.property(warm, fc.constantFrom(...Object.values(metals)), ([start, more], metal) => {
        const at = (T_degC: number) => adiabaticConstant(metal, kelvin(T_degC), kelvin(250));
        expect(at(start + more)).toBeLessThanOrEqual(at(start));
      }),
    );
    expect(adiabaticConstant(metals.copper, kelvin(160), kelvin(160))).toBe(0);
  });

  it('gives the time of the heat model for a wire of its own metal area', () => {
    for (const key of ['C150', 'SUS'] as const) {
      const of = buildCase(castScenario(key, 1, 20));
      const { conductor } = of.cable;
      // R′ and heat capacity both hold the lay; the printed resistance of a standard size is not ρ/S, so it is put in by hand
      const same = { ...conductor, R20: (conductor.metal.rho20.value / conductor.area) * conductor.lay };
      const ideal = { ...of, cable: { ...of.cable, conductor: same } };
      const t = adiabaticTime(ideal, 300, kelvin(70), kelvin(160));
      const k = adiabaticConstant(conductor.metal, kelvin(70), kelvin(160));
      expect(t / allowedTime(k, conductor.area, 300).value).toBeCloseTo(1, 4);
    }
  });
});

describe('the range of the formula', () => {
  it('is 0.1 to 5 s; beyond it the words name what to use', () => {
    expect([0.0999, 0.1, 5, 5.01].map(shortRange)).toEqual(['let-through', 'adiabatic', 'adiabatic', 'warm-up']);
    const k = adiabaticConstant(metals.copper, kelvin(70), kelvin(160));
    const fast = allowedTime(k, small, 1000);
    expect(fast.value).toBeCloseTo(0.03, 3);
    expect(fast).toMatchObject({ sound: false, range: 'let-through' });
    expect(fast.statement.text).toMatch(/I²t/);
    expect(allowedTime(k, small, 302)).toMatchObject({ sound: true });
    expect(allowedTime(k, small, 302).value).toBeCloseTo(0.325, 2);
    expect(allowedTime(k, small, 30).statement.text).toMatch(/warm-up model/);
    expect(allowedTime(k, small, 0).value).toBe(Number.POSITIVE_INFINITY);
  });

  it('least area rises with current and time, and withstands exactly', () => {
    const I = fc.double({ min: 1, max: 1e4, noNaN: true });
    const t = fc.double({ min: 0.1, max: 5, noNaN: true });
    const k = adiabaticConstant(metals.copper, kelvin(70), kelvin(160));
    fc.assert(
      fc.property(I, t, fc.double({ min: 1, max: 3, noNaN: true }), (I, t, more) => {
        const { value } = leastArea(k, I, t);
        expect(leastArea(k, I * more, t).value).toBeGreaterThanOrEqual(value);
        expect(leastArea(k, I, t * more).value).toBeGreaterThanOrEqual(value);
        expect(withstand(k, value) / (I ** 2 * t)).toBeCloseTo(1, 9);
        expect(allowedTime(k, value, I).value / t).toBeCloseTo(1, 9);
      }),
    );
  });

  it('compares let-through with k²S² on either side of the least area', () => {
    const k = 115e6;
    const S = leastAreaForEnergy(k, 35_000);
    expect(energyTest(k, S * 1.001, 35_000).holds).toBe(true);
    expect(energyTest(k, S * 0.999, 35_000)).toMatchObject({ holds: false });
    expect(energyTest(k, small, 35_000).share).toBeCloseTo(35_000 / 29_756, 4);
  });
});

it('heat lost to the insulation always helps, more for thin cores and long times', () => {
  const S = fc.double({ min: 0.5e-6, max: 300e-6, noNaN: true });
  const t = fc.double({ min: 0.01, max: 5, noNaN: true });
  fc.assert(
    fc.property(S, t, (S, t) => {
      const at = (area: number, time: number) => nonAdiabaticFactor(metals.copper, pvc70, area, time);
      expect(at(S, t)).toBeGreaterThan(1);
      expect(at(S / 2, t)).toBeGreaterThan(at(S, t));
      expect(at(S, t * 2)).toBeGreaterThan(at(S, t));
      expect(nonAdiabaticFactor(metals.copper, pvc70, S, t, 1)).toBeGreaterThan(at(S, t));
    }),
  );
});

it('time with heat lost turns the current with heat lost about, and is never shorter than without', () => {
  const S = fc.double({ min: 0.5e-6, max: 50e-6, noNaN: true });
  const time = fc.double({ min: 0.05, max: 5, noNaN: true });
  const k = adiabaticConstant(metals.copper, kelvin(70), kelvin(160));
  fc.assert(
    fc.property(S, time, (S, t) => {
      const I = nonAdiabaticCurrent(k, metals.copper, pvc70, S, t);
      expect(nonAdiabaticTime(k, metals.copper, pvc70, S, I) / t).toBeCloseTo(1, 9);
      expect(allowedTime(k, S, I).value).toBeLessThan(t);
    }),
  );
  expect(nonAdiabaticTime(k, metals.copper, pvc70, small, 1)).toBe(Number.POSITIVE_INFINITY);
});

it('the suspect lead stands an eighth of what its marking promises', () => {
  const { conductor } = cast.SUS;
  const suspect = conductorOf(conductor, 'conductor');
  const own = kOf(metals.cca10, pvc70, suspect.area);
  const promised = kOf(metals.copper, pvc70, small);
  if (!own || !promised) throw new Error('no k');
  expect(withstand(own.k, suspect.area) / withstand(promised.k, small)).toBeCloseTo(0.123, 2);
  expect(sources[own.source].kind).toBe('own');
});

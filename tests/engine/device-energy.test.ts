// What devices let through as far as their standards tell, and the fixed cables that the engine has walls of.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  buildCase,
  celsius,
  deviceEnergy,
  deviceFamilies,
  energyOver,
  fixedCable,
  meltingEnergy,
  ratingAt,
  ratingOf,
  slowest,
  tradeSize,
} from '#engine';
import { device } from '#engine/protection/devices.ts';

const of = (...args: Parameters<typeof device>) => {
  const found = device(...args);
  if (!found) throw new Error(`no ${args.join(' ')}`);
  return found;
};

describe('I²t of a device', () => {
  it('is what melts a gG fuse at least, and its last gate’s heat at most', () => {
    const { atLeast, atMost } = deviceEnergy(of('gG', 16), 302);
    expect(atLeast?.I2t).toBe(meltingEnergy(16)?.least.value);
    expect(atMost?.I2t).toBeCloseTo(energyOver(150, 0.1), 6);
  });

  it('is not told at most where the slow edge takes more than 5 s', () => {
    expect(deviceEnergy(of('ul489', 20), 250).atMost).toBeNull();
    expect(deviceEnergy(of('B', 16), 20)).toMatchObject({ atMost: null, t: Number.POSITIVE_INFINITY });
  });

  it('is class 3 of a small breaker where that is the lesser', () => {
    expect(deviceEnergy(of('B', 16), 3000).atMost?.I2t).toBe(35_000);
    expect(deviceEnergy(of('B', 16), 200).atMost?.I2t).toBeCloseTo(energyOver(200, 0.1), 6);
  });

  it('is the maker’s where a figure is given', () => {
    const { atLeast, atMost } = deviceEnergy(of('ul489', 20), 250, { preArcing: 400, letThrough: 9000 });
    expect([atLeast?.I2t, atMost?.I2t]).toEqual([400, 9000]);
    expect(atMost?.source).toBe('user');
  });

  it('never has more at least than at most, and never more at most than the slow edge lets', () => {
    const any = fc.constantFrom(...deviceFamilies.flatMap(({ ratings, make }) => ratings.map((In) => make(In))));
    fc.assert(
      fc.property(any, fc.double({ min: 1, max: 20_000, noNaN: true }), (one, I) => {
        const { atLeast, atMost } = deviceEnergy(one, I);
        if (atLeast && atMost) expect(atLeast.I2t).toBeLessThanOrEqual(atMost.I2t * (1 + 1e-9));
        if (atMost) expect(atMost.I2t).toBeLessThanOrEqual(energyOver(I, slowest(one, I, 'guaranteed')) * (1 + 1e-9));
      }),
    );
  });
});

describe('a fixed cable', () => {
  it('carries about what its table says, clipped by itself: 2.5 mm² 27 A within 12 %', () => {
    const cable = fixedCable({ system: 'mm2', size: 2.5, area: 2.5e-6, name: '2.5 mm²' });
    if (!cable) throw new Error('2.5 mm² has walls');
    const thermal = buildCase({
      cable,
      surroundings: { kind: 'clipped', ambient_degC: 30 },
      supply: [{ kind: 'current', I_A: 1 }],
    });
    expect(celsius(ratingOf(thermal.cable) ?? 0)).toBeCloseTo(70, 6);
    expect((ratingAt(thermal, ratingOf(thermal.cable) ?? 0) ?? 0) / 27).toBeGreaterThan(0.88);
    expect((ratingAt(thermal, ratingOf(thermal.cable) ?? 0) ?? 0) / 27).toBeLessThan(1.12);
  });

  it('has no walls for a size it does not know', () => {
    const thick = tradeSize('mm2', 25);
    expect(thick && fixedCable(thick)).toBeNull();
  });
});

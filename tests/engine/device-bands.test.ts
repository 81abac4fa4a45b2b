// Bands of every tabled device: monotone, never crossing, hard at the conventional currents.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EdgeForm, fastest, slowest } from '#engine/protection/band.ts';
import { type Device, deviceConfidence } from '#engine/protection/device.ts';
import { device, deviceFamilies, deviceOf } from '#engine/protection/devices.ts';
import { scenarioFromLink } from '#engine/scenario/from-link.ts';
import { parseScenario } from '#engine/scenario/parse.ts';
import { scenarioToLink } from '#engine/scenario/to-link.ts';

const all = deviceFamilies.flatMap(({ ratings, make }) => ratings.map(make));
const anyDevice = fc.constantFrom(...all);
const ratio = fc.integer({ min: 0, max: 100_000 }).map((i) => 10 ** (-1 + (i / 100_000) * 3.5));
const forms = fc.constantFrom<EdgeForm>('guaranteed', 'assumed');
/** Where there is no line to draw, the staircase holds. */
const slow = (of: Device, I: number, form: EdgeForm) => slowest(of, I, form) ?? slowest(of, I, 'guaranteed');
const fast = (of: Device, I: number, form: EdgeForm) => fastest(of, I, form) ?? fastest(of, I, 'guaranteed');

describe('the band of any device', () => {
  it('never lets its edges cross', () => {
    fc.assert(
      fc.property(anyDevice, ratio, forms, (of, x, form) => {
        expect(fast(of, x * of.In, form)).toBeLessThanOrEqual(slow(of, x * of.In, form) * (1 + 1e-9));
      }),
      { seed: 4, numRuns: 20_000 },
    );
  });

  it('falls with current, on both edges and in both forms', () => {
    fc.assert(
      fc.property(anyDevice, ratio, ratio, forms, (of, x, y, form) => {
        const [a, b] = [Math.min(x, y) * of.In, Math.max(x, y) * of.In];
        expect(slow(of, b, form)).toBeLessThanOrEqual(slow(of, a, form) * (1 + 1e-9));
        expect(fast(of, b, form)).toBeLessThanOrEqual(fast(of, a, form) * (1 + 1e-9));
      }),
      { seed: 5, numRuns: 20_000 },
    );
  });

  it('keeps the assumed edges inside the guaranteed ones', () => {
    fc.assert(
      fc.property(anyDevice, ratio, (of, x) => {
        const I = x * of.In;
        expect(slow(of, I, 'assumed')).toBeLessThanOrEqual(slow(of, I, 'guaranteed') * (1 + 1e-9));
        expect(fast(of, I, 'assumed')).toBeGreaterThanOrEqual(fast(of, I, 'guaranteed') * (1 - 1e-9));
      }),
      { seed: 6, numRuns: 20_000 },
    );
  });

  it('holds for ever up to the conventional current, and acts from the other on', () => {
    for (const of of all) {
      expect(fastest(of, of.hold.I, 'guaranteed')).toBe(Number.POSITIVE_INFINITY);
      expect(of.hold.I).toBeGreaterThanOrEqual(of.In);
      const first = of.by[0];
      if (!first) continue;
      expect(slowest(of, first.I * (1 - 1e-9), 'guaranteed')).toBe(Number.POSITIVE_INFINITY);
      expect(slowest(of, first.I, 'guaranteed')).toBe(first.t);
      expect(first.I).toBeGreaterThan(of.hold.I);
      if (of.agreed) expect(of.I2).toBeCloseTo(first.I, 9);
    }
  });

  it('says where the standard is silent', () => {
    for (const of of all) expect(of.silent).toMatch(/^[A-Z].*\.$/);
    expect(slowest(device('ul489', 20) as Device, 41, 'assumed')).toBeNull();
    expect(fastest(device('ul489', 20) as Device, 21, 'assumed')).toBeNull();
    expect(slowest(device('bs1362', 5) as Device, 100, 'guaranteed')).toBe(1800);
  });

  it('is as sure as its least sure point', () => {
    expect(deviceConfidence(device('bs1362', 13) as Device)).toBe('seen');
    expect(deviceConfidence(device('gG', 16) as Device)).toBe('from memory');
    expect(deviceConfidence(device('gG', 2) as Device)).toBe('seen');
  });
});

const lead = {
  cable: { table: 'H05VV-F', cores: 3, size_mm2: 1.5 },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: [{ kind: 'current', I_A: 30 }],
};
const fault = (given: unknown) => parseScenario({ ...lead, device: given }).faults?.[0];

describe('the device of a scenario', () => {
  it('is optional, and goes through a link', () => {
    const { scenario } = parseScenario({ ...lead, device: { family: 'bs1362', rating_A: 13 } });
    expect(scenario?.device).toEqual({ family: 'bs1362', rating_A: 13 });
    if (scenario) expect(scenarioFromLink(scenarioToLink(scenario)).scenario).toEqual(scenario);
  });

  it('is refused in words where no such rating is made', () => {
    expect(fault({ family: 'bs1362', rating_A: 12 })).toEqual({
      path: 'device.rating_A',
      message: 'is 12 A; a plug fuse (BS 1362) is made for: 1, 2, 3, 5, 7, 10, 13 A',
    });
    expect(fault({ family: 'gH', rating_A: 12 })?.path).toBe('device.family');
    expect(fault({ family: 'gG', rating_A: -1 })?.message).toMatch(/must be a number/);
    expect(fault('a fuse')?.path).toBe('device');
  });

  it('may be a maker’s curve, if its points make a band', () => {
    const own = {
      rating_A: 10,
      hold_A: 12,
      slow: [
        [15, 3600],
        [30, 20],
        [100, 0.1],
      ],
      fast: [
        [20, 10],
        [50, 0.05],
      ],
    } as const;
    const of = deviceOf({ ...own, slow: own.slow.map(([a, b]) => [a, b]), fast: own.fast.map(([a, b]) => [a, b]) });
    expect(slowest(of, 40, 'guaranteed')).toBe(20);
    expect(slowest(of, 12, 'guaranteed')).toBe(Number.POSITIVE_INFINITY);
    expect(fault({ ...own })).toBeUndefined();
    expect(
      fault({
        ...own,
        slow: [
          [15, 10],
          [14, 5],
        ],
      })?.path,
    ).toBe('device.slow.1');
    expect(fault({ ...own, slow: [[11, 10]] })?.message).toMatch(/holds 12 A for ever/);
    expect(fault({ ...own, fast: [[40, 30]] })?.path).toBe('device.fast');
    expect(fault({ ...own, slow: [] })?.message).toMatch(/at least one point/);
    expect(fault({ ...own, slow: [[15]] })?.path).toBe('device.slow.0.1');
  });
});

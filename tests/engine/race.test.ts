// The race at a held current: cable to its limit against device to its act. The verdict must be the harm set's, told in time.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { castScenario } from '#engine/examples/cast.ts';
import { buildCase, type ThermalCase } from '#engine/heating/thermal-case.ts';
import type { Limit } from '#engine/material/limits.ts';
import { bandAt } from '#engine/protection/band.ts';
import type { Device } from '#engine/protection/device.ts';
import { device } from '#engine/protection/devices.ts';
import { harmSet } from '#engine/protection/harm-set.ts';
import { type RaceFirst, raceOf, shareUsed } from '#engine/protection/race.ts';
import { predictWithDevice } from '#engine/protection/series-of.ts';
import { celsius } from '#engine/quantity.ts';
import { ambients, anyDevice, anyMake, anyPlace, caseOf, limitsAsked } from './harm-cases.ts';

const plug = device('bs1362', 13) as Device;
const limitOf = (of: ThermalCase, id = 'rating') => of.limits.find((limit) => limit.id === id) as Limit;
const race = (I: number, of = buildCase(castScenario('C150', 10, 25)), by = plug, id = 'rating') =>
  raceOf(of, by, limitOf(of, id), I);
const suspect = buildCase(castScenario('SUS', 10, 25));

describe('a race at a held current', () => {
  it.each<[string, number, RaceFirst]>([
    ['below the gap nobody arrives', 17.4, 'neither'],
    ['past the conventional current, yet below the rating current, the fuse may act or hold', 21, 'device or neither'],
    ['in the gap it may be either', 30, 'either'],
    ['between the two parts of the gap the fuse is surely first', 52, 'device'],
  ])('%s', (_name, I, first) => {
    expect(race(I).first).toBe(first);
  });

  it('names the conductor where the device must hold, or may not act so soon', () => {
    expect(race(17.4, suspect).first).toBe('conductor');
    // the fuse may act from 1 s on; a cable that is past its limit before is there at 0
    const hot = buildCase({ ...castScenario('SUS', 10, 25), start: { T_degC: 90 } });
    expect(race(25, hot)).toMatchObject({ conductor: 0, first: 'conductor' });
  });

  it('calls a tie where the two times are too near to tell, on either side of it', () => {
    const of = buildCase(castScenario('C150', 10, 25));
    const { conductor } = race(30);
    const at = (t: number): Device => ({ ...plug, by: [{ I: 29, t, confidence: 'seen' }] });
    expect(race(30, of, at(conductor * 1.01)).first).toBe('together');
    expect(race(30, of, at(conductor * 0.99)).first).toBe('together');
    expect(race(30, of, at(conductor * 0.97)).first).toBe('device');
    expect(race(30, of, at(conductor * 1.03)).first).toBe('either');
  });

  it('says what straight lines between the points would make of it, where that is another answer', () => {
    expect(race(45)).toMatchObject({ first: 'either', assumed: 'device' });
    expect(race(30).assumed).toBeNull();
    expect(race(52).assumed).toBeNull();
  });

  it('tells the very times at which a device in series acts', () => {
    for (const I of [25, 30, 52, 80]) {
      const scenario = {
        ...castScenario('C150', I, 25, 4000),
        device: { family: 'bs1362', rating_A: 13 } as const,
      };
      const { surelyBy, mayFrom, assumed } = predictWithDevice(scenario).run.device as NonNullable<
        ReturnType<typeof predictWithDevice>['run']['device']
      >;
      const { band } = race(I);
      expect(band.slowest).toBeCloseTo(surelyBy as number, 6);
      expect(band.fastest).toBeCloseTo(mayFrom as number, 6);
      if (assumed.surelyBy !== null) expect(band.assumed.slowest).toBeCloseTo(assumed.surelyBy, 6);
    }
  });

  it('brings the curve of its run to the limit at the time it tells', () => {
    for (const I of [25, 30, 40]) {
      const { run, limit, conductor } = race(I);
      const event = run.events.find((one) => one.limit.id === limit.id && one.end === 'low');
      expect(Math.abs((event?.t ?? 0) / conductor - 1)).toBeLessThan(2e-3); // two tolerances of one solver
    }
  });

  it('ends the run where the device has surely acted, and is looked at until the later arrival', () => {
    const sure = race(52);
    expect(sure.run.outcome).toBe('device opened');
    expect(sure.run.end).toBeCloseTo(20, 6);
    expect(sure.end).toBeGreaterThan(sure.conductor);
    const either = race(30);
    expect(either.run.end).toBeCloseTo(400, 6);
    expect(either.end).toBeGreaterThan(400);
    // the fuse would keep us waiting for more than eight times as long
    expect(race(30, suspect).end).toBeLessThan(2 * race(30, suspect).conductor);
    // nobody arrives: the half hour for which BS 1362 tests that the fuse holds
    expect(race(17.4).end).toBe(1800);
  });

  it('leaves out the supply and the cycles of the case, and keeps its start', () => {
    const busy = buildCase({
      ...castScenario('C150', 10, 25),
      supply: [{ kind: 'current', I_A: 60, duration_s: 5 }, { kind: 'off' }],
      cycles: 9,
    });
    expect(race(30, busy).conductor).toBe(race(30).conductor);
    expect(race(30, busy).run.curves.conductor.at(-1)).toBe(race(30).run.curves.conductor.at(-1));
    const warm = buildCase({ ...castScenario('C150', 10, 25), start: { steadyAt_A: 15 } });
    expect(race(30, warm).conductor).toBeLessThan(race(30).conductor);
    expect(celsius(race(30, warm).run.curves.conductor[0] as number)).toBeGreaterThan(40);
  });

  it('lets harm come first at the currents of the harm set, and at no others', () => {
    const cables = anyMake.chain((make) => fc.constantFrom(0.75, 1.5, 4, 10).map(make));
    const shares = fc.double({ min: 0.5, max: 20, noNaN: true });
    fc.assert(
      fc.property(cables, anyPlace, ambients, anyDevice, shares, (cable, place, ambient, of, times) => {
        const thermal = buildCase(caseOf(cable, place, ambient));
        const I = of.In * times;
        for (const limit of limitsAsked(thermal)) {
          const set = harmSet(thermal, of, limit, { prospective: 40 * of.In });
          const inside = set.spans.some(({ from, to }) => I > from.I * 1.01 && I < to.I * 0.99);
          const outside = set.spans.every(({ from, to }) => I < from.I * 0.99 || I > to.I * 1.01);
          const { first, conductor, band } = raceOf(thermal, of, limit, I);
          const told = `${I} A, ${limit.id}: ${conductor} s against ${band.slowest} s`;
          // times to a limit beyond the longest of the device are not the harm set's business
          if (inside && band.slowest < Number.POSITIVE_INFINITY)
            expect(['conductor', 'either', 'together'], told).toContain(first);
          if (outside) expect(['neither', 'device or neither', 'device', 'together'], told).toContain(first);
        }
      }),
      { seed: 71, numRuns: 60 },
    );
  });
});

describe('the share of its operation that a device has used', () => {
  it('grows evenly to one, and stays there', () => {
    expect([0, 100, 200, 400, 900].map((t) => shareUsed(t, 400))).toEqual([0, 0.25, 0.5, 1, 1]);
  });

  it('is nothing where it holds for ever, and all where nothing keeps it from acting at once', () => {
    expect(shareUsed(3600, bandAt(plug, 13).slowest)).toBe(0);
    expect(shareUsed(0, bandAt(device('ul489', 20) as Device, 25).fastest)).toBe(1);
  });
});

// Round the loop, whether a fault clears in time, which of two fuses goes first, and what contacts make of the current.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  actingCurrent,
  buildCase,
  cast,
  castScenario,
  celsius,
  classThreeEnergy,
  clearsInTime,
  conductorOf,
  contactsBeside,
  disconnectionTime,
  effectivePath,
  greatestLoop,
  kelvin,
  type LoopPart,
  loopOf,
  meltingEnergy,
  otherSenses,
  partOf,
  type Slowest,
  selectiveByCurves,
  selectiveGG,
  sources,
  twoAnswers,
  usualContacts,
} from '#engine';
import { slowest } from '#engine/protection/band.ts';
import type { DeviceFamily } from '#engine/protection/device.ts';
import { device } from '#engine/protection/devices.ts';

const of = (family: DeviceFamily, In: number) => {
  const found = device(family, In);
  if (!found) throw new Error(`no ${family} of ${In} A`);
  return found;
};
const edge =
  (family: DeviceFamily, In: number): Slowest =>
  (I) =>
    slowest(of(family, In), I, 'guaranteed');
const genuine = conductorOf({ size_mm2: 1.5 }, 'conductor');
const suspect = conductorOf(cast.SUS.conductor, 'conductor');
const fixed: LoopPart = { name: 'fixed wiring', R20: 0.4, alpha20: 0.00393 };
const final = disconnectionTime(230);
if (!final) throw new Error('230 V has a time');

describe('the polytunnel', () => {
  const loop = (conductor: typeof genuine) =>
    loopOf({
      U0: 230,
      Ze: 0.35,
      parts: [fixed, partOf('line', conductor, 30), partOf('earth', conductor, 30)],
      T: kelvin(70),
    });

  it('clears behind the genuine lead and not behind the suspect', () => {
    const good = clearsInTime(loop(genuine), edge('B', 16), final);
    expect(good.steps.find(({ id }) => id === 'loop')).toMatchObject({ symbol: 'Zs' });
    expect(loop(genuine).Zs).toBeCloseTo(1.79, 1);
    expect(good.I).toBeCloseTo(122.5, 0);
    expect(good).toMatchObject({ outcome: 'met', t: 0.1 });
    expect(good.greatestLoop).toBeCloseTo(2.73, 2);
    const bad = clearsInTime(loop(suspect), edge('B', 16), final);
    expect(bad.outcome).toBe('not met');
    expect(bad.I).toBeCloseTo(64, 0);
  });

  it('asks for no ohms in North America, and tells the current', () => {
    const american = effectivePath(
      loopOf({ U0: 120, Ze: 0.1, parts: [fixed], T: kelvin(70), Cmin: 1 }),
      edge('ul489', 20),
    );
    expect(american).toMatchObject({ outcome: 'no rule', greatestLoop: null });
    expect(american.I).toBeGreaterThan(100);
    expect(american.t).toBeGreaterThan(0.4); // two minutes: the only time that UL 489 promises
  });

  it('has no answer where the standard is silent', () => {
    const silent = clearsInTime(loop(genuine), () => null, final);
    expect(silent).toMatchObject({ outcome: 'not shown', Ia: null, greatestLoop: null });
  });
});

it('the boatyard: current falls along the lead and with the metal', () => {
  const end = (conductor: typeof genuine) =>
    loopOf({
      U0: 230,
      Ze: 0.23,
      parts: [partOf('line', conductor, 20), partOf('neutral', conductor, 20)],
      T: kelvin(70),
    });
  expect(end(genuine).greatest).toBeCloseTo(302, 0);
  expect(end(suspect).greatest).toBeCloseTo(138, 0);
});

describe('the acting current', () => {
  it('of a breaker is the upper end of its instantaneous zone, whatever the time', () => {
    for (const t of [0.1, 0.4, 5]) expect(actingCurrent(edge('C', 10), t)).toBeCloseTo(100, 6);
  });

  it('is where the slow edge falls to the time, and the loop that lets it flow clears', () => {
    const I0 = fc.double({ min: 5, max: 500, noNaN: true });
    const time = fc.constantFrom(0.2, 0.4, 0.8, 5);
    fc.assert(
      fc.property(I0, fc.double({ min: 1.5, max: 6, noNaN: true }), time, (I0, power, t) => {
        const law: Slowest = (I) => (I <= I0 ? Number.POSITIVE_INFINITY : 10 * (I0 / I) ** power);
        const Ia = actingCurrent(law, t) ?? Number.NaN;
        expect(law(Ia * 1.000001)).toBeLessThanOrEqual(t);
        expect(law(Ia * 0.999)).toBeGreaterThan(t);
        const limit = { ...final, t };
        const at = (Zs: number) =>
          clearsInTime(loopOf({ U0: 230, Ze: Zs, parts: [], T: kelvin(70) }), law, limit).outcome;
        expect(at(greatestLoop(230, Ia) * 0.999)).toBe('met');
        expect(at(greatestLoop(230, Ia) * 1.001)).toBe('not met');
      }),
    );
  });

  it('is missing where no current opens the device in time', () => {
    expect(actingCurrent(() => Number.POSITIVE_INFINITY, 0.4)).toBeNull();
    expect(disconnectionTime(50)).toBeNull();
  });
});

describe('two devices in series', () => {
  it('gG fuses of the same series stand apart, neighbours of both series do not', () => {
    for (const [upper, lower] of [
      [25, 16],
      [32, 20],
      [40, 25],
      [50, 32],
      [63, 40],
      [100, 63],
      [125, 80],
    ])
      expect(selectiveGG(upper as number, lower as number).selective).toBe(true);
    expect(selectiveGG(32, 16).selective).toBe(true);
    expect(selectiveGG(32, 25).selective).toBe(false);
    expect(selectiveGG(20, 16).selective).toBe(false);
    expect(selectiveGG(16, 10)).toMatchObject({ selective: null, pair: null });
    expect(selectiveGG(32, 16)).toMatchObject({
      confidence: 'seen',
      pair: { upstream: 1800, downstream: 1000 },
    });
  });

  it('with a ratio of 1.6 the lower never needs more heat than the upper withstands, by the melting table', () => {
    const ratings = [16, 20, 25, 32, 40, 50, 63, 80, 100, 125];
    for (const upper of ratings)
      for (const lower of ratings) {
        const { selective, pair } = selectiveGG(upper, lower);
        if (selective && pair) expect(pair.downstream).toBeLessThanOrEqual(pair.upstream);
      }
  });

  it('by makers’ curves the lesser heat decides', () => {
    expect(selectiveByCurves({ upstream: 5000, downstream: 4000 }).selective).toBe(true);
    expect(selectiveByCurves({ upstream: 4000, downstream: 4000 }).selective).toBe(false);
  });

  it('energies grow with rating and capacity, and stop where the tables stop', () => {
    const all = [16, 20, 25, 32, 40, 50, 63, 80, 100, 125].map((In) => meltingEnergy(In));
    expect(all.every((one) => one && one.least.value < one.greatest.value)).toBe(true);
    expect(meltingEnergy(10)).toBeNull();
    expect(classThreeEnergy('B', 16, 10_000)).toMatchObject({ value: 70_000, confidence: 'seen' });
    expect(classThreeEnergy('B', 40, 10_000)).toBeNull();
    expect(classThreeEnergy('B', 16, 5000)).toBeNull();
  });
});

it('a poor terminal makes the heat of metres of lead', () => {
  const poor = usualContacts.find(({ kind }) => kind === 'terminal');
  const beside = contactsBeside([{ kind: 'terminal', name: 'line terminal', R: poor?.poor ?? Number.NaN }], 13, 4.5);
  expect(beside.W).toBeCloseTo(13 ** 2 * 0.05, 9);
  expect(beside.contacts[0]?.asMetres).toBeCloseTo(beside.W / 4.5, 9);
});

it('devices that see other things hold at any overload, and cite their standard', () => {
  for (const sense of otherSenses) {
    expect(sense.onOverload).toBe('holds');
    expect(sources[sense.source].kind).toBe('standard');
  }
});

describe('the two answers', () => {
  const at = (key: 'C150' | 'A18' | 'SUS', Ib: number, In: { In: number; I2: number | null }, table: number | null) =>
    twoAnswers(buildCase(castScenario(key, Ib, 25)), table === null ? 'none' : 'cord', table, Ib, In);

  it('stand apart for a cord, with reasons and no permission', () => {
    const { ratio, byTemperature, reasons } = at('C150', 10, of('bs1362', 13), 16);
    expect(ratio).toBeGreaterThan(1.2);
    expect(byTemperature.outcome).toBe('within');
    expect(reasons.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['cords are used badly', 'ambient', 'limit', 'no permission']),
    );
  });

  it('part where the rule trusts the load: 18 AWG behind 20 A', () => {
    const { byTemperature } = at('A18', 8, of('ul489', 20), 10);
    expect(byTemperature.outcome).toBe('over at the rating');
    expect(celsius(byTemperature.atRating ?? Number.NaN)).toBeGreaterThan(85);
  });

  it('leave the engine’s alone where no table stands', () => {
    const { byRule, ratio, reasons, byTemperature } = at('SUS', 13, of('bs1362', 13), null);
    expect([byRule, ratio]).toEqual([null, null]);
    expect(reasons[0]?.id).toBe('no table');
    expect(byTemperature.outcome).toBe('over at the load');
  });
});

// What can be done: one change at a time, each judged anew, by rule and by temperature.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cordRating } from '#engine/cable/cord-ratings.ts';
import { cast } from '#engine/examples/cast.ts';
import { ratingAt } from '#engine/heating/rating.ts';
import { buildCase, type ThermalCase } from '#engine/heating/thermal-case.ts';
import type { Device } from '#engine/protection/device.ts';
import { device, standardRatings } from '#engine/protection/devices.ts';
import { harmSet } from '#engine/protection/harm-set.ts';
import { judge, type MendQuestion, mend } from '#engine/protection/mend.ts';
import { kelvin } from '#engine/quantity.ts';
import type { Scenario, SurroundingsSpec } from '#engine/scenario/schema.ts';
import { ambients, anyDevice, anyPlace, caseOf, limitsAsked, tabledCable } from './harm-cases.ts';

const still = (ambient_degC: number): SurroundingsSpec => ({ kind: 'stillAir', ambient_degC });
const of = (cable: Scenario['cable'], surroundings = still(25), length_m = 10): ThermalCase =>
  buildCase({ cable, surroundings, supply: [{ kind: 'current', I_A: 1 }], lead: { length_m } });
const limit = (thermal: ThermalCase, kind = 'rating') =>
  thermal.limits.find((one) => one.kind === kind) as (typeof thermal.limits)[number];
const plug = device('bs1362', 13) as Device;
const words = (thermal: ThermalCase, by: Device, question: MendQuestion, kind?: string) =>
  mend(thermal, by, limit(thermal, kind), question).ways.map((way) => way.words.replaceAll('\u00A0', ' '));

describe('what mends', () => {
  it('the suspect lead behind a 13 A plug fuse is a smaller fuse, or a sound cord', () => {
    expect(words(of(cast.SUS, still(20)), plug, { prospective: 1000, Ib: 6 })).toEqual([
      'Fit a 10 A plug fuse instead. No cord standard allows this lead even then.',
      'Use a sound copper cord of 1.5 mm².',
    ]);
  });

  it('the suspect lead that carries more than it stands is a sound cord alone', () => {
    expect(words(of(cast.SUS), plug, { prospective: 1000, Ib: 12 })).toEqual(['Use a sound copper cord of 1.5 mm².']);
  });

  it('an 18 AWG cord behind a 20 A breaker is a smaller breaker, or a thicker cord that is rated for 20 A', () => {
    const question = { prospective: 1000, Ib: 9, make: 'listed set' } as const;
    expect(words(of(cast.A18), device('ul489', 20) as Device, question)).toEqual([
      'Fit a 15 A breaker (UL 489) instead.',
      'Use a copper cord of 12 AWG.',
    ]);
  });

  it('a reel is unwinding it', () => {
    const reel: SurroundingsSpec = { kind: 'coiled', ambient_degC: 20, drum_mm: 120, turns: 12, wound_m: 25 };
    expect(words(of(cast.C125, reel, 25), plug, { prospective: 1000, Ib: 10 })).toContain('Unwind the cable fully.');
  });

  it('two heaters on one plug is one heater', () => {
    expect(words(of(cast.C150), plug, { prospective: 1000, Ib: 17.4 })).toEqual(['Keep the load at 13 A or less.']);
  });

  it('may be nothing at all, or not be found', () => {
    const sound = mend(of(cast.C150), plug, limit(of(cast.C150)), { prospective: 1000, Ib: 10 });
    expect([sound.ways, sound.words]).toEqual([[], 'Nothing needs to be mended.']);
    expect(sound.now.accepted.map(({ where }) => where)).toEqual(['433.1', '435.1']);
    const none = mend(of(cast.A18), device('ul489', 20) as Device, limit(of(cast.A18), 'shortTime'), {
      prospective: 1000,
      Ib: 9,
    });
    expect([none.ways, none.words]).toEqual([[], 'No single change does it.']);
  });

  it('accepts nothing where the cable cannot carry the device’s rating for ever, whatever the table says', () => {
    // a drum: the plug's table knows nothing of it
    const reel: SurroundingsSpec = { kind: 'coiled', ambient_degC: 20, drum_mm: 120, turns: 12, wound_m: 25 };
    const thermal = of(cast.C125, reel, 25);
    const judged = judge(thermal, plug, limit(thermal), { prospective: 1000, Ib: 3 });
    expect(judged.rule.outcome).toBe('met');
    expect(judged.leaves).toBe('harm');
    expect(judged.sound).toBe(false);
  });

  it('takes a copper cord that resists more than its marking allows for what it is', () => {
    const poor = (R20_ohmPerKm: number) => of({ ...cast.C150, conductor: { R20_ohmPerKm } });
    const question = { prospective: 1000, Ib: 10 };
    expect(words(poor(26), plug, question)).toContain('Use a sound copper cord of 1.5 mm².');
    // not so poor that its temperature would tell
    const answer = mend(poor(20), plug, limit(poor(20)), question);
    expect([answer.now.sound, answer.now.refused, answer.ways.length]).toEqual([true, true, 1]);
    expect(answer.words).toMatch(
      /^By its temperature it needs no mending. No cord standard allows this lead. Use a sound/,
    );
  });

  it('always mends: rule met, nothing left that no rule accepts, standard ratings, one change', () => {
    let found = 0;
    fc.assert(
      fc.property(
        tabledCable,
        anyPlace,
        ambients,
        anyDevice,
        fc.double({ min: 0.2, max: 1.4, noNaN: true }),
        fc.constantFrom('appliance' as const, 'block' as const),
        (cable, place, ambient, by, load, feeds) => {
          const thermal = buildCase(caseOf(cable, place, ambient));
          const Ib = +(load * by.In).toPrecision(3);
          const question = { prospective: 1000, Ib, feeds };
          for (const asked of limitsAsked(thermal).slice(0, 2)) {
            const answer = mend(thermal, by, asked, question);
            expect(answer.words).toMatch(/^[A-Z].*\.$/);
            if (answer.now.sound && !answer.now.refused) expect(answer.ways).toEqual([]);
            if (answer.ways.length === 0) expect(answer.words).toMatch(/^N.* (mended|does it)\.$|allows this lead\.$/);
            for (const way of answer.ways) {
              found++;
              const { In, family } = way.device;
              expect(way.judged.sound).toBe(true);
              expect(way.judged.rule.outcome).toBe('met');
              expect(In).toBeGreaterThanOrEqual(way.Ib);
              if (family !== 'own') expect(standardRatings(family)).toContain(In);
              const changed = buildCase(way.scenario);
              expect(ratingAt(changed, limit(changed).low)).toBeGreaterThanOrEqual(In);
              if (way.kind === 'size') {
                const rated = cordRating(changed.cable);
                if (rated) expect(rated.I).toBeGreaterThanOrEqual(In);
                expect(changed.cable.conductor.area).toBeGreaterThan(0);
              }
              const parts = [way.device !== by, way.scenario !== thermal.scenario, way.Ib !== Ib];
              expect(parts.filter(Boolean).length).toBe(1);
              const again = harmSet(
                changed,
                way.device,
                changed.limits.find(({ id }) => id === asked.id) as typeof asked,
                {
                  prospective: 1000,
                  Ib: way.Ib,
                },
              );
              expect(again.spans).toEqual(way.judged.harm.spans);
              if (way.judged.leaves === 'nothing') expect(again.spans).toEqual([]);
            }
          }
        },
      ),
      { seed: 61, numRuns: 300 },
    );
    expect(found).toBeGreaterThan(50);
  }, 120_000);
});

/** A lead marked 1.5 mm² with `count` strands of 0.20 mm copper-clad aluminium, a tenth of it copper. */
const clad = (count: number): Scenario['cable'] => ({
  ...cast.SUS,
  conductor: { metal: 'cca10', size_mm2: 1.5, strands: { count, diameter_mm: 0.2 } },
});
/** Its resistance over the table's greatest for 1.5 mm². */
const times = (count: number) => of(clad(count)).cable.conductor.R20 / 13.3e-3;

describe('facts of the trade (common practice, no source)', () => {
  it('a 13 A plug fuse does not act at 13 A and must carry 20 A for half an hour', () => {
    const thermal = of(cast.C150, still(20));
    for (const I of [13, 20]) {
      const set = harmSet(thermal, plug, limit(thermal), { prospective: I });
      expect(set.spans).toEqual([]);
      expect(plug.hold.I).toBeGreaterThan(I);
    }
    expect(plug.hold.t).toBeGreaterThanOrEqual(1800);
  });

  it('a clad lead marked 1.5 mm² of 2.7 times the table resistance and more passes 70 °C at the fuse’s own current', () => {
    for (const count of [24, 22, 18]) {
      expect(times(count)).toBeGreaterThan(2.7);
      const set = harmSet(of(clad(count)), plug, limit(of(clad(count))), { prospective: 1000 });
      expect(set.Iz).toBeLessThan(13);
      expect(set.spans[0]?.from.I).toBeLessThan(plug.In);
    }
  });

  it('at twice the table resistance it does so only when covered or wound', () => {
    expect(times(32)).toBeCloseTo(2, 1);
    expect(ratingAt(of(clad(32)), kelvin(70))).toBeGreaterThan(13);
    const covered: SurroundingsSpec = { kind: 'lagged', ambient_degC: 25, thickness_mm: 25, conductivity_WPerMK: 0.05 };
    const wound: SurroundingsSpec = { kind: 'coiled', ambient_degC: 25, drum_mm: 200, turns: 12, wound_m: 10 };
    for (const place of [covered, wound]) expect(ratingAt(of(clad(32), place), kelvin(70))).toBeLessThan(13);
  });

  it('that fuse never protects it', () => {
    const thermal = of(clad(24));
    const judged = judge(thermal, plug, limit(thermal), { prospective: 1000, Ib: 10 });
    expect([judged.rule.outcome, judged.leaves]).toEqual(['not met', 'harm']);
  });

  it('aluminium of equal size carries about 0.78 of copper’s Iz', () => {
    const wire = (metal: 'copper' | 'aluminium'): Scenario['cable'] => ({
      layout: 'round',
      cores: 2,
      conductor: { metal, size_mm2: 16, class: 2 },
      insulation: { material: 'pvc70', thickness_mm: 1 },
      sheath: { material: 'pvc70', thickness_mm: 1.8 },
    });
    const [Cu, Al] = (['copper', 'aluminium'] as const).map(
      (metal) => ratingAt(of(wire(metal), still(30)), kelvin(70)) as number,
    ) as [number, number];
    expect(Al / Cu).toBeGreaterThan(0.77);
    expect(Al / Cu).toBeLessThan(0.8);
  });
});

// The harm set over random cases: it is what its definition says, it moves the right way, and its words tell it.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ratingAt } from '#engine/heating/rating.ts';
import { runCase } from '#engine/heating/run.ts';
import { buildCase, type ThermalCase } from '#engine/heating/thermal-case.ts';
import type { Limit } from '#engine/material/limits.ts';
import { slowest } from '#engine/protection/band.ts';
import type { Device } from '#engine/protection/device.ts';
import { device } from '#engine/protection/devices.ts';
import { type HarmSet, harmSet } from '#engine/protection/harm-set.ts';
import { harmSets } from '#engine/protection/harm-sets.ts';
import { harmText, harmWords, toldSpans } from '#engine/protection/harm-words.ts';
import {
  ambients,
  anyDevice,
  anyFamily,
  anyMake,
  anyPlace,
  caseOf,
  hasGates,
  limitsAsked,
  missing,
  prospectives,
  tabledCable,
} from './harm-cases.ts';

const cord = (size_mm2: number, ambient_degC = 25) =>
  buildCase(caseOf({ table: 'H05VV-F', cores: 3, size_mm2, loaded: 2 }, { kind: 'stillAir' }, ambient_degC));
const limitOf = (of: ThermalCase, kind: string) => of.limits.find((limit) => limit.kind === kind) as Limit;
const plug = device('bs1362', 13) as Device;

/** Time to a limit at a held current by a whole run [s], from cold or from steady at `Ib` [A]. */
function byRun(of: ThermalCase, limit: Limit, I: number, Ib: number | null): number {
  const run = runCase(
    buildCase({
      ...of.scenario,
      supply: [{ kind: 'current', I_A: I }],
      run: { duration_s: 7200 },
      ...(Ib === null ? {} : { start: { steadyAt_A: Ib } }),
    }),
    { tolerance: 0.02 },
  );
  const event = run.events.find((one) => one.limit.id === limit.id && one.end === 'low');
  return event?.t ?? Number.POSITIVE_INFINITY;
}

describe('a harm set', () => {
  it('holds the currents whose time to the limit is less than the device may take, and no others', () => {
    fc.assert(
      fc.property(
        tabledCable,
        anyPlace,
        ambients,
        anyDevice,
        prospectives,
        fc.double({ min: 0, max: 0.8, noNaN: true }),
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 }),
        (cable, place, ambient, of, prospective, load, parts) => {
          const thermal = buildCase(caseOf(cable, place, ambient));
          for (const limit of limitsAsked(thermal).slice(0, 2)) {
            const Ib = +(load * (ratingAt(thermal, limit.low, limit.place) ?? 0)).toPrecision(3);
            const set = harmSet(thermal, of, limit, { prospective, Ib });
            for (const part of parts) {
              const I = of.In * (prospective / of.In) ** part;
              if (
                I > prospective ||
                [set.Iz, ...set.spans.flatMap(({ from, to }) => [from.I, to.I])].some(
                  (edge) => Math.abs(I / edge - 1) < 5e-3,
                )
              )
                continue;
              const inside = set.spans.some(({ from, to }) => I > from.I && I < to.I);
              const t = slowest(of, I, 'guaranteed');
              const harmed =
                t === Number.POSITIVE_INFINITY ? I > set.Iz : byRun(thermal, limit, I, set.loaded ? Ib : null) < t;
              expect(harmed, `${I} A of ${JSON.stringify(set.spans)}`).toBe(inside);
            }
          }
        },
      ),
      { seed: 41, numRuns: 150 },
    );
  }, 120_000);

  it('never shrinks when the device is of a bigger rating', () => {
    fc.assert(
      fc.property(
        tabledCable,
        anyPlace,
        ambients,
        anyFamily,
        prospectives,
        fc.nat(),
        fc.nat(),
        (cable, place, ambient, { ratings, make }, prospective, i, j) => {
          // where a standard has no points for a rating, nothing can be compared
          const found = ratings.map(make).filter(hasGates);
          if (found.length === 0) return;
          const [a, b] = [i % found.length, j % found.length].sort((x, y) => x - y) as [number, number];
          const thermal = buildCase(caseOf(cable, place, ambient));
          for (const limit of limitsAsked(thermal)) {
            const [small, big] = [a, b].map((k) => harmSet(thermal, found[k] as Device, limit, { prospective })) as [
              HarmSet,
              HarmSet,
            ];
            expect(
              missing(small.spans, big.spans),
              `${(found[a] as Device).name} and ${(found[b] as Device).name}`,
            ).toEqual([]);
          }
        },
      ),
      { seed: 42, numRuns: 300 },
    );
  }, 120_000);

  it('never grows with a bigger conductor of the same metal, insulation and construction', () => {
    const sizes = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35];
    const size = fc.integer({ min: 0, max: sizes.length - 1 });
    fc.assert(
      fc.property(
        anyMake,
        anyPlace,
        ambients,
        anyDevice,
        prospectives,
        size,
        size,
        (make, place, ambient, of, prospective, i, j) => {
          const [thin, thick] = [Math.min(i, j), Math.max(i, j)].map((k) =>
            buildCase(caseOf(make(sizes[k] as number), place, ambient)),
          ) as [ThermalCase, ThermalCase];
          for (const limit of limitsAsked(thin)) {
            const same = thick.limits.find(({ id }) => id === limit.id) as Limit;
            const a = harmSet(thin, of, limit, { prospective });
            const b = harmSet(thick, of, same, { prospective });
            expect(
              missing(b.spans, a.spans),
              `${sizes[Math.min(i, j)]} and ${sizes[Math.max(i, j)]} mm², ${limit.id}`,
            ).toEqual([]);
          }
        },
      ),
      { seed: 43, numRuns: 300 },
    );
  }, 120_000);

  it('never grows in a colder place', () => {
    fc.assert(
      fc.property(
        tabledCable,
        anyPlace,
        ambients,
        ambients,
        anyDevice,
        prospectives,
        (cable, place, x, y, of, prospective) => {
          const [cold, warm] = [Math.min(x, y), Math.max(x, y)].map((T) => buildCase(caseOf(cable, place, T))) as [
            ThermalCase,
            ThermalCase,
          ];
          for (const limit of limitsAsked(cold)) {
            const same = warm.limits.find(({ id }) => id === limit.id) as Limit;
            const a = harmSet(cold, of, limit, { prospective, Ib: 0 });
            const b = harmSet(warm, of, same, { prospective, Ib: 0 });
            expect(missing(a.spans, b.spans), `${x} and ${y} °C, ${limit.id}`).toEqual([]);
          }
        },
      ),
      { seed: 44, numRuns: 300 },
    );
  }, 120_000);

  it('from a load carried before holds all that it holds from cold', () => {
    fc.assert(
      fc.property(
        tabledCable,
        anyPlace,
        ambients,
        anyDevice,
        fc.double({ min: 0.05, max: 0.99, noNaN: true }),
        (cable, place, T, of, part) => {
          const thermal = buildCase(caseOf(cable, place, T));
          const limit = limitOf(thermal, 'rating');
          const Ib = part * (ratingAt(thermal, limit.low) as number);
          const set = harmSet(thermal, of, limit, { prospective: 1000, Ib });
          if (set.loaded) expect(missing(set.cold.guaranteed, set.loaded.guaranteed)).toEqual([]);
        },
      ),
      { seed: 45, numRuns: 200 },
    );
  });

  it('with a straight curve lies within the guaranteed one', () => {
    fc.assert(
      fc.property(tabledCable, anyPlace, ambients, anyDevice, prospectives, (cable, place, T, of, prospective) => {
        const thermal = buildCase(caseOf(cable, place, T));
        for (const limit of limitsAsked(thermal)) {
          const set = harmSet(thermal, of, limit, { prospective });
          expect(missing(set.assumed, set.spans)).toEqual([]);
        }
      }),
      { seed: 46, numRuns: 200 },
    );
  });

  it('begins at Iz, and tells what each edge rests on', () => {
    const of = cord(1.5);
    const set = harmSet(of, plug, limitOf(of, 'rating'), { prospective: 1000 });
    expect(set.spans.map(({ from, to }) => [from.evidence, to.evidence])).toEqual([
      ['thermal', 'gate'],
      ['thermal', 'gate'],
      ['thermal', 'not found'],
    ]);
    expect(set.spans[0]?.from.I).toBe(set.Iz);
    expect(set.spans[0]?.to.I).toBe(50);
    expect(set.assumed[0]?.to.evidence).toBe('assumed');
    expect(set.silentAbove).toBe(100);
    const weak = harmSet(of, device('B', 10) as Device, limitOf(of, 'rating'), { prospective: 90 });
    expect(weak.spans.every(({ to }) => to.evidence !== 'not found')).toBe(true);
  });

  it('is empty where the cable outlasts the device at every current', () => {
    const of = cord(4);
    const set = harmSet(of, device('bs1362', 3) as Device, limitOf(of, 'shortTime'), { prospective: 1000 });
    expect(set.spans).toEqual([]);
    expect(harmText(set)).toMatch(
      /no current takes the conductor past 160\u00A0°C before the 3\u00A0A plug fuse must have opened/,
    );
  });

  it('says that a load which harms by itself does so', () => {
    const of = cord(0.75);
    const set = harmSet(of, plug, limitOf(of, 'rating'), { prospective: 1000, Ib: 16 });
    expect(set.loadHarms).toBe(true);
    expect(set.loaded).toBeNull();
    expect(harmText(set)).toMatch(/^The load of 16\u00A0A alone takes the conductor past 70\u00A0°C\./);
  });

  it('marks a limit of a short circuit that is borrowed for overload', () => {
    const of = cord(0.75);
    expect(harmSet(of, plug, limitOf(of, 'shortTime'), { prospective: 1000 }).borrowed).toBe(true);
    expect(harmSet(of, plug, limitOf(of, 'rating'), { prospective: 1000 }).borrowed).toBe(false);
  });

  it('is the whole range where the place is too hot already', () => {
    const of = cord(1.5, 90);
    const set = harmSet(of, plug, limitOf(of, 'rating'), { prospective: 500 });
    expect(set.Iz).toBe(0);
    expect(set.spans.map(({ from, to }) => [from.I, to.I])).toEqual([[0, 500]]);
  });
});

describe('many harm sets of one cable', () => {
  it('are those that are asked for one by one', () => {
    let worst = 0;
    fc.assert(
      fc.property(
        tabledCable,
        anyPlace,
        ambients,
        prospectives,
        fc.array(anyDevice, { minLength: 1, maxLength: 5 }),
        (cable, place, T, prospective, list) => {
          const thermal = buildCase(caseOf(cable, place, T));
          for (const limit of limitsAsked(thermal)) {
            const question = { prospective, Ib: 1 };
            const many = harmSets(thermal, list, limit, question);
            for (const [i, set] of many.entries()) {
              const one = harmSet(thermal, list[i] as Device, limit, question);
              expect(missing(set.spans, one.spans)).toEqual([]);
              expect(missing(one.spans, set.spans)).toEqual([]);
              expect([set.Iz, set.loadHarms, set.silentAbove]).toEqual([one.Iz, one.loadHarms, one.silentAbove]);
              if (set.spans.length !== one.spans.length) continue;
              for (const [k, span] of set.spans.entries()) {
                const other = one.spans[k] as HarmSet['spans'][number];
                worst = Math.max(worst, Math.abs(span.from.I / other.from.I - 1), Math.abs(span.to.I / other.to.I - 1));
              }
            }
          }
        },
      ),
      { seed: 48, numRuns: 200 },
    );
    expect(worst).toBeLessThan(3e-3);
  }, 60_000);
});

/** Intervals as a reader takes them from the words: 'from 21 A to 57 A', 'from 16 A up'. */
function read(text: string): { from: number; to: number | null }[] {
  return [...text.matchAll(/from ([\d.]+)\u00A0A (?:to ([\d.]+)\u00A0A|up)/gi)].map(([, from, to]) => ({
    from: Number(from),
    to: to === undefined ? null : Number(to),
  }));
}

describe('the words of a harm set', () => {
  it('hold the numbers of the set, rounded outward, and are sentences', () => {
    fc.assert(
      fc.property(
        tabledCable,
        anyPlace,
        ambients,
        anyDevice,
        prospectives,
        fc.constantFrom('iec' as const, 'na' as const),
        (cable, place, T, of, prospective, practice) => {
          const thermal = buildCase(caseOf(cable, place, T));
          for (const limit of limitsAsked(thermal)) {
            const set = harmSet(thermal, of, limit, { prospective, Ib: 1 });
            for (const { id, text, spans } of harmWords(set, practice)) {
              expect(text).toMatch(/^[A-Z0-9].*\.$/);
              expect(text).not.toMatch(/NaN|undefined|Infinity|null/);
              expect(read(text), text).toEqual(spans);
              for (const one of text.split(/(?<=\.) /)) expect(one.split(/ +/).length, one).toBeLessThanOrEqual(25);
              if (id !== 'overload' && id !== 'short circuit') continue;
              for (const { from, to } of spans) {
                const first = set.spans.find((span) => span.from.I >= from * (1 - 1e-9)) as HarmSet['spans'][number];
                expect(from / first.from.I).toBeGreaterThan(0.85);
                const last =
                  to === null ? set.spans.at(-1) : set.spans.findLast((span) => span.to.I <= to * (1 + 1e-9));
                expect(last).toBeDefined();
                if (to === null) expect(last?.to.evidence).toBe('not found');
                else expect(to / (last as HarmSet['spans'][number]).to.I).toBeLessThan(1.15);
              }
            }
          }
        },
      ),
      { seed: 47, numRuns: 300 },
    );
  });

  it('join intervals that only a narrow gap parts', () => {
    const of = cord(1.5);
    const set = harmSet(of, device('B', 16) as Device, limitOf(of, 'rating'), { prospective: 300 });
    expect(set.spans.length).toBe(2);
    expect(toldSpans(set.spans)).toEqual([{ from: 21.5, to: 80 }]);
  });
});

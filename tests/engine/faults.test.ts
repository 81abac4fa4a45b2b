// Bad input: random damage to good scenarios, and links that are no links, give faults and never exceptions.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultLine, scenarioFromLink, scenarioToLink } from '#engine';
import { parseScenario } from '#engine/scenario/parse.ts';
import type { Scenario } from '#engine/scenario/schema.ts';
import { anyScenario } from './arbitrary.ts';
import { cases } from './cases.ts';

type Path = (string | number)[];
const isHolder = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null;

/** Every path into a value, its own (the empty one) left out. */
function pathsOf(value: unknown, at: Path = []): Path[] {
  const own = at.length > 0 ? [at] : [];
  return isHolder(value) ? [...own, ...Object.keys(value).flatMap((key) => pathsOf(value[key], [...at, key]))] : own;
}

/** A copy of `value` in which the place at `path` holds `other`. */
function withOther(value: unknown, [key, ...rest]: Path, other: unknown): unknown {
  if (key === undefined) return other;
  const copy = Array.isArray(value) ? [...value] : { ...(value as object) };
  (copy as Record<string, unknown>)[key] = withOther((copy as Record<string, unknown>)[key], rest, other);
  return copy;
}

const circle: Record<string, unknown> = {};
circle.self = circle;
const deep = Array.from({ length: 50_000 }).reduce<unknown>((inner) => [inner], 1);

const rubbish = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    undefined,
    true,
    '',
    'x',
    [],
    {},
    [[]],
    Number.NaN,
    Number.POSITIVE_INFINITY,
    -1,
    1e300,
    5e-324,
    1n,
    Symbol.iterator,
    () => 1,
    new Date(0),
    new Map(),
    circle,
    deep,
    JSON.parse('{"__proto__": {"kind": "off"}}'),
  ),
  fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true, withSparseArray: true }),
);

const good = fc.oneof(
  fc.constantFrom<unknown>(...Object.values(cases)),
  anyScenario.map((given) => given as unknown),
);

/** Faults are the whole of what comes back: paths, and sentences. */
function expectFaultsOrScenario(given: unknown): void {
  const { scenario, faults } = parseScenario(given);
  expect((scenario === undefined) !== (faults === undefined)).toBe(true);
  for (const { path, message } of faults ?? []) {
    expect(path).toMatch(/^[\w.]*/);
    expect(message.length).toBeGreaterThan(5);
    expect(message.length).toBeLessThan(600);
    expect(message).not.toMatch(/Expected|\[object|undefined/);
  }
}

describe('damaged scenarios', () => {
  it('with anything at all in any one place are refused, or good; never an exception', { timeout: 60_000 }, () => {
    const damaged = good.chain((given) =>
      fc.tuple(fc.constantFrom(...pathsOf(given)), rubbish).map(([path, other]) => withOther(given, path, other)),
    );
    fc.assert(fc.property(damaged, expectFaultsOrScenario), { seed: 7, numRuns: 6000 });
  });

  it('with a name nobody knows are refused by its path', () => {
    const holders = Object.values(cases).flatMap((given) =>
      [[], ...pathsOf(given)]
        .map((path) => ({ given, path }))
        .filter(({ given: whole, path }) => {
          const at = path.reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], whole);
          return isHolder(at) && !Array.isArray(at);
        }),
    );
    for (const { given, path } of holders) {
      const faults = parseScenario(withOther(given, [...path, 'oddity'], 1)).faults;
      expect(faults?.map((fault) => fault.path)).toContain([...path, 'oddity'].join('.'));
    }
  });

  it.each([[null], [undefined], [1], ['text'], [[]], [true], [1n], [() => 1], [deep], [circle]])(
    'that are no scenario at all are refused',
    (given) => {
      expect(parseScenario(given).faults?.length).toBeGreaterThan(0);
    },
  );

  it.each<[string, unknown, string]>([
    [
      'strands that would fill a pipe',
      { conductor: { strands: { count: 5000, diameter_mm: 20 } } },
      'cable.conductor.strands',
    ],
    [
      'a metal without resistance when hot',
      { conductor: { size_mm2: 1, metal: { rho20_nOhmM: 20, alpha20_perK: -0.005, heatCapacity_MJPerM3K: 3 } } },
      'cable.conductor.metal',
    ],
    [
      'a metal without resistance in between',
      {
        conductor: {
          size_mm2: 1,
          metal: { rho20_nOhmM: 20, alpha20_perK: -0.01, beta20_perK2: 2e-5, heatCapacity_MJPerM3K: 3 },
        },
      },
      'cable.conductor.metal',
    ],
    ['a bundle thinner than its metal', { conductor: { size_mm2: 1, bundle_mm: 1 } }, 'cable.conductor.bundle_mm'],
    ['a core that is not there', { conductor: { size_mm2: 1 }, loaded: [1] }, 'cable.loaded'],
  ])('are refused at their place: %s', (_, part, path) => {
    const cable = { layout: 'single', insulation: { material: 'pvc70', thickness_mm: 1 }, ...(part as object) };
    const given = { cable, surroundings: { kind: 'stillAir', ambient_degC: 20 }, supply: [{ kind: 'off' }] };
    expect(parseScenario(given).faults?.map((fault) => fault.path)).toEqual([path]);
  });
});

describe('contacts and fault paths', () => {
  const cord = {
    cable: { table: 'H05VV-F', cores: 3, size_mm2: 1 },
    surroundings: { kind: 'stillAir', ambient_degC: 20 },
    supply: [{ kind: 'off' }],
  };
  const pin = { kind: 'pin', R_ohm: 0.001 };

  it.each<[string, object, RegExp]>([
    [
      'a kind nobody knows',
      { lead: { contacts: [{ kind: 'clip', R_ohm: 0.1 }] } },
      /^lead\.contacts\.0\.kind is "clip"; it must be one of: pin, terminal, joint, fuse$/,
    ],
    [
      'ohms below nothing',
      { lead: { contacts: [pin, { kind: 'pin', R_ohm: -1 }] } },
      /^lead\.contacts\.1\.R_ohm is -1; it must be a number from 0 to 1000 Ω$/,
    ],
    ['a contact without ohms', { lead: { contacts: [{ kind: 'joint' }] } }, /^lead\.contacts\.0\.R_ohm is missing$/],
    ['too many contacts', { lead: { contacts: Array(13).fill(pin) } }, /^lead\.contacts holds more than 12 contacts$/],
    ['a path without an origin', { fault: { line_ohm: 0.1 } }, /^fault\.Ze_ohm is missing$/],
    [
      'an origin of no ohms',
      { fault: { Ze_ohm: 0 } },
      /^fault\.Ze_ohm is 0; it must be a number from 0\.001 to 1000 Ω$/,
    ],
    [
      'a name nobody knows',
      { fault: { Ze_ohm: 1, Zs_ohm: 2 } },
      /^fault\.Zs_ohm does not belong here; known names are: Ze_ohm/,
    ],
  ])('name what would be right: %s', (_, part, says) => {
    const { faults } = parseScenario({ ...cord, ...part });
    expect(faults?.map(faultLine)).toEqual([expect.stringMatching(says)]);
  });

  it('refuse a metal that has no resistance at the temperature of the fault', () => {
    const metal = { rho20_nOhmM: 20, alpha20_perK: -0.005, heatCapacity_MJPerM3K: 3, melting_degC: 100 };
    const cable = { layout: 'single', conductor: { size_mm2: 1, metal } };
    expect(parseScenario({ ...cord, cable }).faults).toBeUndefined();
    const { faults } = parseScenario({ ...cord, cable, fault: { Ze_ohm: 1, T_degC: 250 } });
    expect(faults?.map(({ path }) => path)).toEqual(['cable.conductor.metal']);
  });
});

describe('links', () => {
  it('bring back the scenario they were made of', () => {
    fc.assert(
      fc.property(good, (given) => {
        const { scenario } = parseScenario(given);
        if (!scenario) return;
        const link = scenarioToLink(scenario);
        expect(link).toMatch(/^[\w+\-$]+$/);
        expect(scenarioFromLink(link).scenario).toEqual(JSON.parse(JSON.stringify(scenario)));
      }),
      { seed: 3, numRuns: 1500 },
    );
  });

  it('cut short or altered give faults, never an exception', () => {
    const link = scenarioToLink(Object.values(cases)[0] as Scenario);
    for (let i = 0; i < link.length; i++) {
      for (const other of [link.slice(0, i), `${link.slice(0, i)}A${link.slice(i + 1)}`, link.slice(i)]) {
        const { scenario, faults } = scenarioFromLink(other);
        expect((scenario === undefined) !== (faults === undefined)).toBe(true);
      }
    }
  });

  it('that are random text give faults, never an exception', () => {
    const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+-$'];
    const alike = fc.array(fc.constantFrom(...letters), { maxLength: 300 }).map((list) => list.join(''));
    fc.assert(
      fc.property(
        fc.oneof(alike, fc.string({ maxLength: 100 }), fc.string({ unit: 'binary', maxLength: 100 })),
        (text) => {
          expect(scenarioFromLink(text).faults?.length).toBeGreaterThan(0);
        },
      ),
      { seed: 11, numRuns: 10_000 },
    );
  });
});

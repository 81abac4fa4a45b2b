// Whatever a scenario holds: it is refused in words, or predicted in bounded time with finite numbers that obey the first law.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Prediction } from '#engine/heating/predict.ts';
import { predictWithDevice } from '#engine/protection/series-of.ts';
import { parseScenario } from '#engine/scenario/parse.ts';
import type { Scenario } from '#engine/scenario/schema.ts';
import { anyScenario } from './arbitrary.ts';

const longest_ms = 8000; // the slowest seen takes a twentieth of it

/** Everything that is wrong with a prediction, in words; none when all is well. */
function wrongs(
  scenario: Scenario,
  { run, steady, ratings, rating, threshold, lead, thermal, validity }: Prediction,
): string[] {
  const { curves, energy } = run;
  const { metal } = thermal.cable.conductor;
  const say = (wrong: boolean, words: string) => (wrong ? [words] : []);
  const finite = (values: Iterable<unknown>) => [...values].every((x) => typeof x !== 'number' || Number.isFinite(x));
  const start = [curves.conductor[0], curves.surface[0], curves.outside[0], thermal.Ta] as number[];
  const [cold, hot] = [
    Math.min(...start),
    Math.max(
      ...start,
      curves.conductor.reduce((a, b) => Math.max(a, b)),
    ),
  ];
  // a tolerance of the user's own loosens the bounds; few cells overshoot a sudden change by a part of it
  const margin = 0.05 + 2 * (scenario.run?.tolerance_K ?? 0.03) + 2e-3 * (hot - cold);
  const [coldest, hottest] = [cold - margin, hot + margin];
  return [
    ...say(curves.t.length === 0, 'there is no sample'),
    ...Object.entries(curves).flatMap(([name, values]) => say(!values.every(Number.isFinite), `${name} is not finite`)),
    ...say(
      curves.t.some((t, i) => i > 0 && t < (curves.t[i - 1] as number)),
      'time goes back',
    ),
    ...(['conductor', 'surface', 'outside'] as const).flatMap((place) => [
      ...say(
        curves[place].some((T) => T < coldest),
        `${place} is colder than ambient and start`,
      ),
      ...say(
        curves[place].some((T) => T > hottest),
        `${place} is hotter than the conductor ever was`,
      ),
    ]),
    ...say(
      curves.conductor.some((T) => T > Math.max(metal.melting.value, start[0] as number) + margin),
      'runs on past melting',
    ),
    ...say(curves.I.some((I) => I < 0) || curves.heat.some((W) => W < 0), 'current or heat below nothing'),
    ...say(!(Math.abs(energy.imbalance) < 1e-6), `heat is out of balance by ${energy.imbalance}`),
    ...say(run.lifeUsed !== null && !(run.lifeUsed >= 0 && Number.isFinite(run.lifeUsed)), 'life used is no number'),
    ...say(
      run.events.some((e, i) => !(e.t >= (run.events[i - 1]?.t ?? 0) && e.t <= run.end + 1e-9)),
      'events are out of order',
    ),
    ...say(!finite(ratings.map((r) => r.I)) || !finite([rating]), 'a rating is not finite'),
    ...say(
      ratings.some(({ I }) => I !== null && I < 0),
      'a rating is below nothing',
    ),
    ...say(!finite([threshold.I, threshold.T]) || threshold.I < 0, 'the threshold is no number'),
    ...say(
      steady.kind === 'steady' && !finite([...Object.values(steady.chain), steady.I]),
      'the steady state is not finite',
    ),
    ...say(!finite([...Object.values(lead.start), ...Object.values(lead.end)]), 'a reading of the lead is not finite'),
    ...say(
      !validity.statements.every(({ text }) => /^[A-Z].*\.$/.test(text) && !/NaN|undefined|Infinity/.test(text)),
      'a statement is no sentence',
    ),
  ];
}

/** Predicts what parses; the words of what is wrong, or null where the scenario was refused. */
function tried(given: unknown): string[] | null {
  const { scenario, faults } = parseScenario(given);
  if (faults) {
    expect(faults.length).toBeGreaterThan(0);
    for (const { path, message } of faults) {
      expect(typeof path).toBe('string');
      expect(message).toMatch(/^\S.{5,}/);
      expect(message).not.toMatch(/NaN|undefined|Expected|\[object/);
    }
    return null;
  }
  const before = performance.now();
  const found = wrongs(scenario, predictWithDevice(scenario));
  const took = performance.now() - before;
  return took > longest_ms ? [...found, `took ${took} ms`] : found;
}

describe('any scenario of the right shape', () => {
  it('is refused in words, or predicted with finite numbers, its heat accounted for', { timeout: 120_000 }, () => {
    let predicted = 0;
    fc.assert(
      fc.property(anyScenario, (given) => {
        const found = tried(given);
        if (found) predicted++;
        expect(found ?? []).toEqual([]);
      }),
      { seed: 20, numRuns: 4000 },
    );
    expect(predicted).toBeGreaterThan(2000);
  });
});

const sizes = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35];
const single = (size_mm2: number, metal = 'copper') => ({
  layout: 'single',
  conductor: { metal, size_mm2 },
  insulation: { material: 'pvc70', thickness_mm: 0.8 },
});
const bare = (size_mm2: number, metal: string) => ({
  layout: 'single',
  conductor: { metal, size_mm2, class: 1 },
  insulation: null,
});
const flat = (size_mm2: number, metal: string) => ({ ...single(size_mm2, metal), layout: 'flat', cores: 2 });
const surroundings = [
  { kind: 'stillAir', ambient_degC: 20 },
  { kind: 'draught', ambient_degC: -40, speed_mPerS: 60 },
  { kind: 'lagged', ambient_degC: 50, thickness_mm: 300, conductivity_WPerMK: 0.03 },
  { kind: 'clipped', ambient_degC: 20 },
  { kind: 'coiled', ambient_degC: 20, drum_mm: 200, turns: 20, wound_m: 50 },
];

describe('the extremes', () => {
  const grid = sizes.flatMap((size) =>
    [single, bare, flat].flatMap((make) => ['copper', 'cca10', 'steel'].map((metal) => make(size, metal))),
  );

  it.each([
    ['no current', [{ kind: 'current', I_A: 0 }]],
    ['1000 A', [{ kind: 'current', I_A: 1000 }]],
    ['100 kA', [{ kind: 'current', I_A: 1e5 }]],
    ['a current at the edge of what the metal stands', [{ kind: 'current', I_A: 112 }]],
    ['100 kV held', [{ kind: 'voltage', U_V: 1e5 }]],
    ['a short circuit, then nothing', [{ kind: 'current', I_A: 1000, duration_s: 0.05 }, { kind: 'off' }]],
    ['more power than the lead can pass', [{ kind: 'power', U_V: 12, load_W: 1e6 }]],
    ['a load at no voltage', [{ kind: 'power', U_V: 0, load_W: 100 }]],
  ])(
    'of every size, metal and place, for a day: %s',
    (_, supply) => {
      for (const cable of grid) {
        for (const place of surroundings) {
          for (const start of [{}, { T_degC: -60 }, { T_degC: 900 }]) {
            const given = {
              cable,
              surroundings: place,
              supply,
              start,
              lead: { length_m: 50 },
              run: { duration_s: 86_400 },
            };
            expect(tried(given), JSON.stringify(given)).toEqual([]);
          }
        }
      }
    },
    60_000,
  );

  it('of cycles and supply steps are refused before they take minutes', () => {
    const supply = Array.from({ length: 500 }, (_, i) => ({ kind: 'current', I_A: i % 20, duration_s: 10 }));
    const given = { cable: single(1), surroundings: surroundings[0], supply, cycles: 2000 };
    expect(parseScenario(given).faults?.[0]?.path).toBe('cycles');
    expect(tried({ ...given, cycles: 40 })).toEqual([]);
  });
});

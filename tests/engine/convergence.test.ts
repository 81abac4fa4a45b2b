// Whole runs at the usual settings against runs ten times finer in space and in tolerance, on their dense output.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runCase } from '#engine/heating/run.ts';
import { buildCase } from '#engine/heating/thermal-case.ts';
import { parseScenario } from '#engine/scenario/parse.ts';
import type { Scenario } from '#engine/scenario/schema.ts';
import { everydayScenario } from './arbitrary.ts';
import { cases } from './cases.ts';
import { distance, eventGap, heatByTrapezoids } from './compare.ts';

const usual = { samplesPerStep: 24 };
const finer = { samplesPerStep: 24, cells: 240, tolerance: 0.003 };

/** Heat per second has an infinite slope where a load takes the most that a lead can pass, so sums of it are less sure there. */
const steepEnd = new Set(['a constant-power load that the lead cannot feed once warm']);

describe.each(Object.entries(cases))('%s', (name, scenario) => {
  const of = buildCase(scenario);
  const run = runCase(of, usual);
  const converged = runCase(of, finer);

  it('is a scenario without faults', () => {
    expect(parseScenario(scenario).faults).toBeUndefined();
  });

  it('lies within 0.05 K of the converged run at every place and time', () => {
    expect(run.outcome).toBe(converged.outcome);
    expect(
      distance(run.curves, converged.curves),
      JSON.stringify(distance(run.curves, converged.curves)),
    ).toMatchObject({
      size: expect.toSatisfy((size: number) => size <= 0.05),
    });
  });

  it('passes its limits, and ends, within 0.1 per cent or 0.1 s of the converged run', () => {
    const gap = eventGap(run, converged);
    expect(gap.share, gap.what).toBeLessThanOrEqual(1);
    expect(Math.abs(run.end - converged.end)).toBeLessThanOrEqual(Math.max(0.1, 1e-3 * converged.end));
  });

  it('accounts for its heat to one part in a million', () => {
    expect(Math.abs(run.energy.imbalance)).toBeLessThan(1e-6);
    expect(Math.abs(converged.energy.imbalance)).toBeLessThan(1e-6);
  });

  it('makes the heat that its curve of heat encloses', () => {
    const allowed = steepEnd.has(name) ? 6e-3 : 1e-4;
    expect(Math.abs(run.energy.made - heatByTrapezoids(run.curves))).toBeLessThanOrEqual(allowed * run.energy.made);
  });
});

describe('cords and cables of the table, loaded and housed at random', () => {
  // what is left is a supply changed while a hot or cold start still settles, and loads far above the rating under thick lagging
  it('lie within 0.05 K of their converged runs, all but one in twenty; and those that stay below 300 °C, within 0.4 K', () => {
    const sizes = fc.sample(everydayScenario, { numRuns: 500, seed: 9 }).flatMap((given) => {
      if (parseScenario(given).faults) return [];
      const of = buildCase(given as Scenario);
      const run = runCase(of, usual);
      const { size } = distance(run.curves, runCase(of, finer).curves);
      expect(Math.abs(run.energy.imbalance)).toBeLessThan(1e-6);
      const hot = run.curves.conductor.some((T) => T > 573);
      if (!hot) expect(size, JSON.stringify(given)).toBeLessThan(0.4);
      return [size];
    });
    const within = sizes.filter((size) => size <= 0.05).length;
    expect(sizes.length).toBeGreaterThan(450);
    expect(within / sizes.length).toBeGreaterThan(0.95);
  });
});

// A bench stepped from outside against whole runs of the same case.
import { describe, expect, it } from 'vitest';
import { liveRun } from '#engine/heating/live.ts';
import { runCase } from '#engine/heating/run.ts';
import { buildCase } from '#engine/heating/thermal-case.ts';
import type { Scenario, SupplyStep } from '#engine/scenario/schema.ts';

const cord: Scenario = {
  cable: { table: 'H05VV-F', cores: 3, size_mm2: 0.75 },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: [{ kind: 'current', I_A: 13 }],
  run: { duration_s: 3600 },
};

/** The supply of an hour, changed by hand at these times [s]. */
const byHand: readonly (readonly [number, SupplyStep])[] = [
  [0, { kind: 'current', I_A: 13 }],
  [300, { kind: 'current', I_A: 25 }],
  [420, { kind: 'off' }],
  [900, { kind: 'current', I_A: 8 }],
  [1800, { kind: 'current', I_A: 16 }],
];

/** The same hour as a list of supply steps. */
const asSteps: Scenario = {
  ...cord,
  supply: byHand.map(([from, step], i) => ({ ...step, duration_s: (byHand[i + 1]?.[0] ?? 3600) - from })),
};

/** The greatest distance [K] of a live run from the whole run, looked at every second. */
function worstAgainstWhole(stepsPerSecond: number): number {
  const { curves } = runCase(buildCase(asSteps), { samplesPerStep: 40 });
  const live = liveRun(buildCase(asSteps), 25);
  let worst = 0;
  let at = 0;
  for (let second = 0; second < 3600; second++) {
    const change = byHand.find(([t]) => t === second);
    if (change) live.setSupply(change[1]);
    for (let i = 0; i < stepsPerSecond; i++) live.advance(1 / stepsPerSecond);
    const state = live.state();
    while (at < curves.t.length - 2 && (curves.t[at + 1] as number) < state.t) at++;
    const [t0, t1] = [curves.t[at] as number, curves.t[at + 1] as number];
    const part = t1 > t0 ? (state.t - t0) / (t1 - t0) : 1;
    for (const place of ['conductor', 'surface', 'outside'] as const) {
      const [y0, y1] = [curves[place][at] as number, curves[place][at + 1] as number];
      worst = Math.max(worst, Math.abs(state[place] - y0 - part * (y1 - y0)));
    }
  }
  expect(live.state().t).toBeCloseTo(3600, 6);
  return worst;
}

describe('a live run', () => {
  it.each([
    ['sixty frames a second', 60],
    ['one step a second', 1],
  ])('stays within 0.05 K of the whole run for an hour of changes by hand: %s', (_, perSecond) => {
    expect(worstAgainstWhole(perSecond)).toBeLessThan(0.05);
  });

  it('gives the same hour in one leap as in many', () => {
    const leap = liveRun(buildCase(cord)).advance(3600);
    const many = liveRun(buildCase(cord));
    for (let i = 0; i < 7200; i++) many.advance(0.5);
    expect(Math.abs(leap.conductor - many.state().conductor)).toBeLessThan(0.05);
  });

  it('reads volts, amperes and watts that belong together', () => {
    const live = liveRun(
      buildCase({ ...cord, lead: { length_m: 10, contact_ohm: 0.05 }, supply: [{ kind: 'voltage', U_V: 8 }] }),
    );
    const { lead, heat } = live.advance(60);
    expect(lead.U).toBeCloseTo(lead.I * lead.R, 10);
    expect(lead.U + lead.I * 0.05).toBeCloseTo(8, 10);
    expect(lead.heat).toBeCloseTo(lead.U * lead.I, 10);
    expect(heat * 10).toBeCloseTo(lead.heat, 9);
    expect(lead.contactHeat).toBeCloseTo(lead.I ** 2 * 0.05, 10);
  });

  it('stands still from melting on, exactly there, whatever the supply does', () => {
    const of = buildCase(cord);
    const live = liveRun(of, 200);
    live.setSupply({ kind: 'current', I_A: 200 });
    const whole = runCase(buildCase({ ...cord, supply: [{ kind: 'current', I_A: 200 }] }));
    const molten = live.advance(3600);
    expect(molten.going).toBe(false);
    expect(molten.conductor).toBeCloseTo(of.cable.conductor.metal.melting.value, 6);
    expect(molten.t).toBeCloseTo(whole.end, 3);
    live.setSupply({ kind: 'off' });
    expect(live.advance(10).t).toBe(molten.t);
    expect(live.state().going).toBe(false);
  });

  it('stands still where a load asks for more than the lead can pass, and goes on when it asks for less', () => {
    const load = { ...cord, lead: { length_m: 40 }, supply: [{ kind: 'power', U_V: 60, load_W: 430 } as const] };
    const live = liveRun(buildCase(load));
    const stuck = live.advance(3600);
    const whole = runCase(buildCase(load));
    expect(whole.outcome).toBe('supply has no solution');
    expect(stuck.going).toBe(false);
    expect(stuck.t).toBeGreaterThan(0);
    expect(Math.abs(stuck.t - whole.end)).toBeLessThan(0.1);
    live.setSupply({ kind: 'power', U_V: 60, load_W: 200 });
    expect(live.advance(100).t).toBeCloseTo(stuck.t + 100, 6);
  });

  it('does not move for no time', () => {
    const live = liveRun(buildCase(cord));
    expect(live.advance(0).t).toBe(0);
    expect(live.advance(-5).t).toBe(0);
  });
});

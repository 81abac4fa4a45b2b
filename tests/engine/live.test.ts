// A bench stepped from outside against whole runs of the same case.
import { describe, expect, it } from 'vitest';
import { conductorByResistance, readByResistance } from '#engine/heating/by-resistance.ts';
import { liveRun } from '#engine/heating/live.ts';
import { runCase } from '#engine/heating/run.ts';
import { buildCase, leadResistance } from '#engine/heating/thermal-case.ts';
import { kelvin } from '#engine/quantity.ts';
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

/** A case at `I_A` amperes, one current for the whole run. */
const at = (I_A: number): Scenario => ({ ...cord, supply: [{ kind: 'current', I_A }] });

describe('a live run that is watched', () => {
  it('crosses the limits when a whole run does, whatever its steps', () => {
    const whole = runCase(buildCase(at(20)));
    const live = liveRun(buildCase(at(20)), 50);
    for (let i = 0; i < 60 * 60; i++) live.advance(1);
    expect(live.events.map(({ limit, end }) => `${limit.id} ${end}`)).toEqual(
      whole.events.map(({ limit, end }) => `${limit.id} ${end}`),
    );
    for (const [i, event] of whole.events.entries())
      expect(Math.abs((live.events[i]?.t ?? 0) - event.t)).toBeLessThan(0.1);
  });

  it.each([0.016, 1, 600])('halts exactly where a stop is reached, in steps of %f s', (step) => {
    const stop = { place: 'conductor', T: kelvin(70) } as const;
    const live = liveRun(buildCase(at(20)), 50);
    let state = live.state();
    while (state.halted === null && state.t < 3600) state = live.advance(step, [stop]);
    expect(state.halted).toBe(stop);
    expect(state.conductor).toBeCloseTo(stop.T, 6);
    const crossed = runCase(buildCase(at(20))).events.find(({ limit }) => limit.id === 'rating');
    expect(Math.abs(state.t - (crossed?.t ?? 0))).toBeLessThan(0.1);
    expect(state.going).toBe(true);
  });

  it('takes the first of several stops', () => {
    const stops = [
      { place: 'conductor', T: kelvin(70) },
      { place: 'surface', T: kelvin(40) },
    ] as const;
    const state = liveRun(buildCase(at(20)), 50).advance(3600, stops);
    expect(state.halted).toBe(stops[1]);
    expect(state.surface).toBeCloseTo(kelvin(40), 6);
  });

  it('halts at once where a stop is reached already, and goes on without it', () => {
    const live = liveRun(buildCase({ ...at(20), start: { T_degC: 80 } }), 50);
    const stop = { place: 'conductor', T: kelvin(70) } as const;
    expect(live.advance(10, [stop])).toMatchObject({ t: 0, halted: stop, going: true });
    live.setSupply({ kind: 'off' });
    expect(live.advance(10)).toMatchObject({ t: 10, halted: null });
  });
});

describe('the conductor by its resistance', () => {
  it.each([
    ['copper', {}],
    ['copper with its curvature', { law: 'curved' } as const],
    ['aluminium', { metal: 'aluminium' } as const],
    ['a metal that falls', { metal: { rho20_nOhmM: 50, alpha20_perK: -0.001, heatCapacity_MJPerM3K: 2 } }],
  ])('is the temperature the resistance came from: %s', (_, conductor) => {
    const of = buildCase({ ...cord, cable: { ...cord.cable, conductor } as Scenario['cable'], lead: { length_m: 7 } });
    for (const T of [-20, 20, 70, 160].map(kelvin))
      expect(conductorByResistance(of, leadResistance(of, T))).toBeCloseTo(T, 8);
  });

  it('is left open where resistance names no temperature', () => {
    const of = buildCase(cord);
    expect(conductorByResistance(of, Number.NaN)).toBeNull();
    expect(conductorByResistance(of, 0)).toBeNull();
    expect(readByResistance(of, 0, 0)).toBeNull();
    expect(readByResistance(of, 2, 4)?.R).toBe(0.5);
  });
});

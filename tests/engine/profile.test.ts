import { expect, it } from 'vitest';
import {
  castScenario,
  momentAt,
  predict,
  profileAt,
  type Scenario,
  sectionField,
  sectionShape,
  shareGrid,
  steadyChain,
  temperatureAt,
} from '#engine';

const air = { kind: 'stillAir', ambient_degC: 22 } as const;
const held = (cable: Scenario['cable'], I_A: number, duration_s = 3600, more: Partial<Scenario> = {}): Scenario => ({
  version: 1,
  cable,
  surroundings: air,
  supply: [{ kind: 'current', I_A }],
  run: { duration_s },
  ...more,
});
const cord = (cores: number, size_mm2: number, loaded: number | number[]): Scenario['cable'] => ({
  table: 'H05VV-F',
  cores,
  size_mm2,
  loaded,
});
const flat: Scenario['cable'] = {
  layout: 'flat',
  cores: 3,
  loaded: 2,
  conductor: { size_mm2: 2.5, class: 1 },
  insulation: { material: 'pvc70', thickness_mm: 0.8 },
  sheath: { material: 'pvc70', thickness_mm: 1.1 },
};
const bare: Scenario['cable'] = { layout: 'single', conductor: { size_mm2: 1.5 }, insulation: null };
const lagged = { kind: 'lagged', ambient_degC: 22, thickness_mm: 10, conductivity_WPerMK: 0.04 } as const;

const cases: [string, Scenario][] = [
  ['a cord', held(cord(3, 0.75, 2), 10)],
  ['five cores, all loaded', held(cord(5, 2.5, 5), 15)],
  ['a flat cable', held(flat, 20)],
  ['a bare wire', held(bare, 20)],
  ['a lagged cord', held(cord(3, 1.5, 2), 10, 3600, { surroundings: lagged })],
  ['no current', held(cord(3, 1, 2), 0)],
];

it.each(cases)('%s begins at one temperature, everywhere', (_name, scenario) => {
  const { thermal } = predict(scenario);
  const profile = profileAt(thermal, 0);
  expect(profile.t).toBe(0);
  for (const u of [1, 0.7, 0.2, 0, -0.3]) expect(temperatureAt(profile, u)).toBeCloseTo(thermal.T0, 9);
});

it.each(cases)('%s ends as its steady chain', (_name, scenario) => {
  const { thermal, steady } = predict({ ...scenario, run: { duration_s: 100_000 } });
  if (steady.kind !== 'steady') throw new Error('has no steady state');
  const chain = steadyChain(thermal, steady.chain.conductor);
  const profile = profileAt(thermal, 100_000);
  expect(Math.abs(temperatureAt(profile, 1) - chain.conductor)).toBeLessThan(0.1);
  if (profile.u.length > 1) {
    expect(Math.abs(temperatureAt(profile, 0) - chain.surface)).toBeLessThan(0.1);
    const half = (chain.conductor + chain.surface) / 2;
    expect(Math.abs(temperatureAt(profile, 0.5) - half), 'straight in u').toBeLessThan(0.1);
  }
});

it.each(cases)('%s agrees with its run’s curves on the way', (_name, scenario) => {
  const { thermal, run } = predict(scenario);
  for (const t of [5, 60, 600, 3600]) {
    const profile = profileAt(thermal, t);
    const now = momentAt(run.curves, t);
    expect(profile.t).toBeCloseTo(t, 9);
    expect(Math.abs((profile.T[0] as number) - now.conductor), `conductor at ${t} s`).toBeLessThan(0.1);
    expect(Math.abs((profile.T[profile.surface] as number) - now.surface), `surface at ${t} s`).toBeLessThan(0.1);
  }
});

it('follows steps, cycles and switches at a temperature', () => {
  const scenario: Scenario = {
    ...held(cord(3, 0.75, 2), 0),
    supply: [
      { kind: 'current', I_A: 16, until: { place: 'conductor', T_degC: 60 }, duration_s: 900 },
      { kind: 'off', until: { place: 'conductor', T_degC: 50, falling: true }, duration_s: 900 },
    ],
    cycles: 8,
    run: { duration_s: 1500 },
  };
  const { thermal, run } = predict(scenario);
  for (const t of [100, 400, 700, 1100, run.end]) {
    const now = momentAt(run.curves, t);
    expect(Math.abs((profileAt(thermal, t).T[0] as number) - now.conductor), `at ${t} s`).toBeLessThan(0.15);
  }
});

it('holds at the end of a run that melts its metal', () => {
  const { thermal, run } = predict(held(cord(3, 0.75, 2), 400, 60));
  expect(run.outcome).toBe('melted');
  const profile = profileAt(thermal, 60);
  expect(Math.abs(profile.t - run.end)).toBeLessThan(0.01);
  expect(profile.T[0]).toBeCloseTo(thermal.cable.conductor.metal.melting.value, 3);
});

it.each(cases)('in %s temperature rises with u at every moment of heating', (_name, scenario) => {
  const { thermal } = predict(scenario);
  for (const t of [1, 30, 1000]) {
    const profile = profileAt(thermal, t);
    for (let i = 1; i < profile.u.length; i++) {
      expect(profile.u[i]).toBeLessThan(profile.u[i - 1] as number);
      expect(profile.T[i]).toBeLessThanOrEqual((profile.T[i - 1] as number) + 0.01);
    }
  }
});

it('lays two and more cores with the first two side by side on top', () => {
  for (const cores of [3, 4, 5]) {
    const { thermal } = predict(held(cord(cores, 1.5, 2), 10));
    const { x, y } = sectionShape(thermal.cable, thermal.outside, thermal.h);
    expect(y[0]).toBeCloseTo(y[1] as number, 12);
    expect(x[0]).toBeLessThan(x[1] as number);
    for (let i = 2; i < cores; i++) expect(y[i]).toBeLessThan(y[0] as number);
  }
});

it.each(cases)(
  'the picture’s shares of %s are the field’s, turned; outside they are the surface’s',
  (_name, scenario) => {
    const { thermal } = predict(scenario);
    const { cable, outside, h } = thermal;
    const shape = sectionShape(cable, outside, h);
    const field = sectionField(cable, outside, h);
    const wide = shape.halfRun + shape.outerRadius;
    const { u } = shareGrid(shape, 1.3 * wide, 1.3 * shape.outerRadius, 41, 31);
    let n = 0;
    for (let row = 0; row < 31; row++) {
      for (let column = 0; column < 41; column++, n++) {
        const [x, y] = [1.3 * wide * (column / 20 - 1), 1.3 * shape.outerRadius * (1 - row / 15)];
        expect(Number.isFinite(u[n])).toBe(true);
        if (shape.distance(x, y) >= 0 || !field) continue;
        // the engine's own frame: turn back so that core 0 lies where it has it
        const back =
          cable.layout === 'flat'
            ? 0
            : Math.atan2(cable.y[0] ?? 0, cable.x[0] ?? 0) - Math.atan2(shape.y[0] ?? 0, shape.x[0] ?? 0);
        const [c, s] = [Math.cos(back), Math.sin(back)];
        expect(Math.abs((u[n] as number) - field.at(c * x - s * y, s * x + c * y)), `at ${x}, ${y}`).toBeLessThan(2e-3);
      }
    }
  },
);

it('u falls from the hottest conductor outward to the surface', () => {
  const { thermal } = predict(held(cord(3, 1, 2), 10));
  const shape = sectionShape(thermal.cable, thermal.outside, thermal.h);
  const [x, y] = [shape.x[0] as number, shape.y[0] as number];
  const away = Math.hypot(x, y);
  let before = shape.uAt(x, y);
  expect(before).toBeCloseTo(1, 6);
  for (let r = away + shape.conductorRadius; r < shape.outerRadius; r += 2e-5) {
    const u = shape.uAt((x * r) / away, (y * r) / away);
    expect(u).toBeLessThan(before + 1e-9);
    before = u;
  }
});

it('gives the same shape again while only the load and the time change', () => {
  const shapeOf = (I: number) => {
    const { cable, outside, h } = predict(castScenario('C075', I, 22)).thermal;
    return sectionShape(cable, outside, h);
  };
  expect(shapeOf(5)).toBe(shapeOf(15));
});

it('names the part a point belongs to', () => {
  const { thermal } = predict(held(cord(3, 1, 2), 10));
  const { x, y, conductorRadius, coreRadius, bodyRadius, outerRadius, partAt } = sectionShape(
    thermal.cable,
    thermal.outside,
    thermal.h,
  );
  const [x0, y0] = [x[0] as number, y[0] as number];
  expect(partAt(x0, y0)).toEqual({ part: 'conductor', core: 0 });
  expect(partAt(x0 + (conductorRadius + coreRadius) / 2, y0)).toEqual({ part: 'insulation', core: 0 });
  expect(partAt(0, 0)).toEqual({ part: 'filling' });
  expect(partAt(0, (bodyRadius + outerRadius) / 2)).toEqual({ part: 'sheath' });
  expect(partAt(0, outerRadius * 1.01)).toEqual({ part: 'outside' });
});

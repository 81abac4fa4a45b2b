// A device in series with a run: it ends the run where it has surely opened, and tells from when it may have.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liveRun } from '#engine/heating/live.ts';
import { predict } from '#engine/heating/predict.ts';
import { profileAt } from '#engine/heating/profile.ts';
import { runCase } from '#engine/heating/run.ts';
import { buildCase } from '#engine/heating/thermal-case.ts';
import type { Validity } from '#engine/heating/validity.ts';
import { fastest, slowest } from '#engine/protection/band.ts';
import type { Device, DeviceFamily } from '#engine/protection/device.ts';
import { device, deviceFamilies } from '#engine/protection/devices.ts';
import { predictWithDevice, seriesOf } from '#engine/protection/series-of.ts';
import type { Scenario } from '#engine/scenario/schema.ts';
import { everydayScenario } from './arbitrary.ts';

const lead = {
  cable: { table: 'H05VV-F', cores: 3, size_mm2: 4, loaded: 2 },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
} as const;
const held = (I_A: number, duration_s?: number) => ({
  kind: 'current' as const,
  I_A,
  ...(duration_s === undefined ? {} : { duration_s }),
});
const off = (duration_s: number) => ({ kind: 'off' as const, duration_s });
const withDevice = (scenario: Scenario) => runCase(buildCase(scenario), { series: seriesOf(scenario) });
const run = (family: DeviceFamily, rating_A: number, supply: Scenario['supply'], more: Partial<Scenario> = {}) =>
  withDevice({ ...lead, supply, device: { family, rating_A }, run: { duration_s: 10_000 }, ...more });

describe('a device in series', () => {
  it('acts at a held current when its band says so', () => {
    const families = fc.constantFrom(...deviceFamilies);
    const tabled = families.chain(({ id, ratings }) =>
      fc.constantFrom(...ratings).map((In) => device(id, In) as Device),
    );
    fc.assert(
      fc.property(tabled, fc.double({ min: 0, max: 1, noNaN: true }), (of, part) => {
        const I = of.In * 40 ** part;
        const big = { layout: 'single', conductor: { size_mm2: 500, class: 2 }, insulation: null } as const;
        const supply = [held(I)];
        const cable = big;
        if (of.family === 'own') return;
        const { device: acted, end, outcome } = run(of.family, of.In, supply, { cable });
        const [fast, slow] = [fastest(of, I, 'guaranteed'), slowest(of, I, 'guaranteed')];
        if (outcome === 'melted') return;
        if (slow <= 10_000) {
          expect(outcome).toBe('device opened');
          expect(end).toBeCloseTo(slow, 6);
          expect(acted?.surelyBy).toBeCloseTo(slow, 6);
        } else {
          expect(outcome).toBe('completed');
          expect(acted?.surelyBy).toBeNull();
        }
        if (fast <= end) expect(acted?.mayFrom).toBeCloseTo(fast, 6);
        else expect(acted?.mayFrom).toBeNull();
        const line = slowest(of, I, 'assumed');
        if (line !== null && line <= end) expect(acted?.assumed.surelyBy).toBeCloseTo(line, 6);
      }),
      { seed: 51, numRuns: 300 },
    );
  });

  it('sums up a varying current: half the time at one current, half at another', () => {
    // 30 A: by 400 s; 50 A: by 20 s
    const { device: acted, outcome } = run('bs1362', 13, [held(30, 200), held(50)]);
    expect(outcome).toBe('device opened');
    expect(acted?.surelyBy).toBeCloseTo(200 + 10, 6);
    // not before 1 s at 30 A
    expect(acted?.mayFrom).toBeCloseTo(1, 6);
  });

  it('forgets on the slow edge when the current falls below the conventional one, and never on the fast edge', () => {
    const pulses = [held(30, 300), off(100), held(30, 300), off(100), held(30, 300)];
    const { device: acted, outcome, end } = run('bs1362', 13, pulses);
    expect(outcome).toBe('completed');
    expect(end).toBeCloseTo(1100, 6);
    expect(acted?.surelyBy).toBeNull();
    const short = run('bs1362', 13, [held(30, 0.6), off(100), held(30, 0.6), off(10)]);
    expect(short.device?.mayFrom).toBeCloseTo(100.6 + 0.4, 6);
    const held20 = run('bs1362', 13, [held(20.8)]);
    expect(held20.device?.mayFrom).toBeNull();
  });

  it('follows a current that falls as the lead warms', () => {
    // volts held: cold 31 A and falling through 30 A, below which the staircase gives 1800 s in place of 400 s
    const { device: acted, curves } = run('bs1362', 13, [{ kind: 'voltage', U_V: 3.06 }], {
      lead: { length_m: 10 },
    });
    const many = curves.t.length;
    let sum = 0;
    for (let i = 1; i < many; i++) {
      const I = ((curves.I[i] as number) + (curves.I[i - 1] as number)) / 2;
      sum +=
        ((curves.t[i] as number) - (curves.t[i - 1] as number)) /
        slowest(device('bs1362', 13) as Device, I, 'guaranteed');
    }
    expect(curves.I[0]).toBeGreaterThan(30);
    expect(curves.I[many - 1]).toBeLessThan(30);
    expect(acted?.surelyBy).toBeGreaterThan(400);
    expect(sum).toBeGreaterThan(0.97);
    expect(sum).toBeLessThan(1.03);
  });

  it('ends a profile where it ends the run, and leaves a case without a device alone', () => {
    const scenario: Scenario = { ...lead, supply: [held(50)], device: { family: 'bs1362', rating_A: 13 } };
    expect(profileAt(buildCase(scenario), 1000, seriesOf(scenario)).t).toBeCloseTo(20, 6);
    const { device: _, ...without } = scenario;
    const free = runCase(buildCase(without));
    expect(free.device).toBeNull();
    expect(free.end).toBe(3600);
    expect(seriesOf(without)).toBeNull();
  });

  it('stops a live run at the same moment, and keeps it stopped', () => {
    const scenario: Scenario = { ...lead, supply: [held(50)], device: { family: 'bs1362', rating_A: 13 } };
    const live = liveRun(buildCase(scenario), 50, seriesOf(scenario));
    expect(live.advance(7).device?.mayFrom).toBeCloseTo(0.1, 6);
    expect(live.advance(100).t).toBeCloseTo(20, 6);
    live.setSupply(held(5));
    const after = live.advance(10);
    expect([after.going, after.device?.surelyBy !== null]).toEqual([false, true]);
    expect(after.t).toBeCloseTo(20, 6);
  });

  it('is named where a run leaves it out, and where it may have acted', () => {
    const scenario: Scenario = { ...lead, supply: [held(50)], device: { family: 'bs1362', rating_A: 13 } };
    const ids = ({ validity }: { validity: Validity }) => validity.statements.map(({ id }) => id);
    expect(ids(predict(scenario))).toContain('no device');
    expect(ids(predictWithDevice(scenario))).toContain('device may act');
    expect(ids(predictWithDevice({ ...scenario, supply: [held(13)] }))).toContain('device holds');
    expect(predictWithDevice(scenario).run.outcome).toBe('device opened');
  });

  it('keeps energy accounted for and events in order, whatever the run', () => {
    const devices = fc
      .constantFrom(...deviceFamilies)
      .chain(({ id, ratings }) => fc.constantFrom(...ratings).map((rating_A) => ({ family: id, rating_A })));
    fc.assert(
      fc.property(everydayScenario, devices, (given, of) => {
        const plain = given as unknown as Scenario;
        let whole: ReturnType<typeof runCase>;
        try {
          whole = runCase(buildCase(plain));
        } catch {
          return; // parts that do not fit
        }
        const cut = withDevice({ ...plain, device: of });
        const { surelyBy, mayFrom, assumed } = cut.device as NonNullable<typeof cut.device>;
        expect(Math.abs(cut.energy.imbalance)).toBeLessThan(1e-6);
        expect(cut.end).toBeLessThanOrEqual(whole.end + 1e-9);
        if (cut.outcome === 'device opened') expect(surelyBy).toBeCloseTo(cut.end, 6);
        else expect(cut.end).toBeCloseTo(whole.end, 6);
        if (mayFrom !== null) expect(mayFrom).toBeLessThanOrEqual((surelyBy ?? cut.end) + 1e-6);
        if (assumed.surelyBy !== null) expect(assumed.surelyBy).toBeLessThanOrEqual(cut.end + 1e-6);
        expect(cut.events.every(({ t }) => t <= cut.end + 1e-9)).toBe(true);
      }),
      { seed: 52, numRuns: 300 },
    );
  });
});

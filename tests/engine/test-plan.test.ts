import { describe, expect, it } from 'vitest';
import {
  buildCase,
  type CaseDoubt,
  cast,
  checkOutcome,
  checksOf,
  emptyPlan,
  kelvin,
  lockPlan,
  lockState,
  parsePlan,
  precautions,
  predictedBand,
  predictPlan,
  refusals,
  runCase,
  type Scenario,
  type TestPlan,
} from '#engine';

const stepped = (amps: readonly number[], more: Partial<Scenario> = {}): Scenario => ({
  cable: cast.SUS,
  practice: 'iec',
  lead: { length_m: 8 },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: amps.map((I_A) => ({ kind: 'current', I_A, compliance_V: 15, duration_s: 900 })),
  ...more,
});

/** A plan with everything in its place. */
function sound(scenario = stepped([4, 8, 12])): TestPlan {
  const plan = emptyPlan(scenario);
  const checks = checksOf(plan).map(({ id, limit }) => {
    const value = limit ? { value: limit.value * (limit.sense === 'at most' ? 0.9 : 1.1) } : {};
    return { id, found: 'pass' as const, ...value };
  });
  const taken = precautions.map(({ id }) => id);
  return { ...plan, people: ['M', 'N'], approvedBy: 'O', taken, checks };
}
const ids = (plan: TestPlan) => refusals(plan).map(({ id }) => id);

describe('a test plan', () => {
  it('may be powered when everything is in its place, and says all that is missing when nothing is', () => {
    expect(refusals(sound())).toEqual([]);
    expect(ids(emptyPlan(stepped([4])))).toEqual(
      expect.arrayContaining(['people', 'approval', 'dead', 'stop', 'check visual', 'check insulation']),
    );
  });

  it('is refused from the mains, and above 25 V AC or 60 V DC', () => {
    const with_ = (supply: Partial<TestPlan['supply']>) => {
      const plan = sound();
      return ids({ ...plan, supply: { ...plan.supply, ...supply } });
    };
    expect(with_({ kind: 'mains' })).toEqual(['mains']);
    expect(with_({ current: 'ac', most_V: 25 })).toEqual([]);
    expect(with_({ current: 'ac', most_V: 26 })).toEqual(['volts']);
    expect(with_({ current: 'dc', most_V: 60 })).toEqual([]);
    expect(with_({ current: 'dc', most_V: 61 })).toEqual(['volts']);
  });

  it('wants a metre of lead, a probe at the hottest place where that is hidden, and limits that are only lowered', () => {
    expect(ids(sound(stepped([4], { lead: { length_m: 0.9 } })))).toEqual(['length']);
    const wound = { kind: 'coiled', ambient_degC: 20, drum_mm: 120, turns: 12 } as const;
    expect(ids(sound(stepped([4], { surroundings: wound })))).toEqual(['hottest']);
    const plan = sound();
    expect(ids({ ...plan, abort: { conductor_degC: 71, sheath_degC: 60 } })).toEqual(['abort']);
    expect(ids({ ...plan, abort: { conductor_degC: 70, sheath_degC: 61 } })).toEqual(['abort']);
    expect(ids({ ...plan, bench: 'practitioner', abort: { conductor_degC: 70, sheath_degC: 80 } })).toEqual([]);
  });

  it('stops at a failed check, even where a reading beyond the limit was ticked as a pass', () => {
    const plan = sound();
    const checks = plan.checks.map((one) => (one.id === 'continuity' ? { ...one, value: 99 } : one));
    expect(ids({ ...plan, checks })).toEqual(['check continuity']);
    const insulation = checksOf(plan).find(({ id }) => id === 'insulation');
    if (!insulation) throw new Error('no check of the insulation');
    expect(checkOutcome(insulation, { id: 'insulation', found: 'pass', value: 0.9e6 })).toBe('fail');
    expect(checkOutcome(insulation, { id: 'insulation', found: 'pass' })).toBe('open');
  });

  it('lets a core pass that is what the plan predicts, though in service its resistance would be too high', () => {
    const earth = checksOf(sound()).find(({ id }) => id === 'earth continuity');
    const R20 = buildCase(stepped([4])).cable.conductor.R20;
    expect(earth?.limit?.value).toBeCloseTo(8 * R20 + 0.1, 9);
    expect(earth?.inService?.value).toBeCloseTo(8 * 13.3e-3 + 0.1, 9); // class 5, 1.5 mm²: IEC 60228
  });

  it('is locked once, and shows when something was changed after that', () => {
    const locked = lockPlan(sound(), '2026-03-02T09:00:00Z');
    if (!locked.plan) throw new Error('refused');
    expect(lockState(locked.plan)).toBe('locked');
    expect(lockState(parsePlan(JSON.parse(JSON.stringify(locked.plan))).plan as TestPlan)).toBe('locked');
    expect(lockState({ ...locked.plan, abort: { conductor_degC: 65, sheath_degC: 60 } })).toBe('changed since');
    expect(lockPlan(emptyPlan(stepped([4])), '2026-03-02T09:00:00Z').refusals?.length).toBeGreaterThan(5);
  });

  it('tells faults of its scenario with their place', () => {
    const plan = { ...sound(), scenario: stepped([4], { lead: { length_m: -1 } }) };
    expect(parsePlan(plan).faults?.[0]?.path).toBe('scenario.lead.length_m');
    expect(
      parsePlan({ ...sound(), scenario: { ...stepped([4]), cable: { table: 'H05VV-F', cores: 3, size_mm2: 1.6 } } })
        .faults?.[0]?.path,
    ).toMatch(/^scenario\.cable/);
  });
});

describe('what a plan predicts', () => {
  const prediction = predictPlan(sound());

  it('is what the run itself shows at the end of each step', () => {
    const { curves } = runCase(buildCase(stepped([4, 8, 12])));
    const last = prediction.steps.at(-1)?.end;
    expect(last?.conductor.value).toBeCloseTo(curves.conductor.at(-1) ?? 0, 3);
    expect(prediction.steps.map(({ I }) => I)).toEqual([4, 8, 12]);
    expect(last?.W.value).toBeCloseTo((last?.U.value ?? 0) * 12, 9);
  });

  it('is less sure the hotter it gets, and hardly doubts the volts of a lead that was measured', () => {
    const measured = { ...cast.SUS, conductor: { ...cast.SUS.conductor, R20_ohmPerKm: 36 } };
    const prediction = predictPlan(sound(stepped([4, 8, 12], { cable: measured })));
    const us = prediction.steps.map(({ end }) => end.conductor.u);
    expect(us[0]).toBeGreaterThanOrEqual(1); // the air is known to a kelvin
    expect(us[1]).toBeGreaterThan(us[0] as number);
    expect(us[2]).toBeGreaterThan(us[1] as number);
    for (const { end } of prediction.steps) expect(end.U.u / end.U.value).toBeLessThan(0.02);
  });

  it('grows by the first-order law: one doubtful part twice as doubtful gives twice the uncertainty', () => {
    const of = (R20: number) => {
      const doubt: CaseDoubt = { R20, surface: 0, plastic: 0, capacity: 0, ambient: 0 };
      return predictedBand(stepped([10]), [900], doubt).moments[0]?.conductor.u ?? 0;
    };
    expect(of(0.002) / of(0.001)).toBeCloseTo(2, 2);
    // without a rise of resistance the rise would grow by as much as the heat: more than half of it is left
    expect(of(0.01)).toBeGreaterThan(0.5 * 0.01 * 27);
  });

  it('knows when a limit is passed, and does not know it where a doubt decides whether it is', () => {
    const fast = predictedBand(stepped([16]), [900]).events.find(({ event }) => event.limit.kind === 'rating');
    expect(fast?.t.value).toBeGreaterThan(60);
    expect(fast?.t.u).toBeGreaterThan(1);
    expect(fast?.t.u).toBeLessThan((fast?.t.value ?? 0) / 2);
    const justSo = predictedBand(stepped([13.05]), [3600], {
      ...{ R20: 0.05, surface: 0.06 },
      plastic: 0.08,
      capacity: 0.06,
      ambient: 1,
    });
    for (const { event, t } of justSo.events)
      if (event.limit.kind === 'rating') expect(t.u).toBe(Number.POSITIVE_INFINITY);
  });

  it('says when the abort limit stops it, and what the supply and the meters must reach', () => {
    expect(prediction.stopsAt).toBeNull();
    const hot = predictPlan(sound(stepped([12, 16])));
    expect(hot.stopsAt).toBeGreaterThan(900);
    expect(hot.stopsAt).toBeLessThan(1800);
    expect(hot.abort).toEqual({ conductor: kelvin(70), sheath: kelvin(60) });
    expect(hot.ranges.I).toBe(16);
    expect(hot.ranges.U).toBeGreaterThan(hot.steps.at(-1)?.end.U.value ?? 0);
  });
});

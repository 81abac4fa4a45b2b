import { describe, expect, it } from 'vitest';
import {
  type BenchLog,
  compareWithLog,
  explainDifference,
  type FitParameterId,
  fitAndJudge,
  fitLog,
  type HeldBack,
  type Scenario,
  singleChanges,
  stepsOfLog,
} from '#engine';
import { studentQuantile } from '#engine/bench/uncertainty/student.ts';
import { steadyState } from '#engine/heating/steady.ts';
import { supplyOf } from '#engine/heating/supply.ts';
import { buildCase, conductorResistance } from '#engine/heating/thermal-case.ts';
import { bench, emptyLog, engineLog, ladder, lead } from './fit-logs.ts';
import { plainLog, wire } from './fit-plain.ts';

// Abramowitz & Stegun, Handbook of Mathematical Functions, table 26.10, probability 0.95 between −t and t (from memory)
const table = [
  [1, 12.706],
  [2, 4.303],
  [3, 3.182],
  [5, 2.571],
  [10, 2.228],
  [30, 2.042],
  [120, 1.98],
] as const;
it.each(table)('Student’s t of %i degrees of freedom is the printed %f', (dof, t) => {
  expect(Math.abs(studentQuantile(0.95, dof) - t)).toBeLessThan(5.1e-4);
});

describe('a fit of a log that the engine had no part in', () => {
  const truth = { R20: 0.0127, contact: 0.006, shed: 0.85, offset: 0.9, lag: 18 };
  const log = plainLog(ladder([0, 6, 12, 18, 0], 480, 8), truth, 'plain');
  const free: FitParameterId[] = ['R20', 'contact', 'surface', 'probeOffset', 'probeLag'];
  const fit = fitLog({ scenario: wire, log, u: bench, free });

  it('recovers what the made-up bench really had', () => {
    const [R20, contact, surface, offset, lag] = fit.parameters.map(({ value }) => value);
    expect(fit.ended).toBe('converged');
    expect(Math.abs(R20 / truth.R20 - 1)).toBeLessThan(0.003);
    expect(Math.abs(contact - truth.contact)).toBeLessThan(3e-4);
    expect(Math.abs(surface / truth.shed - 1)).toBeLessThan(0.01);
    expect(Math.abs(offset - truth.offset)).toBeLessThan(0.1);
    expect(Math.abs(lag - truth.lag)).toBeLessThan(2);
    expect(fit.chiSquare / fit.dof).toBeLessThan(1.2);
  });

  it('shows residuals that are noise, which those of a refit of the wrong parameter are not', () => {
    expect(fit.residuals.map(({ white }) => white)).toEqual([true, true]);
    const wrong = fitLog({ scenario: wire, log, u: bench, free: ['probeOffset'] });
    expect(wrong.residuals[0].white).toBe(false);
  });

  it('foretells the last step from those before it, within its band', () => {
    const cooled = plainLog(ladder([0, 6, 11, 17], 480, 8), truth, 'held back');
    const judged = fitAndJudge({ scenario: wire, log: cooled, u: bench, free }) as HeldBack;
    expect(judged.kind).toBe('judged');
    expect(judged.step.from).toBe(1448);
    for (const { inside, t } of judged.observables) {
      expect(t.length).toBeGreaterThan(50);
      expect(inside).toBeGreaterThanOrEqual(0.93);
    }
  });
});

describe('a fit judged on a step held back', () => {
  const free: FitParameterId[] = ['surface', 'R20'];
  const calm = engineLog(lead, emptyLog(ladder([3, 6, 9], 600, 8)), { surface: 0.9 }, 'calm');
  const draughty = engineLog(lead, emptyLog(ladder([3, 6, 9], 600, 8)), { surface: 1.5 }, 'draught');
  const cut = (a: Float64Array, b: Float64Array) => a.map((x, k) => (calm.t[k] > 1200 ? b[k] : x));
  const changed: BenchLog = {
    ...calm,
    U: cut(calm.U, draughty.U),
    probes: calm.probes.map((probe, i) => ({ ...probe, T: cut(probe.T, draughty.probes[i].T) })),
  };

  it('has the readings inside where nothing changed, and outside where a draught came up', () => {
    const still = fitAndJudge({ scenario: lead, log: calm, u: bench, free }) as HeldBack;
    const moved = fitAndJudge({ scenario: lead, log: changed, u: bench, free }) as HeldBack;
    expect(still.inside).toBeGreaterThan(0.94);
    expect(moved.inside).toBeLessThan(0.4);
    expect(still.allowance).toBe(0.03);
  });

  it('takes steps as they are handed in, and says when there is none to hold back', () => {
    const steps = [
      { from: 8, to: 600 },
      { from: 1000, to: 1200 },
    ];
    const judged = fitAndJudge({ scenario: lead, log: calm, u: bench, free }, steps) as HeldBack;
    expect(judged.observables[0].t[0]).toBeGreaterThanOrEqual(1000);
    expect(judged.observables[0].t.at(-1)).toBeLessThanOrEqual(1200);
    expect(fitAndJudge({ scenario: lead, log: calm, u: bench, free }, steps.slice(1))).toMatchObject({
      kind: 'not judged',
      why: 'fewer than two steps',
    });
  });

  it('finds the steps by the current alone', () => {
    expect(stepsOfLog(calm, bench.I)).toEqual([
      { from: 8, to: 600 },
      { from: 608, to: 1200 },
      { from: 1208, to: 1800 },
    ]);
  });
});

describe('a single change', () => {
  const nothing = emptyLog(ladder([0, 4, 8, 11, 0], 480, 8));
  const changes = [
    ['surface', { surface: 0.8 }],
    ['contact', { contact: 0.03 }],
    ['probeOffset', { probeOffset: -3 }],
    ['area', { area: 0.7e-6 }],
  ] as const;
  it.each(changes)('of %s explains best a log in which that alone is changed', (id, truth) => {
    const log = engineLog(lead, nothing, truth, id);
    const [best, second] = singleChanges({ scenario: lead, log, u: bench });
    expect(best.id).toBe(id);
    expect(best.pays).toBe(true);
    expect(best.explains).toBeGreaterThan(0.9);
    expect(best.deltaAIC).toBeLessThan(second.deltaAIC - 100);
  });

  it('seldom pays where the case is right as it stands: at one in a hundred each, in 3 of 48 at the most', () => {
    const logs = Array.from({ length: 12 }, (_, n) => engineLog(lead, nothing, {}, `right ${n}`));
    const found = logs.flatMap((log) => singleChanges({ scenario: lead, log, u: bench }));
    expect(found.filter(({ pays }) => pays).length).toBeLessThanOrEqual(3);
    expect(found.filter(({ p }) => p > 0.1).length).toBeGreaterThan(30);
  });
});

describe('a prediction beside a log', () => {
  const nothing = emptyLog(ladder([4, 8, 11], 900, 8));
  const compare = (log: BenchLog, values = {}) => compareWithLog({ scenario: lead, log, u: bench, values })!;

  it('agrees at every plateau where the case is right, with differences far inside 2u', () => {
    const found = compare(engineLog(lead, nothing, {}, 'as predicted'));
    expect(found.map(({ thermometer }) => thermometer)).toEqual(['conductor by resistance', 'sheath 1']);
    for (const { agrees, plateaus, bias } of found) {
      expect(agrees).toBe(true);
      expect(plateaus).toHaveLength(3);
      expect(Math.abs(bias)).toBeLessThan(0.3);
      for (const { u, uPredicted, uMeasured } of plateaus) expect(u).toBeCloseTo(Math.hypot(uPredicted, uMeasured), 9);
    }
    // the table's greatest resistance is known to 2 %, which is 5 K of resistance thermometry
    expect(found[0].plateaus[0].uPredicted).toBeGreaterThan(4.5);
  });

  it('disagrees where the resistance is 15 % higher, and agrees again once that is put in', () => {
    const log = engineLog(lead, nothing, { R20: 0.0299 }, 'higher');
    const [byR] = compare(log);
    expect(byR.agrees).toBe(false);
    expect(byR.bias).toBeGreaterThan(30);
    expect(compare(log, { R20: 0.0299 }).every(({ agrees }) => agrees)).toBe(true);
  });

  it('disagrees on the sheath alone where its probe is loose', () => {
    const [byR, sheath] = compare(engineLog(lead, nothing, { probeOffset: -9 }, 'loose'));
    expect(byR.agrees).toBe(true);
    expect(sheath.agrees).toBe(false);
    expect(sheath.bias).toBeCloseTo(-9, 0);
  });
});

describe('a mean by resistance and a probe on the sheath', () => {
  const short: Scenario = { ...lead, lead: { length_m: 1.2 } };
  const I = 10;

  /** A lead of 1.2 m with both ends at 21 °C, cell by cell, by the same section and surface but no fin formula; its middle and mean rise [K]. */
  function finByCells(): { middle: number; mean: number } {
    const of = buildCase(short);
    const cells = 240;
    const dx = 1.2 / cells;
    const kA = (2 * 391 * 0.75e-6) / 1.02 + 0.2 * 1.6e-5; // two cores, and about 16 mm² of PVC
    const steady = steadyState(of, supplyOf(of, { kind: 'current', I_A: I }));
    if (steady.kind !== 'steady') throw new Error('this lead settles');
    const { conductor, flow } = steady.chain;
    const g = flow / (conductor - of.Ta); // W/(m·K), as if straight
    const T = new Float64Array(cells + 2).fill(of.Ta);
    for (let sweep = 0; sweep < 30_000; sweep++) {
      for (let i = 1; i <= cells; i++) {
        const made = 2 * I * I * conductorResistance(of, T[i]);
        const across = (kA / dx) * (T[i - 1] + T[i + 1]);
        T[i] = (across + (made + g * of.Ta) * dx) / ((2 * kA) / dx + g * dx);
      }
      T[0] = 2 * of.Ta - T[1];
      T[cells + 1] = 2 * of.Ta - T[cells];
    }
    const rises = Array.from(T.slice(1, cells + 1), (x) => x - of.Ta);
    return { middle: rises[cells / 2], mean: rises.reduce((a, b) => a + b) / cells };
  }

  const settled = (scenario: Scenario) => {
    const of = buildCase(scenario);
    const steady = steadyState(of, supplyOf(of, { kind: 'current', I_A: I }));
    if (steady.kind !== 'steady') throw new Error('this lead settles');
    return { of, ...steady.chain };
  };
  const ask = (probeLess: number, rest = {}) => {
    const { of, conductor, surface } = settled(lead);
    const R = 2 * 6 * conductorResistance(of, conductor);
    const probe = surface + 0.1 - probeLess; // the middle is a little warmer than the mean
    return explainDifference({ scenario: lead, I, R, uR: 1e-4, probe, uProbe: 0.3, ambient: of.Ta, ...rest })!;
  };

  it('differ by the ends as much as a lead cut into cells does', () => {
    const { middle, mean } = finByCells();
    const of = buildCase(short);
    const R = 2 * 1.2 * conductorResistance(of, of.Ta + mean);
    const found = explainDifference({ scenario: short, I, R, uR: 1e-5, probe: 300, uProbe: 0.3, ambient: of.Ta })!;
    expect(Math.abs(found.ends / (middle - mean) - 1)).toBeLessThan(0.1);
    expect(found.endShare).toBeCloseTo(0.5, 9);
    expect(found.ends).toBeGreaterThan(1);
  });

  it('are explained by the fall to the sheath and the ends where nothing is wrong', () => {
    const found = ask(0);
    const { conductor, surface } = settled(lead);
    expect(found.inner).toBeCloseTo(conductor - surface, 1);
    expect(found.cause).toBe('explained');
    for (const { text } of found.words)
      for (const sentence of text.split(/(?<=\.) /)) expect(sentence.split(' ').length).toBeLessThanOrEqual(25);
  });

  it('name a loose probe or a contact, a hot spot, or a lag, each with its number', () => {
    const loose = ask(9);
    expect(loose.cause).toBe('loose probe or contact resistance');
    expect(loose.left).toBeCloseTo(9, 0);
    // 12 m of 26 mΩ/m at 0.393 % a kelvin: 1.226 mΩ a kelvin
    expect(loose.perMilliohm).toBeCloseTo(1 / 1.226, 2);
    expect(ask(-9).cause).toBe('hot spot at the probe');
    const lag = ask(9, { rate: 0.2 });
    expect(lag.cause).toBe('lag');
    expect(lag.words.at(-1)!.text).toMatch(/lag of about 4\d s/);
    expect(ask(9, { rate: 0.2, lag: 45 }).cause).toBe('explained');
  });

  it('say nothing where the resistance names no temperature', () => {
    expect(explainDifference({ scenario: lead, I, R: -1, uR: 1e-4, probe: 300, uProbe: 0.3, ambient: 294 })).toBeNull();
  });
});

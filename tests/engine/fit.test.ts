import { describe, expect, it } from 'vitest';
import { type BenchLog, type FitParameterId, fitLog, fitting, type Scenario } from '#engine';
import { driveOf } from '#engine/bench/fit/drive.ts';
import { forwardOf, lagged } from '#engine/bench/fit/forward.ts';
import { valuesOf } from '#engine/bench/fit/parameters.ts';
import { runCase } from '#engine/heating/run.ts';
import { buildCase } from '#engine/heating/thermal-case.ts';
import { bench, emptyLog, engineLog, ladder, lead } from './fit-logs.ts';

const steps = ladder([0, 4, 8, 11, 0], 480, 8);
const nothing = emptyLog(steps);
const fitOf = (log: BenchLog, free: readonly FitParameterId[], scenario: Scenario = lead) =>
  fitLog({ scenario, log, u: bench, free });
const oneOf = (fit: ReturnType<typeof fitLog>, id: FitParameterId) => fit.parameters.find((one) => one.id === id)!;

describe('the model driven by a log', () => {
  it('is the model of a prediction: held currents give the same curves', () => {
    const supply = [4, 9, 0].map((I_A) => ({ kind: 'current' as const, I_A, duration_s: 600 }));
    const run = runCase(buildCase({ ...lead, supply }));
    const log = emptyLog(ladder([4, 9, 0], 600, 2, 0));
    const sharp = { ...log, ambient: null };
    sharp.I[0] = 4;
    const forward = forwardOf(lead, driveOf(sharp, bench, 294.15, 0)!);
    const trace = forward.trace(valuesOf(forward.of));
    for (const t of [60, 580, 900, 1180, 1790]) {
      const i = run.curves.t.findIndex((time) => time >= t);
      const part = (t - run.curves.t[i - 1]) / (run.curves.t[i] - run.curves.t[i - 1]);
      const at = (c: Float64Array) => c[i - 1] + part * (c[i] - c[i - 1]);
      // a switch lies midway between two rows for the log, 1 s late for the run: at most 81 A² s off, a tenth of a kelvin at first
      expect(Math.abs(trace.conductor[t / 2] - at(run.curves.conductor))).toBeLessThan(0.12);
      expect(Math.abs(trace.surface[t / 2] - at(run.curves.surface))).toBeLessThan(0.12);
    }
  });

  it('lets a slow thermometer follow a ramp by its time constant, and a step as an exponential', () => {
    const t = Float64Array.from({ length: 401 }, (_, k) => k);
    expect(
      lagged(
        t,
        t.map((x) => 0.2 * x),
        30,
      )[400],
    ).toBeCloseTo(0.2 * (400 - 30), 4);
    const step = lagged(
      t,
      t.map((x) => (x < 1 ? 0 : 1)),
      50,
    );
    expect(step[51] / step[400]).toBeCloseTo(1 - Math.exp(-1), 2);
  });

  it('puts a long log into means that never reach across a switch', () => {
    const long = emptyLog(ladder([0, 5, 10], 2000, 1));
    const drive = driveOf(long, bench, 294, 0, 400)!;
    expect(drive.at.length).toBeLessThan(450);
    expect(drive.count.reduce((a, b) => a + b, 0)).toBe(6001);
    for (const I of drive.I) expect([0, 5, 10].some((held) => Math.abs(I - held) < 1e-9) || Number.isNaN(I)).toBe(true);
  });
});

describe('a fit of logs made by the model with noise', () => {
  const truth = { R20: 0.0251, contact: 0.012, surface: 0.88, probeOffset: -1.1, probeLag: 22 };
  const free: FitParameterId[] = ['R20', 'contact', 'surface', 'probeOffset', 'probeLag'];

  it('holds each truth in its 95 % interval in at least 90 % of 40 logs', () => {
    const hits = Object.fromEntries(free.map((id) => [id, 0]));
    const logs = Array.from({ length: 40 }, (_, n) => engineLog(lead, nothing, truth, `coverage ${n}`));
    for (const log of logs) {
      const fit = fitOf(log, free);
      expect(fit.ended).toBe('converged');
      for (const { id, interval } of fit.parameters) {
        const value = truth[id as keyof typeof truth];
        if (interval && interval[0] <= value && value <= interval[1]) hits[id]++;
      }
    }
    console.info(`coverage of 40: ${free.map((id) => `${id} ${hits[id]}`).join(', ')}`);
    for (const id of free) expect(hits[id]).toBeGreaterThanOrEqual(36);
  });

  it('finds the metal area by resistance and by what the conductor holds', () => {
    const log = engineLog(lead, nothing, { area: 0.68e-6 }, 'area');
    const area = oneOf(fitOf(log, ['area']), 'area');
    expect(area.interval![0]).toBeLessThan(0.68e-6);
    expect(area.interval![1]).toBeGreaterThan(0.68e-6);
    expect(area.u! / area.value).toBeLessThan(1e-3);
  });

  it('says how far the plastics’ own data move a value, as a refit with those data off shows', () => {
    const log = engineLog(lead, nothing, truth, 'astray');
    const fit = fitOf(log, ['surface', 'probeLag']);
    const other = (rhoT: number, MJ: number): Scenario => {
      const material = { rhoT_KmPerW: rhoT, heatCapacity_MJPerM3K: MJ, emissivity: 0.9 };
      const [insulation, sheath] = [0.6, 0.8].map((thickness_mm) => ({ material, thickness_mm }));
      return { ...lead, cable: { layout: 'round', cores: 2, conductor: { size_mm2: 0.75 }, insulation, sheath } };
    };
    const moved = (changed: Scenario, id: FitParameterId) =>
      oneOf(fitOf(log, ['surface', 'probeLag'], changed), id).value -
      oneOf(fitOf(log, ['surface', 'probeLag'], other(5, 1.7)), id).value;
    for (const id of ['surface', 'probeLag'] as const) {
      const byRefits = Math.hypot(moved(other(5.4, 1.7), id), moved(other(5, 1.802), id));
      const { u, uModel, interval, wide } = oneOf(fit, id);
      expect(Math.abs(uModel! / byRefits - 1)).toBeLessThan(0.15);
      const stretched = (wide![1] - wide![0]) / (interval![1] - interval![0]);
      expect(stretched).toBeCloseTo(Math.hypot(u!, uModel!) / u!, 9);
    }
    expect(fit.words.map(({ id }) => id)).toContain('astray');
  });

  it('calls what is left noise where the model is right, and says what share of scatter it widened by', () => {
    const fit = fitOf(engineLog(lead, nothing, truth, 'white'), free);
    expect(fit.residuals.map(({ white }) => white)).toEqual([true, true]);
    for (const { durbinWatson } of fit.residuals) expect(Math.abs(durbinWatson - 2)).toBeLessThan(0.4);
    const loud = fitOf(engineLog(lead, nothing, truth, 'loud', { ...bench, U: 0.006, probe: 0.6 }), free);
    expect(loud.widened).toBeGreaterThan(2);
    expect(oneOf(loud, 'surface').u!).toBeGreaterThan(2 * oneOf(fit, 'surface').u!);
    expect(loud.words.map(({ id }) => id)).toContain('widened');
  });

  it('says when a parameter ends at its bound, and gives it no interval', () => {
    const fit = fitOf(engineLog(lead, nothing, { contact: -0.01 }, 'bound'), ['contact']);
    expect(oneOf(fit, 'contact')).toMatchObject({ state: 'at bound', value: 0, u: null, interval: null });
    expect(fit.words.map(({ text }) => text)).toContain('The contact resistance lies at its least allowed value.');
    const most = fitOf(engineLog(lead, nothing, { surface: 7 }, 'most'), ['surface']);
    expect(oneOf(most, 'surface')).toMatchObject({ state: 'at bound', value: 5, u: null });
  });
});

describe('what a log does not tell', () => {
  const truth = { surface: 0.9 };
  const probed = engineLog(lead, nothing, truth, 'untold');
  const voltsOnly = { ...probed, probes: [] };

  it('is held and named: surface factor and ambient offset by volts alone, one current', () => {
    const one = emptyLog(ladder([9], 3000, 8), 0);
    const log = engineLog({ ...lead, start: { T_degC: 21 } }, one, truth, 'one');
    const fit = fitOf(log, ['surface', 'ambientOffset'], { ...lead, start: { T_degC: 21 } });
    const held = fit.parameters.filter(({ state }) => state === 'held');
    expect(held).toHaveLength(1);
    expect(held[0].value).toBe(held[0].start);
    expect([fit.untold[0].held, ...fit.untold[0].from].sort()).toEqual(['ambientOffset', 'surface']);
    expect(fit.words.some(({ text }) => /cannot tell it from/.test(text))).toBe(true);
  });

  it('is told in sentences of 25 words at the most, even where all seven are freed', () => {
    const all: FitParameterId[] = ['R20', 'area', 'contact', 'surface', 'ambientOffset', 'probeOffset', 'probeLag'];
    const { words, untold } = fitOf(probed, all);
    expect(untold.length).toBeGreaterThan(0);
    for (const { text } of words)
      for (const sentence of text.split(/(?<=\.) /)) expect(sentence.split(' ').length).toBeLessThanOrEqual(25);
  });

  it('is held and named: probe offset and lag without a probe', () => {
    const fit = fitOf(voltsOnly, ['surface', 'probeOffset', 'probeLag']);
    expect(fit.untold).toEqual([
      { held: 'probeOffset', from: [], why: 'moves nothing' },
      { held: 'probeLag', from: [], why: 'moves nothing' },
    ]);
    expect(oneOf(fit, 'surface').interval![0]).toBeLessThan(0.9);
    expect(oneOf(fit, 'surface').interval![1]).toBeGreaterThan(0.9);
  });

  it('is held and named: the surface factor of a log that never warmed', () => {
    const cold = engineLog(lead, emptyLog(ladder([0.02], 600, 8, 0)), {}, 'cold');
    const fit = fitLog({ scenario: lead, log: cold, u: { ...bench, U: 0.01 }, free: ['surface', 'probeOffset'] });
    expect(fit.untold.map(({ held, why }) => [held, why])).toEqual([['surface', 'interval wider than its bounds']]);
    expect(oneOf(fit, 'probeOffset').state).toBe('fitted');
  });
});

describe('poor data', () => {
  const truth = { surface: 0.9, R20: 0.0255 };
  const free: FitParameterId[] = ['surface', 'R20'];
  const whole = engineLog(lead, nothing, truth, 'gaps');

  it('with gaps and readings missing do no harm', () => {
    const missing = (column: Float64Array, one: number) => column.map((x, k) => (k % 7 === one ? Number.NaN : x));
    const torn = {
      ...whole,
      I: missing(whole.I, 1),
      U: missing(whole.U, 2),
      ambient: missing(whole.ambient!, 3),
      probes: whole.probes.map((probe) => ({ ...probe, T: missing(probe.T, 4) })),
    };
    const keep = Array.from(torn.t.keys()).filter((k) => k < 90 || k > 105);
    const cut = (column: Float64Array) => Float64Array.from(keep, (k) => column[k]);
    const log = {
      ...torn,
      t: cut(torn.t),
      I: cut(torn.I),
      U: cut(torn.U),
      ambient: cut(torn.ambient),
      probes: torn.probes.map((probe) => ({ ...probe, T: cut(probe.T) })),
    };
    const fit = fitOf(log, free);
    expect(fit.ended).toBe('converged');
    for (const id of free) {
      const [low, high] = oneOf(fit, id).interval!;
      const wider = high - low;
      expect(truth[id as keyof typeof truth]).toBeGreaterThan(low - wider / 2);
      expect(truth[id as keyof typeof truth]).toBeLessThan(high + wider / 2);
    }
    for (const { value } of fit.residuals) expect(value.every(Number.isFinite)).toBe(true);
  });

  it('end in a value: nothing read, two rows, a current that would melt the lead', () => {
    const none = whole.U.map(() => Number.NaN);
    const blank = { ...whole, U: none, probes: [] };
    expect(fitOf(blank, free).ended).toBe('too few readings');
    expect(fitOf({ ...whole, I: none }, free).ended).toBe('too few readings');
    expect(
      fitOf(emptyLog({ t: Float64Array.of(0, 1), I: none.slice(0, 2), ambient: none.slice(0, 2) }), free).ended,
    ).toBe('too few readings');
    const melted = fitOf({ ...whole, I: whole.I.map((I) => 40 * I) }, free);
    expect(melted.ended).toBe('melts');
    expect(melted.words[0].text).toMatch(/melts the metal/);
    const begun = fitLog({
      scenario: lead,
      log: { ...whole, I: whole.I.map((I) => 3 * I) },
      u: bench,
      free,
      values: { surface: 0.2, R20: 0.13 },
    });
    expect(begun.ended).toBe('melts');
  });

  it('of another metal leave residuals that are not noise', () => {
    const cable = { ...lead.cable, conductor: { metal: 'brass', R20_ohmPerKm: 26 } } as Scenario['cable'];
    const log = engineLog({ ...lead, cable }, nothing, {}, 'brass');
    const fit = fitOf(log, ['R20', 'contact']);
    expect(fit.residuals[0].white).toBe(false);
    expect(fit.residuals[0].durbinWatson).toBeLessThan(1);
    expect(fit.words.some(({ id }) => id === 'not noise')).toBe(true);
  });

  it('may be given up midway: the fit then says so', () => {
    let seen = 0;
    const stopped = fitLog({ scenario: lead, log: whole, u: bench, free }, () => ++seen < 2);
    expect(stopped.ended).toBe('stopped');
    expect(seen).toBe(2);
    const steps = fitting({ scenario: lead, log: whole, u: bench, free });
    const first = steps.next().value;
    const second = steps.next().value;
    expect(second).toMatchObject({ round: 1, iteration: 2 });
    expect((second as { chiSquare: number }).chiSquare).toBeLessThan((first as { chiSquare: number }).chiSquare);
  });
});

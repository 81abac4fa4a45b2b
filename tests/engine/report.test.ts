// The report of a bench job: what it shows, what its verdict may rest on, and what it says is missing.
import { describe, expect, it } from 'vitest';
import { type BenchJob, type BenchReport, celsius, emptyJob, parseJob, reportOf, reportSections } from '#engine';
import { runBench } from '../case-files/generator/bench.ts';
import { sander as truth } from '../case-files/generator/cases.ts';
import { asked, jobWithLog, lockedPlan } from './report-job.ts';

const before = '2026-03-12T08:00:00.000Z'; // the sander's log begins at 09:31
const sander = jobWithLog('sander.csv');
const planned: BenchJob = { ...sander, plan: lockedPlan(sander, before) };
const whole: BenchJob = { ...planned, fitted: ['contact'] };
const of = (job: BenchJob) => reportOf(asked(job));
const said = (job: BenchJob, id: string) => of(job).verdict.find((one) => one.id === id)?.text;
const words = (job: BenchJob) =>
  Object.values(of(job).missing)
    .flat()
    .map((one) => one.words);

describe('the verdict of a whole job', () => {
  const report = of(whole);

  it('names metal and size by what was measured', () => {
    expect(report.facts.metal?.name).toBe('clad aluminium');
    // the true lead: 35.8 mΩ/m
    const { value, u } = report.facts.R20!;
    expect(Math.abs(value - truth.lead.R20)).toBeLessThan(2 * u);
    expect(said(whole, 'behaves as')).toMatch(
      /^This sample behaves as clad aluminium \(equal to 0\.48\u00A0mm² copper/,
    );
  });

  it('tells the temperature that the lead truly reached, within its uncertainty, once contact is fitted', () => {
    const coarse = { ...truth, section: { ...truth.section, across: 16 } }; // as the kept log, in a tenth of the time
    const last = runBench(coarse).at(-1)!;
    const { T, I, rating } = report.facts.reached!;
    expect(Math.abs(celsius(T.value) - last.conductor)).toBeLessThan(2 * T.u);
    expect(I).toBeCloseTo(12.05, 1);
    expect(celsius(rating!)).toBeCloseTo(70, 6);
    // without the fit the contacts count as if they were metal: warmer
    expect(of(planned).facts.reached!.T.value).toBeGreaterThan(T.value + 2);
  });

  it('says which device does not protect it, and what would', () => {
    expect(said(whole, 'device')).toMatch(/^A 13\u00A0A plug fuse may carry 20\.8\u00A0A for ever/);
    expect(said(whole, 'suitable')).toMatch(/Not suitable|not suitable/);
    expect(report.device?.ways.length).toBeGreaterThan(0);
  });

  it('holds readings against the prediction that was locked before them', () => {
    expect(report.lock).toMatchObject({ state: 'locked', before: true });
    expect(report.facts.agrees).not.toBeNull();
    expect(said(whole, 'agreement')).toMatch(/locked prediction/);
  });
});

describe('a verdict rests on nothing that does not bear it', () => {
  it('on no prediction that was locked after the readings began, or changed after that', () => {
    const late = { ...whole, plan: lockedPlan(sander, '2026-03-12T12:00:00.000Z') };
    expect(of(late).facts.agrees).toBeNull();
    expect(said(late, 'agreement')).toBeUndefined();
    expect(words(late).join()).toMatch(/they began before it was locked in/);
    const changed = { ...whole, plan: { ...whole.plan!, question: 'Another question?' } };
    expect(of(changed).lock.state).toBe('changed since');
    expect(of(changed).facts.agrees).toBeNull();
  });

  it('on no simulated log', () => {
    const csv = sander.log!.csv.replaceAll(',measured', ',simulated');
    const simulated = { ...whole, log: { ...sander.log!, csv } };
    const { facts, limits } = of(simulated);
    expect(facts.reached).toBeNull();
    expect(facts.agrees).toBeNull();
    expect(limits.join(' ')).toMatch(/The log is simulated/);
    expect(said(simulated, 'not established')).toMatch(/the temperature it reaches/);
  });

  it('on no case of another resistance than the sample', () => {
    const cable = { table: 'H05VV-F', cores: 3, size_mm2: 1.5, loaded: 2 } as const;
    const other = { ...sander, scenario: { ...sander.scenario!, cable } };
    const report = of(other);
    expect(report.ownCase).toBe(false);
    expect(report.facts.reached).toBeNull();
    expect(report.facts.device).toBeNull();
    expect(report.device).not.toBeNull(); // shown, with the words that it is of another lead
    expect(report.limits.join(' ')).toMatch(/No verdict rests on it/);
  });

  it('on no metal where only the marking is known', () => {
    const marked = { ...emptyJob('iec'), found: { marking: { size_mm2: 1.5 } } };
    const { facts, identified } = of(marked);
    expect(identified).toBeNull();
    expect(facts).toMatchObject({ R20: null, metal: null, reached: null, device: null, agrees: null });
  });
});

describe('what is missing', () => {
  it('is said by section, and the step that makes it, for a job with nothing in it', () => {
    const { missing, verdict } = of(emptyJob('iec'));
    const silent = reportSections.filter(({ id }) => missing[id].length === 0).map(({ id }) => id);
    expect(silent).toEqual(['verdict', 'limits']);
    expect(missing.identification[0]?.step).toBe('identify');
    expect(missing.prediction[0]?.step).toBe('plan');
    expect(missing.readings[0]?.step).toBe('log');
    expect(verdict.map(({ id }) => id)).toEqual(['not established']);
  });

  it('goes as it is found out', () => {
    expect(of(whole).missing.identification).toEqual([]);
    expect(of(whole).missing.readings).toEqual([]);
    expect(of(whole).missing.comparison).toEqual([]);
    expect(of(whole).missing.device).toEqual([]);
    expect(words(whole).join()).toMatch(/instruments.*calibrated/);
    const told = { ...whole, report: { ...whole.report, words: { 'set-up': 'V1, A1: calibrated in May' } } };
    expect(words(told).join()).not.toMatch(/calibrated/);
  });
});

it('a job that was saved and opened again gives the same report', () => {
  const opened = parseJob(JSON.parse(JSON.stringify(whole))).job!;
  const told = ({ facts, verdict, lock, limits, missing, identified, means }: BenchReport) => {
    return {
      reached: facts.reached,
      agrees: facts.agrees,
      verdict,
      lock,
      limits,
      missing,
      words: identified?.words,
      means,
    };
  };
  expect(told(of(opened))).toEqual(told(of(whole)));
});

it('its own sentences are of report length: none over 25 words, 14 on average', () => {
  const { limits } = of(whole);
  const counts = limits
    .flatMap((text) => text.split(/(?<=[.?])\s+(?=[A-Z])/))
    .map((one) => one.split(/[\s\u00A0]+/).filter((word) => /[a-z]{2}/i.test(word)).length);
  expect(Math.max(...counts)).toBeLessThanOrEqual(25);
  expect(counts.reduce((sum, n) => sum + n, 0) / counts.length).toBeLessThanOrEqual(14);
});

it.each(['polisher.csv', 'worklight.tsv'])('%s gives a report too', (file) => {
  const job = jobWithLog(file);
  const { verdict, facts } = of(job);
  expect(facts.metal?.name).toBe(file.startsWith('p') ? 'copper' : 'plain aluminium');
  expect(facts.reached).not.toBeNull();
  expect(verdict.length).toBeGreaterThan(3);
});

// What was found on each invented lead, against what is true of it.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { caseFiles, correctColumn, evidenceOf, guessMapping, identify, jobOfCase, parseJob, readLog } from '#engine';
import type { BenchSpec } from './generator/bench.ts';
import { trueMetal } from './generator/cases.ts';
import { keptLogs, logFolder } from './generator/logs.ts';

const caseOf = (file: string) => caseFiles.find((one) => one.file === file)!;
const cases = keptLogs.map(({ file, spec }) => ({ file, spec, metal: trueMetal(spec) }));

/** Loop resistance between the taps [Ω] of a true lead at a temperature, contacts left out. */
function loopOf({ lead }: BenchSpec, T_degC: number): number {
  const weak = lead.weak ? lead.weak.long * (lead.weak.times - 1) : 0;
  return lead.loaded * lead.R20 * (lead.length + weak) * (1 + lead.alpha20 * (T_degC - 20));
}

describe('the sheet of what was found', () => {
  it('is there for every kept log', () => {
    expect(caseFiles.map(({ file }) => file)).toEqual(keptLogs.map(({ file }) => file));
  });

  it.each(cases)('of $file names $metal first', ({ file, metal }) => {
    const { candidates, fit } = identify(evidenceOf(caseOf(file).found));
    expect(fit.none).toBe(false);
    expect(candidates[0]?.metal).toBe(metal);
    expect(candidates[0]?.probability).toBeGreaterThan(0.8);
  });

  it.each(cases)('of $file is read within its instruments, and is not the truth itself', ({ file, spec }) => {
    const { found } = caseOf(file);
    const { resistance, strands, mass } = evidenceOf(found);
    const true_ = loopOf(spec, found.resistance?.T_degC ?? Number.NaN);
    const off = Math.abs((resistance?.R.value ?? Number.NaN) - true_);
    expect(off).toBeLessThan(2 * (resistance?.R.u ?? 0));
    expect(off).toBeGreaterThan(0);
    const wire = Math.sqrt((4 * spec.lead.area) / Math.PI / (strands?.count?.value ?? Number.NaN));
    expect(Math.abs((strands?.diameter?.value ?? Number.NaN) - wire)).toBeLessThan(2 * (strands?.diameter?.u ?? 0));
    if (!mass) return;
    const density = { copper: 8890, cladAluminium: 3322, aluminium: 2703 }[trueMetal(spec)]; // kg/m³, as the curriculum has them
    const perMetre = mass.mass.value / mass.length.value;
    expect(perMetre / (density * spec.lead.area)).toBeGreaterThan(0.97); // laid strands are longer than their core, up to 5 %
    expect(perMetre / (density * spec.lead.area)).toBeLessThan(1.08);
  });

  it.each(cases)('of $file begins a job that can be kept, with the steps of its log', ({ file, spec }) => {
    const job = jobOfCase(caseOf(file));
    expect(parseJob(job).faults).toBeUndefined();
    expect(job.scenario?.supply.map((step) => step.kind === 'current' && [step.I_A, step.duration_s])).toEqual(
      spec.steps.map((step) => [...step]),
    );
    expect(job.scenario?.lead?.length_m).toBe(spec.lead.length);
  });

  it.each(cases)('of $file says of its columns what they are', ({ file, spec }) => {
    const { said } = caseOf(file);
    const bytes = new Uint8Array(readFileSync(new URL(file, logFolder)));
    const guessed = guessMapping(bytes);
    const headers = guessed.columns.map(({ header }) => header);
    expect(Object.keys(said).filter((header) => !headers.includes(header))).toEqual([]);
    const mapping = guessed.columns.reduce((all, { index, header }) => {
      const one = said[header];
      return one ? correctColumn(all, index, one) : all;
    }, guessed);
    const { log } = readLog(bytes, mapping);
    expect(log.probes.map(({ place }) => place === 'surface')).toEqual(
      spec.probes.map(({ at }) => Math.abs(at - spec.lead.length / 2) < spec.lead.length / 4),
    );
  });

  it.each(caseFiles)('of $file tells its story in three sentences', ({ story }) => {
    expect(story.match(/[.?!](?=\s|$)/g)).toHaveLength(3);
  });
});

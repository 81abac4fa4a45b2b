// The command behind `npm run predict`, run as a user runs it.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const folder = 'engine/examples';
const examples = readdirSync(folder).filter((name) => name.endsWith('.json'));

function run(...args: string[]) {
  return spawnSync(process.execPath, ['site/cli/predict.ts', ...args], { encoding: 'utf8' });
}

function runOn(text: string) {
  const file = join(mkdtempSync(join(tmpdir(), 'case-')), 'case.json');
  writeFileSync(file, text);
  return run(file);
}

const lines = (text: string) => text.trim().split('\n');

describe('predict', () => {
  it('comes with five example cases', () => {
    expect(examples).toHaveLength(5);
  });

  it.each(examples)('answers the example %s with numbers throughout', (name) => {
    const { status, stdout, stderr } = run(join(folder, name));
    expect(stderr).toBe('');
    expect(status).toBe(0);
    const report = JSON.parse(stdout);
    expect(report.curve.t_s.length).toBeGreaterThan(20);
    for (const values of Object.values<(number | null)[]>(report.curve)) {
      expect(values).toHaveLength(report.curve.t_s.length);
      expect(values.every((value) => typeof value === 'number')).toBe(true);
    }
    expect(Math.abs(report.energy_JPerM.imbalance)).toBeLessThan(1e-6);
  });

  it('prints what the README shows of its example', () => {
    const report = JSON.parse(run(join(folder, 'suspect-lead.json')).stdout);
    const readme = readFileSync('README.md', 'utf8');
    const [given, shown] = [...readme.matchAll(/```json\n([\s\S]*?)```/g)].map((match) =>
      JSON.parse(match[1] as string),
    );
    const { title: _, ...example } = JSON.parse(readFileSync(join(folder, 'suspect-lead.json'), 'utf8'));
    expect(given).toEqual(example);
    const told = (part: Record<string, unknown>) =>
      Object.fromEntries(Object.entries(part).filter(([key]) => key !== '…'));
    expect(report.cable).toMatchObject(told(shown.cable));
    expect(report.steady).toMatchObject(told(shown.steady));
    expect(report.rating_A).toBe(shown.rating_A);
    expect(report.lead.end).toEqual(shown.lead.end);
    expect(report.events).toEqual(shown.events);
  });

  it('takes a metal that no table has, by its values', () => {
    const report = JSON.parse(run(join(folder, 'bench-steps.json')).stdout);
    expect(report.cable.metal).toBe('tinned bronze');
  });

  it('tells contacts and the loop of a fault where the case has them, and only there', () => {
    const example = JSON.parse(readFileSync(join(folder, 'suspect-lead.json'), 'utf8'));
    const plain = JSON.parse(runOn(JSON.stringify({ ...example, device: { family: 'bs1362', rating_A: 13 } })).stdout);
    expect(plain).not.toHaveProperty('contacts');
    expect(plain).not.toHaveProperty('loop');
    expect(plain.device.prospective).toEqual({ I_A: 1000, from: 'our choice' });
    const told = {
      ...example,
      supply: [{ kind: 'current', I_A: 10 }],
      lead: { length_m: 20, contact_ohm: 0.002, contacts: [{ kind: 'pin', name: 'line pin', R_ohm: 0.02 }] },
      device: { family: 'bs1362', rating_A: 13 },
      fault: { Ze_ohm: 0.35, line_ohm: 0.15, earth_ohm: 0.25 },
    };
    const { contacts, loop, device, lead } = JSON.parse(runOn(JSON.stringify(told)).stdout);
    expect(contacts.each[0]).toMatchObject({ name: 'line pin', kind: 'pin', R_ohm: 0.02, heat_W: 2 });
    expect(contacts.total).toMatchObject({ R_ohm: 0.022, heat_W: 2.2 });
    expect(contacts.total.heat_W).toBe(lead.end.contactHeat_W);
    expect(contacts.each[0].asMetres_m * contacts.lead_WPerM).toBeCloseTo(2, 4);
    const warm = loop.parts.reduce((sum: number, part: { warm_ohm: number }) => sum + part.warm_ohm, loop.Ze_ohm);
    expect(loop.Zs_ohm).toBeCloseTo(warm, 4);
    expect(loop.least_A).toBeCloseTo((0.95 * 230) / loop.Zs_ohm, 2);
    expect(loop.greatest_A).toBeCloseTo(230 / loop.cold_ohm, 2);
    expect(loop.clearing).toMatchObject({ outcome: 'not met', surelyOpens_A: 100, greatestLoop_ohm: 2.185 });
    expect(loop.clearing.allowed).toMatchObject({ t_s: 0.4, source: 'iec60364-4-41' });
    const [near, far] = loop.adiabatic.each;
    expect(near.allowed_s).toBeCloseTo(loop.adiabatic.k2S2_A2s / (230 / 0.35) ** 2, 6);
    expect(near).toMatchObject({ range: 'let-through', survives: true });
    expect(far).toMatchObject({ I_A: loop.least_A, range: 'adiabatic', survives: null });
    expect(device.prospective).toEqual({ I_A: loop.nearEnd_A, from: 'fault path' });
    expect(device.byTemperature[0].upTo_A).toBe(loop.nearEnd_A);
  });

  it('tells the loop without a device, too, and then no verdict', () => {
    const example = JSON.parse(readFileSync(join(folder, 'suspect-lead.json'), 'utf8'));
    const { loop } = JSON.parse(runOn(JSON.stringify({ ...example, practice: 'na', fault: { Ze_ohm: 0.2 } })).stdout);
    expect(loop).toMatchObject({ U0_V: 120, Cmin: 1, nearEnd_A: 600, clearing: null });
    expect(loop.parts.map(({ name }: { name: string }) => name)).toEqual(['hot, lead', 'ground, lead']);
    expect(loop.adiabatic.survives).toBeNull();
  });

  it('names every fault of a case on a line of its own, and fails', () => {
    const bad = {
      cable: { table: 'H05VV-F', cores: 3, size_mm2: 'thin' },
      surroundings: { kind: 'breeze' },
      supply: [{ kind: 'current', I_A: -1 }],
      colour: 'red',
    };
    const { status, stdout, stderr } = runOn(JSON.stringify(bad));
    expect(status).toBe(1);
    expect(stdout).toBe('');
    expect(lines(stderr)).toHaveLength(4);
    expect(stderr).toMatch(/^cable\.size_mm2 is "thin"; it must be a number from .* mm²$/m);
    expect(stderr).toMatch(/^surroundings\.kind is "breeze"; it must be one of: stillAir, draught/m);
    expect(stderr).toMatch(/^supply\.0\.I_A is -1; it must be a number from 0 to/m);
    expect(stderr).toMatch(/^colour does not belong here; known names are:/m);
  });

  it('says in one line what is wrong with a file that is not there, not JSON, or not a case', () => {
    for (const answer of [run('no-such.json'), runOn('{ "cable": '), runOn('[1, 2]'), runOn('7')]) {
      expect(answer.status).toBe(1);
      expect(answer.stdout).toBe('');
      expect(lines(answer.stderr)).toHaveLength(1);
      expect(answer.stderr).not.toMatch(/at .*\.ts/);
    }
  });

  it('explains itself when no case is named', () => {
    const { status, stderr } = run();
    expect(status).toBe(1);
    expect(stderr).toMatch(/Usage: npm run predict -- case\.json/);
  });
});

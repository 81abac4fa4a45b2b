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

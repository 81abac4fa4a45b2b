import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { keptLogs, logFolder, logOf } from './generator/logs.ts';
import { sectionOf, stepSection } from './generator/section.ts';

const kept = (file: string) => new Uint8Array(readFileSync(new URL(file, logFolder)));

describe('a kept log', () => {
  it.each(keptLogs)('$file begins as its generator makes it', (log) => {
    const fresh = logOf(log, 120);
    const rows = 8; // of the shortest beginning, whose closing line is its own
    const lines = (bytes: Uint8Array) =>
      new TextDecoder(log.file.endsWith('tsv') ? 'utf-16le' : 'utf-8').decode(bytes).split(/\r?\n/);
    expect(lines(fresh).length).toBeGreaterThan(rows);
    expect(lines(kept(log.file)).slice(0, rows)).toEqual(lines(fresh).slice(0, rows));
  });
});

describe('the grid of a section', () => {
  const spec = { bundleRadius: 0.55e-3, insulation: 0.85e-3, sheath: 0.9e-3, k: 0.19, rhoC: 1.75e6 };

  it('keeps account of its heat: what left the conductors is held or shed', () => {
    const section = sectionOf({ ...spec, across: 24 });
    let T = new Float64Array(section.cells).fill(300);
    let next = new Float64Array(section.cells);
    const [cores, left] = [new Float64Array([330, 330, 310]), new Float64Array(3)];
    const dt = section.longestStep;
    let [given, shed] = [0, 0];
    for (let i = 0; i < 400; i++) {
      shed += dt * T.reduce((sum, here, cell) => sum + 12 * (section.open[cell] as number) * (here - 295), 0);
      stepSection(section, T, next, cores, left, () => 12, 295, dt);
      given += dt * left.reduce((sum, one) => sum + one, 0);
      [T, next] = [next, T];
    }
    const stored = section.capacity * T.reduce((sum, here) => sum + here - 300, 0);
    expect(given - shed).toBeCloseTo(stored, 6);
  });

  it('settles where a finer grid settles', () => {
    const surface = (across: number) => {
      const section = sectionOf({ ...spec, across });
      let T = new Float64Array(section.cells).fill(300);
      let next = new Float64Array(section.cells);
      const left = new Float64Array(3);
      let Ts = 0;
      for (let t = 0; t < 1500; t += section.longestStep) {
        Ts = stepSection(section, T, next, new Float64Array([340, 340, 340]), left, () => 12, 295, section.longestStep);
        [T, next] = [next, T];
      }
      return Ts;
    };
    expect(surface(24) / surface(48)).toBeCloseTo(1, 2);
  });
});

// The kept log of a lead, made by another model than the one that is fitted.
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { cast, fitLog, guessMapping, readLog, type Scenario } from '#engine';
import { sander } from '../case-files/generator/cases.ts';
import { instruments } from '../study/fitted.ts';

const bytes = new Uint8Array(readFileSync(new URL('../../site/public/case-files/sander.csv', import.meta.url)));

it('the fit to a kept log finds the resistance of its lead, within the interval that counts instruments and plastics', () => {
  const { log, counts } = readLog(bytes, guessMapping(bytes));
  expect(counts.setAside).toBe(0);
  const scenario: Scenario = {
    cable: cast.SUS,
    lead: { length_m: 8 },
    surroundings: { kind: 'stillAir', ambient_degC: 20 },
    supply: [{ kind: 'off' }],
  };
  const fit = fitLog({ scenario, log, u: instruments, free: ['R20', 'contact', 'surface', 'probeLag'] });
  const R20 = fit.parameters.find(({ id }) => id === 'R20');
  const [low, high] = R20?.wide ?? [0, 0];
  expect(low).toBeLessThan(sander.lead.R20);
  expect(high).toBeGreaterThan(sander.lead.R20);
  expect(Math.abs((R20?.value ?? 0) / sander.lead.R20 - 1)).toBeLessThan(0.01);
});

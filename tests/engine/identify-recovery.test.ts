// A short run of the recovery study (npm run study prints the long one).
import { describe, expect, it } from 'vitest';
import { recover } from '../study/recover.ts';

const leads = 400;

describe(`${leads} leads that we made and measured`, () => {
  it('are known by resistance, length, diameter, magnet and colours', () => {
    const found = recover(leads, 'known leads', false);
    expect(found.metalFirst).toBeGreaterThanOrEqual(0.95);
    expect(found.noneFits).toBeLessThanOrEqual(0.02);
    for (const held of [found.areaHeld, found.R20Held]) {
      expect(held).toBeGreaterThanOrEqual(0.92);
      expect(held).toBeLessThanOrEqual(0.98);
    }
    expect(found.R20Error).toBeLessThanOrEqual(0.01);
    // as sure as it is right: the mean probability of the true metal is near the share that comes first
    expect(Math.abs(found.trust - found.metalFirst)).toBeLessThan(0.04);
  });

  it('are known better with the mass', () => {
    const found = recover(leads, 'known leads', true);
    expect(found.metalFirst).toBeGreaterThanOrEqual(0.98);
    for (const held of [found.areaHeld, found.R20Held]) {
      expect(held).toBeGreaterThanOrEqual(0.92);
      expect(held).toBeLessThanOrEqual(0.98);
    }
  });
});

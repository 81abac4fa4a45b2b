// The known lead of lesson 5.1: 8.00 m, line and neutral joined, at 23 °C, with 0.12 Ω of test leads.
import { describe, expect, it } from 'vitest';
import { againstGreatest, handHeldSet, kelvin, metals, panelSet, setByLimits, twoAndFour } from '#engine';

const { alpha20, beta20 } = metals.copper;
const lead = {
  ...{ R20: 13.28e-3, metal: { alpha20: alpha20.value, beta20: beta20.value }, alpha20 },
  ...{ length: 8, inSeries: 2, T: kelvin(23) },
};
const limits = { U: 0.002, I: 0.005, L: 0.005, T: 1 };
const greatest = 13.3e-3; // Ω/m, 1.5 mm² class 5, IEC 60228 Table 3

describe('a known lead', () => {
  const { two, four, loop } = twoAndFour(lead, 1, 0.12, setByLimits(limits));

  it('shows the volts of what the voltmeter sits across', () => {
    expect(loop).toBeCloseTo(16 * 13.28e-3 * (1 + 3.93e-3 * 3), 6);
    expect(four.U.value).toBe(0.215);
    expect(two.U.value).toBeCloseTo(0.335, 9);
  });

  it('comes back by four leads, and not by two', () => {
    expect(four.measured.R20.value * 1e3).toBeCloseTo(13.28, 1);
    expect(two.measured.R20.value * 1e3).toBeCloseTo(0.335 / 16 / (1 + 3.93e-3 * 3) / 1e-3, 6);
    expect(two.measured.leadsInIt).toBeCloseTo(0.12 / 16, 9);
    expect(two.measured.limits.join()).toContain('test leads are in the reading');
  });

  it('has the doubt of its instruments: limits over √3, in squares', () => {
    const relative = Math.hypot(0.002, 0.005, 0.005, 3.93e-3 / 1.01179) / Math.sqrt(3);
    expect(four.measured.R20.relative).toBeCloseTo(relative, 4);
  });

  it('cannot be told from the greatest by four leads, and seems far above it by two', () => {
    expect(againstGreatest(four.measured.R20, greatest).verdict).toBe('not shown to fail');
    expect(againstGreatest(two.measured.R20, greatest).verdict).toBe('above the limit');
  });

  it('reads alike both ways where the test leads have no ohms', () => {
    const bare = twoAndFour(lead, 1, 0, setByLimits(limits));
    expect(bare.two.measured.R20.value).toBe(bare.four.measured.R20.value);
  });
});

describe('instruments', () => {
  const relative = (set: typeof handHeldSet, I: number) => twoAndFour(lead, I, 0.12, set).four.measured.R20.relative;

  it('in the hand are worse than those of close limits, and a panel’s steps are worse still at an ampere', () => {
    expect(relative(handHeldSet, 1)).toBeGreaterThan(relative(setByLimits(limits), 1));
    expect(relative(panelSet, 1)).toBeGreaterThan(relative(handHeldSet, 1));
  });

  it('tell more at a greater current', () => expect(relative(handHeldSet, 2)).toBeLessThan(relative(handHeldSet, 0.2)));
});

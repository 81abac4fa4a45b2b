import { describe, expect, it } from 'vitest';
import { flatLayout, roundLayout } from '../../engine/cable/layout.ts';

describe('the layout of round cores', () => {
  it.each([
    [1, 0],
    [2, 1],
    [3, 2 / Math.sqrt(3)],
    [4, Math.SQRT2],
    [5, 1 / Math.sin(Math.PI / 5)],
  ])('puts %i cores on the circle of the rule', (cores, a) => {
    const layout = roundLayout(cores, 2e-3);
    expect(layout.a).toBeCloseTo(2e-3 * a, 12);
    expect(layout.R).toBeCloseTo(2e-3 * (a + 1), 12);
    for (let i = 0; i < cores; i++) expect(Math.hypot(layout.x[i], layout.y[i])).toBeCloseTo(2e-3 * a, 12);
  });

  it.each([2, 3, 4, 5])('lets each of %i cores touch the next', (cores) => {
    const { x, y } = roundLayout(cores, 1e-3);
    for (let i = 0; i < cores; i++) {
      const j = (i + 1) % cores;
      expect(Math.hypot(x[i] - x[j], y[i] - y[j])).toBeCloseTo(2e-3, 12);
    }
  });

  it('puts two cores side by side, the first of three on top', () => {
    const two = roundLayout(2, 1e-3);
    expect([...two.x, ...two.y]).toEqual([-1e-3, expect.closeTo(1e-3, 15), 0, 0]);
    expect(roundLayout(3, 1e-3).y[0]).toBeGreaterThan(0);
  });

  it('refuses no core, half a core and a core without size', () => {
    for (const [cores, ri] of [
      [0, 1e-3],
      [1.5, 1e-3],
      [2, 0],
      [2, Number.NaN],
    ] as const) {
      expect(() => roundLayout(cores, ri)).toThrow(/must lie/);
    }
  });
});

describe('the layout of flat cables', () => {
  it('has the stadium’s perimeter and area', () => {
    const { x, P, De, R, area, halfRun } = flatLayout(3, 2e-3, 1.5e-3);
    expect([...x]).toEqual([-2e-3, 0, 2e-3]);
    expect(halfRun).toBe(2e-3);
    expect(P).toBeCloseTo(8e-3 + Math.PI * 3e-3, 12);
    expect(De).toBeCloseTo(P / Math.PI, 15);
    expect(R).toBeCloseTo(De / 2, 15);
    expect(area).toBeCloseTo(4e-3 * 3e-3 + Math.PI * 2.25e-6, 15);
  });

  it('is a circle for one core', () => {
    const { P, R, halfRun } = flatLayout(1, 2e-3, 1e-3);
    expect([P, R, halfRun]).toEqual([2e-3 * Math.PI, 1e-3, 0]);
  });
});

import { describe, expect, it } from 'vitest';
import { adiabaticTime, buildCase, type Scenario } from '#engine';
import { predict } from '#engine/heating/predict.ts';

const wire = (I_A: number): Scenario => ({
  cable: {
    layout: 'single',
    conductor: { size_mm2: 1.5, class: 1 },
    insulation: { material: 'pvc70', thickness_mm: 0.7 },
  },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: [{ kind: 'current', I_A }],
  start: { T_degC: 70 },
  run: { duration_s: 5 },
});

describe('the adiabatic bound', () => {
  it('is C ln((1 + α(θ1 − 20))/(1 + α(θ0 − 20)))/(n I² R20 α) on the straight line', () => {
    const of = buildCase(wire(300));
    const { R20, alpha20 } = of.cable.conductor;
    const closed =
      (of.conductorCapacity / (300 ** 2 * R20 * alpha20)) * Math.log((1 + alpha20 * 140) / (1 + alpha20 * 50));
    expect(adiabaticTime(of, 300, 343.15, 433.15) / closed).toBeCloseTo(1, 9);
  });

  it('comes before the time with perfect contact, and the nearer the faster the short circuit', () => {
    const ratio = (I: number) => {
      const { run, thermal } = predict(wire(I));
      const t = run.events.find(({ limit }) => limit.kind === 'shortTime')?.t ?? Number.NaN;
      return t / adiabaticTime(thermal, I, 343.15, 433.15);
    };
    const [slow, fast] = [ratio(150), ratio(1500)];
    expect(fast).toBeGreaterThan(1);
    expect(slow).toBeGreaterThan(fast);
    expect(fast).toBeLessThan(1.1);
  });

  it('is told beside the computed time where a short-circuit limit is passed within five seconds', () => {
    const texts = predict(wire(300)).validity.statements.map(({ text }) => text);
    expect(texts.join(' ')).toMatch(/With no heat lost it would take [\d.]+ s, here [\d.]+ s/);
  });
});

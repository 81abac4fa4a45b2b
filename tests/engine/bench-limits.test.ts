import { describe, expect, it } from 'vitest';
import { buildCase, celsius, mostConductor, overBenchVolts, type Scenario } from '#engine';

const held = { surroundings: { kind: 'stillAir', ambient_degC: 20 }, supply: [{ kind: 'current', I_A: 5 }] } as const;
const most = (cable: Scenario['cable']) =>
  celsius(mostConductor(buildCase({ cable, ...held, supply: [...held.supply] })));
const wire = (material: string): Scenario['cable'] => ({
  layout: 'single',
  conductor: { size_mm2: 1.5 },
  insulation: { material, thickness_mm: 0.7 },
});

describe('the limits of a bench', () => {
  it('let a conductor go to the rating of its insulation, but PVC and bare metal never above 70 °C', () => {
    expect(most(wire('pvc70'))).toBeCloseTo(70, 9);
    expect(most(wire('pvc90'))).toBeCloseTo(70, 9);
    expect(most(wire('rubber60'))).toBeCloseTo(60, 9);
    expect(most(wire('silicone'))).toBeCloseTo(180, 9);
    expect(most({ layout: 'single', conductor: { size_mm2: 1.5 }, insulation: null })).toBeCloseTo(70, 9);
  });

  it('refuse mains, and anything above 25 V AC or 60 V DC', () => {
    expect(overBenchVolts({ kind: 'mains', U_V: 230, load_W: 1000 })).toBe(true);
    expect(overBenchVolts({ kind: 'power', U_V: 26, load_W: 100 })).toBe(true);
    expect(overBenchVolts({ kind: 'voltage', U_V: 60 })).toBe(false);
    expect(overBenchVolts({ kind: 'voltage', U_V: 61 })).toBe(true);
    expect(overBenchVolts({ kind: 'current', I_A: 10, compliance_V: 80 })).toBe(true);
    expect(overBenchVolts({ kind: 'off' })).toBe(false);
  });
});

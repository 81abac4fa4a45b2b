import { describe, expect, it } from 'vitest';
import { predict, type Scenario } from '#engine';

const cord: Scenario = {
  cable: { table: 'H05VV-F', cores: 3, size_mm2: 0.75, loaded: 2 },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: [{ kind: 'current', I_A: 13 }],
};
const ids = (scenario: Scenario) => predict(scenario).validity.statements.map(({ id }) => id);

describe('what a result says of its own range', () => {
  it('speaks of the section where there are several cores, and not where there is one', () => {
    expect(ids(cord)).toEqual(expect.arrayContaining(['uniform', 'alone', 'section', 'surface', 'early']));
    const wire: Scenario = { ...cord, cable: { table: 'H05V-K', cores: 1, size_mm2: 1 } };
    expect(ids(wire)).not.toContain('section');
  });

  it('marks the curve as outside the model from fume onset on, and softening before that', () => {
    const { validity, run } = predict({ ...cord, supply: [{ kind: 'current', I_A: 30 }] });
    const fumes = run.events.find(({ limit, end }) => limit.kind === 'fumes' && end === 'low');
    expect(validity.outsideFrom).toBe(fumes?.t);
    const softened = validity.statements.find(({ id }) => id === 'softened');
    expect(softened?.from).toBeLessThan(validity.outsideFrom as number);
    expect(softened?.outside).toBeUndefined();
  });

  it('says by how much the straight line of resistance is low once that matters, and not with the curved law', () => {
    const hot: Scenario = { ...cord, supply: [{ kind: 'current', I_A: 24 }] };
    expect(ids(hot)).toContain('straight line');
    const curved: Scenario = { ...hot, cable: { ...cord.cable, conductor: { law: 'curved' } } as Scenario['cable'] };
    expect(ids(curved)).not.toContain('straight line');
  });

  it('speaks of contacts, coils, walls and weak draughts where they are part of the case', () => {
    expect(ids({ ...cord, lead: { contact_ohm: 0.1 } })).toContain('contact');
    const wound: Scenario = {
      ...cord,
      lead: { length_m: 20 },
      surroundings: { kind: 'coiled', ambient_degC: 20, drum_mm: 120, turns: 12 },
    };
    expect(ids(wound)).toContain('coil');
    expect(ids({ ...cord, surroundings: { kind: 'clipped', ambient_degC: 20 } })).toContain('clipped');
    const thread: Scenario = {
      ...cord,
      cable: { layout: 'single', conductor: { area_mm2: 0.01, class: 1 }, insulation: null },
      surroundings: { kind: 'draught', ambient_degC: 20, speed_mPerS: 0.02 },
      supply: [{ kind: 'current', I_A: 0.5 }],
    };
    expect(ids(thread)).toContain('draught');
    expect(ids({ ...thread, surroundings: { kind: 'draught', ambient_degC: 20, speed_mPerS: 2 } })).not.toContain(
      'draught',
    );
  });
});

// Which rule a case is judged by, and what counts as a cord that its marking speaks for.
import { describe, expect, it } from 'vitest';
import { cast } from '#engine/examples/cast.ts';
import { buildCase } from '#engine/heating/thermal-case.ts';
import type { Device, DeviceFamily } from '#engine/protection/device.ts';
import { device } from '#engine/protection/devices.ts';
import { isCord, type RuleQuestion, ruledMetal, ruleOfCase } from '#engine/protection/rule-of-case.ts';
import type { Scenario } from '#engine/scenario/schema.ts';

const of = (
  cable: Scenario['cable'],
  surroundings: Scenario['surroundings'] = { kind: 'stillAir', ambient_degC: 30 },
) => buildCase({ cable, surroundings, supply: [{ kind: 'current', I_A: 1 }], lead: { length_m: 20 } });
const rule = (
  cable: Scenario['cable'],
  family: DeviceFamily,
  In: number,
  question: RuleQuestion,
  place?: Scenario['surroundings'],
) => ruleOfCase(of(cable, place), device(family, In) as Device, question);

const fixed: Scenario['cable'] = {
  layout: 'flat',
  cores: 2,
  conductor: { size_mm2: 2.5, class: 1 },
  insulation: { material: 'pvc70', thickness_mm: 0.8 },
  sheath: { material: 'pvc70', thickness_mm: 1.1 },
};

describe('a case is judged', () => {
  it('by the plug’s table, where a cord stands behind a plug fuse', () => {
    const met = rule(cast.C150, 'bs1362', 13, { Ib: 10 });
    expect([met.rule.source, met.outcome]).toEqual(['bs1363', 'met']);
    // a lead with outlets wants 1.25 mm² behind 13 A; one appliance of 5 A does not
    expect(rule(cast.C075, 'bs1362', 13, { Ib: 5 }).outcome).toBe('not met');
    expect(rule(cast.C075, 'bs1362', 13, { Ib: 5, feeds: 'appliance' }).outcome).toBe('met');
  });

  it('by the branch rule, where an American cord stands behind a breaker', () => {
    const site = rule(cast.A18, 'ul489', 20, { Ib: 9 });
    expect([site.rule.source, site.outcome]).toEqual(['nfpa70', 'not met']);
    expect(rule(cast.A18, 'ul489', 20, { Ib: 9, make: 'listed appliance' }).outcome).toBe('met');
  });

  it('by coordination with a table’s current, where there is one', () => {
    const cord = rule(cast.C150, 'B', 16, { Ib: 10 });
    expect([cord.rule.where, cord.steps.find(({ id }) => id === 'table')?.source]).toEqual(['433.1', 'bs7671']);
    const wall = rule(fixed, 'B', 20, { Ib: 18 }, { kind: 'clipped', ambient_degC: 30 });
    expect(wall.steps.find(({ id }) => id === 'table')).toMatchObject({ value: 27, where: 'Table B.52.2, method C' });
    expect(wall.outcome).toBe('met');
    expect(rule(fixed, 'B', 32, { Ib: 18 }, { kind: 'clipped', ambient_degC: 30 }).outcome).toBe('not met');
  });

  it('by its temperature where no table has the cable or its place, and says so', () => {
    for (const one of [
      rule(cast.SUS, 'bs1362', 13, { Ib: 10 }),
      rule(
        fixed,
        'B',
        20,
        { Ib: 18 },
        { kind: 'lagged', ambient_degC: 20, thickness_mm: 50, conductivity_WPerMK: 0.04 },
      ),
    ]) {
      expect(one.rule.name).toMatch(/by temperature/);
      expect(one.statements.map(({ id }) => id)).toContain('no table');
    }
    expect(rule(cast.SUS, 'bs1362', 13, { Ib: 10 }).statements.map(({ id }) => id)).toContain('copper only');
    expect(rule(cast.SUS, 'bs1362', 13, { Ib: 10 }).outcome).toBe('not met');
  });

  it('without an answer where the device’s acting current is not known', () => {
    const own = { ...(device('gG', 10) as Device), I2: null };
    expect(ruleOfCase(of(cast.SUS), own, { Ib: 5 }).outcome).toBe('not shown');
  });
});

describe('a marking speaks', () => {
  it('for copper that resists no more than its table allows', () => {
    expect(ruledMetal(of(cast.C150))).toBe('copper');
    expect(ruledMetal(of({ ...cast.C150, conductor: { R20_ohmPerKm: 13.3 } }))).toBe('copper');
    expect(ruledMetal(of({ ...cast.C150, conductor: { R20_ohmPerKm: 14.5 } }))).toBe('not as marked');
    expect(ruledMetal(of({ ...cast.C150, conductor: { strands: { count: 24, diameter_mm: 0.2 } } }))).toBe(
      'not as marked',
    );
    expect(ruledMetal(of(cast.SUS))).toBe('cca10');
  });

  it('as a cord where the conductor is flexible and has a sheath', () => {
    expect([cast.C150, cast.SUS, fixed].map((cable) => isCord(of(cable)))).toEqual([true, true, false]);
  });
});

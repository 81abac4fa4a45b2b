import { describe, expect, it } from 'vitest';
import { type Evidence, type IdentifiedMetal, identify, kelvin, metals, OutOfRange, usualPriors } from '#engine';
import { about, loopOf, massOf, strandsOf, suspect, the } from './identify-cases.ts';

const leader = (evidence: Evidence) => identify(evidence).candidates[0]?.metal;

describe('what a conductor is', () => {
  it('names the suspect lead: clad aluminium of 0.75 mm², equal to 0.48 mm² of copper', () => {
    const found = identify(suspect);
    const clad = the('cladAluminium', found);
    expect(clad.probability).toBeGreaterThan(0.99);
    expect(clad.area?.low).toBeLessThan(0.754e-6);
    expect(clad.area?.high).toBeGreaterThan(0.754e-6);
    expect(clad.size?.standing).toBe('undersized');
    expect(found.equalCopper?.area.median).toBeCloseTo(metals.copper.rho20.value / 36e-3, 8);
    expect(found.equalCopper?.nearest_mm2.size).toBe(0.5);
    expect(found.equalCopper?.nearest_AWG.size).toBe(20);
    expect(found.equalCopper?.meets_mm2).toBe(0.5);
    expect(found.againstMarking?.ratio.median).toBeCloseTo(36 / 13.3, 1);
    expect(found.fit.none).toBe(false);
  });

  // straight wires of the table's own density and resistivity, 24 × 0.2 mm with 2 % lay
  const area = 24 * (Math.PI / 4) * 0.2e-3 ** 2;
  const made: [IdentifiedMetal, keyof typeof metals, Evidence][] = [
    ['copper', 'copper', { magnet: 'does not', skin: { colour: 'copper-red' }, under: { colour: 'copper-red' } }],
    ['aluminium', 'aluminium', { magnet: 'does not', skin: { colour: 'silvery' }, under: { colour: 'silvery' } }],
    ['cladAluminium', 'cca15', { magnet: 'does not', skin: { colour: 'copper-red' } }],
    ['ccs40', 'ccs40', { magnet: 'clings', skin: { colour: 'copper-red' } }],
    ['ccs30', 'ccs30', { magnet: 'clings', skin: { colour: 'copper-red' } }],
    ['ccs21', 'ccs21', { magnet: 'clings', skin: { colour: 'copper-red' } }],
    ['steel', 'steel', { magnet: 'clings', skin: { colour: 'grey' } }],
    ['brass', 'brass', { magnet: 'does not', skin: { colour: 'yellowish' } }],
  ];
  it.each(made)('knows %s by its resistance, strands, mass and looks', (metal, id, looks) => {
    const { rho20, density } = metals[id];
    const resistance = loopOf((1.02 * rho20.value) / area);
    const mass = massOf(1.02 * density.value * area);
    const found = identify({ ...looks, resistance, mass, strands: strandsOf(24, 0.2) });
    expect(found.candidates[0]?.metal).toBe(metal);
    expect(found.candidates[0]?.probability).toBeGreaterThan(0.9);
    expect(found.fit.none).toBe(false);
  });

  it('tells tinned copper from aluminium by the red under a silvery skin', () => {
    const silvery: Evidence = { skin: { colour: 'silvery' }, magnet: 'does not', strands: strandsOf(30, 0.25) };
    expect(leader({ ...silvery, under: { colour: 'copper-red' } })).toBe('tinnedCopper');
    expect(leader({ ...silvery, under: { colour: 'silvery' } })).toBe('aluminium');
  });

  it('makes nothing of a resistance alone but R and the metals as they were', () => {
    const found = identify({ resistance: loopOf(13.3e-3) });
    for (const { metal, probability } of found.candidates)
      expect(probability).toBeCloseTo(usualPriors.metals.value[metal], 2);
    expect(found.R20?.median).toBeCloseTo(13.3e-3, 5);
  });

  it('tells no area and no resistance from looks alone, nor from a count of strands', () => {
    for (const evidence of [{}, { magnet: 'does not' }, { strands: { count: { value: 24, u: 0 } } }] as Evidence[]) {
      const found = identify(evidence);
      expect([found.area, found.R20, found.equalCopper]).toEqual([null, null, null]);
      expect(found.candidates.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
    }
  });

  it('takes the area from strands or from a bundle alone, as their geometry has it', () => {
    const byStrands = identify({ strands: strandsOf(24, 0.2, 0.002) }).area;
    expect((byStrands?.median ?? 0) / (24 * (Math.PI / 4) * 0.2e-3 ** 2)).toBeCloseTo(1, 3);
    const wide = Math.log((byStrands?.high ?? 1) / (byStrands?.low ?? 1));
    expect(Math.abs(wide / (2 * 1.96 * 2 * 0.01) - 1)).toBeLessThan(0.03);
    const byBundle = identify({ bundle: about(1.2e-3, 0.01) }).area;
    const [fill] = usualPriors.fill.value;
    expect((byBundle?.median ?? 0) / (fill * (Math.PI / 4) * 1.2e-3 ** 2)).toBeCloseTo(1, 2);
  });

  it('resolves a gauge that is all but perfect', () => {
    const looks: Evidence = { skin: { colour: 'copper-red' }, resistance: loopOf(23.4e-3, 1e-6) };
    const [fine, finer] = [1e-4, 1e-6].map((u_mm) => identify({ ...looks, strands: strandsOf(24, 0.2, u_mm) }));
    expect(the('copper', finer).probability).toBeCloseTo(the('copper', fine).probability, 3);
    expect(the('copper', finer).probability).toBeGreaterThan(0.9);
  });

  it('does not take a size that is marked for a size', () => {
    const { area: claimed } = identify({ marking: { size_mm2: 1.5 }, bundle: about(1.1e-3, 0.02) });
    const { area: plain } = identify({ bundle: about(1.1e-3, 0.02) });
    expect(claimed).toEqual(plain);
  });

  it('takes a solid wire for as long as it is and as thick as it is', () => {
    const solid = identify({
      resistance: loopOf(metals.copper.rho20.value / 1.5e-6, 0.001),
      strands: { count: { value: 1, u: 0 } },
      bundle: about(1.382e-3, 0.003),
      skin: { colour: 'copper-red' },
    });
    const copper = the('copper', solid);
    expect(copper.probability).toBeGreaterThan(0.98);
    expect(copper.area?.median).toBeCloseTo(1.5e-6, 7);
    expect((copper.area?.high ?? 1) / (copper.area?.low ?? 1)).toBeLessThan(1.03);
  });

  it('lets what the test leads may hold keep a two-terminal reading of good copper from being read as clad aluminium', () => {
    // lesson 5.1: 13.27 mΩ/m, 8 m, and 0.12 Ω of test leads: it looks like 20.9 mΩ/m
    const looks: Evidence = { strands: strandsOf(30, 0.25), magnet: 'does not', skin: { colour: 'copper-red' } };
    const read = (method: 'two-terminal' | 'four-terminal') =>
      identify({ ...looks, resistance: { ...loopOf(13.27e-3 + 0.12 / 16), method } });
    expect(the('copper', read('four-terminal')).probability).toBeLessThan(0.05);
    expect(the('copper', read('two-terminal')).probability).toBeGreaterThan(0.5);
    const zeroed = { ...loopOf(13.27e-3 + 0.12 / 16), method: 'two-terminal', testLeads: about(0.12, 0.02) } as const;
    expect(the('copper', identify({ ...looks, resistance: zeroed })).probability).toBeGreaterThan(0.95);
  });

  it('corrects the resistance to 20 °C by the coefficient of each metal', () => {
    const warm = loopOf(20e-3 * (1 + metals.copper.alpha20.value * 30));
    const found = identify({ resistance: { ...warm, temperature: { value: kelvin(50), u: 0.5 } } });
    expect(the('copper', found).R20?.median).toBeCloseTo(20e-3, 5);
    expect(the('brass', found).R20?.median).toBeGreaterThan(21e-3);
  });

  it('refuses what cannot be', () => {
    expect(() => identify({ bundle: { value: -1e-3, u: 1e-5 } })).toThrow(OutOfRange);
    expect(() => identify({ bundle: { value: 1e-3, u: 0 } })).toThrow(OutOfRange);
    expect(() => identify({ resistance: { ...loopOf(0.02), inSeries: 0 } })).toThrow(OutOfRange);
    expect(() => identify({ skin: { colour: 'grey', errorRate: 2 } })).toThrow(OutOfRange);
  });
});

describe('the size of a conductor', () => {
  const silvery: Evidence = {
    marking: { size_mm2: 1.5 },
    magnet: 'does not',
    skin: { colour: 'silvery' },
    under: { colour: 'silvery' },
  };
  it.each([2, 2.5, 3])('calls a silvery metal that no magnet draws undersized at %f times the table', (times) => {
    const found = identify({ ...silvery, resistance: loopOf(13.3e-3 * times) });
    const light = ['aluminium', 'cladAluminium'] as const;
    expect(light.reduce((sum, metal) => sum + the(metal, found).probability, 0)).toBeGreaterThan(0.95);
    for (const metal of light) expect(the(metal, found).size?.standing).toBe('undersized');
    for (const metal of ['ccs40', 'ccs30', 'ccs21'] as const) expect(the(metal, found).probability).toBeLessThan(0.01);
  });

  it.each([1.38, 1.5, 1.65])('does not call clad aluminium undersized at %f times the table', (times) => {
    const skin = { colour: 'copper-red' } as const;
    const found = identify({ ...silvery, skin, resistance: loopOf(13.3e-3 * times) });
    expect(found.candidates[0]?.metal).toBe('cladAluminium');
    expect(found.candidates[0]?.size?.standing).not.toBe('undersized');
  });

  it('holds a gauge, which has no table maximum, against annealed copper of its area', () => {
    const found = identify({ resistance: loopOf(21.4e-3), marking: { size_AWG: 18 } });
    expect(found.againstMarking?.ratio.median).toBeCloseTo(1, 2);
    expect(found.againstMarking?.basis).toContain('lay');
  });
});

describe('resistance times mass', () => {
  it('cancels the area: 90 mΩ·g/m² for the suspect, within what clad aluminium has', () => {
    const { measured, metals: own } = identify(suspect).massTimesResistance;
    expect(measured?.value).toBeCloseTo(90e-6, 8);
    expect((measured?.u ?? 1) / 90e-6).toBeCloseTo(0.021, 2);
    const clad = own.find(({ metal }) => metal === 'cladAluminium');
    expect(clad?.low).toBeLessThan(90e-6);
    expect(clad?.high).toBeGreaterThan(90e-6);
  });

  it('has the lay squared in it, none for a solid wire', () => {
    const highOf = (evidence: Evidence) =>
      identify(evidence).massTimesResistance.metals.find(({ metal }) => metal === 'copper')?.high ?? 0;
    expect(highOf({}) / highOf({ strands: { count: { value: 1, u: 0 } } })).toBeCloseTo(1.05 ** 2, 9);
  });
});

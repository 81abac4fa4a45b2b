import { describe, expect, it } from 'vitest';
import { type Evidence, identify, identifyText, identifyWords } from '#engine';
import { loopOf, massOf, strandsOf, suspect } from './identify-cases.ts';

const text = (evidence: Evidence, practice: 'iec' | 'na' = 'iec') =>
  identifyText(identify(evidence), evidence, practice).replaceAll('\u00A0', ' ');

const silvery: Evidence = {
  resistance: loopOf(2.5 * 13.3e-3),
  magnet: 'does not',
  skin: { colour: 'silvery' },
  under: { colour: 'silvery' },
  marking: { size_mm2: 1.5 },
};

/** One of every kind of verdict. */
const every: Evidence[] = [
  {},
  { magnet: 'does not', skin: { colour: 'copper-red' } },
  suspect,
  silvery,
  { ...suspect, magnet: 'clings' },
  { ...suspect, resistance: loopOf(23.5e-3) },
  { ...suspect, marking: { size_AWG: 16 } },
  { resistance: loopOf(36e-3), magnet: 'does not' },
  { resistance: loopOf(36e-3), strands: strandsOf(24, 0.2, 0.03), magnet: 'does not', skin: suspect.skin! },
  { mass: massOf(13e-3), resistance: loopOf(13e-3), skin: suspect.skin!, marking: { size_mm2: 1.5 } },
];

describe('the identification in words', () => {
  it('calls two and a half times the table in a silvery metal undersized clad or plain aluminium', () => {
    const told = text(silvery);
    expect(told).toContain('This sample behaves as undersized clad or plain aluminium.');
    expect(told).toContain('2.5 times the 13.3 mΩ/m that 1.5 mm² copper may have: it does not meet it.');
    expect(told).not.toContain('steel');
    expect(told).not.toContain('full-size');
  });

  it('tells the suspect lead: metal, claim, size, equal copper and the product', () => {
    const told = text(suspect);
    expect(told).toContain('behaves as undersized clad aluminium');
    expect(told).toContain('does not behave as the copper that is marked');
    expect(told).toMatch(/equal to 0.47\d mm² of copper by resistance/);
    expect(told).toMatch(/the nearest size is 0.5 mm²/);
    expect(told).toMatch(/resistance times mass is 90.0 mΩ·g\/m²/i);
    expect(text(suspect, 'na')).toMatch(/the nearest size is 20 AWG/);
  });

  it('says that good copper meets its table, and does not when that is not shown', () => {
    const copper: Evidence = { strands: strandsOf(30, 0.25), skin: suspect.skin!, marking: { size_mm2: 1.5 } };
    expect(text({ ...copper, resistance: loopOf(12.6e-3) })).toContain('it meets it.');
    expect(text({ ...copper, resistance: loopOf(13.3e-3) })).toContain('not shown');
  });

  it('says that none fits, and which piece to repeat', () => {
    const told = text({ ...suspect, magnet: 'clings' });
    expect(told).toContain('None of these metals fits all the evidence.');
    expect(told).toContain('The magnet clashes with the rest, which speaks for clad aluminium: repeat it.');
    expect(told).not.toContain('behaves as');
  });

  it('asks for a photograph before what cannot be undone, and only then', () => {
    for (const evidence of every) {
      const found = identify(evidence);
      const ids = identifyWords(found, evidence).map(({ id }) => id);
      expect(ids.includes('photograph')).toBe(found.nextBest?.destructive ?? false);
      if (ids.includes('photograph')) expect(ids.indexOf('photograph')).toBeLessThan(ids.indexOf('next'));
    }
  });

  it('accuses nobody, and keeps its sentences short', () => {
    for (const evidence of every) {
      for (const { text: told } of identifyWords(identify(evidence), evidence)) {
        expect(told).not.toMatch(/counterfeit|illegal|\bsafe|fake|caused|NaN|undefined|null|Infinity/i);
        expect(told.split(/\s+/).length, told).toBeLessThanOrEqual(26);
        expect(told).toMatch(/^[A-Z].*\.$/);
      }
    }
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Evidence, type Interval, identify } from '#engine';
import { loopOf, massOf, strandsOf, suspect, the } from './identify-cases.ts';

const width = (interval: Interval | null | undefined) => (interval ? Math.log(interval.high / interval.low) : NaN);

describe('evidence that no metal fits', () => {
  it('says so of a resistivity between copper and clad aluminium, and which pieces clash', () => {
    const { fit } = identify({ ...suspect, resistance: loopOf(23.5e-3) });
    expect(fit.none).toBe(true);
    expect(fit.other).toBeGreaterThan(0.9);
    expect(fit.clashes.map(({ piece }) => piece)).toContain('resistance');
    expect(fit.clashes.map(({ piece }) => piece)).not.toContain('magnet');
  });

  it('names the magnet where it clings to what is clad aluminium by all the rest', () => {
    const { fit } = identify({ ...suspect, magnet: 'clings' });
    expect(fit.none).toBe(true);
    expect(fit.clashes).toEqual([{ piece: 'magnet', restSays: 'cladAluminium', tail: expect.closeTo(0.002, 6) }]);
  });

  it('names a mass that was written down in the wrong unit', () => {
    const { fit } = identify({ ...suspect, mass: massOf(25e-3) });
    expect(fit.none).toBe(true);
    expect(fit.clashes[0]).toMatchObject({ piece: 'mass', restSays: 'cladAluminium' });
  });

  it('forgives one colour that was named wrongly', () => {
    const { fit, candidates } = identify({ ...suspect, skin: { colour: 'yellowish' } });
    expect(fit.none).toBe(false);
    expect(candidates[0]?.metal).toBe('cladAluminium');
  });

  it('finds something else where resistance and mass are of no metal of ours', () => {
    // bronze wire: 3.5e-8 Ω·m, 8800 kg/m³ (IEC 60287-1-1, from memory)
    const area = 0.754e-6;
    const { fit } = identify({
      resistance: loopOf((1.02 * 3.5e-8) / area),
      mass: massOf(1.02 * 8800 * area),
      strands: strandsOf(24, 0.2),
      magnet: 'does not',
    });
    expect(fit.none).toBe(true);
    expect(fit.other).toBeGreaterThan(0.5);
  });
});

describe('evidence as a whole', () => {
  it('is the same in any order', () => {
    const entries = Object.entries(suspect);
    const forwards = identify(Object.fromEntries(entries) as Evidence);
    expect(identify(Object.fromEntries(entries.toReversed()) as Evidence)).toEqual(forwards);
  });

  it('marks each piece by its log likelihood ratio: magnet and colours against steel, the mass against copper', () => {
    const found = identify(suspect);
    const mark = (metal: 'steel' | 'copper' | 'cladAluminium', piece: string) =>
      the(metal, found).marks.find((one) => one.piece === piece)?.forIt ?? NaN;
    expect(mark('steel', 'magnet')).toBeCloseTo(Math.log(0.01 / 0.988), 1);
    expect(mark('copper', 'mass')).toBeLessThan(-10);
    expect(mark('copper', 'under')).toBeLessThan(-3);
    expect(mark('cladAluminium', 'resistance')).toBeGreaterThanOrEqual(0);
    expect(found.candidates[0]?.marks.map(({ piece }) => piece)).toHaveLength(7);
  });

  it('adds up: a mark is the change of the odds that the piece makes', () => {
    const { mass: _, ...without } = suspect;
    const odds = (evidence: Evidence) => {
      const found = identify(evidence);
      return Math.log(the('aluminium', found).probability / the('cladAluminium', found).probability);
    };
    const found = identify(suspect);
    const mark = (metal: 'aluminium' | 'cladAluminium') =>
      the(metal, found).marks.find(({ piece }) => piece === 'mass')?.forIt ?? NaN;
    expect(odds(suspect) - odds(without)).toBeCloseTo(mark('aluminium') - mark('cladAluminium'), 6);
  });

  it('never widens R by a better reading of the same value, nor the area of one metal by a better gauge', () => {
    const u = fc.integer({ min: 2, max: 40 }).map((n) => n / 1000);
    fc.assert(
      fc.property(u, u, (coarse, fine) => {
        const [wide, narrow] = [Math.max(coarse, fine), Math.min(coarse, fine)];
        const by = (relative: number, gauge: number) =>
          the('copper', identify({ resistance: loopOf(13e-3, relative), strands: strandsOf(30, 0.25, gauge) }));
        expect(width(by(narrow, 0.006).R20)).toBeLessThan(width(by(wide, 0.006).R20) * 1.002);
        expect(width(by(0.004, narrow).area)).toBeLessThan(width(by(0.004, wide).area) * 1.002);
      }),
      { numRuns: 12 },
    );
  });

  it('trusts a mean of few readings less than the same of many', () => {
    const few = strandsOf(24, 0.2);
    const reading = (dof: number): Evidence => ({ strands: { ...few, diameter: { ...few.diameter!, dof } } });
    expect(width(identify(reading(3)).area)).toBeGreaterThan(1.3 * width(identify(reading(Infinity)).area));
  });
});

import { describe, expect, it } from 'vitest';
import { type Evidence, identify } from '#engine';
import { openMeasurements } from '#engine/bench/identify/next.ts';
import { information } from '#engine/bench/identify/outcomes.ts';
import { usualPriors } from '#engine/bench/identify/priors.ts';
import { weigh } from '#engine/bench/identify/weigh.ts';
import { loopOf, massOf, strandsOf, suspect } from './identify-cases.ts';

const next = (evidence: Evidence) => identify(evidence).nextBest;
const open = (evidence: Evidence) => openMeasurements(weigh(evidence, usualPriors), evidence, usualPriors);
const gainOf = (evidence: Evidence, id: string) => open(evidence).find(({ measurement }) => measurement === id)?.gain;

describe('information about the metal', () => {
  it('is nothing where both metals give the same outcomes, and all the doubt where they never do', () => {
    const alike = [
      [0.3, 0.7],
      [0.3, 0.7],
    ];
    const apart = [
      [1, 0],
      [0, 1],
    ];
    expect(information([0.5, 0.5], alike)).toBeCloseTo(0, 12);
    expect(information([0.25, 0.75], apart)).toBeCloseTo(-0.25 * Math.log(0.25) - 0.75 * Math.log(0.75), 12);
  });

  it('is that of a symmetric channel: ln 2 less the entropy of its error', () => {
    const e = 0.1;
    const rows = [
      [1 - e, e],
      [e, 1 - e],
    ];
    expect(information([0.5, 0.5], rows)).toBeCloseTo(Math.LN2 + e * Math.log(e) + (1 - e) * Math.log(1 - e), 12);
  });

  it('is never more than the doubt, and outcomes that are told are nearly all there are', () => {
    for (const evidence of [{}, { resistance: loopOf(20e-3) }, { skin: suspect.skin! }] as Evidence[]) {
      for (const { share, outcomes } of open(evidence)) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
        expect(outcomes.reduce((sum, { probability }) => sum + probability, 0)).toBeGreaterThan(0.9);
        expect(outcomes.reduce((sum, { probability }) => sum + probability, 0)).toBeLessThan(1 + 1e-6);
      }
    }
  });

  it('comes from an area or a resistance only together', () => {
    expect(gainOf({}, 'resistance')).toBeLessThan(0.1);
    expect(gainOf({ strands: strandsOf(24, 0.2) }, 'resistance')).toBeGreaterThan(0.5);
    expect(gainOf({ resistance: loopOf(30e-3) }, 'strands')).toBeGreaterThan(0.5);
    expect(gainOf({ resistance: loopOf(30e-3) }, 'mass')).toBeGreaterThan(0.5);
  });
});

describe('the next measurement', () => {
  it('leaves an unknown lead as it was found', () => {
    const best = next({});
    expect(best?.destructive).toBe(false);
    const scrape = open({}).find(({ measurement }) => measurement === 'under');
    expect(scrape?.gain).toBeGreaterThan(best?.gain ?? 0); // scraping would tell more, and waits all the same
  });

  it('is the strands once the resistance is known, with what each reading would mean', () => {
    const best = next({ resistance: loopOf(36e-3), magnet: 'does not' });
    expect(best?.measurement).toBe('strands');
    const [first, second] = best?.outcomes ?? [];
    expect(first?.leaders[0]?.metal).toBe('copper');
    expect(second?.leaders[0]?.metal).toBe('cladAluminium');
  });

  it('is resistance and strands together where either alone tells nothing, before anything is scraped', () => {
    const best = next({ magnet: 'does not', skin: { colour: 'copper-red' } });
    expect([best?.measurement, best?.also, best?.destructive]).toEqual(['resistance', 'strands', false]);
  });

  it('scrapes or weighs only where nothing gentler is left that tells', () => {
    const gentle: Evidence = {
      resistance: loopOf(36e-3),
      strands: strandsOf(24, 0.2, 0.03),
      bundle: { value: 1.1e-3, u: 1e-4 },
      magnet: 'does not',
      skin: { colour: 'copper-red' },
    };
    const best = next(gentle);
    expect(best?.destructive).toBe(true);
    expect(['under', 'mass']).toContain(best?.measurement);
  });

  it('is none where the metal is settled', () => expect(next(suspect)).toBeNull());

  it('says that a two-terminal reading is worth making again with four', () => {
    const short = { ...loopOf(13.27e-3 + 0.12 / 16), method: 'two-terminal' } as const;
    const best = next({ resistance: short, strands: strandsOf(30, 0.25), magnet: 'does not', skin: suspect.skin! });
    expect(best?.measurement).toBe('resistance');
  });

  it('foretells outcomes as often as they come: a mass that would name clad aluminium does', () => {
    const before: Evidence = { resistance: loopOf(36e-3), magnet: 'does not' };
    const mass = open(before).find(({ measurement }) => measurement === 'mass');
    const clad = mass?.outcomes.find(({ leaders }) => leaders[0]?.metal === 'cladAluminium');
    expect(clad?.reading).toHaveLength(2);
    const [from, to] = (clad as { reading: unknown }).reading as readonly [number, number];
    const after = identify({ ...before, mass: massOf(Math.sqrt(from * to)) });
    expect(after.candidates[0]?.metal).toBe('cladAluminium');
  });
});

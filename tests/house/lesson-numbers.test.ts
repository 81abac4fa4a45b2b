// Numbers of the prose that are read off no case: how insulation ages, and what tables leave of a current.
import { describe, expect, it } from 'vitest';
import { numFor } from '#site/components/lesson/num-props.ts';
import { numberOf } from '#site/components/lesson/number-of.ts';
import { propFaults } from '#site/components/lesson/props.ts';

const nb = '\u00A0';
const told = (props: Record<string, unknown>, practice: 'iec' | 'na' = 'iec') => {
  expect(propFaults('Num', props)).toEqual([]);
  return numberOf(numFor(props, practice), practice);
};
const faults = (props: Record<string, unknown>) => propFaults('Num', props).join('\n');

describe('how insulation ages', () => {
  it('is told in hours to two figures, in times, and as the step that halves a life', () => {
    expect(told({ of: 'life', at: 70 })).toBe(`20${nb}000${nb}h`);
    expect(told({ of: 'life', at: 80 })).toBe(`7600${nb}h`);
    expect(told({ of: 'ageing', at: 80 })).toBe(`2.6${nb}times`);
    expect(told({ of: 'halving step', at: 70 })).toBe(`7.1${nb}K`);
  });

  it('is not told past what was measured, nor for insulation without data', () => {
    expect(faults({ of: 'life', at: 110 })).toMatch(/at: is at most 100 °C/);
    expect(() => told({ of: 'life', at: 80, insulation: 'xlpe' })).toThrow(/xlpe has no ageing data/);
  });
});

describe('factors on a table’s current', () => {
  const warm = { of: 'factor', limit: 60, ambient: 40 };

  it('are the practice’s own, one to a hundredth and several to three figures', () => {
    expect(told(warm)).toBe('0.82');
    expect(told({ of: 'factor', circuits: 3 })).toBe('0.70');
    expect(told({ of: 'factor', circuits: 3 }, 'na')).toBe('0.80');
    expect(told({ of: 'factor', insulated: 100 })).toBe('0.78');
    expect(told({ ...warm, circuits: 3 })).toBe('0.574');
  });

  it('leave of the table’s current what their product leaves', () => {
    expect(told({ of: 'rating in place', table: 13, limit: 60, ambient: 40, circuits: 3 })).toBe(`7.46${nb}A`);
  });

  it.each<[string, Record<string, unknown>, RegExp]>([
    ['nothing to be a factor for', { of: 'factor' }, /ambient: is missing/],
    ['an ambient without its limit', { of: 'factor', ambient: 40 }, /limit: goes with ambient/],
    ['a current where only a factor is told', { ...warm, table: 13 }, /table: is for a rating in place/],
  ])('refuse %s in plain words', (_name, props, says) => {
    expect(faults(props)).toMatch(says);
  });
});

it('a time or a current of an estimate is told more roughly, and nothing else', () => {
  const reel = { kind: 'coiled', drum_mm: 120, turns: 12 };
  const wound = { cast: 'C125', amps: 13, ambient: 20, on: 7200, length: 25, surroundings: reel, about: true };
  expect(told({ of: 'time to rating', ...wound })).toBe(`12${nb}min`);
  expect(told({ of: 'rating current', ...wound })).toBe(`3.8${nb}A`);
  expect(faults({ of: 'conductor', ...wound })).toMatch(/about: is for time to rating/);
});

it('a temperature is counted from absolute zero', () => {
  expect(told({ of: 'absolute', at: 70 })).toBe(`343.15${nb}K`);
});

it('a given temperature has °F beside it for those who use it', () => {
  expect(told({ value: 45, unit: '°C' })).toBe(`45${nb}°C`);
  expect(told({ value: 45, unit: '°C' }, 'na')).toBe(`45${nb}°C (113${nb}°F)`);
});

import { expect, it } from 'vitest';
import { faultOfSeed, malformedFile } from './malformed.ts';

it('of 500 broken files none throws, every row is accounted for, and rows that nothing touched are read', () => {
  const faults = Array.from({ length: 500 }, (_, seed) => [seed, faultOfSeed(seed)] as const).filter(
    ([, fault]) => fault,
  );
  expect(faults).toEqual([]);
});

it('the broken files are broken, and hold rows that are not', () => {
  const files = Array.from({ length: 200 }, (_, seed) => malformedFile(seed));
  expect(files.filter(({ rows }) => rows.some(({ touched }) => touched)).length).toBeGreaterThan(100);
  expect(files.every(({ rows }) => rows.filter(({ touched }) => !touched).length > 5)).toBe(true);
});

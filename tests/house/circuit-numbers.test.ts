// Numbers of circuits in the prose, and what a lesson asks on the way from a load to a size.
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { askProps } from '#site/components/lesson/ask-props.ts';
import { asksOf } from '#site/components/lesson/asks-of.ts';
import { numFor } from '#site/components/lesson/num-props.ts';
import { numberOf } from '#site/components/lesson/number-of.ts';
import { propFaults } from '#site/components/lesson/props.ts';

const nb = '\u00A0';
const told = (props: Record<string, unknown>, practice: 'iec' | 'na' = 'iec') => {
  expect(propFaults('Num', props)).toEqual([]);
  return numberOf(numFor(props, practice), practice);
};
const faults = (props: Record<string, unknown>) => propFaults('Num', props).join('\n');

describe('volts lost', () => {
  const size = { iec: 1.5, na: 14 };
  const length = { iec: 60, na: 30.48 };

  it('by the table are the practice’s own figure, times amps, times length: BS 7671 Table 4F3B, NFPA 70 Chapter 9 Table 8', () => {
    expect(told({ of: 'drop rate', size })).toBe(`32${nb}mV/A/m`);
    expect(told({ of: 'drop rate', size }, 'na')).toBe(`3.14${nb}Ω/kft`);
    expect(told({ of: 'table drop', size, amps: 12, length })).toBe(`23.0${nb}V`);
    expect(told({ of: 'table drop share', size, amps: 12, length })).toBe(`10.0${nb}%`);
    expect(told({ of: 'table drop', size, amps: 12, length }, 'na')).toBe(`7.5${nb}V`);
    expect(told({ of: 'longest run', size, amps: 12, share: 5 })).toBe(`30${nb}m`);
    expect(told({ of: 'longest run', size, amps: 12, share: 3 }, 'na')).toBe(`48${nb}ft`);
  });

  it('by the run are fewer while the conductor is cooler than the table takes it', () => {
    const run = { cast: { iec: 'C150', na: 'A14' }, amps: 12, ambient: 20, length };
    expect(Number.parseFloat(told({ of: 'lost', ...run }))).toBeLessThan(23);
    expect(Number.parseFloat(told({ of: 'lost', ...run }, 'na'))).toBeLessThan(7.5);
    expect(Number.parseFloat(told({ of: 'run current', ...run, load: 'ohms' }))).toBeLessThan(12);
    expect(Number.parseFloat(told({ of: 'run current', ...run, load: 'watts' }))).toBeGreaterThan(12);
  });

  it('refuse a length that is missing, and a size that no table has', () => {
    expect(faults({ of: 'table drop', size, amps: 12 })).toMatch(/length: goes with a table drop/);
    expect(() => told({ of: 'drop rate', size: 14 })).toThrow(/no size 14 \(iec\)/);
  });
});

it('a device is told by what its standard binds it to', () => {
  const fuse = { device: { iec: 'bs1362', na: 'ul489' }, rating: { iec: 13, na: 20 } };
  expect(told({ of: 'hold current', ...fuse })).toBe(`20.8${nb}A`);
  expect(told({ of: 'acting current', ...fuse })).toBe(`24.7${nb}A`);
  expect(told({ of: 'acting time', ...fuse })).toBe(`30${nb}min`);
  expect(told({ of: 'acting current', ...fuse }, 'na')).toBe(`27${nb}A`);
  expect(() => told({ of: 'hold current', device: 'bs1362', rating: 14 })).toThrow(/14 A is no rating of bs1362/);
});

it('a load, a table’s current and what a table must give are told in amperes', () => {
  expect(told({ of: 'load current', watts: 4400, volts: 230 })).toBe(`19.1${nb}A`);
  expect(told({ of: 'load current', counted: true, watts: 4400, volts: 240 })).toBe(`22.9${nb}A`);
  expect(told({ of: 'fixed table', size: 4 })).toBe(`37${nb}A`);
  expect(told({ of: 'fixed table', size: 10, column: 60 }, 'na')).toBe(`30${nb}A`);
  expect(told({ of: 'table needed', device: 20, limit: 70, ambient: 35, circuits: 3 })).toBe(`30.4${nb}A`);
});

describe('an ask on the way to a size', () => {
  const answer = {
    watts: 4400,
    volts: { iec: 230, na: 240 },
    device: { iec: { family: 'B', rating: 20 }, na: { family: 'ul489', rating: 25 } },
    ambient: { iec: 35, na: 45 },
    together: { iec: 3, na: 6 },
    continuous: true,
  };
  const made = (ask: unknown) => asksOf([v.parse(askProps, ask)])[0];
  const size = { kind: 'size', id: 'size', words: 'Which size?', answer };

  it('finds the smallest size that is right in both practices', () => {
    const ask = made({ ...size, sizes: { iec: [1.5, 2.5, 4], na: [14, 12, 10] } });
    if (ask?.kind !== 'choice') throw new Error('no choice');
    expect(ask.computed.iec).toEqual({ id: 'size-3', told: `4${nb}mm²` });
    expect(ask.computed.na.id).toBe('size-3');
    expect(() => made({ ...size, sizes: { iec: [1.5, 2.5], na: [14, 12] } })).toThrow(/not among those offered/);
  });

  it('tells what the load takes, and what the table must give', () => {
    const ask = made({ kind: 'circuit amps', id: 'amps', words: 'How much?', of: 'table', answer });
    if (ask?.kind !== 'number') throw new Error('no number');
    expect(ask.computed.iec.told).toBe(`30.4${nb}A`);
    expect(ask.computed.na.told).toBe(`35.9${nb}A`);
  });
});

// Numbers of a suspect lead in the prose, and what a lesson asks about them.
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { askProps } from '#site/components/lesson/ask-props.ts';
import { asksOf } from '#site/components/lesson/asks-of.ts';
import { numFor } from '#site/components/lesson/num-props.ts';
import { numberOf } from '#site/components/lesson/number-of.ts';
import { propFaults } from '#site/components/lesson/props.ts';
import type { ChoiceAsk, NumberAsk } from '#site/widgets/answers/asks.ts';

const plain = (text: string) => text.replaceAll('\u00A0', ' ');
const told = (props: Record<string, unknown>, practice: 'iec' | 'na' = 'iec') => {
  expect(propFaults('Num', props)).toEqual([]);
  return plain(numberOf(numFor(props, practice), practice));
};
const faults = (props: Record<string, unknown>) => propFaults('Num', props).join('\n');
const made = (ask: unknown) => asksOf([v.parse(askProps, ask)])[0];

// 0.215 V at 1.000 A over 8.00 m out and back, at 23 °C: 0.215/16 = 13.44 mΩ/m; over 1 + 0.00393 · 3 = 13.28
const known = { volts: 0.215, amps: 1, length: 8, at: 23 };
const limits = { volts: 0.2, amps: 0.5, length: 0.5, kelvin: 1 };
// 0.576 V over the same length at 20 °C: 36.0 mΩ/m; 5 g from 2 m
const suspect = { volts: 0.576, amps: 1, length: 8, at: 20 };
const mass = { grams: 5, stripped: 2 };

describe('a reading by volts and amps', () => {
  it('is halved for out and back and taken to 20 °C', () => {
    expect(told({ of: 'measured loop', ...known })).toBe('0.215 Ω');
    expect(told({ of: 'measured as found', ...known })).toBe('13.44 mΩ/m');
    expect(told({ of: 'measured per metre', ...known })).toBe('13.28 mΩ/m');
    expect(told({ of: 'measured per metre', ...known }, 'na')).toBe('13.28 mΩ/m (4.05 Ω/1000 ft)');
  });

  it('carries two standard uncertainties of its instruments', () => {
    // √(0.2² + 0.5² + 0.5² + 0.39²) % over √3, twice
    expect(told({ of: 'measured doubt', ...known, limits })).toBe('0.96 %');
    expect(told({ of: 'doubt per metre', ...known, limits })).toBe('0.13 mΩ/m');
    expect(faults({ of: 'measured doubt', ...known })).toMatch(/limits: goes with a doubt/);
  });

  it('is held against what its size may have: class 5 of IEC 60228, or copper of the gauge', () => {
    expect(told({ of: 'marked limit', size: 1.5 })).toBe('13.30 mΩ/m');
    expect(told({ of: 'times the marking', ...suspect, size: 1.5 })).toBe('2.7 times');
    expect(told({ of: 'marked limit', size: 16 }, 'na')).toMatch(/^13\.4\d mΩ\/m/);
    expect(faults({ of: 'times the marking', ...suspect })).toMatch(/size: is for times the marking/);
  });

  it('tells what test leads put into it', () => {
    expect(told({ of: 'leads per metre', ...known, volts: 0.335, leads: 0.12 })).toBe('7.50 mΩ/m');
    expect(faults({ of: 'leads per metre', ...known })).toMatch(/leads: is missing/);
  });
});

describe('ohms times grams', () => {
  it('of the suspect lead is near clad aluminium, and far from copper', () => {
    expect(told({ of: 'mass per metre', ...mass })).toBe('2.50 g/m');
    expect(told({ of: 'measured product', ...suspect, ...mass })).toMatch(/^(89\.\d|90\.\d) mΩ·g\/m²$/);
    // ρ·d: 17.241 nΩ·m · 8890 kg/m³, 28.264 · 2703 (IEC 60028, 60889)
    expect(told({ of: 'metal product', metal: 'copper' })).toBe('153 mΩ·g/m²');
    expect(told({ of: 'metal product', metal: 'aluminium' })).toBe('76.4 mΩ·g/m²');
    expect(told({ of: 'metal product', metal: 'steel' })).toMatch(/^1\s?08\d mΩ/);
  });

  it('is equal to the copper of its resistance: 17.241/36.0', () =>
    expect(told({ of: 'equal copper', ...suspect })).toBe('0.479 mm²'));
});

describe('an ask about a suspect lead', () => {
  const answer = { ...suspect, ...mass };

  it('finds the metal by its ohms and grams', () => {
    const ask = (changed: object) =>
      (made({ kind: 'which metal', id: 'a', words: 'Which?', answer: { ...answer, ...changed } }) as ChoiceAsk)
        .computed;
    expect(ask({}).iec.id).toBe('cladAluminium');
    // copper of the same ohms has 153/36.0 = 4.25 g/m; plain aluminium 2.12
    expect(ask({ grams: 8.6 }).iec.id).toBe('copper');
    expect(ask({ grams: 4.35 }).na.id).toBe('aluminium');
  });

  it('is for a number in its unit, its givens filled in', () => {
    const number = { kind: 'number', id: 'a', unit: 'mΩ/m', words: 'From {volts} at {amps} over {length}' };
    const ask = made({ ...number, answer: { of: 'measured per metre', ...suspect } }) as NumberAsk;
    expect(plain(ask.words.iec)).toBe('From 0.576 V at 1.000 A over 8 m');
    expect(ask.computed.iec.value).toBeCloseTo(36, 9);
    expect(() => made({ ...number, unit: 'V', answer: { of: 'measured per metre', ...suspect } })).toThrow(
      'not told in V',
    );
  });
});

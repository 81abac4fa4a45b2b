// Numbers of short circuits and of fault loops in the prose, and what a lesson asks about them.
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

describe('a short circuit behind a lead', () => {
  // 230 V over 0.23 Ω and twice 20 m of 13.3 mΩ/m (IEC 60228 class 5); 120 V over 0.12 Ω
  const source = { iec: 0.23, na: 0.12 };
  const near = { cast: { iec: 'C150', na: 'A16' }, source };
  const far = { ...near, length: { iec: 20, na: 18.288 } };

  it('drives volts over the ohms of the source, out and back, cold', () => {
    expect(told({ of: 'fault current', ...near })).toBe('1000 A');
    expect(told({ of: 'fault current', ...far })).toBe('302 A');
    expect(told({ of: 'lead loop', ...far })).toBe('0.532 Ω');
    // the suspect lead has 36.0 mΩ/m: 230 V over 0.23 Ω and 1.44 Ω
    expect(told({ of: 'fault current', ...far, cast: 'SUS' })).toBe('138 A');
    expect(told({ of: 'fault current', ...near }, 'na')).toBe('1000 A');
  });

  it('may last k²S²/I², with k of the lead’s own metal', () => {
    // 115 from the tables of IEC 60364-5-54, 1.5 mm²: 29 800 A²s; 80 by our mixing, 0.754 mm²
    expect(told({ of: 'allowed time', ...near })).toBe('0.030 s');
    expect(told({ of: 'allowed time', ...far })).toBe('0.33 s');
    expect(told({ of: 'allowed time', ...far, cast: 'SUS' })).toBe('0.19 s');
  });

  it('opens a fuse in the time of its points, or of a line between them where that is asked for', () => {
    // IEC 60269-1: a 16 A gG fuse has acted by 5 s at 65 A, by 0.1 s at 150 A
    const fuse = { device: 'gG', rating: 16 };
    expect(told({ of: 'opens in', ...far, ...fuse })).toBe('0.10 s');
    expect(told({ of: 'opens in', ...far, ...fuse, cast: 'SUS' })).toBe('5.0 s');
    const line = Number.parseFloat(told({ of: 'opens in', ...far, ...fuse, cast: 'SUS', assumed: true }));
    expect(line).toBeGreaterThan(0.1);
    expect(line).toBeLessThan(5);
  });

  it('refuses a device without its rating, and a device where none is asked for', () => {
    expect(faults({ of: 'opens in', ...far })).toMatch(/device: goes with/);
    expect(faults({ of: 'fault current', ...far, device: 'gG', rating: 16 })).toMatch(/device: goes with/);
    expect(() => told({ of: 'opens in', ...far, device: 'gG', rating: 17 })).toThrow('17 A is no rating of gG');
  });
});

describe('what a core stands, and what a device lets through', () => {
  it('goes with metal and insulation: 115, 76 and 141 as IEC 60364-5-54 prints them, a clad metal by our mixing', () => {
    const k = (metal: string, insulation?: string) => told({ of: 'k', metal, ...(insulation && { insulation }) });
    expect([k('copper'), k('aluminium'), k('copper', 'rubber60'), k('cca10')]).toEqual(['115', '76', '141', '80']);
    expect(told({ of: 'withstand', cast: 'C150' })).toBe('29 700 A²s');
    expect(told({ of: 'withstand', cast: 'SUS' })).toBe('3640 A²s');
  });

  it('is compared with a device’s own energy, or with a maker’s', () => {
    // 16 A gG: 0.1 s at 150 A is 2250 A²s (IEC 60269-1)
    expect(told({ of: 'let-through', device: 'gG', rating: 16, amps: 1000 })).toBe('2250 A²s');
    expect(told({ of: 'stands times', cast: 'C150', device: 'gG', rating: 16, amps: 1000 })).toBe('13 times');
    expect(told({ of: 'stands times', cast: 'SUS', through: 910 })).toBe('4.0 times');
    expect(() => told({ of: 'let-through', device: 'ul248', rating: 15, amps: 200 })).toThrow('no standard tells');
  });

  it('tells what melts a gG fuse in a hundredth of a second, and the ratio of two', () => {
    expect(told({ of: 'starts to melt', rating: 32 })).toBe('1800 A²s');
    expect(told({ of: 'melts by', rating: 16 })).toBe('1000 A²s');
    expect(told({ of: 'rating ratio', rating: 25, upper: 32 })).toBe('1.28');
    expect(told({ of: 'selective ratio' })).toBe('1.6');
    expect(faults({ of: 'rating ratio', rating: 25 })).toMatch(/upper: is for a rating ratio/);
  });
});

describe('the loop of a fault to earth', () => {
  const spot = {
    cast: { iec: 'C150', na: 'A16' },
    length: { iec: 30, na: 30.48 },
    origin: { iec: 0.35, na: 0.2 },
    line: 0.2,
    earth: 0.2,
    device: { iec: 'B', na: 'ul489' },
    rating: { iec: 16, na: 20 },
  };

  it('is Ze and all conductors as warm as their limit', () => {
    // 0.35 + 1.1965 (0.40 + 60 m of 13.3 mΩ/m): 1.78 Ω; 218.5 V over it
    expect(told({ of: 'loop', ...spot })).toBe('1.78 Ω');
    expect(told({ of: 'cold loop', ...spot })).toBe('1.55 Ω');
    expect(told({ of: 'lead in loop', ...spot })).toBe('0.955 Ω');
    expect(told({ of: 'loop current', ...spot })).toBe('123 A');
    expect(told({ of: 'loop opens in', ...spot })).toBe('0.10 s');
    expect(told({ of: 'loop', ...spot, warm: 20 })).toBe('1.55 Ω');
  });

  it('has its limits from the rules: BS 7671 Table 41.3, 218.5 V over 80 A; four fifths of it read cold', () => {
    const breaker = { device: 'B', rating: 16 };
    expect(told({ of: 'greatest loop', ...breaker })).toBe('2.73 Ω');
    expect(told({ of: 'most cold reading', ...breaker })).toBe('2.18 Ω');
    expect(told({ of: 'needed current', ...breaker })).toBe('80 A');
    expect(told({ of: 'disconnection time' })).toBe('0.40 s');
    expect(told({ of: 'least volts' })).toBe('95 %');
    expect(faults({ of: 'greatest loop' })).toMatch(/device: goes with/);
  });

  it('clears in time with copper and not with the suspect lead; the American code has no number', () => {
    const ask = (cast: unknown) =>
      (made({ kind: 'clears', id: 'a', words: 'The {length} lead', answer: { ...spot, cast } }) as ChoiceAsk).computed;
    expect(ask({ iec: 'C150', na: 'A16' }).iec.id).toBe('met');
    expect(ask({ iec: 'SUS', na: 'A16S' }).iec.id).toBe('not met');
    expect(ask({ iec: 'SUS', na: 'A16S' }).na.id).toBe('no rule');
  });
});

describe('an ask about a short circuit', () => {
  it('is for a current or a time, its givens filled in', () => {
    const answer = {
      of: 'fault current',
      cast: { iec: 'C150', na: 'A16' },
      source: { iec: 0.23, na: 0.12 },
      length: 20,
    };
    const ask = made({
      kind: 'number',
      id: 'a',
      unit: 'A',
      words: 'After {length}, behind {source}',
      answer,
    }) as NumberAsk;
    expect(plain(ask.words.iec)).toBe('After 20 m, behind 0.23 Ω');
    expect(ask.computed.iec.value).toBeCloseTo(230 / (0.23 + 0.04 * 13.3), 6);
    expect(() => made({ kind: 'number', id: 'a', unit: 's', words: 'How long?', answer })).toThrow('not told in s');
  });

  it('finds which of two fuses opens: by IEC 60269-1 for gG, else by the makers’ figures', () => {
    const pair = (answer: unknown) =>
      (made({ kind: 'which opens', id: 'a', words: '{lower} under {upper}', answer }) as ChoiceAsk).computed;
    expect(pair({ lower: 16, upper: 32 }).iec.id).toBe('lower');
    expect(pair({ lower: 25, upper: 32 }).iec.id).toBe('both');
    expect(pair({ lower: 15, upper: 30, through: 900, melts: 2200 }).na.id).toBe('lower');
    expect(plain(pair({ lower: 25, upper: 30, through: 3100, melts: 2200 }).na.told)).toBe('3100 A²s against 2200 A²s');
    expect(
      v.safeParse(askProps, { kind: 'which opens', id: 'a', words: 'Which?', answer: { lower: 17, upper: 32 } })
        .success,
    ).toBe(false);
  });
});

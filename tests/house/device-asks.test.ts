import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { askProps } from '#site/components/lesson/ask-props.ts';
import { asksOf } from '#site/components/lesson/asks-of.ts';
import { numProps } from '#site/components/lesson/num-props.ts';
import { numberOf } from '#site/components/lesson/number-of.ts';
import type { ChoiceAsk, NumberAsk } from '#site/widgets/answers/asks.ts';

const plain = (text: string) => text.replaceAll('\u00A0', ' ');
const fuse = { device: { iec: 'bs1362', na: 'ul248 delay' }, rating: { iec: 13, na: 15 } };
const made = (ask: unknown) => asksOf([v.parse(askProps, ask)])[0];

describe('a prediction about a device', () => {
  it('is answered by the points of its standard, for both practices', () => {
    const found = (amps: { iec: number; na: number }) =>
      (made({ kind: 'promise', id: 'a', words: 'At {amps}', answer: { ...fuse, amps } }) as ChoiceAsk).computed;
    expect([found({ iec: 20, na: 16 }).iec.id, found({ iec: 20, na: 16 }).na.id]).toEqual(['holds', 'holds']);
    expect([found({ iec: 22, na: 18 }).iec.id, found({ iec: 22, na: 18 }).na.id]).toEqual(['may', 'may']);
    expect([found({ iec: 25, na: 21 }).iec.id, found({ iec: 25, na: 21 }).na.id]).toEqual(['acts', 'acts']);
  });

  it('may be for a short time, and is open where the standard is silent', () => {
    const start = (device: string, rating: number) =>
      (
        made({
          kind: 'promise',
          id: 'a',
          words: 'The {device}: {amps} for {within}',
          answer: { device, rating, amps: 62, within: 0.4 },
        }) as ChoiceAsk
      ).computed.iec.id;
    expect([start('B', 10), start('B', 16), start('C', 10), start('D', 10)]).toEqual(['acts', 'may', 'may', 'may']);
    expect([start('B', 25), start('D', 25), start('ul489', 15)]).toEqual(['holds', 'holds', 'may']);
  });

  it('asks for a time in the unit it names', () => {
    const ask = made({
      kind: 'band time',
      id: 'a',
      words: 'Longest at {amps}',
      unit: 'min',
      answer: { of: 'most time', ...fuse, amps: 30 },
    }) as NumberAsk;
    expect(plain(ask.words.iec)).toBe('Longest at 30 A');
    expect([ask.computed.iec.value * 60, ask.computed.na.value * 60].map(Math.round)).toEqual([400, 120]);
  });

  it('refuses a number in its words, a family that there is not, and a time where it has none', () => {
    const ask = { kind: 'promise', id: 'a', words: 'At {amps}', answer: { ...fuse, amps: 20 } };
    expect(v.safeParse(askProps, ask).success).toBe(true);
    expect(v.safeParse(askProps, { ...ask, words: 'At 20 A' }).success).toBe(false);
    expect(v.safeParse(askProps, { ...ask, answer: { ...ask.answer, device: 'best' } }).success).toBe(false);
    expect(v.safeParse(askProps, { ...ask, answer: { ...ask.answer, rating: undefined } }).success).toBe(false);
  });
});

describe('a number of the gap', () => {
  const gap = { cast: 'A14', ambient: 25, device: 'ul489', rating: 20, limit: 'rating', upTo: 100 } as const;

  it('is told with its ends rounded outward, one interval at a time', () => {
    const told = (more: object) => plain(numberOf({ of: 'gap from', ...gap, ...more } as never, 'na'));
    expect([told({}), told({ part: 2 })]).toEqual(['28 A', '44 A']);
    expect(plain(numberOf({ of: 'gap to', ...gap }, 'na'))).toBe('40 A');
  });

  it('is refused where the standard has none', () => {
    expect(() => numberOf({ of: 'gap to', ...gap, part: 2 }, 'na')).toThrow('the upper end was not found');
    expect(() => numberOf({ of: 'gap from', ...gap, part: 3 }, 'na')).toThrow('there is no such gap');
    expect(() => numberOf({ of: 'least time', device: 'ul489', rating: 20, amps: 41 }, 'na')).toThrow(
      'no time is stated',
    );
  });

  it('has its props checked by practice', () => {
    expect(v.safeParse(numProps, { of: 'most time', ...fuse, amps: 30 }).success).toBe(true);
    expect(v.safeParse(numProps, { of: 'most time', ...fuse }).success).toBe(false);
  });
});

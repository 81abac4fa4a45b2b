// The answers that lessons ask to be predicted: computed when the page is built, for both practices, and never given by hand.
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { castScenario, celsius, predict } from '#engine';
import { askProps } from '#site/components/lesson/ask-props.ts';
import { asksOf } from '#site/components/lesson/asks-of.ts';
import { padAxis } from '#site/components/lesson/pad-axis.ts';
import { propFaults } from '#site/components/lesson/props.ts';
import type { Ask } from '#site/widgets/answers/asks.ts';

const cast = { iec: 'C150', na: 'A14' };
const conductor = { of: 'conductor', cast, ambient: 20, on: 7200 };
const metal = (name: string) => ({
  id: name,
  words: '{metal}',
  answer: { ...conductor, metal: name, amps: 10 },
});
const made = (ask: unknown): Ask => asksOf([v.parse(askProps, ask)])[0] as Ask;
const faults = (ask: unknown): string => propFaults('PredictAnswers', { id: 'a', asks: [ask] }).join('\n');

const rise = {
  id: 'ten',
  kind: 'number',
  words: 'Rise at {amps}',
  unit: 'K',
  answer: { of: 'rise', cast, amps: 10, ambient: 20, on: 7200 },
};

describe('a number', () => {
  it('is computed for both practices, in the unit asked for and in words', () => {
    const ask = made(rise);
    if (ask.kind !== 'number') throw new Error(ask.kind);
    for (const [practice, key] of [
      ['iec', 'C150'],
      ['na', 'A14'],
    ] as const) {
      const { curves } = predict(castScenario(key, 10, 20, 7200)).run;
      const computed = (curves.conductor.at(-1) as number) - (curves.conductor[0] as number);
      expect(ask.computed[practice].value).toBeCloseTo(computed, 6);
      expect(ask.computed[practice].told).toMatch(/^\d+(\.\d)?\u00A0K$/);
    }
  });

  it('has the numbers of its words from its case', () => {
    expect(made(rise).words).toEqual({ iec: 'Rise at 10\u00A0A', na: 'Rise at 10\u00A0A' });
    const size = { ...rise, words: 'Rise at {size}', answer: { ...rise.answer, size: { iec: 2.5, na: 12 } } };
    expect(made(size).words).toEqual({ iec: 'Rise at 2.5\u00A0mm²', na: 'Rise at 12\u00A0AWG' });
    expect(() => made({ ...rise, words: 'Rise at {volts}' })).toThrow(/nothing to fill in for \{volts\}/);
  });

  it('in °C is on that scale, and refuses a unit of another kind', () => {
    const hot = made({ ...rise, unit: '°C', answer: { ...conductor, amps: 20 } });
    if (hot.kind !== 'number') throw new Error(hot.kind);
    const { steady } = predict(castScenario('C150', 20, 20));
    if (steady.kind !== 'steady') throw new Error(steady.kind);
    expect(hot.computed.iec.value).toBeCloseTo(celsius(steady.chain.conductor), 0);
    expect(() => made({ ...rise, unit: 'W' })).toThrow(/rise is not told in W/);
  });
});

describe('a choice', () => {
  const long = (of: string) => ({
    id: 'longer',
    kind: 'choice',
    words: 'From {with.length} to {length}',
    answer: {
      compare: { of, cast, amps: 8, ambient: 20, length: 60 },
      with: { of, cast, amps: 8, ambient: 20, length: 30 },
    },
  });

  it.each([
    ['total heat', 'up'],
    ['heat', 'same'],
    ['conductor', 'same'],
  ])('compares the %s of two cases: %s', (of, right) => {
    const ask = made(long(of));
    if (ask.kind !== 'choice') throw new Error(ask.kind);
    expect(ask.computed.iec.id).toBe(right);
    expect(ask.computed.na.id).toBe(right);
    expect(ask.words.iec).toBe('From 30\u00A0m to 60\u00A0m');
    expect(ask.computed.iec.told).toMatch(/^\d.* then \d/);
  });

  it('finds the option nearest to the ratio of two cases', () => {
    const options = [2, 4, 8].map((value, i) => ({ id: `x${'abc'[i]}`, words: '{value} times', value }));
    const heat = (amps: number) => ({ of: 'cold heat', cast, amps, ambient: 20 });
    const ask = made({ ...long('heat'), words: 'Twice', options, answer: { compare: heat(10), with: heat(5) } });
    if (ask.kind !== 'choice') throw new Error(ask.kind);
    expect(ask.computed.iec.id).toBe('xb');
    expect(ask.options[1]?.words.iec).toBe('4 times');
  });

  it('says whether a limit is passed, and which of several is the greatest', () => {
    const over = (amps: number) => {
      const ask = made({
        id: 'over',
        kind: 'choice',
        words: 'Over?',
        answer: { compare: { ...conductor, amps }, over: { value: 60, unit: '°C' } },
      });
      return ask.kind === 'choice' ? ask.computed.iec.id : undefined;
    };
    expect([over(10), over(22)]).toEqual(['no', 'yes']);
    const hottest = made({
      id: 'hot',
      kind: 'choice',
      words: 'Hottest?',
      options: [metal('copper'), metal('steel')],
      answer: 'greatest',
    });
    expect(hottest.kind === 'choice' && hottest.computed.na.id).toBe('steel');
  });
});

describe('an order', () => {
  const order = (items: unknown[]) => ({
    id: 'metals',
    kind: 'order',
    words: 'Coolest first',
    ends: ['coolest', 'hottest'],
    items,
  });

  it('is found by the engine, and never stands there from the start', () => {
    const ask = made(order([metal('copper'), metal('aluminium'), metal('steel')]));
    if (ask.kind !== 'order') throw new Error(ask.kind);
    expect(ask.computed.iec.ids).toEqual(['copper', 'aluminium', 'steel']);
    expect(ask.items.map(({ id }) => id)).not.toEqual(ask.computed.iec.ids);
    expect(ask.items.map(({ id }) => id)).not.toEqual(ask.computed.na.ids);
    expect(ask.computed.iec.told.steel).toMatch(/°C$/);
  });

  it('of things that come out alike is refused', () => {
    const twin = { ...metal('copper'), id: 'twin' };
    expect(() => made(order([metal('copper'), twin, metal('steel')]))).toThrow(/come out alike/);
  });
});

it.each<[string, unknown, RegExp]>([
  ['a number typed into words', { ...rise, words: 'Rise at 10 A' }, /has a number typed into it; write \{amps\}/],
  ['an answer given by hand', { ...rise, answer: 'same' }, /answer/],
  ['a cord that is none', { ...rise, answer: { ...rise.answer, cast: 'C999' } }, /C999" is none of/],
  ['a kind that is none', { ...rise, kind: 'essay' }, /kind is number, choice, order/],
])('refuses %s in plain words', (_name, ask, says) => {
  expect(faults(ask)).toMatch(says);
});

describe('a pad', () => {
  const pad = { id: 'pad', title: 'Draw it', cast, amps: 20, ambient: 25 };

  it('takes a case, by practice where it differs', () => {
    expect(propFaults('SketchPad', { ...pad, size: { iec: 2.5, na: 12 } })).toEqual([]);
    expect(propFaults('SketchPad', { ...pad, quantity: 'heat' }).join()).toMatch(/temperature or current/);
    expect(propFaults('SketchPad', { ...pad, size: { iec: 2.5, na: 'big' } }).join()).toMatch(/\(na\) size/);
  });

  it('has round axes well above what happens, the same for both practices', () => {
    const hot = predict(castScenario('C125', 20, 25));
    const top = celsius(hot.run.curves.conductor.at(-1) as number);
    const axis = padAxis([hot, predict(castScenario('A16', 5, 25))], 'temperature');
    expect(axis).toMatchObject({ end: 1800, low: 0 });
    expect(axis.high).toBeGreaterThan(1.3 * top);
    expect(axis.high % 10).toBe(0);
    expect(padAxis([hot], 'current').high).toBe(30);
    expect(padAxis([predict(castScenario('C125', 5, -15))], 'temperature').low).toBe(-20);
  });
});

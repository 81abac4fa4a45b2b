// The memory of an objective. Source of the formulas: the open scheduler's published algorithm, sixth version ("FSRS-6"), after Ye, Su and
// Cao, A stochastic shortest path algorithm for optimizing spaced repetition scheduling, KDD 2022. They are written out here by hand
// and compared with the library. The curriculum (section 5) prints the version before it; the two differ in two places, and the library
// rules because its weights were fitted together with its own formulas:
//  - R: its exponent is −w20 = −0.1542, not −0.5, and the factor follows so that R(S, S) stays 0.9;
//  - D': a change of D is damped by (10 − D)/9, so that D comes to neither end at once.
import fc from 'fast-check';
import { default_w, FSRSAlgorithm, forgetting_curve } from 'ts-fsrs';
import { describe, expect, it } from 'vitest';
import { chanceOf, dueDay, keepsFor, type Memory, mostReviews, type Review, reviewed, weights } from '#engine';

const w: readonly number[] = weights.w;
const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
const D0 = (G: number) => (w[4] as number) - Math.exp((w[5] as number) * (G - 1)) + 1;
const factor = 0.9 ** (-1 / (w[20] as number)) - 1;
const R = (t: number, S: number) => (1 + (factor * t) / S) ** -(w[20] as number);

function recall(D: number, S: number, r: number, G: number): number {
  const bonus = (G === 2 ? (w[15] as number) : 1) * (G === 4 ? (w[16] as number) : 1);
  const spread = Math.exp((w[10] as number) * (1 - r)) - 1;
  return S * (1 + Math.exp(w[8] as number) * (11 - D) * S ** -(w[9] as number) * spread * bonus);
}

function lapse(D: number, S: number, r: number): number {
  const kept = (S + 1) ** (w[13] as number) - 1;
  return Math.min(S, (w[11] as number) * D ** -(w[12] as number) * kept * Math.exp((w[14] as number) * (1 - r)));
}

const nextD = (D: number, G: number) =>
  clamp((w[7] as number) * D0(4) + (1 - (w[7] as number)) * (D - ((w[6] as number) * (G - 3) * (10 - D)) / 9), 1, 10);

const review = (day: number, grade: Review['grade'], more: Partial<Review> = {}): Review => ({
  day,
  grade,
  template: 'Q28',
  seed: `s${day}`,
  difficulty: 2,
  tags: [],
  ...more,
});
const answered = (...reviews: Review[]): Memory =>
  reviews.reduce<Memory | undefined>((memory, one) => reviewed('2.2 read', memory, one), undefined) as Memory;
const usual = { retention: 0.9 };

describe('the published formulas', () => {
  it('have the weights of the library, which are kept with their version', () => {
    expect(weights.w).toEqual(default_w);
    expect(weights.version).toContain('5.4.2');
  });

  it.each([1, 2, 3, 4] as const)('S0 = w(G − 1) and D0 = w4 − e^(w5(G − 1)) + 1 after a first grade %i', (G) => {
    const { S, D } = answered(review(10, G));
    expect(S).toBeCloseTo(w[G - 1] as number, 8);
    expect(D).toBeCloseTo(clamp(D0(G), 1, 10), 7);
  });

  const cases = [2, 3, 4].flatMap((G) => [1, 9, 60].map((t) => [G, t] as [2 | 3 | 4, number]));
  it.each(cases)('S and D after grade %i on day %i', (G, t) => {
    const first = answered(review(0, 3));
    const next = reviewed('2.2 read', first, review(t, G));
    expect(next.S).toBeCloseTo(recall(first.D, first.S, R(t, first.S), G), 5);
    expect(next.D).toBeCloseTo(nextD(first.D, G), 7);
  });

  it.each([0, 1, 9, 60])('S and D after a wrong answer on day %i', (t) => {
    const first = answered(review(0, 4));
    const next = reviewed('2.2 read', first, review(t, 1, { seed: 'next' }));
    expect(next.S).toBeCloseTo(lapse(first.D, first.S, R(t, first.S)), 6);
    expect(next.D).toBeCloseTo(nextD(first.D, 1), 7);
  });

  it.each([0, 1, 10, 100])('the chance of a right answer after %i days', (t) => {
    const memory = answered(review(0, 4));
    expect(chanceOf(memory, t)).toBeCloseTo(R(t, memory.S), 7);
  });

  it('is the curriculum’s curve (1 + (19/81)·t/S)^−0.5 where the library is given that exponent', () => {
    for (const [t, S] of [
      [3, 3],
      [10, 2],
      [40, 25],
    ] as const)
      expect(forgetting_curve(0.5, t, S)).toBeCloseTo((1 + ((19 / 81) * t) / S) ** -0.5, 7);
  });

  it.each([0.8, 0.85, 0.9, 0.95])('the next gap at %f is the day on which the chance has fallen to it', (retention) => {
    const memory = { ...answered(review(0, 4)), S: 40 };
    const due = dueDay(memory, { retention });
    expect(chanceOf(memory, due - 1)).toBeGreaterThan(retention);
    expect(chanceOf(memory, due + 1)).toBeLessThan(retention);
  });
});

const grade = fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const);
const history = fc.array(fc.record({ gap: fc.integer({ min: 0, max: 90 }), grade }), { minLength: 1, maxLength: 25 });
const lived = (steps: { gap: number; grade: 1 | 2 | 3 | 4 }[]): Memory => {
  let day = 0;
  return answered(
    ...steps.map(({ gap, grade }, i) => {
      day += gap;
      return review(day, grade, { seed: `n${i}` });
    }),
  );
};

describe('whatever was answered before', () => {
  it('a right answer never shortens S, and a wrong one never lengthens it', () => {
    fc.assert(
      fc.property(history, fc.integer({ min: 0, max: 400 }), grade, (steps, gap, G) => {
        const memory = lived(steps);
        const next = reviewed('2.2 read', memory, review(memory.day + gap, G, { seed: 'last' }));
        if (G === 1) expect(next.S).toBeLessThanOrEqual(memory.S);
        else expect(next.S).toBeGreaterThanOrEqual(memory.S);
        expect(next.D).toBeGreaterThanOrEqual(1);
        expect(next.D).toBeLessThanOrEqual(10);
      }),
    );
  });

  it('a right answer after a longer gap raises S more, and a surer one too', () => {
    fc.assert(
      fc.property(history, fc.integer({ min: 1, max: 200 }), (steps, gap) => {
        const memory = lived(steps);
        const S = (days: number, G: 2 | 3 | 4) =>
          reviewed('2.2 read', memory, review(memory.day + days, G, { seed: 'last' })).S;
        expect(S(gap + 20, 3)).toBeGreaterThan(S(gap, 3));
        expect(S(gap, 4)).toBeGreaterThan(S(gap, 3));
        expect(S(gap, 3)).toBeGreaterThan(S(gap, 2));
      }),
    );
  });

  it('it is due on a whole day, never before the day after, and sooner the more is to be kept', () => {
    fc.assert(
      fc.property(history, (steps) => {
        const memory = lived(steps);
        const days = [0.8, 0.9, 0.95].map((retention) => dueDay(memory, { retention }));
        expect(days.every((day) => Number.isInteger(day) && day > memory.day)).toBe(true);
        expect(days).toEqual(days.toSorted((a, b) => b - a));
      }),
    );
  });

  it('an exam to come caps the gap at a quarter of the days left, and one that is over does not', () => {
    fc.assert(
      fc.property(history, fc.integer({ min: 1, max: 300 }), (steps, left) => {
        const memory = lived(steps);
        const free = dueDay(memory, usual);
        const capped = dueDay(memory, { ...usual, examDay: memory.day + left });
        expect(capped - memory.day).toBeLessThanOrEqual(Math.max(1, left / 4));
        expect(capped).toBeLessThanOrEqual(free);
        expect(dueDay(memory, { ...usual, examDay: memory.day - 1 })).toBe(free);
      }),
    );
  });
});

describe('answers of one day', () => {
  it('lengthen nothing by being many: cramming is not learning', () => {
    const once = answered(review(5, 4));
    const often = answered(...[1, 2, 3, 4].map((i) => review(5, 4, { seed: `n${i}` })));
    expect(often.S).toBe(once.S);
  });

  it('at the same numbers are one review: right on a second try is grade 2, with the mistake still told', () => {
    const memory = answered(review(5, 1, { tags: ['M20'] }), review(5, 4));
    expect(memory.reviews).toEqual([review(5, 2, { tags: ['M20'] })]);
    expect(memory.S).toBe(answered(review(5, 2)).S);
  });

  it('change nothing when the same numbers are answered again after they were right', () => {
    const memory = answered(review(5, 3));
    expect(reviewed('2.2 read', memory, review(5, 4))).toBe(memory);
  });
});

it('keeps the latest reviews and no more, and goes on where a clock was put back', () => {
  const memory = answered(...Array.from({ length: 30 }, (_, i) => review(i, 3)), review(3, 3, { seed: 'back' }));
  expect(memory.reviews).toHaveLength(mostReviews);
  expect(memory.day).toBe(29);
  expect(memory.reviews.at(-1)).toMatchObject({ day: 29, seed: 'back' });
});

it('says for how many days it keeps: until nine in ten would still be right', () => {
  const memory = { ...answered(review(0, 4)), S: 40 };
  expect(keepsFor(memory)).toBe(40);
  expect(chanceOf(memory, keepsFor(memory))).toBeCloseTo(0.9, 6);
  expect(keepsFor({ ...memory, S: 0.2 })).toBe(1);
});

it('refuses a share to be kept outside 0.8 to 0.95', () => {
  expect(() => dueDay(answered(review(0, 3)), { retention: 0.99 })).toThrow(/must lie from 0.8 to 0.95/);
});

it('rests on the library as it is installed: its own default weights give the same next state', () => {
  const memory = answered(review(0, 3));
  const own = new FSRSAlgorithm({ enable_short_term: false });
  const next = own.next_state({ difficulty: memory.D, stability: memory.S }, 7, 3);
  expect(reviewed('2.2 read', memory, review(7, 3))).toMatchObject({ D: next.difficulty, S: next.stability });
});

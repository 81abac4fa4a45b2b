// The law of propagation and the Monte Carlo check, on models whose answer is known by hand.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkByTrials,
  effectiveDof,
  expanded,
  type Input,
  type Model,
  monteCarlo,
  OutOfRange,
  pairCorrelated,
  propagate,
  repeated,
  sensitivityOf,
  studentQuantile,
  toleranceOf,
  withinStudent,
  written,
} from '#engine';

const of = (value: number, u: number, more: Partial<Input> = {}): Input => ({
  name: 'x',
  unit: '1',
  value,
  u,
  ...more,
});
const product = (x: readonly number[]) => x.reduce((all, v) => all * v, 1);
const sum = (x: readonly number[]) => x.reduce((all, v) => all + v, 0);

const size = fc.double({ min: 0.1, max: 100, noNaN: true });
const part = fc.double({ min: 1e-4, max: 0.05, noNaN: true });
const inputs = fc
  .array(fc.tuple(size, part), { minLength: 1, maxLength: 5 })
  .map((all) => all.map(([v, r]) => of(v, r * v)));

describe('the law of propagation', () => {
  it('adds relative uncertainties of a product as squares', () =>
    fc.assert(
      fc.property(inputs, (all) => {
        const expected = Math.hypot(...all.map(({ value, u }) => u / value));
        expect(propagate({ inputs: all, f: product }).relative / expected).toBeCloseTo(1, 7);
      }),
    ));

  it('gives the same relative result in any units', () =>
    fc.assert(
      fc.property(inputs, fc.double({ min: 1e-9, max: 1e9, noNaN: true }), (all, scale) => {
        const f = (x: readonly number[]) => product(x) / (1 + sum(x));
        const scaled = all.map((one) => ({ ...one, value: one.value * scale, u: one.u * scale }));
        const own = propagate({ inputs: all, f });
        const other = propagate({ inputs: scaled, f: (x) => 1e-6 * f(x.map((v) => v / scale)) });
        expect(other.relative / own.relative).toBeCloseTo(1, 5);
      }),
    ));

  it('adds equal parts straight where they are one and the same error', () =>
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 8 }), part, (n, u) => {
        const all = Array.from({ length: n }, () => of(1, u));
        const together = propagate({ inputs: all, f: sum, correlation: all.map(() => all.map(() => 1)) });
        expect(together.u / (n * u)).toBeCloseTo(1, 8);
        expect(propagate({ inputs: all, f: sum }).u / (Math.sqrt(n) * u)).toBeCloseTo(1, 8);
      }),
    ));

  it('lets one and the same error fall out of a difference', () => {
    const all = [of(5, 0.1), of(3, 0.1)];
    const difference = { inputs: all, f: ([a, b]: readonly number[]) => (a as number) - (b as number) };
    expect(propagate({ ...difference, correlation: pairCorrelated(2, 0, 1, 1) }).u).toBeCloseTo(0, 9);
    expect(propagate({ ...difference, correlation: pairCorrelated(2, 0, 1, -1) }).u).toBeCloseTo(0.2, 9);
  });

  it('shares out the whole variance in its budget, correlated or not', () => {
    const all = [of(2, 0.1), of(3, 0.2), of(5, 0.1)];
    for (const correlation of [undefined, pairCorrelated(3, 0, 2, -0.6)]) {
      const { budget } = propagate({ inputs: all, f: product, ...(correlation && { correlation }) });
      expect(sum(budget.map(({ share }) => share))).toBeCloseTo(1, 9);
    }
    const { budget } = propagate({ inputs: all, f: product });
    expect(budget.map(({ sensitivity }) => sensitivity)).toEqual([15, 10, 6].map((c) => expect.closeTo(c, 8)));
  });

  it('finds sensitivities where inputs are large, tiny or nothing', () => {
    const at = (f: Model['f'], x: Input) => sensitivityOf({ inputs: [x], f }, 0);
    expect(at(([x]) => 5e7 + 575 * (x as number), of(0, 0.029))).toBeCloseTo(575, 4);
    expect(at(([x]) => (x as number) ** 3, of(0, 0))).toBeCloseTo(0, 9);
    expect(at(([x]) => Math.exp(x as number), of(1e-7, 1e-9))).toBeCloseTo(1, 6);
    expect(at(([x]) => Math.log(x as number), of(293.15, 0.5)) * 293.15).toBeCloseTo(1, 9);
    expect(at(([x]) => 2 * (x as number), of(1, 1, { sensitivity: 7 }))).toBe(7);
  });

  it('narrows its step where the model ends near the value', () => {
    const root = { inputs: [of(1e-4, 1)], f: ([x]: readonly number[]) => Math.sqrt(x as number) };
    expect(sensitivityOf(root, 0)).toBeCloseTo(50, 1);
  });

  it('warns where the model bends within its uncertainty, and only there', () => {
    const square = (u: number) => propagate({ inputs: [of(1, u)], f: ([x]) => (x as number) ** 2 });
    expect(square(0.001).secondOrder?.matters).toBe(false);
    expect(square(0.001).limits).toEqual([]);
    expect(square(0.4).secondOrder?.matters).toBe(true);
    expect(square(0.4).limits.join(' ')).toMatch(/Monte Carlo/);
    expect(square(0.4).secondOrder?.u).toBeCloseTo(Math.sqrt(4 * 0.16 + 2 * 0.4 ** 4), 6);
    expect(square(0.4).secondOrder?.shift).toBeCloseTo(0.16, 8);
  });

  it('counts degrees of freedom of the result, few where the part that counts has few', () => {
    const few = of(1, 0.1, { dof: 4 });
    expect(propagate({ inputs: [few], f: sum }).dof).toBeCloseTo(4, 9);
    expect(propagate({ inputs: [few, of(1, 1)], f: sum }).dof).toBeCloseTo((1.01 ** 2 / 1e-4) * 4, 3);
    expect(propagate({ inputs: [of(1, 1)], f: sum }).dof).toBe(Number.POSITIVE_INFINITY);
    expect(effectiveDof(1, [{ contribution: 1, dof: 7 }])).toBe(7);
  });

  it('never claims more degrees of freedom than its correlated inputs have', () => {
    const pair = [of(1, 0.1, { dof: 4 }), of(1, 0.1, { dof: 9 })];
    const { dof, limits } = propagate({ inputs: pair, f: sum, correlation: pairCorrelated(2, 0, 1, 0.5) });
    expect(dof).toBeLessThanOrEqual(4);
    expect(limits.join(' ')).toMatch(/correlated/);
  });

  it('refuses what cannot be meant, and says what', () => {
    expect(() => propagate({ inputs: [of(1, -1)], f: sum })).toThrow(/standard uncertainty of x/);
    expect(() => propagate({ inputs: [of(0, 1)], f: ([x]) => 1 / (x as number) })).toThrow(/result of the model/);
    expect(() => propagate({ inputs: [of(1, 1, { distribution: 'Student t' })], f: sum })).toThrow(
      /degrees of freedom/,
    );
    const three = [of(1, 1), of(1, 1), of(1, 1)];
    const impossible = [
      [1, 0.9, -0.9],
      [0.9, 1, 0.9],
      [-0.9, 0.9, 1],
    ];
    expect(() => propagate({ inputs: three, f: sum, correlation: impossible })).toThrow(OutOfRange);
    expect(() => propagate({ inputs: three, f: sum, correlation: [[1]] })).toThrow(/correlation of x and x/);
  });
});

describe('coverage', () => {
  it('widens the factor as degrees of freedom fall', () => {
    expect(expanded({ value: 0, u: 2 }).U).toBeCloseTo(3.91993, 4);
    expect(expanded({ value: 0, u: 2, dof: 3 }).k).toBeCloseTo(3.1824, 4);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5000, noNaN: true }), (dof) => {
        expect(studentQuantile(0.95, dof)).toBeGreaterThan(studentQuantile(0.95, dof * 1.1));
      }),
    );
  });

  it('has no jump where the sums give way to the normal law', () => {
    expect(withinStudent(2, 10_001) - withinStudent(2, 9_999)).toBeLessThan(5e-5);
    expect(withinStudent(1e-9, 5)).toBeCloseTo(0, 8);
    expect(withinStudent(40, Number.POSITIVE_INFINITY)).toBe(1);
  });
});

describe('a result as written', () => {
  it('has two figures of uncertainty and the value to the same place', () => {
    expect(written({ value: 13.2809, u: 0.1104 })).toEqual({ value: 13.28, u: 0.11, decimals: 2 });
    expect(written({ value: 1234.6, u: 45.4 })).toEqual({ value: 1235, u: 45, decimals: 0 });
    expect(written({ value: 123456, u: 4567 })).toEqual({ value: 123500, u: 4600, decimals: -2 });
    expect(written({ value: 1.00049, u: 0.0996 })).toEqual({ value: 1, u: 0.1, decimals: 2 });
    expect(written({ value: 2, u: 0 }).decimals).toBeNull();
  });

  it('has half a unit of its last figure as the tolerance of a check', () => {
    expect(toleranceOf(0.0755)).toBeCloseTo(0.0005, 12);
    expect(toleranceOf(0.35, 1)).toBeCloseTo(0.05, 12);
    expect(toleranceOf(0.0998)).toBeCloseTo(0.005, 12); // written 0.10
  });
});

describe('repeated readings', () => {
  it('never say more than one reading does not, and lose a degree', () => {
    expect(() => repeated([1])).toThrow(/number of readings/);
    expect(repeated([3, 3, 3])).toMatchObject({ value: 3, u: 0, dof: 2 });
    expect(repeated([1e9 + 1, 1e9 + 2, 1e9 + 3]).s).toBeCloseTo(1, 9);
  });
});

describe('Monte Carlo', () => {
  const quick = { seed: 'bench', most: 2e5 };

  it('agrees with the law for straight models of every distribution', () => {
    const distribution = fc.constantFrom('normal', 'rectangular', 'triangular', 'U-shaped');
    const drawn = fc.record({
      value: size,
      u: size,
      distribution,
      weight: fc.double({ min: -3, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(drawn, { minLength: 1, maxLength: 4 }), (all) => {
        const inputs = all.map(({ value, u, distribution }) => of(value, u, { distribution }));
        const model = {
          inputs,
          f: (x: readonly number[]) => 1 + sum(all.map(({ weight }, i) => weight * Number(x[i]))),
        };
        const law = propagate(model);
        const run = monteCarlo(model, { seed: 'straight', most: 1e5, part: 1e-9 });
        expect(Math.abs(run.u - law.u)).toBeLessThanOrEqual(0.012 * law.u); // five times its spread for normal inputs
        expect(Math.abs(run.value - law.value)).toBeLessThanOrEqual(0.016 * law.u + 1e-9);
      }),
      { numRuns: 15, seed: 20 },
    );
  });

  it('draws Student’s t wider than its scale, as its own variance says', () => {
    const run = monteCarlo(
      { inputs: [of(0, 1, { distribution: 'Student t', dof: 8 })], f: sum },
      { ...quick, most: 4e5 },
    );
    expect(run.u / Math.sqrt(8 / 6)).toBeCloseTo(1, 1);
    expect(run.symmetric.high).toBeCloseTo(studentQuantile(0.95, 8), 1);
  });

  it.each([-1, -0.5, 0.8, 1])('keeps a correlation of %f, through any distribution', (r) => {
    for (const distribution of ['normal', 'rectangular'] as const) {
      const pair = [of(0, 1, { distribution }), of(0, 1, { distribution })];
      const model = { inputs: pair, f: sum, correlation: pairCorrelated(2, 0, 1, r) };
      expect(Math.abs(monteCarlo(model, quick).u - Math.sqrt(2 + 2 * r))).toBeLessThan(0.025);
    }
  });

  it('gives the same figures for the same seed and others for another', () => {
    const model = { inputs: [of(1, 0.1)], f: sum };
    expect(monteCarlo(model, quick)).toEqual(monteCarlo(model, quick));
    expect(monteCarlo(model, quick).value).not.toBe(monteCarlo(model, { ...quick, seed: 'other' }).value);
  });

  it('stops once settled, and says when it did not', () => {
    const model = { inputs: [of(1, 0.1), of(2, 0.1)], f: sum };
    const coarse = monteCarlo(model, { seed: 'a', figures: 1 });
    expect(coarse).toMatchObject({ settled: true, trials: 100_000 });
    expect(monteCarlo(model, { seed: 'a', most: 2e4 })).toMatchObject({ settled: false, trials: 20_000 });
  });

  it('finds an interval no longer than the symmetrical one, and much shorter where results lean to one side', () => {
    const square = monteCarlo({ inputs: [of(0, 1)], f: ([x]) => (x as number) ** 2 }, quick);
    const length = ({ low, high }: { low: number; high: number }) => high - low;
    expect(length(square.shortest)).toBeLessThan(0.8 * length(square.symmetric));
    expect(square.shortest.low).toBeLessThan(0.001);
  });

  it('clears the law for a straight model and refuses it for one that bends', () => {
    const straight = { inputs: [of(10, 0.1), of(3, 0.1)], f: sum };
    expect(checkByTrials(straight, { seed: 'a', figures: 2, most: 4e5 }).agree).toBe(true);
    const bent = {
      inputs: [of(0.01, 0.005), of(0, 0.005)],
      f: ([a, b]: readonly number[]) => Number(a) ** 2 + Number(b) ** 2,
    };
    expect(checkByTrials(bent, { seed: 'a', most: 2e5 }).agree).toBe(false);
    const wide = { inputs: [of(0, 1), of(0, 10, { distribution: 'rectangular' })], f: sum } satisfies Model;
    expect(checkByTrials(wide, { seed: 'a', most: 2e5 }).agree).toBe(false);
  });

  it('refuses a model that gives no number somewhere in its draws', () => {
    const root = { inputs: [of(1, 1)], f: ([x]: readonly number[]) => Math.sqrt(x as number) };
    expect(() => monteCarlo(root, quick)).toThrow(/result of a trial/);
  });
});

// Hairer & Wanner, Solving Ordinary Differential Equations II, section IV.7: order conditions of Rosenbrock methods (table 7.1)
// and the passage from stages U to stages k: Γ⁻¹ = I/γ − C, α = A Γ, b = m Γ.
import { describe, expect, it } from 'vitest';
import { meshOf } from '#engine/heating/mesh.ts';
import { radialOf } from '#engine/heating/radial.ts';
import { a, c, d, gamma } from '#engine/heating/rodas.ts';
import { buildCase, conductorResistance } from '#engine/heating/thermal-case.ts';

const stages = 6;
const each = Array.from({ length: stages }, (_, i) => i);
const zeros = () => each.map(() => each.map(() => 0));
const named = (table: Readonly<Record<string, number>>, letter: string, i: number, j: number) =>
  table[`${letter}${i + 1}${j + 1}`] ?? 0;

/** a_ij and c_ij as square tables; stage 6 starts from where the embedded result lies. */
const A = each.map((i) => each.map((j) => (i === 5 ? (j === 4 ? 1 : named(a, 'a', 4, j)) : named(a, 'a', i, j))));
const C = each.map((i) => each.map((j) => named(c, 'c', i, j)));
const last = A[5] as number[];
const m = last.map((value, j) => (j === 5 ? 1 : value));
const mEmbedded = last;

/** Inverse of a lower triangular table. */
function inverse(L: number[][]): number[][] {
  const X = zeros();
  for (const j of each) {
    for (const i of each) {
      let sum = i === j ? 1 : 0;
      for (let k = 0; k < i; k++) sum -= at(L, i, k) * at(X, k, j);
      (X[i] as number[])[j] = sum / at(L, i, i);
    }
  }
  return X;
}

const at = (M: number[][], i: number, j: number) => (M[i] as number[])[j] as number;
const product = (P: number[][], Q: number[][]) =>
  each.map((i) => each.map((j) => each.reduce((sum, k) => sum + at(P, i, k) * at(Q, k, j), 0)));
const times = (M: number[][], x: number[]) =>
  each.map((i) => each.reduce((sum, j) => sum + at(M, i, j) * (x[j] as number), 0));
const dot = (x: number[], y: number[]) => x.reduce((sum, v, i) => sum + v * (y[i] as number), 0);
const mul = (x: number[], y: number[]) => x.map((v, i) => v * (y[i] as number));

const GammaInverse = each.map((i) => each.map((j) => (i === j ? 1 / gamma : 0) - at(C, i, j)));
const Gamma = inverse(GammaInverse);
const alpha = product(A, Gamma);
const beta = each.map((i) => each.map((j) => at(alpha, i, j) + at(Gamma, i, j)));
const weights = (of: number[]) =>
  each.map((j) => each.reduce((sum, i) => sum + (of[i] as number) * at(Gamma, i, j), 0));
const ones = each.map(() => 1);
const alphas = times(alpha, ones);
const betas = times(beta, ones);

/** What each order condition's sum is, and what it must be; `s` is the part of a step. */
const conditions: readonly [number, string, (b: number[]) => number, (s: number) => number][] = [
  [1, 'Σ b', (b) => dot(b, ones), (s) => s],
  [2, 'Σ b β', (b) => dot(b, betas), (s) => s ** 2 / 2],
  [3, 'Σ b α²', (b) => dot(b, mul(alphas, alphas)), (s) => s ** 3 / 3],
  [3, 'Σ b β β', (b) => dot(b, times(beta, betas)), (s) => s ** 3 / 6],
  [4, 'Σ b α³', (b) => dot(b, mul(alphas, mul(alphas, alphas))), (s) => s ** 4 / 4],
  [4, 'Σ b α (α β)', (b) => dot(b, mul(alphas, times(alpha, betas))), (s) => s ** 4 / 8],
  [4, 'Σ b β α²', (b) => dot(b, times(beta, mul(alphas, alphas))), (s) => s ** 4 / 12],
  [4, 'Σ b β β β', (b) => dot(b, times(beta, times(beta, betas))), (s) => s ** 4 / 24],
];

describe('the coefficients of the time stepping method', () => {
  it.each(conditions)('meet the condition of order %i, %s', (_, __, sum, should) => {
    expect(Math.abs(sum(weights(m)) - should(1))).toBeLessThan(1e-13);
  });

  it.each(conditions.filter(([order]) => order <= 3))(
    'of the embedded result meet the condition of order %i, %s',
    (_, __, sum, should) => {
      expect(Math.abs(sum(weights(mEmbedded)) - should(1))).toBeLessThan(1e-13);
    },
  );

  it('of the embedded result do not meet order 4, so that the error estimate is of order 3', () => {
    const misses = conditions
      .filter(([order]) => order === 4)
      .map(([, , sum, should]) => Math.abs(sum(weights(mEmbedded)) - should(1)));
    expect(Math.max(...misses)).toBeGreaterThan(1e-3);
  });

  it.each([
    ['the result', m],
    ['the embedded result', mEmbedded],
  ])('bring a fast mode to nothing in one step: R(∞) = 0 for %s', (_, row) => {
    const rows = row === m ? 6 : 5;
    const b = weights(row);
    // R(∞) = 1 − bᵀ β⁻¹ 1 over the stages used
    const x: number[] = [];
    for (let i = 0; i < rows; i++) {
      let sum = 1;
      for (let j = 0; j < i; j++) sum -= at(beta, i, j) * (x[j] as number);
      x.push(sum / at(beta, i, i));
    }
    const R = 1 - x.reduce((sum, v, i) => sum + v * (b[i] as number), 0);
    expect(Math.abs(R)).toBeLessThan(1e-12);
  });

  it('never enlarge an oscillation: |R(iy)| ≤ 1', () => {
    for (let y = 1e-3; y < 1e5; y *= 1.3) {
      // (I − iyβ) x = 1 by forward substitution in complex numbers
      const re: number[] = [];
      const im: number[] = [];
      for (const i of each) {
        let [p, q] = [1, 0];
        for (let j = 0; j < i; j++) {
          p -= y * at(beta, i, j) * (im[j] as number);
          q += y * at(beta, i, j) * (re[j] as number);
        }
        const g = y * at(beta, i, i);
        const size = 1 + g * g;
        re.push((p - g * q) / size);
        im.push((q + g * p) / size);
      }
      const b = weights(m);
      const R = Math.hypot(1 - y * dot(b, im), y * dot(b, re));
      expect(R).toBeLessThanOrEqual(1 + 1e-12);
    }
  });

  it.each(conditions.filter(([order]) => order <= 3))(
    'of the dense output meet the condition of order %i, %s, anywhere in a step',
    (_, __, sum, should) => {
      for (const s of [0, 0.1, 0.25, 0.5, 0.8, 1]) {
        const row = each.map((j) => {
          const [second, third] = [named(d, 'd', 1, j), named(d, 'd', 2, j)];
          return s * ((m[j] as number) + (1 - s) * (second + s * third));
        });
        expect(Math.abs(sum(weights(row)) - should(s))).toBeLessThan(1e-12);
      }
    },
  );
});

/** Conductor temperature [K] of a cord after 240 s at 16 A in `steps` equal steps. */
function inEqualSteps(steps: number) {
  const of = buildCase({
    cable: { table: 'H05VV-F', cores: 3, size_mm2: 0.75 },
    surroundings: { kind: 'stillAir', ambient_degC: 20 },
    supply: [{ kind: 'current', I_A: 16 }],
    start: { T_degC: 25 },
  });
  const mesh = meshOf(
    of.rings,
    of.conductorCapacity,
    of.rings.length,
    24,
    Number.POSITIVE_INFINITY,
    of.equivalentRadius,
  );
  const radial = radialOf(mesh, of.outside.flow, new Float64Array(mesh.r.length).fill(of.T0));
  radial.setHeat((T) => of.n * 256 * conductorResistance(of, T));
  for (let i = 0; i < steps; i++) {
    radial.attempt(240 / steps);
    radial.accept();
  }
  return radial.y[0] as number;
}

describe('equal steps on a cord', () => {
  // below a microkelvin the guarded differences that stand for the slopes leave an error of first order
  it('leave an error that falls with the fourth power of the step', () => {
    const converged = inEqualSteps(4096);
    const counts = [4, 8, 16, 32];
    const errors = counts.map((steps) => Math.abs(inEqualSteps(steps) - converged));
    const slope = Math.log2((errors[0] as number) / (errors.at(-1) as number)) / (counts.length - 1);
    expect(slope).toBeGreaterThan(3.5);
    expect(slope).toBeLessThan(5);
  });
});

import { toleranceOf } from './figures.ts';
import { type Model, resultAt } from './model.ts';

/** What the straight line through a model leaves out. */
export interface SecondOrder {
  /** Standard uncertainty with the terms of the next order, in the unit of the result. */
  readonly u: number;
  /** How far the mean of the possible results lies from the result: ½ Σ (∂²f/∂x²) u². */
  readonly shift: number;
  /** Whether either would change the uncertainty or the value as written, to two figures of u. */
  readonly matters: boolean;
}

const step = 0.1; // of an uncertainty: near enough for the derivative, far enough for the figures to differ

/** The model's derivatives, each times the powers of u that it comes with. */
function derivativesOf(of: Model) {
  const u = of.inputs.map((input) => step * input.u);
  const y = resultAt(of);
  const at = (i: number, a: number) => resultAt(of, [i, a * (u[i] as number)]);
  const both = (i: number, a: number, j: number, b: number) =>
    resultAt(of, [i, a * (u[i] as number)], [j, b * (u[j] as number)]);
  return {
    /** ∂f/∂xi · ui */
    first: (i: number) => (8 * (at(i, 0.5) - at(i, -0.5)) - (at(i, 1) - at(i, -1))) / (6 * step),
    /** ∂²f/∂xi² · ui² */
    second: (i: number) => (at(i, 1) - 2 * y + at(i, -1)) / step ** 2,
    /** ∂³f/∂xi³ · ui³ */
    third: (i: number) => (at(i, 2) - 2 * at(i, 1) + 2 * at(i, -1) - at(i, -2)) / (2 * step ** 3),
    /** ∂²f/∂xi∂xj · ui uj */
    mixed: (i: number, j: number) =>
      (both(i, 1, j, 1) - both(i, 1, j, -1) - both(i, -1, j, 1) + both(i, -1, j, -1)) / (4 * step ** 2),
    /** ∂³f/∂xi∂xj² · ui uj² */
    bent: (i: number, j: number) => {
      const curve = (a: number) => both(i, a, j, 1) - 2 * at(i, a) + both(i, a, j, -1);
      return (curve(1) - curve(-1)) / (2 * step ** 3);
    },
  };
}

/**
 * The terms of the next order, Σ Σ [½ (∂²f/∂xi∂xj)² + ∂f/∂xi · ∂³f/∂xi∂xj²] ui² uj² (JCGM 100, 5.1.2 note), for `u` of the
 * first order. They hold for independent, symmetrical inputs near normal: null where inputs are correlated, or where the
 * model gives no number a fifth of an uncertainty out.
 */
export function secondOrderOf(of: Model, u: number): SecondOrder | null {
  if (of.correlation) return null;
  const { first, second, third, mixed, bent } = derivativesOf(of);
  const varied = of.inputs.flatMap((input, i) => (input.u > 0 ? [i] : []));
  let more = 0;
  let shift = 0;
  for (const i of varied) {
    shift += second(i) / 2;
    more += second(i) ** 2 / 2 + first(i) * third(i);
    for (const j of varied) if (j !== i) more += mixed(i, j) ** 2 / 2 + first(i) * bent(i, j);
  }
  if (!Number.isFinite(more + shift)) return null;
  const whole = Math.sqrt(Math.max(0, u * u + more));
  const seen = toleranceOf(Math.max(u, whole));
  return { u: whole, shift, matters: Math.abs(whole - u) > seen || Math.abs(shift) > seen };
}

import type { Measured } from '../measured.ts';

/** Logarithm of the density of a residual `e` with standard uncertainty `u`: Student's t of `dof`, normal where infinite; constants left out. */
export function logDensity(e: number, u: number, dof = Infinity): number {
  const z2 = (e / u) ** 2;
  return -Math.log(u) - (Number.isFinite(dof) ? ((dof + 1) / 2) * Math.log1p(z2 / dof) : z2 / 2);
}

/** One part of a combined uncertainty: its standard uncertainty, in the unit of the result, and its degrees of freedom. */
interface Part {
  readonly u: number;
  readonly dof?: number | undefined;
}

/** Parts of a combined standard uncertainty, degrees of freedom by Welch and Satterthwaite (JCGM 100, G.4.1). */
export function combined(parts: readonly Part[]): { u: number; dof: number } {
  const u2 = parts.reduce((sum, { u }) => sum + u * u, 0);
  const quartic = parts.reduce((sum, { u, dof = Infinity }) => sum + u ** 4 / dof, 0);
  return { u: Math.sqrt(u2), dof: quartic > 0 ? u2 ** 2 / quartic : Infinity };
}

/** A measured value as a part, times its sensitivity. */
export const part = ({ u, dof }: Measured, sensitivity = 1): Part => ({ u: u * sensitivity, dof });

/** Probability of a normal deviate as far out as `z` or farther, both tails: Abramowitz & Stegun 7.1.26, to 1.5e-7 (from memory). */
export function bothTails(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const series = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  return series * Math.exp(-x * x);
}

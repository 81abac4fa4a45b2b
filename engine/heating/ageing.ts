import type { Ageing } from '../material/plastics.ts';

/** Molar gas constant [J/(mol·K)], CODATA 2018. */
const gasConstant = 8.314462618;

/** Life at `T` [K]: L(θ) = L_ref exp(Ea/R (1/T − 1/T_ref)) [s]. */
export function lifeAt({ activationEnergy, refTemperature, lifeAtRef }: Ageing, T: number): number {
  return lifeAtRef.value * Math.exp((activationEnergy.value / gasConstant) * (1 / T - 1 / refTemperature.value));
}

// three-point Gauss rule on 0 to 1
const points = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)] as const;
const weights = [5 / 18, 8 / 18, 5 / 18] as const;

/** Life used in a step of `h` [s] whose temperature is `at(s)` [K], s from 0 to 1: ∫ dt/L(θ), dimensionless. */
export function lifeUsed(ageing: Ageing, h: number, at: (s: number) => number): number {
  return points.reduce((sum, s, i) => sum + ((weights[i] as number) * h) / lifeAt(ageing, at(s)), 0);
}

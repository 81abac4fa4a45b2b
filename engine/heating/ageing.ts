import type { Ageing } from '../material/plastics.ts';
import { kelvin } from '../quantity.ts';

/** Molar gas constant [J/(mol·K)], CODATA 2018. */
export const gasConstant = 8.314462618;

/** Up to here the activation energy of PVC was measured [K] (ekelund2007); above it the law is carried on beyond its data. */
export const ageingMeasuredTo = kelvin(100);

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

/** How many times as fast as at its reference the insulation ages at `T` [K]: L_ref/L(θ), dimensionless. */
export const ageingRate = (ageing: Ageing, T: number): number => ageing.lifeAtRef.value / lifeAt(ageing, T);

/** Life used by `t` [s] held at `T` [K]: t/L(θ), dimensionless; 1 is the whole of it. */
export const lifeShare = (ageing: Ageing, T: number, t: number): number => t / lifeAt(ageing, T);

/** Temperature [K] at which the insulation lasts for `life` [s], L(θ) turned about; above 0. */
export function temperatureForLife({ activationEnergy, refTemperature, lifeAtRef }: Ageing, life: number): number {
  return 1 / (1 / refTemperature.value + (gasConstant / activationEnergy.value) * Math.log(life / lifeAtRef.value));
}

/** Rise above `T` [K] that halves the life [K]; the trade's round figure for it is 10 K (common practice, no source). */
export const halvingStep = (ageing: Ageing, T: number): number => temperatureForLife(ageing, lifeAt(ageing, T) / 2) - T;

import { airConductivity, airDensity, airSpecificHeat, airViscosity } from '../material/air.ts';

/** Standard acceleration of gravity [m/s²], exact by definition. */
export const gravity = 9.80665;

/** The film state that convection correlations share. */
interface Film {
  readonly Ra: number;
  readonly Pr: number;
  readonly k: number;
  readonly nu: number;
}

/** Rayleigh number g β |Ts − Ta| D³/(ν a) with β = 1/Tf and air at the film temperature Tf = (Ts + Ta)/2; D [m], T [K]. */
export function film(D: number, Ts: number, Ta: number): Film {
  const Tf = (Ts + Ta) / 2;
  const k = airConductivity(Tf);
  const rho = airDensity(Tf);
  const mu = airViscosity(Tf);
  const nu = mu / rho;
  const Ra = (gravity * Math.abs(Ts - Ta) * D * D * D * rho * airSpecificHeat) / (Tf * nu * k);
  return { Ra, Pr: (mu * airSpecificHeat) / k, k, nu };
}

/**
 * Nusselt number of a horizontal cylinder in still air, Kuehn & Goldstein 1976:
 * b = [(0.518 Ra^¼ [1+(0.559/Pr)^0.6]^(−5/12))^15 + (0.1 Ra^⅓)^15]^(1/15), Nu = 2/ln(1 + 2/b). Falls to 0 with Ra.
 */
export function nusseltKuehnGoldstein(Ra: number, Pr: number): number {
  const laminar = 0.518 * Math.sqrt(Math.sqrt(Ra)) * (1 + (0.559 / Pr) ** 0.6) ** (-5 / 12);
  const turbulent = 0.1 * Math.cbrt(Ra);
  const greater = Math.max(laminar, turbulent);
  if (!(greater > 0)) return 0;
  const ratio = Math.min(laminar, turbulent) / greater;
  const cube = ratio * ratio * ratio;
  const fifteenth = cube * cube * cube * cube * cube;
  const b = fifteenth < 1e-15 ? greater : greater * Math.exp(Math.log1p(fifteenth) / 15);
  return 2 / Math.log1p(2 / b);
}

/**
 * Nusselt number of a horizontal cylinder in still air, Churchill & Chu 1975:
 * Nu = {0.60 + 0.387 Ra^(1/6)/[1+(0.559/Pr)^(9/16)]^(8/27)}². The textbook alternative; 10 to 20 % low at cord size.
 */
export function nusseltChurchillChu(Ra: number, Pr: number): number {
  const root = 0.6 + (0.387 * Ra ** (1 / 6)) / (1 + (0.559 / Pr) ** (9 / 16)) ** (8 / 27);
  return root * root;
}

/**
 * Nusselt number of a cylinder in a cross draught, Churchill & Bernstein 1977:
 * Nu = 0.3 + 0.62 Re^½ Pr^⅓ [1+(0.4/Pr)^⅔]^(−¼) [1+(Re/282000)^⅝]^⅘, sound for Re·Pr > 0.2.
 */
export function nusseltChurchillBernstein(Re: number, Pr: number): number {
  const shape = (0.62 * Math.sqrt(Re) * Math.cbrt(Pr)) / (1 + (0.4 / Pr) ** (2 / 3)) ** 0.25;
  return 0.3 + shape * (1 + (Re / 282_000) ** 0.625) ** 0.8;
}

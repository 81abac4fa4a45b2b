import { airConductivity, airDensity, airSpecificHeat, airViscosity } from '../material/air.ts';
import { film, gravity, nusseltChurchillBernstein, nusseltChurchillChu, nusseltKuehnGoldstein } from './convection.ts';
import { type SurfaceLaw, stefanBoltzmann } from './law.ts';

/** A surface that sheds heat into air: what its convection and its radiation need. */
export interface Shedding {
  /** Diameter for the convection law [m]; perimeter/π for a flat cable, the coil's own for a coil. */
  readonly diameter: number;
  /** Area that sheds heat, per metre of cable [m]. */
  readonly perimeter: number;
  /** Total emissivity; dimensionless. */
  readonly emissivity: number;
  /** Ambient [K]. */
  readonly Ta: number;
}

/** Which still-air correlation is used. */
export type Correlation = 'kuehnGoldstein' | 'churchillChu';

/** Below this speed [m/s] a draught counts as still air. */
export const stillBelow = 0.01;

/**
 * Still air round one horizontal cable: q = P (Nu k/D (Ts − Ta) + ε σ (Ts⁴ − Ta⁴)). The solver asks for it many times in a
 * run, so the usual correlation is written out on plain numbers and makes no objects; a test holds it to `film` and
 * `nusseltKuehnGoldstein`.
 */
export function stillAir(shedding: Shedding, correlation: Correlation): SurfaceLaw {
  if (correlation === 'churchillChu') return withFilm(shedding, nusseltChurchillChu);
  const { diameter, perimeter, emissivity, Ta } = shedding;
  const radiation = emissivity * stefanBoltzmann * perimeter;
  const Ta4 = Ta ** 4;
  const share = perimeter / diameter;
  // Ra = g |ΔT| D³ ρ² cp/(Tf μ k) with ρ = p/(R Tf)
  const rayleigh = gravity * diameter ** 3 * airSpecificHeat * airDensity(1) ** 2;
  return (T) => {
    const rise = T - Ta;
    if (rise === 0) return 0;
    const Tf = (T + Ta) / 2;
    const mu = airViscosity(Tf);
    const k = airConductivity(Tf);
    const Ra = (rayleigh * Math.abs(rise)) / (Tf * Tf * Tf * mu * k);
    const Nu = nusseltKuehnGoldstein(Ra, (mu * airSpecificHeat) / k);
    const T2 = T * T;
    return share * Nu * k * rise + radiation * (T2 * T2 - Ta4);
  };
}

function withFilm(
  { diameter, perimeter, emissivity, Ta }: Shedding,
  nusselt: (Ra: number, Pr: number) => number,
): SurfaceLaw {
  const radiation = emissivity * stefanBoltzmann * perimeter;
  return (T) => {
    const rise = T - Ta;
    if (rise === 0) return 0;
    const { Ra, Pr, k } = film(diameter, T, Ta);
    return (perimeter / diameter) * nusselt(Ra, Pr) * k * rise + radiation * (T ** 4 - Ta ** 4);
  };
}

/** A draught of `speed` [m/s] across the cable, joined to free convection as Nu = (Nu_f⁴ + Nu_n⁴)^¼. */
export function draught(shedding: Shedding, speed: number, correlation: Correlation): SurfaceLaw {
  if (speed < stillBelow) return stillAir(shedding, correlation);
  const { diameter, perimeter, emissivity, Ta } = shedding;
  const natural = correlation === 'churchillChu' ? nusseltChurchillChu : nusseltKuehnGoldstein;
  const radiation = emissivity * stefanBoltzmann * perimeter;
  const Ta4 = Ta ** 4;
  return (T) => {
    const rise = T - Ta;
    if (rise === 0) return 0;
    const { Ra, Pr, k, nu } = film(diameter, T, Ta);
    const forced = nusseltChurchillBernstein((speed * diameter) / nu, Pr);
    const Nu = Math.sqrt(Math.sqrt(forced ** 4 + natural(Ra, Pr) ** 4));
    const T2 = T * T;
    return (perimeter / diameter) * Nu * k * rise + radiation * (T2 * T2 - Ta4);
  };
}

/** Z, E and g of IEC 60287-2-1 for an arrangement of cables in free air or on a wall. */
export interface Arrangement {
  readonly name: string;
  readonly Z: number;
  readonly E: number;
  readonly g: number;
}

/** IEC 60287-2-1, constants for cables in free air (from memory, consistent with printed ratings within −6 … +9 %). */
export const arrangements = {
  single: { name: 'one cable, clear of the wall', Z: 0.21, E: 3.94, g: 0.6 },
  twoTouching: { name: 'two touching, side by side', Z: 0.29, E: 2.35, g: 0.5 },
  trefoil: { name: 'three in trefoil', Z: 0.96, E: 1.25, g: 0.2 },
  threeTouching: { name: 'three touching, side by side', Z: 0.62, E: 1.95, g: 0.25 },
  twoStacked: { name: 'two touching, one above the other', Z: 1.42, E: 0.86, g: 0.25 },
  threeStacked: { name: 'three touching, one above the other', Z: 1.61, E: 0.42, g: 0.2 },
  clipped: { name: 'one cable clipped to a wall', Z: 1.69, E: 0.63, g: 0.25 },
  trefoilOnWall: { name: 'three in trefoil on a wall', Z: 0.94, E: 0.79, g: 0.2 },
} as const satisfies Record<string, Arrangement>;

/** Clipped or touching: q = π De h |θs − θa|^(5/4), h = Z/De^g + E [W/(m²·K^(5/4))], De in m; h holds radiation already. */
export function clipped(diameter: number, { Z, E, g }: Arrangement, Ta: number): SurfaceLaw {
  const scale = Math.PI * diameter * (Z / diameter ** g + E);
  return (T) => {
    const rise = Math.abs(T - Ta);
    return scale * Math.sign(T - Ta) * rise * Math.sqrt(Math.sqrt(rise));
  };
}

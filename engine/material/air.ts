// Dry air at 101 325 Pa, by Sutherland's law and the ideal gas law.

/** Molar-mass form of the gas constant for dry air [J/(kg·K)]. */
const gasConstantAir = 287.05;
const pressure = 101_325;
/** Specific heat of air at constant pressure [J/(kg·K)]. */
export const airSpecificHeat = 1007;

/** Properties of dry air that convection needs. */
export interface Air {
  /** Kinematic viscosity [m²/s]. */
  readonly nu: number;
  /** Thermal conductivity [W/(m·K)]. */
  readonly k: number;
  /** Thermal diffusivity [m²/s]. */
  readonly a: number;
  /** Prandtl number. */
  readonly Pr: number;
}

/** Dynamic viscosity [Pa·s] at `T` [K]: μ = 1.716e-5 (T/273.15)^1.5 (273.15 + 110.4)/(T + 110.4); constant of the US Standard Atmosphere. */
export function airViscosity(T: number): number {
  const t = T / 273.15;
  return (1.716e-5 * t * Math.sqrt(t) * 383.55) / (T + 110.4);
}

/** Thermal conductivity [W/(m·K)] at `T` [K]: k = 0.0241 (T/273.15)^1.5 (273.15 + 194)/(T + 194). */
export function airConductivity(T: number): number {
  const t = T / 273.15;
  return (0.0241 * t * Math.sqrt(t) * 467.15) / (T + 194);
}

/** Density [kg/m³] at `T` [K] and 101 325 Pa. */
export const airDensity = (T: number): number => pressure / (gasConstantAir * T);

/** All four at film temperature `T` [K], sound from 200 to 1500 K. */
export function air(T: number): Air {
  const mu = airViscosity(T);
  const k = airConductivity(T);
  const rho = airDensity(T);
  return { nu: mu / rho, k, a: k / (rho * airSpecificHeat), Pr: (mu * airSpecificHeat) / k };
}

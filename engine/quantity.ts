// Conversions at the engine's border. Inside, everything is SI and temperatures are kelvin.

/** 0 °C in kelvin, exact by definition. */
export const zeroCelsius = 273.15;

/** Absolute temperature [K] of a Celsius temperature [°C]. */
export const kelvin = (T_degC: number): number => T_degC + zeroCelsius;

/** Celsius temperature [°C] of an absolute temperature [K]. */
export const celsius = (T: number): number => T - zeroCelsius;

/** Fahrenheit temperature [°F] of an absolute temperature [K]. */
export const fahrenheit = (T: number): number => (T - zeroCelsius) * 1.8 + 32;

/** Metres of millimetres. */
export const metres = (length_mm: number): number => length_mm * 1e-3;

/** Square metres of square millimetres. */
export const squareMetres = (area_mm2: number): number => area_mm2 * 1e-6;

/** Resistance per metre [Ω/m] of a figure in ohms per kilometre (the same number as mΩ/m). */
export const ohmsPerMetre = (R_ohmPerKm: number): number => R_ohmPerKm * 1e-3;

/** Metres in a foot, exact by definition. */
export const foot = 0.3048;

/** Metres in an inch, exact by definition. */
export const inch = 0.0254;

import type { Metal } from '../material/metals.ts';
import type { Plastic } from '../material/plastics.ts';

/** Constants of IEC 60949 clause 5 and 6, for a conductor that touches its insulation well but not everywhere; from memory. */
const X0 = 2464;
const Y0 = 1.22;
/** Share of thermal contact between metal and insulation, clause 5; 1 would be perfect contact. */
export const usualContact = 0.7;

/** The two constants of a metal in an insulation. */
export interface HeatLost {
  /** [mm/s^½] */
  readonly X: number;
  /** [mm²/s] */
  readonly Y: number;
}

/**
 * X = F (2464/σc) √(σi/ρi) and Y = F² (1.22/σc)(σi/ρi) of IEC 60949 clause 6, with σ the heat capacities per volume of metal
 * and insulation, ρi its thermal resistivity, `F` the share of contact [1].
 */
export function heatLost(metal: Metal, { heatCapacity, rhoT }: Plastic, F = usualContact): HeatLost {
  const shed = heatCapacity.value / rhoT.value;
  return {
    X: (F * X0 * Math.sqrt(shed)) / metal.heatCapacity.value,
    Y: (F ** 2 * Y0 * shed) / metal.heatCapacity.value,
  };
}

/**
 * ε = √(1 + X √(t/S) + Y t/S) [1]: how much more current a core of area `S` [m²] carries for `t` [s] to the same final
 * temperature, because its insulation takes up heat. IEC 60949 clause 6, for currents of 5 s at most.
 */
export function nonAdiabaticFactor(metal: Metal, plastic: Plastic, S: number, t: number, F = usualContact): number {
  const { X, Y } = heatLost(metal, plastic, F);
  const perArea = t / (S * 1e6);
  return Math.sqrt(1 + X * Math.sqrt(perArea) + Y * perArea);
}

/** Current [A] that warms the core in `t` [s] with heat lost, ε k S/√t; `k` [A·s^½/m²], `S` [m²]. */
export const nonAdiabaticCurrent = (k: number, metal: Metal, plastic: Plastic, S: number, t: number): number =>
  (nonAdiabaticFactor(metal, plastic, S, t) * k * S) / Math.sqrt(t);

/**
 * Time [s] in which `I` [A] warms the core with heat lost: ε k S/√t = I solved for t, from I²/(kS)² = 1/t + X/√(St) + Y/S.
 * Infinite where the current is too small for the law to reach the limit at all. Sound for 5 s at most; with k²S²/I² it gives
 * the two bounds of a short circuit.
 */
export function nonAdiabaticTime(k: number, metal: Metal, plastic: Plastic, S: number, I: number): number {
  const { X, Y } = heatLost(metal, plastic);
  const area = S * 1e6;
  const b = X / Math.sqrt(area);
  const left = (I / (k * S)) ** 2 - Y / area;
  return left > 0 ? (2 / (Math.sqrt(b ** 2 + 4 * left) - b)) ** 2 : Number.POSITIVE_INFINITY;
}

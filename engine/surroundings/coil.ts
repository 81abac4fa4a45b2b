import { OutOfRange } from '../errors.ts';

/** A cable wound on a drum: `layers` of `turns` turns, `length` [m] of cable of diameter `De` [m] on a drum of `drum` [m]. */
export interface Coil {
  readonly drum: number;
  readonly turns: number;
  readonly layers: number;
  readonly length: number;
  readonly De: number;
  /** Conductivity of the wound body [W/(m·K)]; 0.13 to 0.28 is the honest range. */
  readonly k: number;
  readonly openFlanges: boolean;
}

/** What a coil does to the heat's way out, per metre of cable. */
export interface CoilEffect {
  /** Diameter of the whole coil [m]. */
  readonly diameter: number;
  /** Area that sheds heat, per metre of cable [m]. */
  readonly perimeter: number;
  /** Massless resistance from the innermost turn's surface to the coil's outside [K·m/W]. */
  readonly resistance: number;
}

/** Layers that a length needs: the root of L = π M W (Dd + M De); not rounded, for a last layer may be part full. */
export function layersFor(length: number, drum: number, turns: number, De: number): number {
  const half = drum / (2 * De);
  return Math.sqrt(half * half + length / (Math.PI * turns * De)) - half;
}

/**
 * Coil of heat-model section 3: the outside sheds for all turns, s = (Dd + 2MDe)W/L ≤ 1 of the cable's own surface, and
 * R = max(0, [b² − a² − 2a² ln(b/a)]/(4De²k) − 1/(2k)), a = Dd/2, b = Dd/2 + M De.
 * `OutOfRange` when the length does not fit: L > 1.05 π M W (Dd + M De).
 */
export function coilEffect({ drum, turns, layers, length, De, k, openFlanges }: Coil): CoilEffect {
  const holds = 1.05 * Math.PI * layers * turns * (drum + layers * De);
  if (length > holds) throw new OutOfRange('length on the drum', length, [0, holds], 'm');
  const a = drum / 2;
  const b = a + layers * De;
  const own = Math.PI * De;
  const share = Math.min(1, (2 * b * turns) / length);
  const flanges = openFlanges ? (2 * Math.PI * (b * b - a * a)) / length : 0;
  const crossing = (b * b - a * a - 2 * a * a * Math.log(b / a)) / (4 * De * De * k);
  return { diameter: 2 * b, perimeter: own * share + flanges, resistance: Math.max(0, crossing - 1 / (2 * k)) };
}

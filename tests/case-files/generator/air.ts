import type { Chance } from './chance.ts';

/** Air about a lead: its temperature wanders slowly, and a draught comes and goes. */
export interface Air {
  /** Moves on by `dt` [s]. */
  step(dt: number): void;
  /** Air beside the lead [K]. */
  T(): number;
  /** Heat transfer coefficient of a surface at `Ts` [K] on a cord of diameter `D` [m] [W/(m²·K)]. */
  h(Ts: number): number;
}

export interface AirSpec {
  /** Air at the start [K], and how far it wanders, standard deviation [K]. */
  readonly T: number;
  readonly wanders: number;
  /** Draught: mean speed and standard deviation [m/s]. */
  readonly speed: number;
  readonly gusts: number;
  readonly emissivity: number;
}

const wanderTime = 1500; // s
const gustTime = 25; // s
const boltzmann = 5.67e-8;

/**
 * Free convection by McAdams' short form for cylinders in air, 1.32 (ΔT/D)^¼; a draught by Hilpert's 0.911 Re^0.385 at fixed air
 * properties (handbook values at 300 K, from memory); the larger counts. Radiation to walls at the air's temperature.
 */
export function airOf(spec: AirSpec, D: number, chance: Chance): Air {
  let drift = 0;
  let gust = 0;
  let forced = 0;
  let now = spec.T;
  return {
    step(dt) {
      drift += (-drift * dt) / wanderTime + spec.wanders * Math.sqrt((2 * dt) / wanderTime) * chance.normal();
      gust += (-gust * dt) / gustTime + spec.gusts * Math.sqrt((2 * dt) / gustTime) * chance.normal();
      const Re = (Math.max(0, spec.speed + gust) * D) / 1.6e-5;
      forced = Re > 4 ? (0.911 * Re ** 0.385 * 0.89 * 0.0263) / D : 0;
      now = spec.T + drift;
    },
    T: () => now,
    h(Ts) {
      const free = 1.32 * (Math.abs(Ts - now) / D) ** 0.25;
      const radiant = spec.emissivity * boltzmann * (Ts + now) * (Ts * Ts + now * now);
      return Math.max(free, forced) + radiant;
    },
  };
}

import type { Conductor } from '../conductor/conductor.ts';
import { resistanceRatio } from '../material/resistivity.ts';
import { cite } from './cited.ts';

export { faultTemperature } from '../heating/fault-temperature.ts';

/** One piece of the path of a fault current beyond the origin. */
export interface LoopPart {
  /** What it is: 'line, 30 m lead'. */
  readonly name: string;
  /** Resistance at 20 °C [Ω], and its temperature coefficient there [1/K]. */
  readonly R20: number;
  readonly alpha20: number;
  /** Curvature of its resistance [1/K²]; 0 unless given. */
  readonly beta20?: number;
}

/** The path of a fault to earth, or between conductors. */
export interface LoopSpec {
  /** Voltage that drives it [V]. */
  readonly U0: number;
  /** Impedance up to the origin, Ze [Ω]; it does not warm here. */
  readonly Ze: number;
  readonly parts: readonly LoopPart[];
  /** Conductor temperature that the verdict takes [K]; its limit, unless given otherwise. */
  readonly T: number;
  /** Least voltage over the nominal one [1]; that of British rules unless given. American rules have none: give 1. */
  readonly Cmin?: number;
}

/** Least voltage over the nominal one [1], Cmin: BS 7671 Appendix 3, from edition 17 amendment 3. */
export const leastVoltageFactor = { value: 0.95, ...cite('bs7671', 'Appendix 3, Cmin', 'seen') };

/** The loop with every ohm. */
export interface Loop {
  readonly U0: number;
  readonly Cmin: number;
  readonly Ze: number;
  /** Each part, cold (20 °C) and as warm as asked [Ω]. */
  readonly parts: readonly { readonly name: string; readonly cold: number; readonly warm: number }[];
  /** Ze and all parts, cold and warm [Ω]. */
  readonly cold: number;
  readonly Zs: number;
  /** Greatest current, U0 over the cold loop; least current, Cmin U0/Zs [A]. */
  readonly greatest: number;
  readonly least: number;
}

/** `length` [m] of a conductor as part of a loop. */
export const partOf = (name: string, { R20, alpha20, beta20 }: Conductor, length: number): LoopPart => ({
  name,
  R20: R20 * length,
  alpha20,
  beta20,
});

/**
 * Earth-fault loop Zs = Ze + R1 + R2, each part at 20 °C and at `T` [K]; currents as told in `Loop`. Reactance of the parts is
 * left out, as BS 7671 does up to 16 mm² (from memory); ohms add as if all were resistance, which gives the smaller current.
 */
export function loopOf({ U0, Ze, parts, T, Cmin = leastVoltageFactor.value }: LoopSpec): Loop {
  const each = parts.map(({ name, R20, alpha20, beta20 = 0 }) => ({
    name,
    cold: R20,
    warm: R20 * resistanceRatio(alpha20, beta20, T),
  }));
  const cold = each.reduce((sum, part) => sum + part.cold, Ze);
  const Zs = each.reduce((sum, part) => sum + part.warm, Ze);
  return { U0, Cmin, Ze, parts: each, cold, Zs, greatest: U0 / cold, least: (Cmin * U0) / Zs };
}

/** Greatest loop [Ω] in which a current `Ia` [A] still flows, Zs = Cmin U0/Ia: BS 7671 411.4.4, IEC 60364-4-41 411.4.4. */
export const greatestLoop = (U0: number, Ia: number, Cmin = leastVoltageFactor.value): number => (Cmin * U0) / Ia;

/** Share of the greatest loop that a reading on cold conductors may take [1]: common practice after BS 7671 Appendix 3. */
export const coldReadingShare = 0.8;

/** Settings of the conventional longest run. */
export interface LongestRun {
  readonly U0: number;
  /** Area of the line [m²], and over that of the protective conductor [1]. */
  readonly S: number;
  readonly ratio: number;
  /** Resistivity that the method takes hot [Ω·m], and share of U0 left at the origin [1]. */
  readonly rho: number;
  readonly share: number;
  /** Current that must flow [A]. */
  readonly Ia: number;
}

/**
 * Longest run [m] by the conventional method, L = c U0 S/(ρ (1 + m) Ia): the origin keeps a share `c` of its volts during the
 * fault, whatever lies before it. Usual in design guides; `c` 0.8.
 */
export const longestRun = ({ U0, S, ratio, rho, share, Ia }: LongestRun): number =>
  (share * U0 * S) / (rho * (1 + ratio) * Ia);

/** Resistivity of hot copper in that method [Ω·m]: 0.023 Ω·mm²/m, which reproduces a printed table; guides also take 0.0225. */
export const conventionalRho = 0.023e-6;

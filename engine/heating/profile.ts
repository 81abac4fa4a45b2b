import type { InSeries } from '../protection/operation.ts';
import { marchOf } from './march.ts';
import type { Mesh } from './mesh.ts';
import type { ThermalCase } from './thermal-case.ts';
import { durationOf, greatestCurrent, walkSupply } from './walk.ts';

/** The temperatures of the equivalent concentric cable from the conductor outward at one time of a run. */
export interface RadialProfile {
  /** Time since the start [s]; earlier than asked for where the run ended before. */
  readonly t: number;
  /** Radii, the equivalent conductor's first, the outermost solid surface's last [m]. */
  readonly r: Float64Array;
  /** Temperatures there [K]. */
  readonly T: Float64Array;
  /**
   * Steady u = (θ − θs)/(θc − θs) there [1], falling: 1 at the conductor, 0 at the cable's own surface, less in lagging.
   * It is the thermal resistance from there to the surface over the whole cable's, and so does not change with time.
   */
  readonly u: Float64Array;
  /** Index of the cable's own surface. */
  readonly surface: number;
}

/**
 * The radial profile of a case after `t` [s], by marching it there through its supply steps. Held at the run's end, which
 * is the scenario's duration or, earlier, the moment when the metal begins to melt, the supply has no solution, or the device
 * in series has surely opened.
 */
export function profileAt(of: ThermalCase, t: number, series: InSeries | null = null): RadialProfile {
  const march = marchOf(of, greatestCurrent(of));
  const { radial, mesh } = march;
  walkSupply(of, march, Math.min(Math.max(0, t), durationOf(of.scenario)), {}, series);
  return { t: march.time(), r: mesh.r, T: Float64Array.from(radial.y), u: shares(mesh), surface: mesh.surface };
}

/** Steady u at every node of a mesh. */
function shares({ K, r, surface }: Mesh): Float64Array {
  const u = new Float64Array(r.length).fill(1);
  for (let i = 1; i < u.length; i++) u[i] = (u[i - 1] as number) - 1 / (K[i - 1] as number);
  const span = 1 - (u[surface] as number);
  return span > 0 ? u.map((value) => 1 - (1 - value) / span) : u;
}

/**
 * The temperature [K] of the points whose steady share is `u`, read off a profile: straight in u between nodes, which is
 * straight in ln r. Beyond the outermost node, where the cool side of an uneven surface lies, on the last node's slope.
 */
export function temperatureAt({ u, T }: RadialProfile, at: number): number {
  const last = u.length - 1;
  if (last === 0 || at >= (u[0] as number)) return T[0] as number;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((u[middle] as number) >= at) low = middle;
    else high = middle;
  }
  const part = ((u[low] as number) - at) / ((u[low] as number) - (u[high] as number));
  return (T[low] as number) + part * ((T[high] as number) - (T[low] as number));
}

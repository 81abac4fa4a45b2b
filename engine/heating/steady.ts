import { behindResistance } from '../surroundings/law.ts';
import { ringResistance } from '../surroundings/outside.ts';
import type { Supply } from './supply.ts';
import { conductorResistance, type ThermalCase } from './thermal-case.ts';

/** Temperatures along the heat's way out, in steady state [K], and the heat that flows [W/m]. */
export interface Chain {
  readonly conductor: number;
  /** The cable's own surface, mean round it. */
  readonly surface: number;
  /** The outside of lagging or coil; the surface where there is neither. */
  readonly outside: number;
  readonly flow: number;
}

/** Heat [W/m] that leaves a conductor held at `T` [K] in steady state. */
export function steadyFlow(of: ThermalCase, T: number): number {
  const total = of.resistance + of.outside.series;
  if (total === 0) return of.outside.law(T);
  return (T - behindResistance(of.outside.law, T, total, of.Ta)) / total;
}

/** The whole chain for a conductor held at `T` [K]. */
export function steadyChain(of: ThermalCase, T: number): Chain {
  const flow = steadyFlow(of, T);
  const { series, rings } = of.outside;
  const beyond = rings.reduce((sum, ring) => sum + ringResistance(ring), 0);
  const lastSolid = T - flow * of.resistance;
  return { conductor: T, surface: lastSolid + flow * beyond, outside: lastSolid - flow * series, flow };
}

/** Heat made [W/m] at conductor temperature `T` [K] by current `I` [A] in each loaded core: n I² R'(T). */
export function heatMade(of: ThermalCase, I: number, T: number): number {
  return of.n * I * I * conductorResistance(of, T);
}

/** Current [A] in each loaded core that holds the conductor at `T` [K]: √(flow/(n R')). 0 at and below ambient. */
export function balancingCurrent(of: ThermalCase, T: number): number {
  const flow = steadyFlow(of, T);
  return flow > 0 ? Math.sqrt(flow / (of.n * conductorResistance(of, T))) : 0;
}

/** How a supply held for ever ends. */
export type Steady =
  | { readonly kind: 'steady'; readonly chain: Chain; readonly I: number }
  | { readonly kind: 'no steady state'; readonly reason: 'melts first' | 'supply has no solution' };

const samples = 48;

/**
 * Steady state under `supply`: the lowest root of n I(θ)² R'(θ) = flow(θ) that a start at `T0` [K] can reach, between the
 * colder of ambient and start and the metal's melting point; or why there is none.
 */
export function steadyState(of: ThermalCase, supply: Supply, T0 = of.T0): Steady {
  const melt = of.cable.conductor.metal.melting.value;
  const surplus = (T: number) => heatMade(of, supply.current(T), T) - steadyFlow(of, T);
  const start = Math.min(T0, melt);
  const atStart = surplus(start);
  const rising = atStart > 0;
  const far = rising ? melt : Math.min(of.Ta, start);
  const sign = rising ? 1 : -1;
  let before = start;
  let fBefore = atStart;
  let a = start;
  let fa = atStart;
  for (let i = 1; i <= samples && fa !== 0; i++) {
    const b = start + (far - start) * (i / samples) ** 2;
    const fb = surplus(b);
    if (fb === 0 || fb > 0 !== fa > 0) return settled(of, supply, bracketedRoot(surplus, a, fa, b, fb));
    // the surplus has a least value here: just below a threshold two roots lie between two samples
    if (sign * fa < sign * fBefore && sign * fa <= sign * fb) {
      const c = dip((T) => sign * surplus(T), before, b);
      const fc = surplus(c);
      if (fc > 0 !== fBefore > 0) return settled(of, supply, bracketedRoot(surplus, before, fBefore, c, fc));
    }
    before = a;
    fBefore = fa;
    a = b;
    fa = fb;
  }
  if (rising)
    return { kind: 'no steady state', reason: supply.possible(melt) ? 'melts first' : 'supply has no solution' };
  return settled(of, supply, fa === 0 ? a : far);
}

const golden = (Math.sqrt(5) - 1) / 2;

/** Where `f` first falls to 0 or below while its least value between `a` and `b` is closed in on, or that least value's place, to 1e-3 K. */
function dip(f: (x: number) => number, a: number, b: number): number {
  let [low, high] = [Math.min(a, b), Math.max(a, b)];
  let c = high - golden * (high - low);
  let d = low + golden * (high - low);
  let fc = f(c);
  let fd = f(d);
  while (high - low > 1e-3 && fc > 0 && fd > 0) {
    if (fc < fd) {
      high = d;
      d = c;
      fd = fc;
      c = high - golden * (high - low);
      fc = f(c);
    } else {
      low = c;
      c = d;
      fc = fd;
      d = low + golden * (high - low);
      fd = f(d);
    }
  }
  return fc < fd ? c : d;
}

function settled(of: ThermalCase, supply: Supply, T: number): Steady {
  if (!supply.possible(T)) return { kind: 'no steady state', reason: 'supply has no solution' };
  return { kind: 'steady', chain: steadyChain(of, T), I: supply.current(T) };
}

/** Root of `f` between `a` and `b`, whose values `fa`, `fb` differ in sign: regula falsi of the Illinois kind, to 1e-9 K. */
export function bracketedRoot(f: (x: number) => number, a: number, fa: number, b: number, fb: number): number {
  let [x0, f0, x1, f1] = [a, fa, b, fb];
  if (f1 === 0) return x1;
  for (let i = 0; i < 100; i++) {
    const x2 = (x0 * f1 - x1 * f0) / (f1 - f0);
    const f2 = f(x2);
    if (f2 === 0 || Math.abs(x2 - x1) < 1e-10) return x2;
    if (f2 > 0 !== f1 > 0) {
      x0 = x1;
      f0 = f1;
    } else {
      f0 /= 2;
    }
    x1 = x2;
    f1 = f2;
    if (Math.abs(x1 - x0) < 1e-10) break;
  }
  return x1;
}

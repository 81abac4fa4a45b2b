import type { Place } from '../material/limits.ts';
import { ringResistance } from '../surroundings/outside.ts';
import { balancingCurrent, heatMade, steadyFlow } from './steady.ts';
import type { ThermalCase } from './thermal-case.ts';

/**
 * The rating at a limit: the steady current [A] in each loaded core that brings `place` to `T` [K]. 0 when ambient is
 * there already; null when the conductor would melt first.
 */
export function ratingAt(of: ThermalCase, T: number, place: Place = 'conductor'): number | null {
  if (T <= of.Ta) return 0;
  const melt = of.cable.conductor.metal.melting.value;
  const conductor = place === 'conductor' ? T : conductorBehind(of, T, place);
  return conductor > melt ? null : balancingCurrent(of, conductor);
}

/** Conductor temperature [K] in steady state when `place`, the surface or the outside, is at `T` [K]. */
function conductorBehind(of: ThermalCase, T: number, place: 'surface' | 'outside'): number {
  const { law, series, rings } = of.outside;
  const total = of.resistance + series;
  if (place === 'outside') return T + law(T) * total;
  const within = rings.reduce((sum, ring) => sum - ringResistance(ring), of.resistance);
  if (series === 0 && rings.length === 0) return T + law(T) * within;
  const beyond = total - within;
  // the surface of a lagged or wound cable: flow as from a conductor with only what lies beyond
  const bare: ThermalCase = { ...of, resistance: beyond - series };
  return T + steadyFlow(bare, T) * within;
}

/** The greatest steady current there is, and where it lies. */
export interface Threshold {
  /** Above this current [A] in each loaded core there is no steady state below melting. */
  readonly I: number;
  /** Conductor temperature there [K]. */
  readonly T: number;
  /** 'melts first': the balance holds up to melting; 'runaway': heat made outgrows heat shed before that. */
  readonly kind: 'melts first' | 'runaway';
}

const samples = 40;
const golden = (Math.sqrt(5) - 1) / 2;

/** The maximum of I(θ) = √(flow(θ)/(n R'(θ))) from ambient to melting: scanned, then narrowed by golden section to 1e-3 K. */
export function threshold(of: ThermalCase): Threshold {
  const melt = of.cable.conductor.metal.melting.value;
  const I = (T: number) => balancingCurrent(of, T);
  const step = (melt - of.Ta) / samples;
  let best = samples;
  let greatest = I(melt);
  for (let i = 1; i < samples; i++) {
    const here = I(of.Ta + i * step);
    if (here > greatest) {
      greatest = here;
      best = i;
    }
  }
  let a = of.Ta + (best - 1) * step;
  let b = Math.min(melt, of.Ta + (best + 1) * step);
  while (b - a > 1e-3) {
    const c = b - golden * (b - a);
    const d = a + golden * (b - a);
    if (I(c) > I(d)) b = d;
    else a = c;
  }
  const T = (a + b) / 2;
  return melt - T < 0.01 ? { I: I(melt), T: melt, kind: 'melts first' } : { I: I(T), T, kind: 'runaway' };
}

/** 1/√(n R'20 α20 ΣT): above it no steady state exists when resistance is a straight line and ΣT to ambient [K·m/W] constant. */
export function straightLineThreshold(of: ThermalCase, totalResistance: number): number {
  const { R20, alpha20 } = of.cable.conductor;
  return 1 / Math.sqrt(of.n * R20 * alpha20 * totalResistance);
}

/** Heat made over heat shed when the conductor is at `T` [K] and carries `I` [A]: above 1 it warms, below 1 it cools. */
export function heatRatio(of: ThermalCase, I: number, T: number): number {
  return heatMade(of, I, T) / steadyFlow(of, T);
}

import type { Scenario, SupplyStep } from '../scenario/schema.ts';
import { type Shed, shedAt } from '../surroundings/shed.ts';
import { modelEnd } from './model-end.ts';
import { bracketedRoot, heatMade, type Steady, steadyChain, steadyFlow, steadyState } from './steady.ts';
import { type Supply, supplyOf } from './supply.ts';
import { buildCase, type ThermalCase } from './thermal-case.ts';

/** How a ledger is drawn up. */
export interface LedgerOptions {
  /** True: heat is made as if the metal kept its resistance of 20 °C, however warm it is. */
  readonly fixedResistance?: boolean;
}

/** A conductor temperature at which heat made and heat lost are equal. */
export interface Crossing {
  /** Conductor temperature [K]. */
  readonly T: number;
  /** Heat made, and lost [W/m]. */
  readonly flow: number;
  /** 'settles': pushed off, the conductor comes back; 'leaves': it does not, for above it more is made than lost. */
  readonly kind: 'settles' | 'leaves';
}

/** Heat made against heat lost, over conductor temperature, for a supply held for ever. */
export interface HeatLedger {
  /** The case as it is reckoned; with fixed resistance its metal has no temperature coefficient. */
  readonly thermal: ThermalCase;
  readonly supply: Supply;
  readonly fixedResistance: boolean;
  /** Where it ends, from the case's own start. */
  readonly steady: Steady;
  /** All crossings between ambient (or a colder start) and the metal's melting point, coolest first; none where it runs away. */
  readonly crossings: readonly Crossing[];
  /** Conductor temperature past which the ledger is outside the model [K]. */
  readonly modelEnd: number;
}

/** One line of the ledger: a conductor held at one temperature. */
export interface LedgerLine {
  /** Conductor, the cable's own surface, and the outside of lagging or coil [K]. */
  readonly T: number;
  readonly surface: number;
  readonly outside: number;
  /** Current in each loaded core [A]. */
  readonly I: number;
  /** Heat made in all loaded cores together [W/m]. */
  readonly made: number;
  /** Heat lost: what leaves the outside when the conductor is held at `T` and all within is in balance [W/m]. */
  readonly lost: number;
  /** What is made and not lost, so that it warms the cable; below 0 the cable cools and gives that much up [W/m]. */
  readonly stored: number;
  /** The ways in which the heat lost leaves; null where the law of the surroundings cannot tell them apart. */
  readonly shed: Shed | null;
}

/** Curves of a ledger; arrays of one length. */
export interface LedgerCurves {
  /** Conductor temperature [K], rising. */
  readonly T: Float64Array;
  /** Heat made and heat lost [W/m]. */
  readonly made: Float64Array;
  readonly lost: Float64Array;
}

/** Enough for a curve to be smooth at any size of picture. */
const usualPoints = 49;

/** The ledger of a scenario's first supply step, or of a case put together before; throws `ScenarioFault` as `buildCase` does. */
export function heatLedger(of: Scenario | ThermalCase, options: LedgerOptions = {}): HeatLedger {
  const { fixedResistance = false } = options;
  const built = 'cable' in of && 'outside' in of ? of : buildCase(of);
  const thermal = fixedResistance ? withFixedResistance(built) : built;
  const supply = supplyOf(thermal, thermal.scenario.supply[0] as SupplyStep);
  const steady = steadyState(thermal, supply);
  return {
    thermal,
    supply,
    fixedResistance,
    steady,
    crossings: crossingsOf(thermal, supply, steady),
    modelEnd: modelEnd(thermal),
  };
}

/** The same case in a metal whose resistance stays as it is at 20 °C. */
function withFixedResistance(of: ThermalCase): ThermalCase {
  const conductor = { ...of.cable.conductor, alpha20: 0, beta20: 0 };
  return { ...of, cable: { ...of.cable, conductor } };
}

/** What the ledger says for a conductor held at `T` [K]. */
export function ledgerAt({ thermal, supply }: HeatLedger, T: number): LedgerLine {
  const { surface, outside, flow: lost } = steadyChain(thermal, T);
  const I = supply.current(T);
  const made = heatMade(thermal, I, T);
  return { T, surface, outside, I, made, lost, stored: made - lost, shed: shedAt(thermal.outside, outside) };
}

/** The two curves of a ledger at `points` conductor temperatures evenly from `from` to `to` [K]. */
export function ledgerCurves(
  { thermal, supply }: HeatLedger,
  from: number,
  to: number,
  points = usualPoints,
): LedgerCurves {
  const T = Float64Array.from({ length: points }, (_, i) => from + ((to - from) * i) / (points - 1));
  return { T, made: madeCurve({ thermal, supply }, T), lost: T.map((at) => steadyFlow(thermal, at)) };
}

/** Heat made [W/m] at each of the conductor temperatures `T` [K]: for a further current, whose heat lost is the same. */
export function madeCurve({ thermal, supply }: Pick<HeatLedger, 'thermal' | 'supply'>, T: Float64Array): Float64Array {
  return T.map((at) => heatMade(thermal, supply.current(at), at));
}

const samples = 96;

/**
 * Roots of made − lost from the colder of ambient and start to melting: sign changes on samples that are closer together
 * where it is cold, each closed in to 1e-9 K; the one that the start reaches is `steadyState`'s own.
 */
function crossingsOf(of: ThermalCase, supply: Supply, steady: Steady): Crossing[] {
  const melt = of.cable.conductor.metal.melting.value;
  const low = Math.min(of.T0, of.Ta);
  const surplus = (T: number) => heatMade(of, supply.current(T), T) - steadyFlow(of, T);
  const roots: number[] = [];
  let a = low;
  let fa = surplus(a);
  if (fa === 0) roots.push(a);
  for (let i = 1; i <= samples; i++) {
    const b = low + (melt - low) * (i / samples) ** 2;
    const fb = surplus(b);
    if (fb === 0) roots.push(b);
    else if (fa !== 0 && fb > 0 !== fa > 0) roots.push(bracketedRoot(surplus, a, fa, b, fb));
    a = b;
    fa = fb;
  }
  if (steady.kind === 'steady') {
    const { conductor } = steady.chain;
    const at = roots.findIndex((T) => Math.abs(T - conductor) < 1e-6);
    if (at < 0) roots.push(conductor);
    else roots[at] = conductor;
  }
  return roots
    .filter((T) => supply.possible(T))
    .sort((x, y) => x - y)
    .map((T) => ({ T, flow: steadyFlow(of, T), kind: surplus(T + probe) <= 0 ? 'settles' : 'leaves' }));
}

/** Far enough above a root to be past its own tolerance [K]. */
const probe = 1e-3;

import type { SupplyStep } from '../scenario/schema.ts';
import { crossing } from './events.ts';
import { marchOf } from './march.ts';
import { type LeadReading, leadReading } from './predict.ts';
import { greatestCurrent, lastPossible } from './run.ts';
import { type Supply, supplyOf } from './supply.ts';
import type { ThermalCase } from './thermal-case.ts';

/** The state of a bench at one moment; temperatures in K. */
export interface LiveState {
  readonly t: number;
  readonly conductor: number;
  readonly surface: number;
  readonly outside: number;
  readonly lead: LeadReading;
  /** Heat made per metre [W/m]. */
  readonly heat: number;
  /** False once the metal has begun to melt or the supply has no solution; time stands still from then on. */
  readonly going: boolean;
}

/** A run stepped from outside: `advance` by some seconds, with the supply changed by hand in between. */
export interface Live {
  state(): LiveState;
  setSupply(step: SupplyStep): void;
  advance(seconds: number): LiveState;
}

/**
 * Opens the stepping interface on a case. It runs on the same solver as a whole run and does not drift against it.
 * @param expectedCurrent the largest current it is likely to see [A]; it sets how fine the mesh is
 */
export function liveRun(of: ThermalCase, expectedCurrent = greatestCurrent(of)): Live {
  const march = marchOf(of, expectedCurrent);
  const { radial, mesh } = march;
  const last = mesh.r.length - 1;
  const melt = of.cable.conductor.metal.melting.value;
  let supply: Supply = supplyOf(of, of.scenario.supply[0] as SupplyStep);
  march.setCurrent(supply.current);

  const conductor = () => radial.y[0] as number;
  let ended = false; // at melting, or where the supply lost its solution
  const going = () => !ended && conductor() < melt && supply.possible(conductor());

  function state(): LiveState {
    const T = conductor();
    const lead = leadReading(of, supply.current(T), T);
    const end = radial.y[last] as number;
    return {
      t: march.time(),
      conductor: T,
      surface: radial.y[mesh.surface] as number,
      outside: of.outside.outsideOf(end),
      lead,
      heat: (lead.heat / (of.lead.inSeries * of.lead.length)) * of.n,
      going: going(),
    };
  }

  /** The part of a step before melting, or before the supply loses its solution. */
  function untilItEnds(_t: number, _h: number, dense: Float64Array): number {
    return Math.min(crossing(dense, 0, melt) ?? 1, lastPossible(dense, supply) ?? 1);
  }

  return {
    state,
    setSupply(step) {
      supply = supplyOf(of, step);
      march.setCurrent(supply.current);
      if (conductor() < melt - 1e-6) ended = false;
    },
    advance(seconds) {
      if (seconds > 0 && going()) ended = !march.to(march.time() + seconds, untilItEnds);
      return state();
    },
  };
}

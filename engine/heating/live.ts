import type { Place } from '../material/limits.ts';
import type { InSeries, Operation } from '../protection/operation.ts';
import type { SupplyStep } from '../scenario/schema.ts';
import { crossing, eventWatch, type HeatEvent, nodeTemperature, placeAt } from './events.ts';
import { marchOf } from './march.ts';
import { type LeadReading, leadReading } from './predict.ts';
import { heatMade } from './steady.ts';
import { type Supply, supplyOf } from './supply.ts';
import type { ThermalCase } from './thermal-case.ts';
import { greatestCurrent, lastPossible } from './walk.ts';

/** The state of a bench at one moment; temperatures in K. */
export interface LiveState {
  readonly t: number;
  readonly conductor: number;
  readonly surface: number;
  readonly outside: number;
  readonly lead: LeadReading;
  /** Heat made per metre [W/m]. */
  readonly heat: number;
  /** False once the metal has begun to melt, the supply has no solution or the device has surely opened; time stands still from then on. */
  readonly going: boolean;
  /** The stop that cut the last `advance` short; null when it went all the way. */
  readonly halted: LiveStop | null;
  /** When the device in series may have acted and has surely acted; null where there is none. */
  readonly device: Operation | null;
}

/** A temperature [K] at a place on which a live run is to halt: an abort limit. */
export interface LiveStop {
  readonly place: Place;
  readonly T: number;
}

/** A run stepped from outside: `advance` by some seconds, with the supply changed by hand in between. */
export interface Live {
  /** Limits crossed up to now, each end once, in the order of crossing. */
  readonly events: readonly HeatEvent[];
  state(): LiveState;
  setSupply(step: SupplyStep): void;
  /**
   * Advances by `seconds`, or to the moment at which the first of `stops` is reached: the state then names it in
   * `halted`, and the caller says how it goes on. A stop that is reached already halts at once.
   */
  advance(seconds: number, stops?: readonly LiveStop[]): LiveState;
}

/**
 * Opens the stepping interface on a case. It runs on the same solver as a whole run and does not drift against it.
 * @param expectedCurrent the largest current it is likely to see [A]; it sets how fine the mesh is
 * @param series the device in series with this run, if any
 */
export function liveRun(of: ThermalCase, expectedCurrent = greatestCurrent(of), series: InSeries | null = null): Live {
  const march = marchOf(of, expectedCurrent);
  const { radial, mesh } = march;
  const last = mesh.r.length - 1;
  const nodeOf: Record<Place, number> = { conductor: 0, surface: mesh.surface, outside: last };
  const at = (place: Place) => radial.y[nodeOf[place]] as number;
  const watch = eventWatch(of, at);
  const melt = of.cable.conductor.metal.melting.value;
  let supply: Supply = supplyOf(of, of.scenario.supply[0] as SupplyStep);
  march.setCurrent(supply.current);

  const conductor = () => radial.y[0] as number;
  let ended = false; // at melting, or where the supply lost its solution
  let stops: readonly LiveStop[] = [];
  let halted: LiveStop | null = null;
  const opened = () => series !== null && series.operation().surelyBy !== null;
  const going = () => !ended && !opened() && conductor() < melt && supply.possible(conductor());

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
      heat: heatMade(of, lead.I, T),
      going: going(),
      halted,
      device: series?.operation() ?? null,
    };
  }

  const reached = ({ place, T }: LiveStop) => at(place) >= nodeTemperature(of, place, T);

  /** The part of a step before a stop, before melting, or before the supply loses its solution. */
  function partOf(t: number, h: number, dense: Float64Array): number {
    const opens = series?.opens(h, dense, supply) ?? 2;
    let part = Math.min(crossing(dense, 0, melt) ?? 1, lastPossible(dense, supply) ?? 1, opens);
    for (const stop of stops) {
      const s = crossing(dense, placeAt[stop.place], nodeTemperature(of, stop.place, stop.T));
      if (s === undefined || s >= part) continue;
      part = s;
      halted = stop;
    }
    watch.look(t, h, dense, part);
    series?.take(t, h, part, dense, supply);
    return part;
  }

  return {
    events: watch.events,
    state,
    setSupply(step) {
      supply = supplyOf(of, step);
      march.setCurrent(supply.current);
      if (conductor() < melt - 1e-6) ended = false;
    },
    advance(seconds, stopsNow = []) {
      stops = stopsNow;
      halted = seconds > 0 ? (stops.find(reached) ?? null) : null;
      if (seconds > 0 && halted === null && going())
        ended = !march.to(march.time() + seconds, partOf) && halted === null;
      return state();
    },
  };
}

import type { InSeries } from '../protection/operation.ts';
import { kelvin } from '../quantity.ts';
import type { Scenario, SupplyStep } from '../scenario/schema.ts';
import { crossing, nodeTemperature, placeAt } from './events.ts';
import type { March } from './march.ts';
import { denseAt } from './radial.ts';
import { type Supply, supplyOf } from './supply.ts';
import type { ThermalCase } from './thermal-case.ts';

/** How a run ended. */
export type Outcome = 'completed' | 'melted' | 'supply has no solution' | 'device opened';

/** Duration of a scenario's run [s]: as given, else the sum of its supply steps, else an hour. */
export function durationOf({ run, supply, cycles = 1 }: Scenario): number {
  if (run?.duration_s !== undefined) return run.duration_s;
  const known = supply.every((step) => step.duration_s !== undefined);
  return known ? cycles * supply.reduce((sum, step) => sum + (step.duration_s as number), 0) : 3600;
}

/** The largest current that any supply step drives into the lead at its start temperature [A]. */
export function greatestCurrent(of: ThermalCase): number {
  return Math.max(...of.scenario.supply.map((step) => supplyOf(of, step).current(of.T0)));
}

/** Part of a step (0 to 1) up to which the supply has a solution; undefined when it has one at the step's end. */
export function lastPossible(dense: Float64Array, supply: Supply): number | undefined {
  if (supply.possible(dense[1] as number)) return undefined;
  let a = 0;
  let b = 1;
  for (let i = 0; i < 60 && b - a > 1e-12; i++) {
    const middle = (a + b) / 2;
    if (supply.possible(denseAt(dense, 0, middle))) a = middle;
    else b = middle;
  }
  return a;
}

/** Who looks on while a march walks through its supply steps. */
export interface Onlooker {
  /** A supply has been switched on, or found to have no solution. */
  begins?(supply: Supply): void;
  /** A step of the solver, of which the part `part` (0 to 1) is taken; the supply ends at `end` [s] at the latest. */
  steps?(t: number, h: number, dense: Float64Array, part: number, supply: Supply, end: number): void;
}

/**
 * Walks a march through the supply steps of its case, `cycles` times over, until `end` [s] or the last step, the metal begins
 * to melt, a constant-power load asks for more than the lead can pass, or a device in series has surely opened.
 */
export function walkSupply(
  of: ThermalCase,
  march: March,
  end: number,
  onlooker: Onlooker = {},
  series: InSeries | null = null,
): Outcome {
  const { supply: list, cycles = 1 } = of.scenario;
  const conductor = () => march.radial.y[0] as number;
  if (conductor() >= of.cable.conductor.metal.melting.value) return 'melted';
  for (let i = 0; i < cycles * list.length && march.time() < end; i++) {
    const step = list[i % list.length] as SupplyStep;
    const supply = supplyOf(of, step);
    if (!supply.possible(conductor())) {
      onlooker.begins?.(supply);
      return 'supply has no solution';
    }
    const outcome = walkStep(of, march, step, supply, end, onlooker, series);
    if (outcome !== 'completed') return outcome;
  }
  return 'completed';
}

function walkStep(
  of: ThermalCase,
  march: March,
  step: SupplyStep,
  supply: Supply,
  end: number,
  onlooker: Onlooker,
  series: InSeries | null,
): Outcome {
  const { radial, mesh } = march;
  const { until, duration_s } = step;
  const melt = of.cable.conductor.metal.melting.value;
  const nodes = { conductor: 0, surface: mesh.surface, outside: mesh.r.length - 1 };
  const target = until && { at: placeAt[until.place], T: nodeTemperature(of, until.place, kelvin(until.T_degC)) };
  if (until && target) {
    const now = radial.y[nodes[until.place]] as number;
    if (until.falling ? now <= target.T : now >= target.T) return 'completed';
  }
  const stepEnd = Math.min(end, duration_s === undefined ? end : march.time() + duration_s);
  let outcome: Outcome = 'completed';
  march.setCurrent(supply.current);
  onlooker.begins?.(supply);
  march.to(stepEnd, (t, h, dense) => {
    const melted = crossing(dense, 0, melt) ?? 2;
    const lost = lastPossible(dense, supply) ?? 2;
    const switched = target ? (crossing(dense, target.at, target.T, until?.falling) ?? 2) : 2;
    const opened = series?.opens(h, dense, supply) ?? 2;
    const part = Math.min(1, melted, lost, switched, opened);
    if (part === melted) outcome = 'melted';
    else if (part === lost) outcome = 'supply has no solution';
    else if (part === opened) outcome = 'device opened';
    series?.take(t, h, part, dense, supply);
    onlooker.steps?.(t, h, dense, part, supply, stepEnd);
    return part;
  });
  return outcome;
}

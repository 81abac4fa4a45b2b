import { kelvin } from '../quantity.ts';
import type { Scenario, SupplyStep } from '../scenario/schema.ts';
import { lifeUsed } from './ageing.ts';
import { crossing, eventWatch, type HeatEvent, nodeTemperature, placeAt } from './events.ts';
import { type March, marchOf } from './march.ts';
import { denseAt } from './radial.ts';
import { type Supply, supplyOf } from './supply.ts';
import { conductorResistance, leadResistance, type ThermalCase } from './thermal-case.ts';

/** How a run ended. */
export type Outcome = 'completed' | 'melted' | 'supply has no solution';

/** Curves over time; arrays of one length. A supply step's change stands twice, before and after, at the same time. */
export interface Curves {
  /** Time since the start [s]. */
  readonly t: Float64Array;
  /** Temperatures [K]. */
  readonly conductor: Float64Array;
  readonly surface: Float64Array;
  readonly outside: Float64Array;
  /** Current in each loaded core [A]. */
  readonly I: Float64Array;
  /** Voltage along the lead, contacts left out [V]. */
  readonly U: Float64Array;
  /** Heat made per metre of cable, all loaded cores [W/m]. */
  readonly heat: Float64Array;
}

/** Heat made, shed and held since the start [J/m], and what is left unexplained over what was made. */
export interface EnergyAccount {
  readonly made: number;
  readonly lost: number;
  readonly stored: number;
  readonly imbalance: number;
}

/** A whole run. */
export interface Run {
  readonly outcome: Outcome;
  readonly curves: Curves;
  readonly events: readonly HeatEvent[];
  readonly energy: EnergyAccount;
  /** Share of the insulation's life used; null where it has no ageing data. */
  readonly lifeUsed: number | null;
  readonly steps: number;
  readonly rejected: number;
  readonly cells: number;
  /** When the last supply step ended [s]. */
  readonly end: number;
}

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

/** Collects samples of the dense output, a few for each step. */
function recorder(of: ThermalCase, perStep: number) {
  const rows: number[][] = [[], [], [], [], [], [], []];
  const add = (t: number, conductor: number, surface: number, last: number, supply: Supply) => {
    const I = supply.current(conductor);
    const heat = of.n * I * I * conductorResistance(of, conductor);
    const values = [t, conductor, surface, of.outside.outsideOf(last), I, I * leadResistance(of, conductor), heat];
    for (let i = 0; i < values.length; i++) (rows[i] as number[]).push(values[i] as number);
  };
  return {
    add,
    empty: () => rows[0]?.length === 0,
    step(t: number, h: number, dense: Float64Array, part: number, supply: Supply, end: number): void {
      for (let i = 1; i <= perStep; i++) {
        const s = (part * i) / perStep;
        add(Math.min(end, t + s * h), denseAt(dense, 0, s), denseAt(dense, 4, s), denseAt(dense, 8, s), supply);
      }
    },
    curves(): Curves {
      const [t, conductor, surface, outside, I, U, heat] = rows.map((row) => Float64Array.from(row)) as Float64Array[];
      return { t, conductor, surface, outside, I, U, heat } as Curves;
    },
  };
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

/** The account of a march that began with the temperatures `initial` [K]. */
function energyOf({ mesh, radial }: March, initial: Float64Array): EnergyAccount {
  let stored = 0;
  let capacity = 0;
  for (let i = 0; i < initial.length; i++) {
    capacity += mesh.capacity[i] as number;
    stored += (mesh.capacity[i] as number) * ((radial.y[i] as number) - (initial[i] as number));
  }
  const { made, lost } = radial.account;
  // heat that moves the whole by less than a tenth of a millikelvin is lost in rounding
  const scale = Math.max(Math.abs(made), Math.abs(lost), Math.abs(stored), 1e-4 * capacity);
  return { made, lost, stored, imbalance: (made - lost - stored) / scale };
}

/** Options of a run that are not part of the case. */
export interface RunOptions {
  readonly cells?: number;
  readonly tolerance?: number;
  /** Samples of the curves for each step of the solver; 6 unless given. */
  readonly samplesPerStep?: number;
}

/**
 * Runs a case from its start to its end: every supply step in turn, `cycles` times over, until the duration is up, the metal
 * begins to melt, or a constant-power load asks for more than the lead can pass.
 */
export function runCase(of: ThermalCase, options: RunOptions = {}): Run {
  const { scenario } = of;
  const march = marchOf(of, greatestCurrent(of), options.cells, options.tolerance);
  const { radial, mesh } = march;
  const duration = durationOf(scenario);
  const many = (scenario.cycles ?? 1) * scenario.supply.length;
  const record = recorder(of, options.samplesPerStep ?? (many > 40 ? 3 : 6));
  const lastNode = mesh.r.length - 1;
  const nodeOf = { conductor: 0, surface: mesh.surface, outside: lastNode };
  const initial = Float64Array.from(radial.y);
  const watch = eventWatch(of, (place) => initial[nodeOf[place]] as number);
  const ageing = of.cable.insulation?.ageing;
  const melt = of.cable.conductor.metal.melting.value;
  let used = 0;
  let outcome: Outcome = 'completed';
  let going = (radial.y[0] as number) < melt;
  if (!going) outcome = 'melted';
  const sampleNow = (supply: Supply) =>
    record.add(
      march.time(),
      radial.y[0] as number,
      radial.y[mesh.surface] as number,
      radial.y[lastNode] as number,
      supply,
    );

  for (let i = 0; i < many && going && march.time() < duration; i++) {
    const step = scenario.supply[i % scenario.supply.length] as SupplyStep;
    const supply = supplyOf(of, step);
    const T = radial.y[0] as number;
    if (!supply.possible(T)) {
      sampleNow(supply);
      outcome = 'supply has no solution';
      break;
    }
    const { until } = step;
    const target = until && { at: placeAt[until.place], T: nodeTemperature(of, until.place, kelvin(until.T_degC)) };
    const reached = (y: number) => target !== undefined && (until?.falling ? y <= target.T : y >= target.T);
    if (until && reached(radial.y[nodeOf[until.place]] as number)) continue;
    const end = Math.min(duration, step.duration_s === undefined ? duration : march.time() + step.duration_s);
    march.setCurrent(supply.current);
    sampleNow(supply);
    going = march.to(end, (t, h, dense) => {
      const melted = crossing(dense, 0, melt);
      const switched = target ? crossing(dense, target.at, target.T, until?.falling) : undefined;
      const lost = lastPossible(dense, supply);
      const part = Math.min(melted ?? 1, switched ?? 1, lost ?? 1);
      watch.look(t, h, dense, part);
      record.step(t, h, dense, part, supply, end);
      if (ageing) used += lifeUsed(ageing, part * h, (s) => denseAt(dense, 0, part * s));
      if (part === melted) outcome = 'melted';
      else if (lost !== undefined && part === lost) outcome = 'supply has no solution';
      return part;
    });
    going ||= outcome === 'completed';
  }
  if (record.empty()) sampleNow(supplyOf(of, scenario.supply[0] as SupplyStep));
  return {
    outcome,
    curves: record.curves(),
    events: watch.events.filter((event) => event.t <= march.time() + 1e-9).sort((a, b) => a.t - b.t),
    energy: energyOf(march, initial),
    lifeUsed: ageing ? used : null,
    steps: march.count.steps,
    rejected: march.count.rejected,
    cells: lastNode,
    end: march.time(),
  };
}

import type { InSeries, Operation } from '../protection/operation.ts';
import type { SupplyStep } from '../scenario/schema.ts';
import { lifeUsed } from './ageing.ts';
import { eventWatch, type HeatEvent } from './events.ts';
import { type March, marchOf } from './march.ts';
import { denseAt } from './radial.ts';
import { heatMade } from './steady.ts';
import { type Supply, supplyOf } from './supply.ts';
import { leadResistance, type ThermalCase } from './thermal-case.ts';
import { durationOf, greatestCurrent, type Onlooker, type Outcome, walkSupply } from './walk.ts';

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
  /** When the device in series may have acted and has surely acted; null where none was put in series. */
  readonly device: Operation | null;
  /** Share of the insulation's life used; null where it has no ageing data. */
  readonly lifeUsed: number | null;
  readonly steps: number;
  readonly rejected: number;
  readonly cells: number;
  /** When the last supply step ended [s]. */
  readonly end: number;
}

/** Collects samples of the dense output, a few for each step. */
function recorder(of: ThermalCase, perStep: number) {
  const rows: number[][] = [[], [], [], [], [], [], []];
  const add = (t: number, conductor: number, surface: number, last: number, supply: Supply) => {
    const I = supply.current(conductor);
    const heat = heatMade(of, I, conductor);
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
  /** The device of the case, put in series for this one run; see `seriesOf`. Without it the case runs as if it had none. */
  readonly series?: InSeries | null;
}

/**
 * Runs a case from its start to its end: every supply step in turn, `cycles` times over, until the duration is up, the metal
 * begins to melt, a constant-power load asks for more than the lead can pass, or the device has surely opened.
 */
export function runCase(of: ThermalCase, options: RunOptions = {}): Run {
  const { scenario } = of;
  const march = marchOf(of, greatestCurrent(of), options.cells, options.tolerance);
  const { radial, mesh } = march;
  const many = (scenario.cycles ?? 1) * scenario.supply.length;
  const record = recorder(of, options.samplesPerStep ?? (many > 40 ? 3 : 6));
  const lastNode = mesh.r.length - 1;
  const nodeOf = { conductor: 0, surface: mesh.surface, outside: lastNode };
  const initial = Float64Array.from(radial.y);
  const watch = eventWatch(of, (place) => initial[nodeOf[place]] as number);
  const ageing = of.cable.insulation?.ageing;
  let used = 0;
  const begins = (supply: Supply) => {
    const [conductor, surface, last] = [0, mesh.surface, lastNode].map((node) => radial.y[node]) as [
      number,
      number,
      number,
    ];
    record.add(march.time(), conductor, surface, last, supply);
  };
  const series = options.series ?? null;
  const onlooker: Onlooker = {
    begins,
    steps(t, h, dense, part, supply, end) {
      watch.look(t, h, dense, part);
      record.step(t, h, dense, part, supply, end);
      if (ageing) used += lifeUsed(ageing, part * h, (s) => denseAt(dense, 0, part * s));
    },
  };
  const outcome = walkSupply(of, march, durationOf(scenario), onlooker, series);
  if (record.empty()) begins(supplyOf(of, scenario.supply[0] as SupplyStep));
  return {
    outcome,
    curves: record.curves(),
    events: watch.events.filter((event) => event.t <= march.time() + 1e-9).sort((a, b) => a.t - b.t),
    energy: energyOf(march, initial),
    device: series?.operation() ?? null,
    lifeUsed: ageing ? used : null,
    steps: march.count.steps,
    rejected: march.count.rejected,
    cells: lastNode,
    end: march.time(),
  };
}

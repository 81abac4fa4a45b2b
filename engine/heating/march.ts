import type { Mesh } from './mesh.ts';
import { meshOf } from './mesh.ts';
import { type Radial, radialOf } from './radial.ts';
import { type Start, startProfile } from './start.ts';
import { heatMade } from './steady.ts';
import type { CurrentLaw } from './supply.ts';
import type { ThermalCase } from './thermal-case.ts';

/** Cells where a scenario does not say. */
export const usualCells = 24;
/** Greatest error estimate of one step [K] where a scenario does not say. */
export const usualTolerance = 0.03;
/** How much more careful a run is whose supply switches at a temperature: a slow approach turns millikelvins into seconds. */
const switchCare = 20;
/** Steps after which a run is given up; no case of the schema's range comes near it. */
const mostSteps = 2_000_000;
const safety = 0.9;
const growth = 5;
const shrink = 0.2;

/** Numbers of the dense output of one step: four for each of conductor, surface and last node. */
export const denseLength = 12;

/** Looks at each step before it is taken; returns the part of it to take (0 < s < 1), or 1 for all of it. */
export type Watch = (t: number, h: number, dense: Float64Array) => number;

/** A run under way: it owns time; the supply is set from outside. */
export interface March {
  readonly mesh: Mesh;
  readonly radial: Radial;
  readonly count: { steps: number; rejected: number };
  /** Time since the start [s]. */
  time(): number;
  /** A new supply: the step control starts again. */
  setCurrent(current: CurrentLaw): void;
  /** Marches to `end` [s], or as far as the watch lets it; true when `end` was reached. */
  to(end: number, watch?: Watch): boolean;
}

/** Heating [K/s] from which a run counts as a short circuit and gets more cells. */
const severeHeating = 20;
/** Kelvins off ambient from which a start counts as severe, too. */
const severeStart = 200;
const severeCells = 2.5;
/** Cells of a lead under lagging, which has a further ring to share them with. */
const coveredCells = 1.5;

/** Kelvins that a cell may be wrong by while heat crosses it for the first time. */
const cellError = 0.05;

/** Rate [K/s] at which current `I` [A] in each loaded core first warms the conductor if nothing leaves it. */
function heatingRate(of: ThermalCase, I: number): number {
  return heatMade(of, I, of.T0) / of.conductorCapacity;
}

/**
 * First cell at the conductor [m] that resolves the fastest heating of a case, `I` [A] in each loaded core: the depth heat
 * has reached, √(a t), when the share gone into the insulation, (4/3) e P m t^1.5/(√π C), is a twentieth of a kelvin. In a
 * short circuit heating grows several fold on the way to melting, and m is taken eight fold.
 */
export function firstCell(of: ThermalCase, I: number): number {
  const ring = of.rings[0];
  if (!ring) return Number.POSITIVE_INFINITY;
  const heating = heatingRate(of, I);
  if (!(heating > 0)) return Number.POSITIVE_INFINITY;
  const severe = heating > severeHeating ? 8 : 1;
  const effusivity = Math.sqrt(ring.k * ring.rhoC);
  const share = ((4 / 3) * effusivity * 2 * Math.PI * ring.r0) / (Math.sqrt(Math.PI) * of.conductorCapacity);
  const t = (cellError / (severe * heating * share)) ** (2 / 3);
  return Math.sqrt((ring.k / ring.rhoC) * t);
}

/**
 * Time [s] in which a start away from ambient moves the outermost surface by `dT` [K]: 2 q √(t/(π k ρc)) = dT. Infinite for
 * a start at ambient or steady at a load, which leaves the surface at peace.
 */
function surfaceTime(of: ThermalCase, dT: number): number {
  const ring = of.rings.at(-1);
  if (!ring || of.T0 === of.Ta || of.scenario.start?.steadyAt_A !== undefined) return Number.POSITIVE_INFINITY;
  const q = Math.abs(of.outside.flow(of.T0)) / (2 * Math.PI * ring.r1);
  return (Math.PI * ring.k * ring.rhoC * dT * dT) / (4 * q * q);
}

/** Last cell at the outermost surface [m]: the depth reached when the surface has moved by a twentieth of a kelvin. */
export function lastCell(of: ThermalCase): number {
  const ring = of.rings.at(-1);
  return ring ? Math.sqrt((ring.k / ring.rhoC) * surfaceTime(of, cellError)) : Number.POSITIVE_INFINITY;
}

/**
 * Begins a run of `of` at its start profile with the supply off.
 * @param greatestCurrent the largest current the run will see [A]; it sets how fine the mesh is at the conductor
 * @param cells,tolerance where they differ from the scenario's or the usual ones
 * @param start where it is known already
 */
export function marchOf(
  of: ThermalCase,
  greatestCurrent: number,
  cells?: number,
  tolerance?: number,
  start?: Start,
): March {
  const switches = of.scenario.supply.some((step) => step.until !== undefined);
  const asked = cells ?? of.scenario.run?.cells ?? usualCells;
  const covered = of.outside.rings.length > 0 ? coveredCells : 1;
  const severe = heatingRate(of, greatestCurrent) > severeHeating || Math.abs(of.T0 - of.Ta) > severeStart;
  const finer = severe ? severeCells : switches ? 2 : 1;
  const wanted = Math.round(asked * finer * covered);
  const allowed = (tolerance ?? of.scenario.run?.tolerance_K ?? usualTolerance) / (switches ? switchCare : 1);
  const cableRings = of.rings.length - of.outside.rings.length;
  const first = firstCell(of, greatestCurrent);
  const mesh = meshOf(of.rings, of.conductorCapacity, cableRings, wanted, first, of.equivalentRadius, lastCell(of));
  const radial = radialOf(mesh, of.outside.flow, startProfile(of, mesh, start));
  const last = mesh.r.length - 1;
  const dense = new Float64Array(denseLength);
  const count = { steps: 0, rejected: 0 };
  let t = 0;
  let suggested = 0; // 0: find a first step
  let before = Number.POSITIVE_INFINITY; // what was suggested when the supply last changed

  function setCurrent(current: CurrentLaw): void {
    radial.setHeat((T) => heatMade(of, current(T), T));
    if (suggested > 0) before = suggested;
    suggested = 0;
  }

  const calm = surfaceTime(of, 8 * allowed);

  /** A first step in which the conductor moves by some tens of tolerances and the surface by a few; after a change, not far beyond the step before. */
  function firstStep(span: number): number {
    const rate = Math.abs(radial.rate());
    const own = rate > 0 ? Math.min(span, (30 * allowed) / rate) : span;
    return Math.min(own, t === 0 ? calm : before);
  }

  function to(end: number, watch?: Watch): boolean {
    while (t < end) {
      const span = end - t;
      if (suggested === 0) suggested = firstStep(span);
      const whole = suggested < span * 0.999_999;
      const h = whole ? suggested : span;
      const error = radial.attempt(h) / allowed;
      const factor = safety * error ** -0.25;
      if (!(error <= 1)) {
        count.rejected++;
        suggested = h * (factor > shrink ? Math.min(factor, 0.9) : shrink);
        if (count.rejected > mostSteps) throw new Error(`the step at ${t} s could not be made small enough`);
        continue;
      }
      count.steps++;
      if (watch) {
        radial.dense(0, dense, 0);
        radial.dense(mesh.surface, dense, 4);
        radial.dense(last, dense, 8);
        const part = watch(t, h, dense);
        if (part < 1) {
          radial.acceptPart(part);
          t += part * h;
          suggested = 0;
          return false;
        }
      }
      radial.accept();
      t = whole ? t + h : end;
      const next = h * Math.min(growth, Math.max(shrink, factor));
      suggested = whole ? next : Math.max(next, suggested);
      if (count.steps > mostSteps) throw new Error(`the run needs more than ${mostSteps} steps`);
    }
    return true;
  }

  return { mesh, radial, count, time: () => t, setCurrent, to };
}

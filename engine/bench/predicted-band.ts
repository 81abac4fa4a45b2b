import type { HeatEvent } from '../heating/events.ts';
import { momentAt } from '../heating/read-run.ts';
import { type Run, runCase } from '../heating/run.ts';
import { buildCase, leadResistance, type ThermalCase } from '../heating/thermal-case.ts';
import type { Scenario } from '../scenario/schema.ts';
import type { SurfaceLaw } from '../surroundings/law.ts';
import { caseUncertainty } from './fit/band.ts';
import type { Measured } from './measured.ts';

/** How well the parts of a case are known: standard uncertainties, as shares of the value, and for ambient in kelvin. */
export interface CaseDoubt {
  /** Resistance of a conductor per metre at 20 °C [1]. */
  readonly R20: number;
  /** Heat that the surface sheds: law, emissivity and overall diameter together [1]. */
  readonly surface: number;
  /** Thermal resistivity of insulation and sheath [1]. */
  readonly plastic: number;
  /** Heat capacity of metal and plastic [1]. */
  readonly capacity: number;
  /** Air beside the lead [K]. */
  readonly ambient: number;
}

/** Heat capacity of metal and plastic, as the records of plastics have it [1]. */
const capacityShare = 0.06;
/** About half of what a cord sheds is radiated: so much of the emissivity's doubt reaches the whole [1]. */
const radiated = 0.5;

/** How well a case is known from its own records, gathered in the parts that move what a bench shows. */
export function caseDoubt(of: ThermalCase): CaseDoubt {
  const { R20, diameter, law, emissivity, ambient } = caseUncertainty(of, null);
  const { insulation, emissivity: surface } = of.cable;
  return {
    R20,
    surface: Math.hypot(law, diameter, (radiated * emissivity) / surface),
    plastic: insulation ? insulation.rhoT.u / insulation.rhoT.value : 0,
    capacity: capacityShare,
    ambient,
  };
}

/** A part of a case that is not known exactly. */
export type DoubtId = keyof CaseDoubt;

/** What is predicted at one moment, each with its standard uncertainty. */
export interface PredictedMoment {
  /** Since the start [s]. */
  readonly t: number;
  /** Current in each loaded core [A]. */
  readonly I: Measured;
  /** Volts across the lead's conductors [V], their heat [W], and their resistance round the loop [Ω]. */
  readonly U: Measured;
  readonly W: Measured;
  readonly R: Measured;
  /** Temperatures [K]. */
  readonly conductor: Measured;
  readonly surface: Measured;
  readonly outside: Measured;
  /** The part whose doubt weighs most in the conductor's temperature. */
  readonly most: DoubtId;
}

const quantities = ['I', 'U', 'W', 'R', 'conductor', 'surface', 'outside'] as const;
type Read = Readonly<Record<(typeof quantities)[number], number>>;

/** When a limit is crossed, with its standard uncertainty. */
export interface PredictedEvent {
  readonly event: HeatEvent;
  /** Time since the start [s]; its uncertainty is infinite where a doubtful part decides whether the limit is crossed at all. */
  readonly t: Measured;
}

/** What a case is expected to show. */
export interface PredictedBand {
  readonly moments: readonly PredictedMoment[];
  readonly events: readonly PredictedEvent[];
  /** The run of the case as it is. */
  readonly run: Run;
}

/**
 * What a case will show at `times` [s], and when it crosses its limits, with standard uncertainties by the first-order law (GUM
 * 5.1.2): the case is run once as it is and once for each doubtful part moved by its standard uncertainty, taken as independent of
 * each other. A current that is held is taken as exact. Where the supply changes at a time, what is shown just before.
 */
export function predictedBand(scenario: Scenario, times: readonly number[], doubt?: CaseDoubt): PredictedBand {
  const of = buildCase(scenario);
  const known = doubt ?? caseDoubt(of);
  const run = runCase(of);
  const base = readingsOf(of, run, times);
  const moved = (Object.keys(known) as DoubtId[])
    .filter((id) => known[id] > 0)
    .map((id) => {
      const changed = movedCase(of, id, known[id]);
      const other = runCase(changed);
      return { id, run: other, readings: readingsOf(changed, other, times) };
    });
  const moments = times.map((t, i) => {
    const here = base[i] as Read;
    const shift = (name: keyof Read) => moved.map(({ readings }) => (readings[i] as Read)[name] - here[name]);
    const entries = quantities.map((name) => [name, { value: here[name], u: Math.hypot(...shift(name)) }] as const);
    const weights = shift('conductor').map(Math.abs);
    const most = moved[weights.indexOf(Math.max(...weights))]?.id ?? 'R20';
    return { t, ...(Object.fromEntries(entries) as Record<keyof Read, Measured>), most };
  });
  const events = run.events.map((event) => {
    const others = moved.map(({ run: { events: list } }) => list.find((one) => sameCrossing(one, event))?.t);
    const shifts = others.map((t) => (t === undefined ? Number.POSITIVE_INFINITY : t - event.t));
    return { event, t: { value: event.t, u: Math.hypot(...shifts) } };
  });
  return { moments, events, run };
}

const sameCrossing = (a: HeatEvent, b: HeatEvent): boolean => a.limit.id === b.limit.id && a.end === b.end;

/** Just before a time [s]: what a step of the supply shows at its end, not what the next one begins with. */
const justBefore = 1e-6;

function readingsOf(of: ThermalCase, { curves }: Run, times: readonly number[]): Read[] {
  return times.map((t) => {
    const { I, U, conductor, surface, outside } = momentAt(curves, t - justBefore);
    return { I, U, W: U * I, R: leadResistance(of, conductor), conductor, surface, outside };
  });
}

/** The case with one part moved up by `by`, everything else as it is. */
export function movedCase(of: ThermalCase, id: DoubtId, by: number): ThermalCase {
  const { cable, outside } = of;
  switch (id) {
    case 'R20':
      return { ...of, cable: { ...cable, conductor: { ...cable.conductor, R20: cable.conductor.R20 * (1 + by) } } };
    case 'surface': {
      const scaled =
        (law: SurfaceLaw): SurfaceLaw =>
        (T) =>
          law(T) * (1 + by);
      return { ...of, outside: { ...outside, law: scaled(outside.law), flow: scaled(outside.flow) } };
    }
    case 'plastic':
      return {
        ...of,
        rings: of.rings.map((ring) => ({ ...ring, k: ring.k / (1 + by) })),
        resistance: of.resistance * (1 + by),
      };
    case 'capacity':
      return {
        ...of,
        rings: of.rings.map((ring) => ({ ...ring, rhoC: ring.rhoC * (1 + by) })),
        conductorCapacity: of.conductorCapacity * (1 + by),
      };
    case 'ambient': {
      const { surroundings } = of.scenario;
      return buildCase({
        ...of.scenario,
        surroundings: { ...surroundings, ambient_degC: surroundings.ambient_degC + by },
      });
    }
  }
}

import type { Limit } from '../material/limits.ts';
import type { Scenario, SupplyStep } from '../scenario/schema.ts';
import { ratingOf } from './limits-of.ts';
import { ratingAt, type Threshold, threshold } from './rating.ts';
import { type Run, type RunOptions, runCase } from './run.ts';
import { type Steady, steadyState } from './steady.ts';
import { supplyOf } from './supply.ts';
import { buildCase, leadResistance, type ThermalCase } from './thermal-case.ts';
import { type Validity, validityOf } from './validity.ts';

/** The steady current at one limit. */
export interface Rating {
  readonly limit: Limit;
  /** The temperature used, the lower end of the limit [K]. */
  readonly T: number;
  /** Current in each loaded core [A]; 0 when ambient is there already, null when the metal would melt first. */
  readonly I: number | null;
}

/** Volts and watts of the whole lead at one moment. */
export interface LeadReading {
  /** Current in each loaded core [A]. */
  readonly I: number;
  /** Voltage along the conductors in series round the loop, contacts left out [V]. */
  readonly U: number;
  /** Heat made in those conductors [W]. */
  readonly heat: number;
  /** Heat made at the contacts, beside the cable's [W]. */
  readonly contactHeat: number;
  /** Resistance of the conductors in series round the loop [Ω]. */
  readonly R: number;
}

/** Everything that follows from a scenario. */
export interface Prediction {
  readonly scenario: Scenario;
  readonly thermal: ThermalCase;
  readonly run: Run;
  /** How the last supply step would end if held for ever. */
  readonly steady: Steady;
  readonly ratings: readonly Rating[];
  /** Steady current at the insulation's continuous rating [A]; null without insulation. */
  readonly rating: number | null;
  readonly threshold: Threshold;
  readonly lead: { readonly start: LeadReading; readonly end: LeadReading };
  readonly validity: Validity;
}

/** Volts and watts of the lead when the conductor is at `T` [K] and each loaded core carries `I` [A]. */
export function leadReading(of: ThermalCase, I: number, T: number): LeadReading {
  const R = leadResistance(of, T);
  return { I, U: I * R, heat: I * I * R, contactHeat: I * I * of.lead.contact, R };
}

/**
 * Runs a scenario and gathers all that a page shows of it. Throws `ScenarioFault` where its parts do not fit (parse first);
 * everything nature may do (no steady state, melting, a load the lead cannot feed) comes back as a value.
 */
export function predict(scenario: Scenario, options: RunOptions = {}): Prediction {
  const thermal = buildCase(scenario);
  const run = runCase(thermal, options);
  const { curves } = run;
  const end = curves.t.length - 1;
  const last = scenario.supply.at(-1) as SupplyStep;
  const T70 = ratingOf(thermal.cable);
  const reading = (i: number) => leadReading(thermal, curves.I[i] as number, curves.conductor[i] as number);
  return {
    scenario,
    thermal,
    run,
    steady: steadyState(thermal, supplyOf(thermal, last), curves.conductor[end] as number),
    ratings: thermal.limits.map((limit) => ({ limit, T: limit.low, I: ratingAt(thermal, limit.low, limit.place) })),
    rating: T70 === null ? null : ratingAt(thermal, T70),
    threshold: threshold(thermal),
    lead: { start: reading(0), end: reading(end) },
    validity: validityOf(thermal, run),
  };
}

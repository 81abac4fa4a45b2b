import { inMetal } from '../cable/in-metal.ts';
import { metalOf } from '../conductor/conductor.ts';
import { aluminium, clad, copper, type Metal, metals } from '../material/metals.ts';
import { T20 } from '../material/resistivity.ts';
import { celsius } from '../quantity.ts';
import type { CableSpec, MetalValues, Scenario, SupplyStep } from '../scenario/schema.ts';
import { ratingOf } from './limits-of.ts';
import { modelEnd } from './model-end.ts';
import { ratingAt } from './rating.ts';
import { timeToShare } from './read-run.ts';
import { runCase } from './run.ts';
import { heatMade, type Steady, steadyState } from './steady.ts';
import { supplyOf } from './supply.ts';
import { buildCase, conductorResistance, type ThermalCase } from './thermal-case.ts';

/** The metals that one cord is compared in, best conductor first. */
export const comparedMetals = ['copper', 'clad', 'aluminium', 'steel'] as const;

/** One of the metals compared; `clad` is copper-clad aluminium of a given copper share. */
export type ComparedMetal = (typeof comparedMetals)[number];

/** Copper shares by volume that can be asked for, and the one that is taken where a case says none. */
export const copperShares = { least: 0.05, most: 0.2, usual: 0.1 } as const;

/** One cord in one metal, under the same supply. SI, temperatures in K. */
export interface MetalCase {
  readonly id: ComparedMetal;
  readonly thermal: ThermalCase;
  /** Resistance of one conductor at 20 °C [Ω/m]. */
  readonly R20: number;
  /** Current in each loaded core at the start temperature [A]. */
  readonly coldI: number;
  readonly steady: Steady;
  /** What it settles at; null where it melts first. */
  readonly settled: { readonly T: number; readonly R: number; readonly I: number; readonly heat: number } | null;
  /** Where the model of this insulation ends [K], and whether the conductor settles beyond, or never. */
  readonly modelEnd: number;
  readonly outside: boolean;
  /** Steady current that brings the conductor to its insulation's rating [A]; null without one. */
  readonly rating: number | null;
}

/** Copper-clad aluminium with the volume share `share` (0 to 1) of copper: tabled where there is such a class. */
function cladMetal(share: number): 'cca10' | 'cca15' | MetalValues {
  const tabled = (
    [
      ['cca10', 0.1],
      ['cca15', 0.15],
    ] as const
  ).find(([, f]) => Math.abs(f - share) < 1e-6);
  return tabled
    ? tabled[0]
    : valuesOf(clad('own', `copper-clad aluminium, ${percent(share)} copper`, copper, aluminium, share));
}

const percent = (share: number): string => `${+(100 * share).toFixed(1)} %`;

/** A metal as a scenario writes one that no table has. */
function valuesOf(metal: Metal): MetalValues {
  return {
    name: metal.name,
    rho20_nOhmM: metal.rho20.value * 1e9,
    alpha20_perK: metal.alpha20.value,
    heatCapacity_MJPerM3K: metal.heatCapacity.value * 1e-6,
    density_kgPerM3: metal.density.value,
    melting_degC: celsius(metal.melting.value),
    emissivity: metal.emissivity.value,
  };
}

/** The cord as it would be in copper: of another metal neither name nor resistance stays. */
function copperCord(spec: CableSpec): CableSpec {
  const conductor = spec.conductor;
  if (!conductor || conductor.metal === undefined || conductor.metal === 'copper') return spec;
  const { metal: _metal, R20_ohmPerKm: _measured, ...rest } = conductor;
  return { ...spec, conductor: rest } as CableSpec;
}

/**
 * The volume share of copper in a case's conductor, 0 to 1, to a tenth of a per cent: of a clad one the share that its
 * resistivity tells, σ = f σCu + (1 − f) σAl; of any other metal the usual one.
 */
export function copperShareOf({ cable }: Scenario): number {
  const metal = metalOf(cable.conductor?.metal);
  const [skin, inner] = [1 / copper.rho20.value, 1 / aluminium.rho20.value];
  const f = (1 / metal.rho20.value - inner) / (skin - inner);
  const known = metal !== metals.copper && f >= copperShares.least - 1e-6 && f <= copperShares.most + 1e-6;
  return known ? Math.round(f * 1000) / 1000 : copperShares.usual;
}

/** The case with its conductor of copper-clad aluminium that holds the volume share `share` of copper. */
export function withCopperShare(scenario: Scenario, share: number): Scenario {
  return { ...scenario, cable: inMetal(copperCord(scenario.cable), cladMetal(share)) };
}

/**
 * A case's cord in each of the metals, all scaled from its copper one, under the case's first supply step: where amperes are
 * held all carry the same, where volts are held each takes what its own warm resistance lets through.
 */
export function metalsCompared(scenario: Scenario): MetalCase[] {
  const cord = copperCord(scenario.cable);
  const share = copperShareOf(scenario);
  return comparedMetals.map((id) => {
    const cable = inMetal(cord, id === 'clad' ? cladMetal(share) : id);
    return metalCase(id, buildCase({ ...scenario, cable }));
  });
}

function metalCase(id: ComparedMetal, of: ThermalCase): MetalCase {
  const supply = supplyOf(of, of.scenario.supply[0] as SupplyStep);
  const steady = steadyState(of, supply);
  const T = steady.kind === 'steady' ? steady.chain.conductor : null;
  const end = modelEnd(of);
  const rated = ratingOf(of.cable);
  return {
    id,
    thermal: of,
    R20: conductorResistance(of, T20),
    coldI: supply.current(of.T0),
    steady,
    settled:
      steady.kind === 'steady' && T !== null
        ? { T, R: conductorResistance(of, T), I: steady.I, heat: heatMade(of, steady.I, T) }
        : null,
    modelEnd: end,
    outside: T === null || T > end,
    rating: rated === null ? null : ratingAt(of, rated),
  };
}

/** When things happen to one cord of a comparison [s]; null where they do not within its run. */
export interface MetalTimes {
  /** 63 % of the way to where it settles. */
  readonly toShare: number | null;
  /** The conductor passes the rating of its insulation. */
  readonly toRating: number | null;
}

/** Runs one cord of a comparison; dearer than its steady state, so to be asked for at rest. */
export function metalTimes({ thermal, settled }: MetalCase): MetalTimes {
  const run = runCase(thermal);
  const rating = run.events.find(({ limit, end }) => limit.kind === 'rating' && end === 'low');
  return {
    toShare: settled === null ? null : timeToShare(run.curves, 1 - Math.exp(-1), settled.T),
    toRating: rating?.t ?? null,
  };
}

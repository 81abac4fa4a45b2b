import { celsius } from '../quantity.ts';
import type { Scenario, SupplyStep, SurroundingsSpec } from '../scenario/schema.ts';
import { coilConductivities } from '../surroundings/outside.ts';
import { ratingOf } from './limits-of.ts';
import { modelEnd } from './model-end.ts';
import { ratingAt } from './rating.ts';
import { runCase } from './run.ts';
import { type Chain, type Steady, steadyState } from './steady.ts';
import { supplyOf } from './supply.ts';
import { buildCase, type ThermalCase } from './thermal-case.ts';

/** The surroundings that one lead is compared in. */
export const placeKinds = ['stillAir', 'draught', 'clipped', 'touching', 'lagged', 'coiled'] as const;

/** One of the surroundings compared; `touching` is between neighbours that carry the same. */
export type PlaceKind = (typeof placeKinds)[number];

/** One lead in one of several surroundings, under the same supply. SI, temperatures in K. */
export interface PlaceCase {
  readonly kind: PlaceKind;
  readonly scenario: Scenario;
  readonly thermal: ThermalCase;
  readonly steady: Steady;
  /** The chain it settles at; null where there is no credible steady state: none at all, or one past the model's end. */
  readonly settled: Chain | null;
  /** Where the model of this insulation ends [K]. */
  readonly modelEnd: number;
  /**
   * Conductor temperatures [K] at the two ends of what a coil's conductivity may be: the coolest, then the hottest, each null
   * where it lies past the model's end. Null where nothing but the case itself sets the answer.
   */
  readonly estimate: readonly [coolest: number | null, hottest: number | null] | null;
  /** The rating of its insulation [K], null without one, and whether it settles above. */
  readonly ratedT: number | null;
  readonly overRating: boolean;
  /** Steady current in each loaded core that brings the conductor to its insulation's rating [A]; null without one. */
  readonly rating: number | null;
}

/** The arrangement taken for cables that touch where none is named. */
const neighbours = 'threeTouching';

/** Which of the compared surroundings a scenario's are. */
export function placeKindOf(spec: SurroundingsSpec): PlaceKind {
  if (spec.kind !== 'clipped') return spec.kind;
  const { arrangement = 'clipped' } = spec;
  return arrangement === 'clipped' || arrangement === 'single' || typeof arrangement !== 'string'
    ? 'clipped'
    : 'touching';
}

/**
 * Surroundings of a kind as lessons meet them: 25 mm of loose cloth (k 0.05 W/(m·K)), a reel of 120 mm with 12 turns a layer
 * and `wound_m` metres on it, a draught of 1 m/s, three leads that touch. Our choice, argued in lesson 2.4; ambient in °C.
 */
export function usualSurroundings(kind: PlaceKind, ambient_degC: number, wound_m: number): SurroundingsSpec {
  switch (kind) {
    case 'stillAir':
    case 'clipped':
      return { kind, ambient_degC };
    case 'touching':
      return { kind: 'clipped', ambient_degC, arrangement: neighbours };
    case 'draught':
      return { kind, ambient_degC, speed_mPerS: 1 };
    case 'lagged':
      return { kind, ambient_degC, thickness_mm: 25, conductivity_WPerMK: 0.05 };
    case 'coiled':
      return { kind, ambient_degC, drum_mm: 120, turns: 12, wound_m };
  }
}

/** A case's lead in each of `surroundings`, under the case's first supply step held for ever. */
export function surroundingsCompared(scenario: Scenario, surroundings: readonly SurroundingsSpec[]): PlaceCase[] {
  return surroundings.map((spec) => placeCase({ ...scenario, surroundings: spec }));
}

function placeCase(scenario: Scenario): PlaceCase {
  const thermal = buildCase(scenario);
  const steady = settling(thermal);
  const end = modelEnd(thermal);
  const ratedT = ratingOf(thermal.cable);
  const chain = steady.kind === 'steady' ? steady.chain : null;
  return {
    kind: placeKindOf(scenario.surroundings),
    scenario,
    thermal,
    steady,
    settled: chain && chain.conductor <= end ? chain : null,
    modelEnd: end,
    estimate: estimateOf(scenario, end),
    ratedT,
    overRating: ratedT !== null && (chain === null || chain.conductor > ratedT),
    rating: ratedT === null ? null : ratingAt(thermal, ratedT),
  };
}

const settling = (of: ThermalCase): Steady => steadyState(of, supplyOf(of, of.scenario.supply[0] as SupplyStep));

/** A coil whose conductivity is not known, at both ends of what it may be. */
function estimateOf(scenario: Scenario, end: number): PlaceCase['estimate'] {
  const { surroundings } = scenario;
  if (surroundings.kind !== 'coiled' || surroundings.conductivity_WPerMK !== undefined) return null;
  const at = (conductivity_WPerMK: number) => {
    const steady = settling(buildCase({ ...scenario, surroundings: { ...surroundings, conductivity_WPerMK } }));
    return steady.kind === 'steady' && steady.chain.conductor <= end ? steady.chain.conductor : null;
  };
  return [at(coilConductivities.most), at(coilConductivities.least)];
}

/** The longest that a rating is waited for [s]: half a day. */
const longest = 43_200;

/**
 * Time [s] at which a lead that settles above its rating, or nowhere, passes it; null where it does not, or not in half a day.
 * A run, so dearer than its steady state.
 */
export function timeToRating({ scenario, overRating, ratedT }: PlaceCase): number | null {
  if (!overRating || ratedT === null) return null;
  const [first] = scenario.supply;
  const until = { place: 'conductor', T_degC: celsius(ratedT) } as const;
  const step = { ...first, duration_s: longest, until } as SupplyStep;
  const run = runCase(buildCase({ ...scenario, cycles: 1, supply: [step], run: { duration_s: longest } }));
  return run.events.find(({ limit, end }) => limit.kind === 'rating' && end === 'low')?.t ?? null;
}

import { type Cable, cableOf } from '../cable/cable.ts';
import { type ShapeLevels, shapeLevels } from '../cable/section-of.ts';
import type { Limit } from '../material/limits.ts';
import { resistanceRatio, T20 } from '../material/resistivity.ts';
import { kelvin } from '../quantity.ts';
import { ScenarioFault } from '../scenario/fault.ts';
import type { Scenario } from '../scenario/schema.ts';
import { type Outside, outsideOf, type Ring, ringResistance } from '../surroundings/outside.ts';
import { faultTemperatureOf } from './fault-temperature.ts';
import { limitsOf } from './limits-of.ts';

/** A scenario put together as the heat model takes it: everything that does not change while it runs. */
export interface ThermalCase {
  readonly scenario: Scenario;
  readonly cable: Cable;
  readonly outside: Outside;
  /** Number of loaded cores n. */
  readonly n: number;
  readonly G: ShapeLevels;
  /** Heat transfer coefficient at 30 K of surface rise, as the section is solved with [W/(m²·K)]. */
  readonly h: number;
  /** Body (as the equivalent annulus), sheath, lagging, from the inside out; empty for a bare conductor. */
  readonly rings: readonly Ring[];
  /** Radius of the equivalent central conductor [m]. */
  readonly equivalentRadius: number;
  /** Heat capacity of the loaded conductors per metre [J/(m·K)]. */
  readonly conductorCapacity: number;
  /** Resistance from conductor to the last solid node [K·m/W]. */
  readonly resistance: number;
  /** Ambient [K]. */
  readonly Ta: number;
  /** Start temperature [K]; a load carried before is in the scenario. */
  readonly T0: number;
  /** Length [m], conductors in series round the loop, and R_contact, all contacts together [Ω]. */
  readonly lead: { readonly length: number; readonly inSeries: number; readonly contact: number };
  readonly limits: readonly Limit[];
}

function sheathRing({ sheath, bodyRadius, outerRadius }: Cable): Ring[] {
  if (!sheath) return [];
  return [
    { name: 'sheath', r0: bodyRadius, r1: outerRadius, k: 1 / sheath.rhoT.value, rhoC: sheath.heatCapacity.value },
  ];
}

/** The annulus of heat-model section 2: radius R·exp(−G/n) out to R, holding what insulation, filler and idle conductors hold. */
function bodyRing(cable: Cable, n: number, G: number): Ring[] {
  const { insulation, bodyRadius: R, conductor, plasticArea, cores } = cable;
  if (!insulation) return [];
  const r0 = R * Math.exp(-G / n);
  const held = plasticArea * insulation.heatCapacity.value + (cores - n) * conductor.heatCapacity;
  return [{ name: 'insulation', r0, r1: R, k: 1 / insulation.rhoT.value, rhoC: held / (Math.PI * (R * R - r0 * r0)) }];
}

/** Supply steps a run may have, all cycles together. */
const mostSupplySteps = 20_000;

/** Puts a scenario together. Throws `ScenarioFault` where parts of it do not fit each other. */
export function buildCase(scenario: Scenario): ThermalCase {
  const many = (scenario.cycles ?? 1) * scenario.supply.length;
  if (many > mostSupplySteps)
    throw new ScenarioFault('cycles', `asks for ${many} supply steps in all; ${mostSupplySteps} are the most`);
  const cable = cableOf(scenario.cable);
  const length = scenario.lead?.length_m ?? 1;
  const outside = outsideOf(scenario.surroundings, cable, length);
  const n = cable.loaded.length;
  const edge = 2 * Math.PI * (outside.rings[0]?.r1 ?? cable.outerRadius);
  const h = outside.flow(outside.Ta + 30) / (edge * 30);
  const G = shapeLevels(cable, outside, h);
  const rings = [...bodyRing(cable, n, G.used), ...sheathRing(cable), ...outside.rings];
  const start = scenario.start ?? {};
  if (start.T_degC !== undefined && start.steadyAt_A !== undefined)
    throw new ScenarioFault('start', 'has both T_degC and steadyAt_A; give one of them');
  const T0 = start.T_degC === undefined ? outside.Ta : kelvin(start.T_degC);
  const Tf = scenario.fault ? faultTemperatureOf(cable, scenario.fault) : T0;
  checkResistance(cable, Math.min(T0, outside.Ta, Tf), Math.max(T0, cable.conductor.metal.melting.value, Tf));
  return {
    scenario,
    cable,
    outside,
    n,
    G,
    h,
    rings,
    equivalentRadius: rings[0]?.r0 ?? cable.conductor.rc,
    conductorCapacity: n * cable.conductor.heatCapacity,
    resistance: rings.reduce((sum, ring) => sum + ringResistance(ring), 0),
    Ta: outside.Ta,
    T0,
    lead: { length, inSeries: scenario.lead?.inSeries ?? 2, contact: contactResistance(scenario) },
    limits: limitsOf(scenario, cable),
  };
}

/** R_contact [Ω]: every contact that is listed, and what is told of the rest together. */
function contactResistance({ lead }: Scenario): number {
  return (lead?.contacts ?? []).reduce((sum, { R_ohm }) => sum + R_ohm, lead?.contact_ohm ?? 0);
}

/** Refuses a metal by own values whose resistance would fall to nothing somewhere from `coldest` to `hottest` [K]. */
function checkResistance({ conductor }: Cable, coldest: number, hottest: number): void {
  const { alpha20, beta20 } = conductor;
  const turn = beta20 > 0 ? T20 - alpha20 / (2 * beta20) : coldest; // where a curved law is least
  const places = [coldest, hottest, turn > coldest && turn < hottest ? turn : coldest];
  if (places.every((T) => resistanceRatio(alpha20, beta20, T) > 0.01)) return;
  throw new ScenarioFault(
    'cable.conductor.metal',
    'has a resistance that falls to nothing before it melts, in the cold or during the fault; give other alpha20_perK or beta20_perK2',
  );
}

/** Resistance of one conductor per metre at `T` [K]: R'20 (1 + α20 (θ − 20) + β20 (θ − 20)²) [Ω/m]. */
export function conductorResistance({ cable }: ThermalCase, T: number): number {
  const { R20, alpha20, beta20 } = cable.conductor;
  return R20 * resistanceRatio(alpha20, beta20, T);
}

/** Resistance of the lead's conductors in series round the loop at `T` [K], without contacts [Ω]. */
export function leadResistance(of: ThermalCase, T: number): number {
  return of.lead.inSeries * of.lead.length * conductorResistance(of, T);
}

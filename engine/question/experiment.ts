import { castScenario } from '../examples/cast.ts';
import { runCase } from '../heating/run.ts';
import { heatMade, steadyState } from '../heating/steady.ts';
import { supplyOf } from '../heating/supply.ts';
import { buildCase, type ThermalCase } from '../heating/thermal-case.ts';
import { celsius, kelvin } from '../quantity.ts';
import type { Scenario, SupplyStep } from '../scenario/schema.ts';
import type { Cord } from './cords.ts';

/** A cord in still air that starts at ambient and carries `I_A` for `duration_s`. */
export function heldCurrent({ key }: Cord, ambient_degC: number, I_A: number, duration_s: number): Scenario {
  return castScenario(key, I_A, ambient_degC, duration_s);
}

/** The scenario with one level watched at the conductor. */
export function watching(scenario: Scenario, T_degC: number): Scenario {
  const name = `${T_degC}\u00A0°C asked for`;
  return { ...scenario, limits: [{ name, place: 'conductor', T_degC, kind: 'other' }] };
}

/** Conductor temperature where a case settles under its last supply step [K], or null when it does not. */
export function settlesAt(of: ThermalCase): number | null {
  const steady = steadyState(of, supplyOf(of, of.scenario.supply.at(-1) as SupplyStep));
  return steady.kind === 'steady' ? steady.chain.conductor : null;
}

/** When the conductor first passes `T` [K] in a scenario [s]; null when it does not within the run. */
export function timeTo(scenario: Scenario, T: number): number | null {
  const { events } = runCase(buildCase(watching(scenario, celsius(T))));
  return events.find(({ limit }) => limit.id === 'own 1')?.t ?? null;
}

/** Conductor temperature at time `t` [s] of a scenario whose supply does not change [K]. */
export function conductorAt(scenario: Scenario, t: number): number {
  const { curves } = runCase(buildCase({ ...scenario, run: { duration_s: t } }), { samplesPerStep: 1 });
  return curves.conductor.at(-1) as number;
}

/** When a held current has made 63.2 % (1 − 1/e) of the conductor's rise to `settled` [s]. */
export function timeTo63(scenario: Scenario, settled: number): number | null {
  const start = kelvin(scenario.surroundings.ambient_degC);
  return timeTo(scenario, start + (settled - start) * -Math.expm1(-1));
}

/** Mean and peak of the conductor over the last of `cycles` runs through the supply, begun at the steady state of `I_A` [K]. */
export function cycling(scenario: Scenario, I_A: number, cycles: number): { mean: number; peak: number } {
  const { run: _, ...rest } = scenario;
  const { curves } = runCase(buildCase({ ...rest, cycles, start: { steadyAt_A: I_A } }));
  const period = scenario.supply.reduce((sum, step) => sum + (step.duration_s ?? 0), 0);
  const from = (cycles - 1) * period;
  let area = 0;
  let peak = 0;
  for (let i = 1; i < curves.t.length; i++) {
    const [t0, t1] = [curves.t[i - 1] as number, curves.t[i] as number];
    if (t0 < from - 1e-6) continue;
    area += ((t1 - t0) * ((curves.conductor[i - 1] as number) + (curves.conductor[i] as number))) / 2;
    peak = Math.max(peak, curves.conductor[i] as number);
  }
  return { mean: area / period, peak };
}

/** When a cord that shed no heat would pass `T` [K]: t = C'·(T − θa)/W', with the heat made at the start [s]. */
export function timeWithoutLoss(of: ThermalCase, I: number, T: number): number {
  const plastic = of.rings.reduce((sum, { r0, r1, rhoC }) => sum + Math.PI * (r1 * r1 - r0 * r0) * rhoC, 0);
  return ((of.conductorCapacity + plastic) * (T - of.T0)) / heatMade(of, I, of.T0);
}

import { inSize } from '../cable/in-size.ts';
import { type SizeSystem, type TradeSize, tradeSize } from '../conductor/area-scale.ts';
import type { Scenario, SupplyStep } from '../scenario/schema.ts';
import { leadReading } from './predict.ts';
import { heatMade, type Steady, steadyState } from './steady.ts';
import { supplyOf } from './supply.ts';
import { buildCase, conductorResistance, type ThermalCase } from './thermal-case.ts';

/** One cord in one size, under the same supply. SI, temperatures in K. */
export interface SizeCase {
  readonly size: TradeSize;
  readonly thermal: ThermalCase;
  readonly steady: Steady;
  /** What it settles at; null where it does not. */
  readonly settled: SettledSize | null;
}

/** A cord that has settled. */
export interface SettledSize {
  readonly T: number;
  readonly surface: number;
  readonly I: number;
  /** Resistance of one conductor as warm as it is [Ω/m], and of the loop [Ω]. */
  readonly R: number;
  readonly loop: number;
  /** Heat made in each metre of cord [W/m], and in all of it [W]. */
  readonly heat: number;
  readonly total: number;
}

/** A case's cord in each of `sizes` (mm², or AWG) that its table has, thin to thick. */
export function sizesCompared(scenario: Scenario, system: SizeSystem, sizes: readonly number[]): SizeCase[] {
  const marked = sizes.flatMap((size) => tradeSize(system, size) ?? []).sort((a, b) => a.area - b.area);
  return marked.flatMap((size) => {
    const cable = inSize(scenario.cable, size);
    return cable ? [sizeCase(size, buildCase({ ...scenario, cable }))] : [];
  });
}

function sizeCase(size: TradeSize, of: ThermalCase): SizeCase {
  const steady = steadyState(of, supplyOf(of, of.scenario.supply[0] as SupplyStep));
  if (steady.kind !== 'steady') return { size, thermal: of, steady, settled: null };
  const { I, chain } = steady;
  const { R, heat } = leadReading(of, I, chain.conductor);
  const settled = {
    T: chain.conductor,
    surface: chain.surface,
    I,
    R: conductorResistance(of, chain.conductor),
    loop: R,
    heat: heatMade(of, I, chain.conductor),
    total: heat,
  };
  return { size, thermal: of, steady, settled };
}

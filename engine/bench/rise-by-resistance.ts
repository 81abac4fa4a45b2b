import { within } from '../errors.ts';
import { conductorByRatio } from '../heating/by-resistance.ts';
import { resistanceRatio } from '../material/resistivity.ts';
import type { Reading } from './instruments/meter.ts';
import type { Measured } from './measured.ts';
import { sameInstrument } from './readings-together.ts';
import { type Model, pairCorrelated } from './uncertainty/model.ts';
import { propagate, type Uncertainty } from './uncertainty/propagate.ts';

/** A conductor's resistance cold, at a temperature that is known, and hot, by the same instruments. */
export interface RiseOfResistance {
  /** Resistance cold and hot [Ω], of the same conductors between the same taps. */
  readonly cold: Measured & Partial<Reading>;
  readonly hot: Measured & Partial<Reading>;
  /** Temperature of the conductor when cold [K]. */
  readonly T: Measured;
  /** Temperature coefficient at 20 °C [1/K], and its curvature [1/K²]. */
  readonly alpha20: Measured;
  readonly beta20?: number;
}

/** The measurement as a model: the temperature at which R/R20 is R_hot/R_cold times the ratio at the cold temperature [K]. */
export function riseModel({ cold, hot, T, alpha20, beta20 = 0 }: RiseOfResistance): Model {
  const inputs = [
    { ...cold, name: 'resistance, cold', unit: 'Ω' },
    { ...hot, name: 'resistance, hot', unit: 'Ω' },
    { ...T, name: 'temperature, cold', unit: 'K' },
    { ...alpha20, name: 'temperature coefficient', unit: '1/K' },
  ];
  const f = ([R1, R2, T1, alpha]: readonly number[]) => {
    const law = { alpha20: alpha as number, beta20 };
    const ratio = ((R2 as number) / (R1 as number)) * resistanceRatio(law.alpha20, beta20, T1 as number);
    return conductorByRatio(law, ratio) ?? Number.NaN;
  };
  return { inputs, f, correlation: pairCorrelated(inputs.length, 0, 1, sameInstrument(cold, hot)) };
}

/**
 * Mean temperature over the length of a conductor [K] by the rise of its resistance, with its uncertainty. What both readings
 * share of their errors falls out of their ratio (the same instruments on the same ranges: `systematic` of a `Reading`; a
 * value without parts is taken to be wholly so). Null where the resistances name no temperature.
 */
export function temperatureByRise(of: RiseOfResistance): Uncertainty | null {
  within('resistance, cold', of.cold.value, [1e-9, 1e12], 'Ω');
  within('temperature, cold', of.T.value, [200, 500], 'K');
  const model = riseModel(of);
  return Number.isFinite(model.f(model.inputs.map(({ value }) => value))) ? propagate(model) : null;
}

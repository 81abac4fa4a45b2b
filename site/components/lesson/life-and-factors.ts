import {
  adjustmentFactor,
  ageingRate,
  ambientFactor,
  type Factor,
  groupingFactor,
  halvingStep,
  kelvin,
  lifeAt,
  plastics,
  thermalInsulationFactor,
} from '#engine';
import type { Practice } from '../../lib/format.ts';
import type { AgeingNumber, FactorNumber } from './num-props.ts';

/** A number of how insulation ages, SI: life [s], rate [1] or step [K]. Throws where the insulation has no ageing data. */
export function ageingValue({ of, insulation = 'pvc70', at }: AgeingNumber): number {
  const plastic = plastics[insulation];
  if (!('ageing' in plastic) || !plastic.ageing) throw new Error(`${insulation} has no ageing data`);
  const T = kelvin(at);
  switch (of) {
    case 'life':
      return lifeAt(plastic.ageing, T);
    case 'ageing':
      return ageingRate(plastic.ageing, T);
    case 'halving step':
      return halvingStep(plastic.ageing, T);
  }
}

/** The factors that a number names, as the practice's tables print them: ambient, grouping, thermal insulation. */
export function factorsFor({ limit, ambient, circuits, insulated }: FactorNumber, practice: Practice): Factor[] {
  return [
    ...(limit === undefined || ambient === undefined ? [] : [ambientFactor(practice, limit, ambient)]),
    ...(circuits === undefined ? [] : [practice === 'na' ? adjustmentFactor(2 * circuits) : groupingFactor(circuits)]),
    ...(insulated === undefined ? [] : [thermalInsulationFactor(insulated)]),
  ];
}

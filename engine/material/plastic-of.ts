import type { PlasticValues } from '../scenario/schema.ts';
import { insulationLimit, type Limit } from './limits.ts';
import { type Plastic, plastics } from './plastics.ts';
import { property } from './property.ts';

/** The insulation a scenario names or describes. */
export function plasticOf(spec: string | PlasticValues): Plastic {
  if (typeof spec === 'string') return plastics[spec as keyof typeof plastics];
  const given = (unit: string, value: number) => property(unit, value, 0, 'user', 'our choice');
  const kinds = ['rating', 'softening', 'shortTime', 'fumes', 'ignition'] as const;
  const limits: Limit[] = kinds.flatMap((kind) => {
    const T_degC = spec[`${kind}_degC`];
    return T_degC === undefined
      ? []
      : [insulationLimit(kind, T_degC, 'as entered', 'as entered', 'user', 'our choice')];
  });
  const rating = limits.find((l) => l.kind === 'rating');
  const ageing =
    spec.activationEnergy_kJPerMol !== undefined && spec.lifeAtRating_h !== undefined && rating
      ? {
          activationEnergy: given('J/mol', spec.activationEnergy_kJPerMol * 1e3),
          refTemperature: given('K', rating.low),
          lifeAtRef: given('s', spec.lifeAtRating_h * 3600),
        }
      : undefined;
  return {
    id: 'own',
    name: spec.name ?? 'insulation by own values',
    rhoT: given('K·m/W', spec.rhoT_KmPerW),
    heatCapacity: given('J/(m³·K)', spec.heatCapacity_MJPerM3K * 1e6),
    density: given('kg/m³', plastics.pvc70.density.value),
    emissivity: given('1', spec.emissivity ?? plastics.pvc70.emissivity.value),
    limits,
    ...(ageing ? { ageing } : {}),
  };
}

import { type CableSpec, inMetal, type MetalId, metalOf, type Scenario } from '#engine';

/** The metal of a case's conductor by its id; 'own' where it is given by its values. */
export function metalIdOf({ cable }: Scenario): string {
  return metalOf(cable.conductor?.metal).id;
}

/** The cable as it would be in copper: what was known of another metal's resistance goes with it. */
export function copperCable(cable: CableSpec): CableSpec {
  const { conductor } = cable;
  if (!conductor || conductor.metal === undefined || conductor.metal === 'copper') return cable;
  const { metal: _metal, R20_ohmPerKm: _R20, ...rest } = conductor;
  return { ...cable, conductor: rest } as CableSpec;
}

/** The cable with its strands drawn from another metal. */
export function withMetal(cable: CableSpec, metal: MetalId): CableSpec {
  const copper = copperCable(cable);
  return metal === 'copper' ? copper : inMetal(copper, metal);
}

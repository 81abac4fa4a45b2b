import { metalOf } from '../conductor/conductor.ts';
import type { MetalId } from '../material/metals.ts';
import type { CableSpec, MetalValues } from '../scenario/schema.ts';
import { cableOf } from './cable.ts';

/**
 * The same cable with the same strands drawn from another metal: its R'20 is that of the given cable times the ratio of the
 * resistivities. A standard's greatest R' holds for its own metal alone, so two metals are alike only when both are scaled
 * from one. Throws `ScenarioFault` where the cable's parts do not fit.
 */
export function inMetal(spec: CableSpec, metal: MetalId | MetalValues): CableSpec {
  const { conductor } = cableOf(spec);
  const R20 = (conductor.R20 * metalOf(metal).rho20.value) / conductor.metal.rho20.value;
  const own = { metal, R20_ohmPerKm: R20 * 1e3 };
  if ('table' in spec) return { ...spec, conductor: { ...spec.conductor, ...own } };
  return { ...spec, conductor: { ...spec.conductor, ...own } };
}

import { type CastKey, cast, type PlasticId, type Scenario } from '#engine';
import type { Practice } from '../../lib/format.ts';
import { ownLike } from '../bench/edit.ts';

/** A cord of the cast in another insulation, held at a temperature for a time: what the strip shows, as a case. */
export function stripCase(
  key: CastKey,
  practice: Practice,
  insulation: PlasticId,
  T_degC: number,
  t: number,
): Scenario {
  return withInsulation(
    {
      practice,
      cable: ownLike(cast[key]),
      surroundings: { kind: 'stillAir', ambient_degC: 20 },
      supply: [{ kind: 'off' }],
      start: { T_degC },
      run: { duration_s: t },
    },
    insulation,
  );
}

/** The insulation of a strip's case; PVC for 70 °C where a link has one by own values. */
export function insulationOf({ cable }: Scenario): PlasticId {
  const material = 'layout' in cable ? cable.insulation?.material : undefined;
  return (typeof material === 'string' ? material : 'pvc70') as PlasticId;
}

/** The case with its insulation and sheath of another compound. */
export function withInsulation(scenario: Scenario, material: PlasticId): Scenario {
  const cable = ownLike(scenario.cable);
  const insulation = { thickness_mm: 0.7, ...cable.insulation, material };
  const sheath = { thickness_mm: 0.9, ...cable.sheath, material };
  return { ...scenario, cable: { ...cable, insulation, sheath } };
}

/** The other practice's own cord, at the same temperature, time and insulation. */
export function carriedStrip(from: Scenario, to: Scenario): Scenario {
  const kept = { ...to, ...(from.start && { start: from.start }), ...(from.run && { run: from.run }) };
  return withInsulation(kept, insulationOf(from));
}

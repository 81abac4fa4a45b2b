import { constructions } from '../../cable/constructions.ts';
import type { PlasticId } from '../../material/plastics.ts';
import type { CableSpec } from '../../scenario/schema.ts';

type Custom = Exclude<CableSpec, { table: string }>;

/**
 * A cable of the construction table, or of own walls, spelt out: conductor, insulation and sheath as such, so that a question
 * can change one of them alone. Throws when the table has no such row.
 */
export function speltOut(spec: CableSpec): Custom {
  if (!('table' in spec)) return spec;
  const size = spec.size_AWG ?? spec.size_mm2;
  const gauge = spec.size_AWG !== undefined;
  const row = constructions.find(
    (one) => one.table === spec.table && one.cores === spec.cores && one.size === size && one.gauge === gauge,
  );
  if (!row || row.sheath === null) throw new Error(`the table has no such ${spec.table}`);
  return {
    layout: row.layout,
    cores: row.cores,
    ...(spec.loaded === undefined ? {} : { loaded: spec.loaded }),
    conductor: { ...spec.conductor, ...(gauge ? { size_AWG: row.size } : { size_mm2: row.size }) },
    insulation: { material: row.insulation, thickness_mm: row.insulation_mm },
    sheath: { material: row.sheath, thickness_mm: row.sheath_mm },
  };
}

/** Thickness of the insulation round each core [mm]. */
export const wallOf = (spec: CableSpec): number => speltOut(spec).insulation?.thickness_mm ?? 0;

/** The cable with another thickness of insulation round each core [mm], all else as it is. */
export function withWall(spec: CableSpec, thickness_mm: number): CableSpec {
  const { insulation, ...rest } = speltOut(spec);
  return { ...rest, insulation: { material: insulation?.material ?? 'pvc70', thickness_mm } };
}

/** The cable with insulation and sheath of another plastic, as thick as they are. */
export function withPlastic(spec: CableSpec, material: PlasticId): CableSpec {
  const { insulation, sheath, ...rest } = speltOut(spec);
  return {
    ...rest,
    ...(insulation ? { insulation: { ...insulation, material } } : {}),
    ...(sheath ? { sheath: { ...sheath, material } } : {}),
  };
}

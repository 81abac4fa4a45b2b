import { type Conductor, conductorOf } from '../conductor/conductor.ts';
import { plasticOf } from '../material/plastic-of.ts';
import type { Plastic } from '../material/plastics.ts';
import { metres, squareMetres } from '../quantity.ts';
import { ScenarioFault } from '../scenario/fault.ts';
import type { CableSpec } from '../scenario/schema.ts';
import { type Construction, construction, constructions } from './constructions.ts';
import { flatLayout, roundLayout } from './layout.ts';

/** A cable as the heat model takes it. Lengths in m; positions about the axis. */
export interface Cable {
  readonly name: string;
  readonly layout: 'single' | 'round' | 'flat';
  readonly cores: number;
  /** Indices of the cores that carry current. */
  readonly loaded: readonly number[];
  readonly conductor: Conductor;
  readonly insulation: Plastic | null;
  readonly sheath: Plastic | null;
  /** Core centres. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Outer radius of one core. */
  readonly coreRadius: number;
  /** Radius of the body under the sheath; perimeter/2π for a flat cable. */
  readonly bodyRadius: number;
  /** Area of insulation and filler under the sheath [m²]. */
  readonly plasticArea: number;
  /** Outer radius; for a flat cable perimeter/2π. */
  readonly outerRadius: number;
  /** Half of the straight run of a flat outline; 0 when round. */
  readonly halfRun: number;
  /** Half of a flat outline's height under the sheath; the body radius when round. */
  readonly halfHeight: number;
  /** Emissivity of the cable's own surface. */
  readonly emissivity: number;
  /** The row of the construction table, when the cable is one of them. */
  readonly row?: Construction;
}

interface Walls {
  readonly insulation: Plastic | null;
  readonly insulation_mm: number;
  readonly sheath: Plastic | null;
  readonly sheath_mm: number;
}

function loadedOf(spec: number | number[] | undefined, cores: number): number[] {
  const path = 'cable.loaded';
  if (Array.isArray(spec)) {
    const wrong = spec.find((i) => i >= cores);
    if (wrong !== undefined)
      throw new ScenarioFault(path, `names core ${wrong}, but with ${cores} cores they are numbered 0 to ${cores - 1}`);
    if (new Set(spec).size < spec.length) throw new ScenarioFault(path, 'names a core twice');
    return [...spec];
  }
  const n = spec ?? Math.min(cores, 2);
  if (n > cores) throw new ScenarioFault(path, `is ${n}, more than the ${cores} cores of the cable`);
  return Array.from({ length: n }, (_, i) => i);
}

function sizeWords(): string {
  return [...new Set(constructions.map((c) => c.table))].join(', ');
}

function rowOf(spec: Extract<CableSpec, { table: string }>): Construction {
  const gauge = spec.size_AWG !== undefined;
  const size = spec.size_AWG ?? spec.size_mm2;
  if (size === undefined) throw new ScenarioFault('cable', 'has no size; give size_mm2 or size_AWG');
  const row = construction(spec.table, spec.cores, size, gauge);
  if (row) return row;
  const family = constructions.filter((c) => c.table === spec.table);
  if (family.length === 0)
    throw new ScenarioFault('cable.table', `is "${spec.table}"; it must be one of: ${sizeWords()}`);
  const has = family.filter((c) => c.cores === spec.cores).map((c) => (c.gauge ? `${c.size} AWG` : `${c.size} mm²`));
  throw new ScenarioFault(
    'cable',
    has.length === 0
      ? `has ${spec.cores} cores, which the table has no ${spec.table} for`
      : `asks for ${gauge ? `${size} AWG` : `${size} mm²`}; the table's ${spec.cores}-core ${spec.table} sizes are: ${has.join(', ')}`,
  );
}

function assemble(
  name: string,
  layout: Cable['layout'],
  cores: number,
  loaded: readonly number[],
  conductor: Conductor,
  walls: Walls,
  body: number | undefined,
): Omit<Cable, 'row'> {
  const { insulation, sheath } = walls;
  const ri = conductor.rc + metres(walls.insulation_mm);
  const thickness = metres(walls.sheath_mm);
  const flat = layout === 'flat' ? flatLayout(cores, 2 * ri, ri) : undefined;
  const place = flat ?? roundLayout(cores, ri);
  const bodyArea = flat ? flat.area : Math.PI * place.R ** 2;
  const plasticArea = body ?? bodyArea - cores * Math.PI * conductor.rc ** 2;
  const outer = (sheath ?? insulation)?.emissivity ?? conductor.metal.emissivity;
  return {
    name,
    layout,
    cores,
    loaded,
    conductor,
    insulation,
    sheath,
    x: place.x,
    y: place.y,
    coreRadius: ri,
    bodyRadius: place.R,
    plasticArea,
    outerRadius: place.R + thickness,
    halfRun: flat ? flat.halfRun : 0,
    halfHeight: flat ? ri : place.R,
    emissivity: outer.value,
  };
}

const known = new WeakMap<CableSpec, Cable>();

/**
 * Puts a scenario's cable together; throws `ScenarioFault` where its parts do not fit each other. A scenario is plain data that
 * nobody changes in place, so the same record gives the same cable.
 */
export function cableOf(spec: CableSpec): Cable {
  const before = known.get(spec);
  if (before) return before;
  const cable = putTogether(spec);
  known.set(spec, cable);
  return cable;
}

function putTogether(spec: CableSpec): Cable {
  if ('table' in spec) {
    const row = rowOf(spec);
    const size = row.gauge ? { size_AWG: row.size } : { size_mm2: row.size };
    const conductor = conductorOf({ ...spec.conductor, ...size }, 'cable.conductor');
    const walls = {
      insulation: plasticOf(row.insulation),
      insulation_mm: row.insulation_mm,
      sheath: row.sheath ? plasticOf(row.sheath) : null,
      sheath_mm: row.sheath_mm,
    };
    const name = `${row.table} ${row.cores} × ${conductor.marked}`;
    const loaded = loadedOf(spec.loaded, row.cores);
    return { ...assemble(name, row.layout, row.cores, loaded, conductor, walls, undefined), row };
  }
  return customCable(spec);
}

function customCable(spec: Exclude<CableSpec, { table: string }>): Cable {
  const cores = spec.cores ?? (spec.layout === 'single' ? 1 : 2);
  if (spec.layout === 'single' && cores !== 1)
    throw new ScenarioFault('cable.cores', `is ${cores}; a single wire has 1. For more, the layout is round or flat`);
  if (spec.layout === 'flat' && (cores < 2 || cores > 3))
    throw new ScenarioFault('cable.cores', `is ${cores}; a flat cable has 2 or 3`);
  if (cores > 7) throw new ScenarioFault('cable.cores', `is ${cores}; the model lays at most 7 cores on one circle`);
  if (!spec.insulation && cores > 1)
    throw new ScenarioFault('cable.insulation', 'is missing; only a single conductor can be bare');
  const conductor = conductorOf(spec.conductor, 'cable.conductor');
  const walls = {
    insulation: spec.insulation ? plasticOf(spec.insulation.material) : null,
    insulation_mm: spec.insulation?.thickness_mm ?? 0,
    sheath: spec.sheath ? plasticOf(spec.sheath.material) : null,
    sheath_mm: spec.sheath?.thickness_mm ?? 0,
  };
  const covering = walls.insulation === null ? 'bare' : spec.layout;
  const name = `${cores === 1 ? '' : `${cores} × `}${conductor.marked}, ${conductor.metal.name}, ${covering}`;
  const body = spec.body_mm2 === undefined ? undefined : squareMetres(spec.body_mm2);
  return assemble(name, spec.layout, cores, loadedOf(spec.loaded, cores), conductor, walls, body);
}

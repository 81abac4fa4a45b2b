import type { Metal } from '../material/metals.ts';
import { metals } from '../material/metals.ts';
import { property } from '../material/property.ts';
import { kelvin, metres, ohmsPerMetre, squareMetres } from '../quantity.ts';
import { ScenarioFault } from '../scenario/fault.ts';
import type { MetalValues } from '../scenario/schema.ts';
import { awgArea } from './awg.ts';
import { type ConductorClass, type TableResistance, tableResistance } from './iec60228.ts';

/** A stranded bundle's diameter over that of a solid round wire of the same metal area (our choice; measured cords spread so). */
export const strandedSpread = 1.13;
/** Lay factor of a stranded conductor where none is given: its wires are this much longer than the cable. */
export const strandedLay = 1.02;

/** One conductor as the heat model takes it. */
export interface Conductor {
  readonly metal: Metal;
  /** Metal area of the section [m²]. */
  readonly area: number;
  /** Radius of the strand bundle [m]. */
  readonly rc: number;
  /** Resistance at 20 °C per metre of cable [Ω/m]. */
  readonly R20: number;
  readonly alpha20: number;
  readonly beta20: number;
  /** Length of wire per length of cable. */
  readonly lay: number;
  /** Heat capacity per metre of cable [J/(m·K)]. */
  readonly heatCapacity: number;
  /** Where R20 comes from, in words. */
  readonly basis: string;
  /** The size as marked, in words: '0.75 mm²', '16 AWG'. */
  readonly marked: string;
}

/** What a scenario may say of a conductor. */
export interface ConductorSpec {
  readonly metal?: string | MetalValues | undefined;
  readonly law?: 'straight' | 'curved' | undefined;
  readonly class?: ConductorClass | undefined;
  readonly finish?: 'plain' | 'tinned' | undefined;
  readonly strands?: { count: number; diameter_mm: number } | undefined;
  readonly area_mm2?: number | undefined;
  readonly bundle_mm?: number | undefined;
  readonly R20_ohmPerKm?: number | undefined;
  readonly lay?: number | undefined;
  readonly size_mm2?: number | undefined;
  readonly size_AWG?: number | undefined;
}

/** The metal a scenario names or describes. */
export function metalOf(spec: string | MetalValues | undefined): Metal {
  if (spec === undefined) return metals.copper;
  if (typeof spec === 'string') return metals[spec as keyof typeof metals];
  const given = (unit: string, value: number) => property(unit, value, 0, 'user', 'our choice');
  return {
    id: 'own',
    name: spec.name ?? 'metal by own values',
    rho20: given('Ω·m', spec.rho20_nOhmM * 1e-9),
    alpha20: given('1/K', spec.alpha20_perK),
    beta20: given('1/K²', spec.beta20_perK2 ?? 0),
    density: given('kg/m³', spec.density_kgPerM3 ?? metals.copper.density.value),
    heatCapacity: given('J/(m³·K)', spec.heatCapacity_MJPerM3K * 1e6),
    conductivity: metals.copper.conductivity,
    melting: given('K', kelvin(spec.melting_degC ?? 660)),
    emissivity: given('1', spec.emissivity ?? metals.copper.emissivity.value),
    magnetic: spec.magnetic ?? false,
    range: metals.copper.range,
  };
}

/** The metal area [m²] and how the size is marked. */
function areaOf(spec: ConductorSpec, path: string): { area: number; marked: string } {
  const { strands, area_mm2, size_mm2, size_AWG } = spec;
  if (size_mm2 !== undefined && size_AWG !== undefined)
    throw new ScenarioFault(path, 'has both size_mm2 and size_AWG; give one of them');
  const size = size_mm2 !== undefined ? squareMetres(size_mm2) : size_AWG !== undefined ? awgArea(size_AWG) : undefined;
  const area = strands
    ? strands.count * (Math.PI / 4) * metres(strands.diameter_mm) ** 2
    : area_mm2 !== undefined
      ? squareMetres(area_mm2)
      : size;
  if (area === undefined) throw new ScenarioFault(path, 'has no size; give size_mm2, size_AWG, area_mm2 or strands');
  const marked =
    size_mm2 !== undefined
      ? `${size_mm2} mm²`
      : size_AWG !== undefined
        ? `${size_AWG} AWG`
        : `${+(area * 1e6).toPrecision(3)} mm² of metal`;
  return { area, marked };
}

/** The standard's greatest resistance, where the conductor is of a standard size and nothing else is known of its area. */
function tableOf(spec: ConductorSpec, metal: Metal, kind: ConductorClass): TableResistance | undefined {
  if (spec.size_mm2 === undefined || spec.strands || spec.area_mm2 !== undefined) return undefined;
  if (metal === metals.copper) return tableResistance(spec.size_mm2, kind, 'copper', spec.finish === 'tinned');
  return metal === metals.aluminium ? tableResistance(spec.size_mm2, kind, 'aluminium') : undefined;
}

/**
 * A conductor from what is known of it. R20 is, in this order: measured; the IEC 60228 maximum (copper or aluminium of a
 * standard size with no other area given); ρ20/area · lay.
 */
export function conductorOf(spec: ConductorSpec, path: string): Conductor {
  const metal = metalOf(spec.metal);
  const { area, marked } = areaOf(spec, path);
  const kind = spec.class ?? 5;
  const solid = kind === 1;
  const lay = spec.lay ?? (solid ? 1 : strandedLay);
  const rc =
    spec.bundle_mm !== undefined
      ? metres(spec.bundle_mm) / 2
      : Math.sqrt(area / Math.PI) * (solid ? 1 : strandedSpread);
  if (Math.PI * rc * rc < area * 0.999)
    throw new ScenarioFault(
      `${path}.bundle_mm`,
      `is ${spec.bundle_mm} mm, too thin to hold ${+(area * 1e6).toPrecision(3)} mm² of metal`,
    );
  const measured = spec.R20_ohmPerKm;
  const table = tableOf(spec, metal, kind);
  const R20 =
    measured !== undefined
      ? ohmsPerMetre(measured)
      : table
        ? ohmsPerMetre(table.R20_ohmPerKm)
        : (metal.rho20.value / area) * lay;
  const basis =
    measured !== undefined
      ? 'measured or given'
      : table
        ? `greatest of IEC 60228, class ${kind}${spec.finish === 'tinned' ? ', tinned' : ''}`
        : 'resistivity over area, with lay';
  return {
    metal,
    area,
    rc,
    R20,
    alpha20: metal.alpha20.value,
    beta20: metal.beta20.value + (spec.law === 'curved' ? (metal.curvature?.value ?? 0) : 0),
    lay,
    heatCapacity: area * lay * metal.heatCapacity.value,
    basis,
    marked,
  };
}

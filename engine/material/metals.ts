import { kelvin } from '../quantity.ts';
import type { SourceId } from '../sources.ts';
import { type Confidence, type Property, property } from './property.ts';

/** A conductor metal. Resistivity follows ρ(θ) = ρ20 (1 + α20 (θ − 20) + β20 (θ − 20)²); heat capacity is per volume. */
export interface Metal {
  readonly id: string;
  readonly name: string;
  readonly rho20: Property;
  readonly alpha20: Property;
  /** Curvature of the straight line the standards use; 0 unless a curved law is asked for. */
  readonly beta20: Property;
  /** Curvature that fits measured resistivity up to melting, where one is known. */
  readonly curvature?: Property;
  readonly density: Property;
  readonly heatCapacity: Property;
  readonly conductivity: Property;
  /** Where the metal (or the inner metal of a clad wire) begins to melt [K]. */
  readonly melting: Property;
  /** Total emissivity of the bare, handled (dull) surface; dimensionless. */
  readonly emissivity: Property;
  readonly magnetic: boolean;
  /** Where the straight line is taken as sound [K]; beyond it results are marked indicative. */
  readonly range: readonly [number, number];
}

const ohmMetre = (v: number, u: number, s: SourceId, c: Confidence, w?: string) => property('Ω·m', v, u, s, c, w);
const perKelvin = (v: number, u: number, s: SourceId, c: Confidence, w?: string) => property('1/K', v, u, s, c, w);
const perKelvin2 = (v: number, u: number, s: SourceId, c: Confidence, w?: string) => property('1/K²', v, u, s, c, w);
const density = (v: number, u: number, s: SourceId, c: Confidence, w?: string) => property('kg/m³', v, u, s, c, w);
const volumetric = (v: number, u: number, s: SourceId, c: Confidence, w?: string) =>
  property('J/(m³·K)', v, u, s, c, w);
const conductivity = (v: number, u: number, s: SourceId, c: Confidence, w?: string) =>
  property('W/(m·K)', v, u, s, c, w);
const degrees = (T_degC: number, u: number, s: SourceId, c: Confidence, w?: string) =>
  property('K', kelvin(T_degC), u, s, c, w);

const straight = perKelvin2(0, 0, 'iec60287-1-1', 'seen', 'the straight line of the standards');
const dull = (v: number, u: number, w?: string) => property('1', v, u, 'emissivityTables', 'seen', w);
const trusted = [kelvin(-40), kelvin(400)] as const;

/** Standard annealed copper (100 % IACS). */
export const copper: Metal = {
  id: 'copper',
  name: 'copper',
  rho20: ohmMetre(1 / 58e6, 0, 'iec60028', 'seen', '1/58 Ω·mm²/m, exact by definition'),
  alpha20: perKelvin(3.93e-3, 1e-5, 'iec60028', 'seen'),
  beta20: straight,
  curvature: perKelvin2(6.0e-7, 1e-7, 'matula1979', 'computed', 'fitted to 400–1000 K'),
  density: density(8890, 20, 'iec60028', 'from memory'),
  heatCapacity: volumetric(3.45e6, 5e4, 'iec60949', 'seen', 'Table I; IEC 60364-5-54 Table A.54.1'),
  conductivity: conductivity(391, 10, 'incropera', 'from memory', 'Table A.1'),
  melting: degrees(1083, 1, 'iec60949', 'from memory', 'as used in fusing formulas'),
  emissivity: dull(0.65, 0.03, 'oxidised copper 0.6–0.7'),
  magnetic: false,
  range: trusted,
};

/** Electrical-grade aluminium (61 % IACS). */
export const aluminium: Metal = {
  id: 'aluminium',
  name: 'aluminium',
  rho20: ohmMetre(2.8264e-8, 3e-10, 'iec60889', 'seen'),
  alpha20: perKelvin(4.03e-3, 2e-5, 'iec60287-1-1', 'seen', 'Table 1'),
  beta20: straight,
  curvature: perKelvin2(1.0e-6, 3e-7, 'desai1984', 'from memory', 'fitted to 500–800 K'),
  density: density(2703, 5, 'iec60889', 'from memory'),
  heatCapacity: volumetric(2.5e6, 5e4, 'iec60949', 'seen', 'Table I'),
  conductivity: conductivity(234, 5, 'incropera', 'from memory', 'Table A.1'),
  melting: degrees(646, 8, 'incropera', 'from memory', 'solidus of the 1350 grade'),
  emissivity: dull(0.25, 0.03, 'heavily oxidised 0.20–0.31'),
  magnetic: false,
  range: trusted,
};

/** Mild steel, as in cable armour. */
export const steel: Metal = {
  id: 'steel',
  name: 'mild steel',
  rho20: ohmMetre(1.38e-7, 8e-9, 'iec60949', 'seen', 'Table I'),
  alpha20: perKelvin(4.5e-3, 5e-4, 'iec60287-1-1', 'from memory', 'Table 1'),
  beta20: straight,
  curvature: perKelvin2(1.0e-5, 3e-6, 'crc', 'from memory', 'pure iron, 500–800 K'),
  density: density(7860, 30, 'incropera', 'from memory', 'Table A.1'),
  heatCapacity: volumetric(3.8e6, 1e5, 'iec60949', 'seen', 'Table I'),
  conductivity: conductivity(60, 10, 'incropera', 'from memory', 'Table A.1'),
  melting: degrees(1480, 40, 'incropera', 'from memory'),
  emissivity: dull(0.8, 0.1, 'oxidised steel 0.5–0.95'),
  magnetic: true,
  range: trusted,
};

/** Cartridge brass (28 % IACS). */
export const brass: Metal = {
  id: 'brass',
  name: 'brass',
  rho20: ohmMetre(6.2e-8, 3e-9, 'incropera', 'from memory', 'Table A.1'),
  alpha20: perKelvin(1.5e-3, 2e-4, 'crc', 'from memory'),
  beta20: straight,
  density: density(8530, 30, 'incropera', 'from memory', 'Table A.1'),
  heatCapacity: volumetric(8530 * 380, 1e5, 'incropera', 'from memory', 'Table A.1: 380 J/(kg·K)'),
  conductivity: conductivity(115, 5, 'incropera', 'from memory', 'Table A.1'),
  melting: degrees(915, 15, 'crc', 'from memory', 'solidus'),
  emissivity: dull(0.22, 0.03, 'dull, tarnished'),
  magnetic: false,
  range: trusted,
};

/** Tin, for the coating of tinned strands (its own resistivity is higher than copper's, so a coated table maximum is too). */
export const tin: Metal = {
  id: 'tin',
  name: 'tin',
  rho20: ohmMetre(1.15e-7, 3e-9, 'crc', 'from memory'),
  alpha20: perKelvin(4.4e-3, 2e-4, 'crc', 'from memory'),
  beta20: straight,
  density: density(7310, 20, 'crc', 'from memory'),
  heatCapacity: volumetric(7310 * 227, 5e4, 'incropera', 'from memory', 'Table A.1: 227 J/(kg·K)'),
  conductivity: conductivity(66.6, 2, 'incropera', 'from memory', 'Table A.1'),
  melting: degrees(231.9, 0.1, 'crc', 'from memory'),
  emissivity: property('1', 0.05, 0.01, 'crc', 'from memory', 'bright tin'),
  magnetic: false,
  range: [kelvin(-40), kelvin(230)],
};

/**
 * Two metals in parallel, volume fraction `f` of `skin` round `inner`: conductivities, densities and heat capacities add by
 * volume, σ20 α = f σs αs + (1 − f) σi αi, and the curvature follows from expanding 1/ρ to second order. Melting is the
 * lower of the two. Our mixing rule, in no standard.
 */
export function clad(id: string, name: string, skin: Metal, inner: Metal, f: number): Metal {
  const sigmaSkin = f / skin.rho20.value;
  const sigmaInner = (1 - f) / inner.rho20.value;
  const sigma = sigmaSkin + sigmaInner;
  const share = (a: number, b: number) => (sigmaSkin * a + sigmaInner * b) / sigma;
  const volume = (a: Property, b: Property) => f * a.value + (1 - f) * b.value;
  const alpha = share(skin.alpha20.value, inner.alpha20.value);
  const beta = (bs: number, bi: number) =>
    alpha ** 2 - share(skin.alpha20.value ** 2 - bs, inner.alpha20.value ** 2 - bi);
  const mixed = (unit: string, value: number, u: number) =>
    property(unit, value, u, 'own', 'computed', 'parallel mixing');
  return {
    id,
    name,
    rho20: mixed('Ω·m', 1 / sigma, 0.02 / sigma),
    alpha20: mixed('1/K', alpha, 5e-5),
    beta20: straight,
    curvature: mixed('1/K²', beta(skin.curvature?.value ?? 0, inner.curvature?.value ?? 0), 3e-7),
    density: mixed('kg/m³', volume(skin.density, inner.density), 20),
    heatCapacity: mixed('J/(m³·K)', volume(skin.heatCapacity, inner.heatCapacity), 5e4),
    conductivity: mixed('W/(m·K)', volume(skin.conductivity, inner.conductivity), 10),
    melting: skin.melting.value < inner.melting.value ? skin.melting : inner.melting,
    emissivity: skin.emissivity,
    magnetic: skin.magnetic || inner.magnetic,
    range: trusted,
  };
}

/** Copper-clad aluminium with 10 % copper by volume. */
export const cca10: Metal = clad('cca10', 'copper-clad aluminium, 10 % copper', copper, aluminium, 0.1);

/** Copper-clad aluminium with 15 % copper by volume. */
export const cca15: Metal = clad('cca15', 'copper-clad aluminium, 15 % copper', copper, aluminium, 0.15);

/**
 * Tinned copper wire, 3 % tin by volume: a coat of 1.5 µm on a wire of 0.2 mm. The share is our choice: by mixing it gives 2.6 % more
 * resistance than plain copper, and IEC 60228 allows coated flexible conductors 1.9 to 3.0 % more. In a scenario it is a
 * finish of copper, no metal of its own.
 */
export const tinnedCopper: Metal = {
  ...clad('tinnedCopper', 'tinned copper', tin, copper, 0.03),
  melting: copper.melting,
};

/** A copper-clad steel grade: resistivity and density are the grade's own limits, not a mixing. */
function cladSteel(id: string, grade: string, rho: Property, rhoMass: Property, k: number): Metal {
  return {
    id,
    name: `copper-clad steel, ${grade}`,
    rho20: rho,
    alpha20: perKelvin(3.78e-3, 1e-4, 'ieee80', 'from memory', 'Table 1'),
    beta20: straight,
    density: rhoMass,
    heatCapacity: volumetric(3.85e6, 1e5, 'ieee80', 'from memory', 'Table 1'),
    conductivity: conductivity(k, k / 4, 'own', 'our choice', 'rough: does not enter the heat model'),
    melting: degrees(1083, 5, 'ieee80', 'from memory', 'the copper skin'),
    emissivity: dull(0.65, 0.03, 'oxidised copper 0.6–0.7'),
    magnetic: true,
    range: trusted,
  };
}

/** Copper-clad steel, 40 % grade. */
export const ccs40: Metal = cladSteel(
  'ccs40',
  '40 % grade',
  ohmMetre(4.397e-8, 5e-10, 'astmB227', 'seen', 'limit, 39.21 % IACS'),
  density(8240, 30, 'astmB227', 'from memory'),
  150,
);
/** Copper-clad steel, 30 % grade. */
export const ccs30: Metal = cladSteel(
  'ccs30',
  '30 % grade',
  ohmMetre(5.862e-8, 6e-10, 'astmB227', 'seen', 'limit, 29.41 % IACS'),
  density(8150, 30, 'astmB227', 'seen'),
  120,
);
/** Copper-clad steel, 21 % grade. */
export const ccs21: Metal = cladSteel(
  'ccs21',
  '21 % grade',
  ohmMetre(8.367e-8, 9e-10, 'astmB869', 'seen', 'limit, 20.61 % IACS'),
  density(7990, 30, 'astmB869', 'from memory'),
  90,
);

/** Every conductor metal by its id. */
export const metals = { copper, aluminium, cca10, cca15, ccs40, ccs30, ccs21, steel, brass } as const;

/** The id of a tabled metal. */
export type MetalId = keyof typeof metals;

import type { Cable } from '../cable/cable.ts';
import { OutOfRange } from '../errors.ts';
import { kelvin, metres } from '../quantity.ts';
import { ScenarioFault } from '../scenario/fault.ts';
import type { SurroundingsSpec } from '../scenario/schema.ts';
import { type Arrangement, arrangements, clipped, draught, stillAir, stillBelow } from './air-laws.ts';
import { coilEffect, layersFor } from './coil.ts';
import { behindResistance, type SurfaceLaw } from './law.ts';

/** A solid ring of the cable or round it, outward from r0 to r1 [m]. */
export interface Ring {
  readonly name: string;
  readonly r0: number;
  readonly r1: number;
  /** Conductivity [W/(m·K)]. */
  readonly k: number;
  /** Heat capacity per volume [J/(m³·K)]. */
  readonly rhoC: number;
}

/** Thermal resistance of a ring, ln(r1/r0)/2πk [K·m/W]. */
export const ringResistance = ({ r0, r1, k }: Ring): number => Math.log(r1 / r0) / (2 * Math.PI * k);

/** What lies beyond the cable's own surface: rings that hold heat, a massless resistance, and the law of the outside. */
export interface Outside {
  readonly Ta: number;
  readonly rings: readonly Ring[];
  /** Massless resistance between the last ring and the outside [K·m/W]; 0 but for a coil. */
  readonly series: number;
  /** Heat shed at the temperature of the outside. */
  readonly law: SurfaceLaw;
  /** Emissivity times the area that radiates, per metre of cable [m]; null where the law holds its radiation unsplit. */
  readonly radiates: number | null;
  /** Heat shed at the temperature of the last solid node, resistance included. */
  readonly flow: SurfaceLaw;
  /** Temperature of the outside, given that of the last solid node [K]. */
  readonly outsideOf: (T: number) => number;
  /** A sentence for the reader: 'still air, 20 °C'. */
  readonly words: string;
}

/** Conductivity of a wound coil where none is given, and the honest range about it [W/(m·K)] (own choice, heat-model section 3). */
export const coilConductivity = 0.17;
export const coilConductivities = { least: 0.13, most: 0.28 } as const;
/** Heat capacity of loose lagging where none is given [J/(m³·K)] (common practice, no source). */
const laggingHeatCapacity = 5e4;

const direct = (
  Ta: number,
  law: SurfaceLaw,
  radiates: number | null,
  words: string,
  rings: readonly Ring[] = [],
): Outside => ({
  Ta,
  rings,
  series: 0,
  law,
  radiates,
  flow: law,
  outsideOf: (T) => T,
  words,
});

/** The surroundings of `cable` put together from their description; throws `ScenarioFault` where they cannot be. */
export function outsideOf(spec: SurroundingsSpec, cable: Cable, length: number): Outside {
  const Ta = kelvin(spec.ambient_degC);
  const De = 2 * cable.outerRadius;
  const at = `${spec.ambient_degC} °C`;
  if (spec.kind === 'clipped') {
    const named = spec.arrangement ?? 'clipped';
    const constants: Arrangement =
      typeof named === 'string'
        ? arrangements[named as keyof typeof arrangements]
        : { name: 'by own constants', ...named };
    return direct(Ta, clipped(De, constants, Ta), null, `${constants.name}, ${at}`);
  }
  const correlation = spec.convection ?? 'kuehnGoldstein';
  const emissivity = spec.emissivity ?? (spec.kind === 'lagged' ? 0.9 : cable.emissivity);
  const own = { diameter: De, perimeter: Math.PI * De, emissivity, Ta };
  const radiates = emissivity * own.perimeter;
  switch (spec.kind) {
    case 'stillAir':
      return direct(Ta, stillAir(own, correlation), radiates, `still air, ${at}`);
    case 'draught': {
      const words = spec.speed_mPerS < stillBelow ? `still air, ${at}` : `draught of ${spec.speed_mPerS} m/s, ${at}`;
      return direct(Ta, draught(own, spec.speed_mPerS, correlation), radiates, words);
    }
    case 'lagged': {
      const r1 = cable.outerRadius + metres(spec.thickness_mm);
      const rhoC = (spec.heatCapacity_MJPerM3K ?? laggingHeatCapacity / 1e6) * 1e6;
      const ring = { name: 'lagging', r0: cable.outerRadius, r1, k: spec.conductivity_WPerMK, rhoC };
      const round = { diameter: 2 * r1, perimeter: 2 * Math.PI * r1, emissivity, Ta };
      const law = draught(round, spec.speed_mPerS ?? 0, correlation);
      return direct(Ta, law, emissivity * round.perimeter, `under ${spec.thickness_mm} mm of lagging, ${at}`, [ring]);
    }
    case 'coiled':
      return coiled(spec, own, correlation, length);
  }
}

function coiled(
  spec: Extract<SurroundingsSpec, { kind: 'coiled' }>,
  own: { diameter: number; emissivity: number; Ta: number },
  correlation: 'kuehnGoldstein' | 'churchillChu',
  length: number,
): Outside {
  const De = own.diameter;
  const wound = spec.wound_m ?? length;
  const drum = metres(spec.drum_mm);
  const layers = spec.layers ?? layersFor(wound, drum, spec.turns, De);
  const effect = windOn({
    drum,
    turns: spec.turns,
    layers,
    length: wound,
    De,
    k: spec.conductivity_WPerMK ?? coilConductivity,
    openFlanges: spec.openFlanges ?? false,
  });
  const { diameter, perimeter, resistance: series } = effect;
  const law = stillAir({ diameter, perimeter, emissivity: own.emissivity, Ta: own.Ta }, correlation);
  const outside = (T: number) => behindResistance(law, T, series, own.Ta);
  return {
    Ta: own.Ta,
    rings: [],
    series,
    law,
    radiates: own.emissivity * perimeter,
    flow: series > 0 ? (T) => (T - outside(T)) / series : law,
    outsideOf: outside,
    words: `${wound} m wound in ${+layers.toFixed(1)} layers, ${spec.ambient_degC} °C`,
  };
}

function windOn(coil: Parameters<typeof coilEffect>[0]) {
  try {
    return coilEffect(coil);
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    throw new ScenarioFault(
      'surroundings',
      `winds ${error.value} m, but ${+coil.layers.toFixed(2)} layers of ${coil.turns} turns hold at most ${error.range[1].toFixed(1)} m`,
    );
  }
}

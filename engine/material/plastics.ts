import { kelvin } from '../quantity.ts';
import type { SourceId } from '../sources.ts';
import { type Limit, insulationLimit as limit } from './limits.ts';
import { type Confidence, type Property, property } from './property.ts';

/** Ageing by one thermally activated process: life L(θ) = lifeAtRef · exp(activationEnergy/R · (1/T − 1/refTemperature)). */
export interface Ageing {
  readonly activationEnergy: Property;
  readonly refTemperature: Property;
  readonly lifeAtRef: Property;
}

/** An insulating or sheathing compound. `rhoT` is thermal resistivity (1/k), heat capacity is per volume. */
export interface Plastic {
  readonly id: string;
  readonly name: string;
  readonly rhoT: Property;
  readonly heatCapacity: Property;
  readonly density: Property;
  readonly emissivity: Property;
  readonly limits: readonly Limit[];
  readonly ageing?: Ageing;
}

const rhoT = (v: number, u: number, c: Confidence = 'from memory', s: SourceId = 'iec60287-2-1', w = 'Table 1') =>
  property('K·m/W', v, u, s, c, w);
const volumetric = (v: number, s: SourceId = 'iec60853-2', c: Confidence = 'from memory') =>
  property('J/(m³·K)', v, v * 0.06, s, c);
const density = (v: number, u: number) => property('kg/m³', v, u, 'polymerHandbook', 'from memory');
const emissivity = property('1', 0.9, 0.03, 'emissivityTables', 'seen', 'plastics in general 0.85–0.95');

const pvcFire = [
  limit('fumes', [200, 250], 'acid fume given off in air', 'minutes', 'pvcEvolvedGas', 'from memory'),
  limit(
    'ignition',
    [391, 454],
    'piloted (seen), then self ignition (from memory)',
    'minutes',
    'astmD1929',
    'from memory',
  ),
];
const pvcSoftening = limit(
  'softening',
  [80, 120],
  'hot pressure; depends on the compound',
  'hours, then minutes',
  'en50363-3',
  'from memory',
);
const fiveSeconds = (T_degC: number, c: Confidence, s: SourceId = 'iec60364-4-43') =>
  limit('shortTime', T_degC, 'final temperature of a short circuit', '5 s at most', s, c);

/** PVC for 70 °C, as in ordinary cords and fixed wiring. */
export const pvc70: Plastic = {
  id: 'pvc70',
  name: 'PVC, 70 °C',
  rhoT: rhoT(5.0, 0.4),
  heatCapacity: volumetric(1.7e6),
  density: density(1400, 60),
  emissivity,
  limits: [
    limit('rating', 70, 'continuous, for a long life', 'continuous', 'en50363-3', 'seen'),
    pvcSoftening,
    fiveSeconds(160, 'seen', 'iec60724'),
    ...pvcFire,
  ],
  ageing: {
    activationEnergy: property(
      'J/mol',
      98e3,
      2e3,
      'ekelund2007',
      'seen',
      'plasticiser loss by evaporation, up to 100 °C',
    ),
    refTemperature: property('K', kelvin(70), 0, 'own', 'our choice', 'the rating'),
    lifeAtRef: property('s', 20_000 * 3600, 0, 'iec60216', 'from memory', 'temperature index is defined at 20 000 h'),
  },
};

/** PVC for 90 °C. */
export const pvc90: Plastic = {
  id: 'pvc90',
  name: 'PVC, 90 °C',
  rhoT: rhoT(5.0, 0.4),
  heatCapacity: volumetric(1.7e6),
  density: density(1400, 60),
  emissivity,
  limits: [
    limit('rating', 90, 'continuous, for a long life', 'continuous', 'en50363-3', 'seen'),
    limit(
      'softening',
      [90, 120],
      'hot pressure; depends on the compound',
      'hours, then minutes',
      'en50363-3',
      'from memory',
    ),
    fiveSeconds(160, 'seen'),
    ...pvcFire,
  ],
};

/** Cross-linked polyethylene. */
export const xlpe: Plastic = {
  id: 'xlpe',
  name: 'XLPE, 90 °C',
  rhoT: rhoT(3.5, 0.3),
  heatCapacity: volumetric(2.4e6),
  density: density(925, 5),
  emissivity,
  limits: [
    limit('rating', 90, 'continuous, for a long life', 'continuous', 'iec60364-5-52', 'seen'),
    fiveSeconds(250, 'seen'),
    limit('ignition', [341, 357], 'piloted ignition of polyethylene', 'minutes', 'astmD1929', 'seen'),
  ],
};

/** Ethylene-propylene rubber. */
export const epr: Plastic = {
  id: 'epr',
  name: 'EPR, 90 °C',
  rhoT: rhoT(3.5, 0.3),
  heatCapacity: volumetric(2.0e6),
  density: density(1275, 40),
  emissivity,
  limits: [
    limit('rating', 90, 'continuous, for a long life', 'continuous', 'iec60364-5-52', 'seen'),
    fiveSeconds(250, 'seen'),
    limit('ignition', 330, 'damage or ignition of thermosets in fire tests', 'minutes', 'nureg6850', 'from memory'),
  ],
};

/** Ordinary rubber for 60 °C, as in rubber cords. */
export const rubber60: Plastic = {
  id: 'rubber60',
  name: 'rubber, 60 °C',
  rhoT: rhoT(5.0, 0.4),
  heatCapacity: volumetric(2.0e6),
  density: density(1300, 100),
  emissivity: property('1', 0.94, 0.02, 'emissivityTables', 'seen', 'hard black rubber'),
  limits: [
    limit('rating', 60, 'continuous, for a long life', 'continuous', 'iec60364-4-43', 'seen'),
    fiveSeconds(200, 'seen'),
    limit('ignition', [260, 316], 'self ignition', 'minutes', 'astmD1929', 'from memory'),
  ],
};

/** Silicone rubber. */
export const silicone: Plastic = {
  id: 'silicone',
  name: 'silicone rubber, 180 °C',
  rhoT: rhoT(4.5, 0.3, 'from memory', 'polymerHandbook', 'k 0.20–0.25 W/(m·K)'),
  heatCapacity: volumetric(1.7e6, 'polymerHandbook'),
  density: density(1200, 30),
  emissivity,
  limits: [
    limit('rating', 180, 'continuous, for a long life', 'continuous', 'iec60364-4-43', 'seen'),
    fiveSeconds(350, 'seen'),
  ],
};

/** PTFE, a fluoropolymer. */
export const ptfe: Plastic = {
  id: 'ptfe',
  name: 'PTFE, 250 °C',
  rhoT: rhoT(4.0, 0.2, 'from memory', 'polymerHandbook', 'k 0.25 W/(m·K)'),
  heatCapacity: volumetric(2.2e6, 'polymerHandbook'),
  density: density(2175, 15),
  emissivity,
  limits: [
    limit('rating', [250, 260], 'continuous', 'continuous', 'polymerHandbook', 'from memory'),
    limit('melting', [327, 335], 'melting of the polymer', 'seconds', 'polymerHandbook', 'from memory'),
  ],
};

/** FEP, a fluoropolymer. */
export const fep: Plastic = {
  id: 'fep',
  name: 'FEP, 200 °C',
  rhoT: rhoT(5.0, 0.2, 'from memory', 'polymerHandbook', 'k 0.20 W/(m·K)'),
  heatCapacity: volumetric(2.4e6, 'polymerHandbook'),
  density: density(2150, 15),
  emissivity,
  limits: [
    limit('rating', [200, 205], 'continuous', 'continuous', 'polymerHandbook', 'from memory'),
    limit('melting', [260, 270], 'melting of the polymer', 'seconds', 'polymerHandbook', 'from memory'),
  ],
};

/** Every tabled insulation by its id. */
export const plastics = { pvc70, pvc90, xlpe, epr, rubber60, silicone, ptfe, fep } as const;

/** The id of a tabled insulation. */
export type PlasticId = keyof typeof plastics;

import type { CableSpec, Scenario } from '../scenario/schema.ts';

// The standing cast: invented leads that lessons, questions and the briefing share. Walls of C125 and of the AWG cords are
// from memory; the uncertainty of their diameter is carried into their results.

const cord = (size_mm2: number): CableSpec => ({ table: 'H05VV-F', cores: 3, size_mm2, loaded: 2 });
const americanCord = (size_AWG: number): CableSpec => ({ table: 'SJT', cores: 3, size_AWG, loaded: 2 });

/** The suspect lead: 24 strands of 0.20 mm aluminium with a tenth of copper round them, whatever it is marked. */
const suspect = (marked: { size_mm2: number } | { size_AWG: number }): Exclude<CableSpec, { table: string }> => ({
  layout: 'round',
  cores: 3,
  loaded: 2,
  conductor: { metal: 'cca10', ...marked, strands: { count: 24, diameter_mm: 0.2 } },
  insulation: { material: 'pvc70', thickness_mm: 0.85 },
  sheath: { material: 'pvc70', thickness_mm: 0.9 },
});

/** The cast by its keys: C for copper cords in mm² × 100, A for AWG cords, SUS and A16S for the suspect as it is marked. */
export const cast = {
  C075: cord(0.75),
  C100: cord(1),
  C125: {
    layout: 'round',
    cores: 3,
    loaded: 2,
    conductor: { size_mm2: 1.25 },
    insulation: { material: 'pvc70', thickness_mm: 0.65 },
    sheath: { material: 'pvc70', thickness_mm: 0.85 },
  },
  C150: cord(1.5),
  A18: americanCord(18),
  A16: americanCord(16),
  A14: americanCord(14),
  SUS: suspect({ size_mm2: 1.5 }),
  A16S: suspect({ size_AWG: 16 }),
} as const satisfies Record<string, CableSpec>;

/** A key of the cast. */
export type CastKey = keyof typeof cast;

/** A member of the cast in still air at `ambient_degC`, carrying `I_A` for `duration_s`. */
export function castScenario(key: CastKey, I_A: number, ambient_degC: number, duration_s = 1800): Scenario {
  return {
    cable: cast[key],
    practice: key.startsWith('A') ? 'na' : 'iec',
    surroundings: { kind: 'stillAir', ambient_degC },
    supply: [{ kind: 'current', I_A }],
    run: { duration_s },
  };
}

const overRatedThenOff = (I_A: number): Scenario['supply'] => [
  { kind: 'current', I_A, duration_s: 1800 },
  { kind: 'off', duration_s: 900 },
];

/** The case the bench opens with, by practice: an ordinary cord run over its rating, then let cool. */
export const benchStart: Readonly<Record<'iec' | 'na', Scenario>> = {
  iec: {
    version: 1,
    title: 'Three-core cord, two cores loaded',
    practice: 'iec',
    cable: cast.C075,
    lead: { length_m: 10 },
    surroundings: { kind: 'stillAir', ambient_degC: 20 },
    supply: overRatedThenOff(18),
  },
  na: {
    version: 1,
    title: 'Three-conductor cord, two loaded',
    practice: 'na',
    cable: cast.A18,
    lead: { length_m: 7.62 },
    surroundings: { kind: 'stillAir', ambient_degC: 20 },
    supply: overRatedThenOff(20),
  },
};

const planned = (amps: readonly number[], cable: CableSpec, length_m: number, practice: 'iec' | 'na'): Scenario => ({
  version: 1,
  practice,
  cable,
  lead: { length_m },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: amps.map((I_A) => ({ kind: 'current', I_A, compliance_V: 15, duration_s: 900 })),
});

/** The case a test plan begins with, by practice: the suspect lead in rising steps, each for a quarter of an hour. */
export const planStart: Readonly<Record<'iec' | 'na', Scenario>> = {
  iec: planned([4, 6, 8, 10, 12], cast.SUS, 8, 'iec'),
  na: planned([4, 6, 8, 10], cast.A16S, 7.62, 'na'),
};

import type { Scenario } from '#engine/scenario/schema.ts';

const air = (ambient_degC = 20) => ({ kind: 'stillAir', ambient_degC }) as const;
const held = (I_A: number, duration_s?: number) =>
  duration_s === undefined ? ({ kind: 'current', I_A } as const) : ({ kind: 'current', I_A, duration_s } as const);
const cord = (cores: number, size_mm2: number, table = 'H05VV-F') => ({ table, cores, size_mm2 });
const pvcWire = (size_mm2: number, thickness_mm: number, metal = 'copper') => ({
  layout: 'single' as const,
  conductor: { metal, size_mm2 },
  insulation: { material: 'pvc70', thickness_mm },
});
const bare = (size_mm2: number, metal = 'copper') =>
  ({ layout: 'single', conductor: { metal, size_mm2, class: 1 }, insulation: null }) as const;
const hour = { duration_s: 3600 };

/** Cases of every kind the engine takes, by name: cables, surroundings, supplies, starts and lengths of time. */
export const cases: Readonly<Record<string, Scenario>> = {
  'three-core 0.75 mm² cord, 13 A': { cable: cord(3, 0.75), surroundings: air(), supply: [held(13)], run: hour },
  'two-core 0.5 mm² cord, 5 A': { cable: cord(2, 0.5, 'H03VV-F'), surroundings: air(), supply: [held(5)], run: hour },
  'two-core 1.0 mm² cord, 25 A': { cable: cord(2, 1), surroundings: air(), supply: [held(25)], run: hour },
  'three-core 1.5 mm² cord, 32 A': { cable: cord(3, 1.5), surroundings: air(), supply: [held(32)], run: hour },
  'three-core 2.5 mm² cord, 60 A': { cable: cord(3, 2.5), surroundings: air(), supply: [held(60)], run: hour },
  'three-core 4 mm² cord, 40 A': { cable: cord(3, 4), surroundings: air(), supply: [held(40)], run: hour },
  'four-core cord, three loaded': {
    cable: { ...cord(4, 1.5), loaded: 3 },
    surroundings: air(),
    supply: [held(20)],
    run: hour,
  },
  'five-core cord, one loaded': {
    cable: { ...cord(5, 1.5), loaded: [2] },
    surroundings: air(),
    supply: [held(30)],
    run: hour,
  },
  'five-core cord, all loaded': {
    cable: { ...cord(5, 2.5), loaded: 5 },
    surroundings: air(30),
    supply: [held(25)],
    run: hour,
  },
  'heavy rubber 25 mm², 120 A': {
    cable: cord(3, 25, 'H07RN-F'),
    surroundings: air(),
    supply: [held(120)],
    run: { duration_s: 14_400 },
  },
  'AWG 16 cord, 13 A': {
    cable: { table: 'SJT', cores: 3, size_AWG: 16 },
    surroundings: air(),
    supply: [held(13)],
    run: hour,
  },
  'AWG 10 cord, 60 A': {
    cable: { table: 'SJT', cores: 2, size_AWG: 10 },
    surroundings: air(25),
    supply: [held(60)],
    run: hour,
  },
  'single wire 1.5 mm², 25 A': { cable: pvcWire(1.5, 0.7), surroundings: air(), supply: [held(25)], run: hour },
  'single wire 35 mm², 250 A': {
    cable: pvcWire(35, 1.2),
    surroundings: air(),
    supply: [held(250)],
    run: { duration_s: 14_400 },
  },
  'thick wall of an insulation by values': {
    cable: {
      layout: 'single',
      conductor: { size_mm2: 0.5 },
      insulation: { material: { rhoT_KmPerW: 8, heatCapacity_MJPerM3K: 3 }, thickness_mm: 6 },
      sheath: { material: 'rubber60', thickness_mm: 2 },
    },
    surroundings: air(),
    supply: [held(15)],
    run: { duration_s: 14_400 },
  },
  'bare copper 1.5 mm², 30 A': { cable: bare(1.5), surroundings: air(), supply: [held(30)], run: hour },
  'bare steel of curved law, glowing': {
    cable: { ...bare(1, 'steel'), conductor: { metal: 'steel', size_mm2: 1, class: 1, law: 'curved' } },
    surroundings: air(),
    supply: [held(14)],
    run: hour,
  },
  'flat cord, 10 A': { cable: cord(2, 0.75, 'H03VVH2-F'), surroundings: air(), supply: [held(10)], run: hour },
  'flat three-core by own values': {
    cable: {
      layout: 'flat',
      cores: 3,
      loaded: [0, 2],
      conductor: { size_mm2: 2.5, class: 1 },
      insulation: { material: 'pvc70', thickness_mm: 0.8 },
      sheath: { material: 'pvc70', thickness_mm: 1.4 },
    },
    surroundings: { kind: 'clipped', ambient_degC: 25 },
    supply: [held(30)],
    run: hour,
  },
  'lagged by 50 mm': {
    cable: cord(3, 1.5),
    surroundings: { kind: 'lagged', ambient_degC: 20, thickness_mm: 50, conductivity_WPerMK: 0.04 },
    supply: [held(13)],
    run: { duration_s: 14_400 },
  },
  'in a draught of 3 m/s': {
    cable: cord(3, 1),
    surroundings: { kind: 'draught', ambient_degC: 10, speed_mPerS: 3 },
    supply: [held(30)],
    run: hour,
  },
  'clipped to a wall': {
    cable: cord(3, 1.5),
    surroundings: { kind: 'clipped', ambient_degC: 20 },
    supply: [held(20)],
    run: hour,
  },
  'coiled in four layers': {
    cable: cord(3, 1.5),
    lead: { length_m: 25 },
    surroundings: { kind: 'coiled', ambient_degC: 20, drum_mm: 150, turns: 14, wound_m: 25 },
    supply: [held(10)],
    run: { duration_s: 14_400 },
  },
  'short circuit, 1000 A on 1 mm², to melting': {
    cable: cord(2, 1),
    surroundings: air(),
    supply: [held(1000)],
    run: { duration_s: 5 },
  },
  'short circuit of 100 ms, then cooling': {
    cable: cord(3, 1.5),
    surroundings: air(),
    supply: [held(600, 0.1), { kind: 'off' }],
    start: { steadyAt_A: 16 },
    run: { duration_s: 600 },
  },
  'short circuit of 20 ms on 35 mm²': {
    cable: pvcWire(35, 1.2),
    surroundings: air(),
    supply: [held(20_000, 0.02), { kind: 'off' }],
    run: { duration_s: 60 },
  },
  'on and off, ten minutes each': {
    cable: cord(3, 0.75),
    surroundings: air(),
    supply: [held(16, 600), { kind: 'off', duration_s: 600 }],
    cycles: 6,
  },
  'fast cycles of one second': {
    cable: pvcWire(0.5, 0.6),
    surroundings: air(),
    supply: [held(40, 0.3), { kind: 'off', duration_s: 0.7 }],
    cycles: 60,
  },
  'cold start 60 K below ambient': {
    cable: cord(3, 1.5),
    surroundings: air(30),
    supply: [held(10)],
    start: { T_degC: -30 },
    run: hour,
  },
  'hot all through, 150 °C, let cool': {
    cable: cord(3, 1.5),
    surroundings: air(),
    supply: [{ kind: 'off' }],
    start: { T_degC: 150 },
    run: hour,
  },
  'hot all through, 500 °C, let cool': {
    cable: cord(3, 1.5),
    surroundings: air(),
    supply: [{ kind: 'off' }],
    start: { T_degC: 500 },
    run: hour,
  },
  'glowing, switched off twice': {
    cable: cord(3, 1.5),
    surroundings: air(),
    supply: [{ kind: 'off', duration_s: 0.01 }, { kind: 'off' }],
    start: { T_degC: 969 },
    run: hour,
  },
  'frozen, put into a hot gale': {
    cable: cord(3, 1.5),
    surroundings: { kind: 'draught', ambient_degC: 100, speed_mPerS: 30 },
    supply: [{ kind: 'off' }],
    start: { T_degC: -60 },
    run: hour,
  },
  'a little below ambient, off': {
    cable: cord(3, 1.5),
    surroundings: air(),
    supply: [{ kind: 'off' }],
    start: { T_degC: 5 },
    run: hour,
  },
  'lagged, 300 A on 1.5 mm², to melting': {
    cable: cord(3, 1.5),
    surroundings: { kind: 'lagged', ambient_degC: 20, thickness_mm: 10, conductivity_WPerMK: 0.04 },
    supply: [held(300)],
    run: { duration_s: 60 },
  },
  'a tenth of a second of 1000 A on 4 mm², five times over': {
    cable: cord(3, 4),
    surroundings: air(),
    supply: [held(1000, 0.1), { kind: 'off', duration_s: 5 }],
    cycles: 5,
  },
  'cooling from steady 16 A': {
    cable: cord(3, 1.5),
    surroundings: air(),
    supply: [{ kind: 'off' }],
    start: { steadyAt_A: 16 },
    run: hour,
  },
  'voltage held on a steel lead': {
    cable: pvcWire(2.5, 0.8, 'steel'),
    lead: { length_m: 10 },
    surroundings: air(),
    supply: [{ kind: 'voltage', U_V: 25, source_ohm: 0.05 }],
    run: hour,
  },
  'mains through a heater': {
    cable: cord(3, 0.75),
    lead: { length_m: 25, contact_ohm: 0.02 },
    surroundings: air(),
    supply: [{ kind: 'mains', U_V: 230, load_W: 3000, source_ohm: 0.3 }],
    run: hour,
  },
  'a constant-power load': {
    cable: cord(3, 0.75),
    lead: { length_m: 30 },
    surroundings: air(),
    supply: [{ kind: 'power', U_V: 24, load_W: 80 }],
    run: hour,
  },
  'a constant-power load that the lead cannot feed once warm': {
    cable: pvcWire(1, 0.6),
    lead: { length_m: 40 },
    surroundings: air(),
    supply: [{ kind: 'power', U_V: 60, load_W: 560 }],
    run: hour,
  },
  'held current limited by its compliance voltage': {
    cable: cord(3, 0.75),
    lead: { length_m: 5 },
    surroundings: air(),
    supply: [{ kind: 'current', I_A: 20, compliance_V: 6 }],
    run: hour,
  },
  'until 90 °C, then off until 40 °C, twice': {
    cable: cord(3, 1),
    surroundings: air(),
    supply: [
      { ...held(35), until: { place: 'conductor', T_degC: 90 } },
      { kind: 'off', until: { place: 'surface', T_degC: 40, falling: true } },
    ],
    cycles: 2,
    run: { duration_s: 7200 },
  },
  'a day at 8 A': {
    cable: cord(3, 0.75),
    surroundings: air(),
    supply: [held(8)],
    run: { duration_s: 86_400 },
  },
  'at 99.9 % of the threshold': {
    cable: bare(1.5),
    surroundings: air(),
    supply: [held(111.8)],
    run: hour,
  },
  'zero current at ambient': { cable: cord(3, 0.75), surroundings: air(), supply: [held(0)], run: hour },
};

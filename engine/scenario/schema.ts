import * as v from 'valibot';
import { metals } from '../material/metals.ts';
import { plastics } from '../material/plastics.ts';
import type { DeviceFamily } from '../protection/device.ts';
import { arrangements } from '../surroundings/air-laws.ts';
import { amount, amountOrRange, byWord, count, record, text, word } from './fields.ts';

const ids = <T extends object>(table: T) => Object.keys(table) as (keyof T & string)[];

/** A metal that no table has, by its values. */
const metalValues = record({
  name: v.optional(text(60)),
  rho20_nOhmM: amount(1, 1e5, 'nΩ·m'),
  alpha20_perK: amount(-0.01, 0.02, '1/K'),
  beta20_perK2: v.optional(amount(-1e-4, 1e-4, '1/K²')),
  heatCapacity_MJPerM3K: amount(0.1, 20, 'MJ/(m³·K)'),
  density_kgPerM3: v.optional(amount(100, 30_000, 'kg/m³')),
  melting_degC: v.optional(amount(100, 4000, '°C')),
  emissivity: v.optional(amount(0, 1)),
  magnetic: v.optional(v.boolean('must be true or false')),
});

const limit_degC = () => v.optional(amountOrRange(-50, 3000, '°C'));

/** An insulation that no table has, by its values. */
const plasticValues = record({
  name: v.optional(text(60)),
  rhoT_KmPerW: amount(0.05, 100, 'K·m/W'),
  heatCapacity_MJPerM3K: amount(0.01, 20, 'MJ/(m³·K)'),
  emissivity: v.optional(amount(0, 1)),
  rating_degC: limit_degC(),
  softening_degC: limit_degC(),
  shortTime_degC: limit_degC(),
  fumes_degC: limit_degC(),
  ignition_degC: limit_degC(),
  activationEnergy_kJPerMol: v.optional(amount(10, 500, 'kJ/mol')),
  lifeAtRating_h: v.optional(amount(1, 1e7, 'h')),
});

const byNameOrValues = <V extends v.GenericSchema>(names: readonly string[], values: V) =>
  v.lazy((input) => (typeof input === 'object' && input !== null ? values : word(names))) as v.GenericSchema<
    string | v.InferOutput<V>
  >;

const metal = byNameOrValues(ids(metals), metalValues);
const plastic = byNameOrValues(ids(plastics), plasticValues);

const conductor = {
  metal: v.optional(metal),
  /** 'straight' is the standards' line; 'curved' adds the metal's measured curvature. */
  law: v.optional(word(['straight', 'curved'] as const)),
  class: v.optional(word([1, 2, 5, 6] as const)),
  /** Finish of copper strands; tinned ones have a table maximum of their own. */
  finish: v.optional(word(['plain', 'tinned'] as const)),
  strands: v.optional(
    v.pipe(
      record({ count: count(1, 5000), diameter_mm: amount(0.01, 20, 'mm') }),
      v.check(
        ({ count, diameter_mm }) => (count * Math.PI * diameter_mm ** 2) / 4 <= 1000,
        'hold more than 1000 mm² of metal together',
      ),
    ),
  ),
  area_mm2: v.optional(amount(0.01, 1000, 'mm²')),
  bundle_mm: v.optional(amount(0.05, 100, 'mm')),
  R20_ohmPerKm: v.optional(amount(1e-3, 1e5, 'Ω/km')),
  lay: v.optional(amount(1, 1.2)),
};

const loaded = v.optional(
  v.lazy((input) =>
    Array.isArray(input) ? v.pipe(v.array(count(0, 19)), v.minLength(1, 'names no core')) : count(1, 20),
  ) as v.GenericSchema<number | number[]>,
);

const size = { size_mm2: v.optional(amount(0.01, 1000, 'mm²')), size_AWG: v.optional(amount(4, 40, 'AWG')) };

const wall = record({ material: plastic, thickness_mm: amount(0.01, 50, 'mm') });

const tabled = record({
  table: text(40),
  cores: count(1, 20),
  ...size,
  loaded,
  conductor: v.optional(record(conductor)),
});

const custom = record({
  layout: word(['single', 'round', 'flat'] as const),
  cores: v.optional(count(1, 20)),
  loaded,
  conductor: record({ ...conductor, ...size }),
  insulation: v.optional(v.nullable(wall)),
  sheath: v.optional(v.nullable(wall)),
  /** Area of insulation and filler under the sheath, where it is known [mm²]. */
  body_mm2: v.optional(amount(0.01, 1e5, 'mm²')),
});

const cable = v.lazy((input) =>
  typeof input === 'object' && input !== null && 'table' in input ? tabled : custom,
) as v.GenericSchema<v.InferOutput<typeof tabled> | v.InferOutput<typeof custom>>;

const air = {
  ambient_degC: amount(-60, 200, '°C'),
  emissivity: v.optional(amount(0, 1)),
  convection: v.optional(word(['kuehnGoldstein', 'churchillChu'] as const)),
};

const surroundings = byWord('kind', {
  stillAir: record({ kind: v.literal('stillAir'), ...air }),
  draught: record({ kind: v.literal('draught'), ...air, speed_mPerS: amount(0, 60, 'm/s') }),
  lagged: record({
    kind: v.literal('lagged'),
    ...air,
    thickness_mm: amount(0.1, 1000, 'mm'),
    conductivity_WPerMK: amount(0.005, 10, 'W/(m·K)'),
    heatCapacity_MJPerM3K: v.optional(amount(1e-3, 20, 'MJ/(m³·K)')),
    speed_mPerS: v.optional(amount(0, 60, 'm/s')),
  }),
  clipped: record({
    kind: v.literal('clipped'),
    ambient_degC: air.ambient_degC,
    arrangement: v.optional(
      byNameOrValues(ids(arrangements), record({ Z: amount(0, 20), E: amount(0, 20), g: amount(0, 2) })),
    ),
  }),
  coiled: record({
    kind: v.literal('coiled'),
    ...air,
    drum_mm: amount(1, 5000, 'mm'),
    turns: amount(1, 1000, 'turns a layer'),
    layers: v.optional(amount(0.2, 50, 'layers')),
    wound_m: v.optional(amount(0.1, 5000, 'm')),
    conductivity_WPerMK: v.optional(amount(0.03, 2, 'W/(m·K)')),
    openFlanges: v.optional(v.boolean('must be true or false')),
  }),
});

const place = word(['conductor', 'surface', 'outside'] as const);

const timing = {
  duration_s: v.optional(amount(1e-4, 1e7, 's')),
  until: v.optional(
    record({ place, T_degC: amount(-50, 3000, '°C'), falling: v.optional(v.boolean('must be true or false')) }),
  ),
};
const source = { source_ohm: v.optional(amount(0, 1e4, 'Ω')) };

const supplyStep = byWord('kind', {
  current: record({
    kind: v.literal('current'),
    I_A: amount(0, 1e5, 'A'),
    compliance_V: v.optional(amount(0, 1e5, 'V')),
    ...timing,
  }),
  voltage: record({ kind: v.literal('voltage'), U_V: amount(0, 1e5, 'V'), ...source, ...timing }),
  mains: record({
    kind: v.literal('mains'),
    U_V: amount(0, 1000, 'V'),
    load_W: amount(0.1, 1e6, 'W'),
    rated_V: v.optional(amount(1, 1000, 'V')),
    ...source,
    ...timing,
  }),
  power: record({
    kind: v.literal('power'),
    U_V: amount(0, 1000, 'V'),
    load_W: amount(0, 1e6, 'W'),
    ...source,
    ...timing,
  }),
  off: record({ kind: v.literal('off'), ...timing }),
});

const extraLimit = record({
  name: text(60),
  place: v.optional(place),
  T_degC: amountOrRange(-50, 3000, '°C'),
  kind: v.optional(
    word(['touch', 'rating', 'softening', 'shortTime', 'fumes', 'ignition', 'melting', 'other'] as const),
  ),
  test: v.optional(text(120)),
  duration: v.optional(text(60)),
});

/** Families that a device of a case can be of; `protection/devices.ts` has them. */
const deviceFamilyIds = [
  'bs1362',
  'gG',
  'B',
  'C',
  'D',
  'bs3036',
  'iec60127F',
  'iec60127T',
  'iec60127F high',
  'iec60127T high',
  'ul489',
  'ul248',
  'ul248 delay',
  'ul248 CC',
  'ul248-14',
  'ul248-14 delay',
] as const satisfies readonly DeviceFamily[];

const curvePoint = v.strictTuple([amount(1e-3, 1e6, 'A'), amount(1e-4, 1e6, 's')], 'must be a pair [A, s]');

/** A device by points of its maker's curve. */
const ownDevice = record({
  name: v.optional(text(60)),
  rating_A: amount(1e-3, 1e4, 'A'),
  /** Current it holds for ever; the rating unless given. */
  hold_A: v.optional(amount(1e-3, 1e5, 'A')),
  breaker: v.optional(v.boolean('must be true or false')),
  /** Slowest times, [A, s], by rising current. */
  slow: v.pipe(
    v.array(curvePoint, 'must be a list of points [A, s]'),
    v.minLength(1, 'must hold at least one point'),
    v.maxLength(50, 'holds more than 50 points'),
  ),
  /** Fastest times, [A, s], by rising current. */
  fast: v.optional(
    v.pipe(v.array(curvePoint, 'must be a list of points [A, s]'), v.maxLength(50, 'holds more than 50 points')),
  ),
});
const tabledDevice = record({ family: word(deviceFamilyIds), rating_A: amount(1e-3, 1e4, 'A') });

const device = v.lazy((input) =>
  typeof input === 'object' && input !== null && 'slow' in input ? ownDevice : tabledDevice,
) as v.GenericSchema<v.InferOutput<typeof tabledDevice> | v.InferOutput<typeof ownDevice>>;

/** Kinds of contact in series with a lead. */
const contactKinds = ['pin', 'terminal', 'joint', 'fuse'] as const;

/** One contact in series with the lead; its heat is shown beside the cable's. */
const contact = record({
  kind: word(contactKinds),
  name: v.optional(text(60)),
  R_ohm: amount(0, 1e3, 'Ω'),
});

/** The path of a fault at the far end of the lead. */
const fault = record({
  /** Impedance up to the origin. */
  Ze_ohm: amount(1e-3, 1e3, 'Ω'),
  /** Copper wiring between the origin and the lead, at 20 °C: out on the line, back on the protective conductor. */
  line_ohm: v.optional(amount(0, 1e3, 'Ω')),
  earth_ohm: v.optional(amount(0, 1e3, 'Ω')),
  /** Voltage to earth that drives it; that of the supply, else the nominal one, unless given. */
  U0_V: v.optional(amount(1, 1000, 'V')),
  /** Conductors during the fault; the rating of the insulation unless given. */
  T_degC: v.optional(amount(-50, 300, '°C')),
});

/** The schema of one case. A scenario is plain data; every key carries its unit. */
export const scenarioSchema = record({
  version: v.optional(v.literal(1, 'must be 1, the only version there is')),
  title: v.optional(text(120)),
  practice: v.optional(word(['iec', 'na'] as const)),
  cable,
  lead: v.optional(
    record({
      length_m: v.optional(amount(0.01, 5000, 'm')),
      inSeries: v.optional(count(1, 10)),
      /** Contacts that are not listed, all together; the sum of these and of the list is R_contact. */
      contact_ohm: v.optional(amount(0, 1e3, 'Ω')),
      contacts: v.optional(
        v.pipe(v.array(contact, 'must be a list of contacts'), v.maxLength(12, 'holds more than 12 contacts')),
      ),
    }),
  ),
  surroundings,
  supply: v.pipe(
    v.array(supplyStep, 'must be a list of supply steps'),
    v.minLength(1, 'must hold at least one step'),
    v.maxLength(500, 'holds more than 500 steps'),
  ),
  /** Fuse or breaker in series with the lead. */
  device: v.optional(device),
  /** The loop that a fault at the far end of the lead closes. */
  fault: v.optional(fault),
  /** How often the list of supply steps is run through; 1 unless given. */
  cycles: v.optional(count(1, 2000)),
  start: v.optional(
    record({ T_degC: v.optional(amount(-60, 1000, '°C')), steadyAt_A: v.optional(amount(0, 1e5, 'A')) }),
  ),
  run: v.optional(
    record({
      duration_s: v.optional(amount(1e-3, 1e7, 's')),
      cells: v.optional(count(4, 1000)),
      tolerance_K: v.optional(amount(1e-7, 1, 'K')),
    }),
  ),
  limits: v.optional(
    v.pipe(v.array(extraLimit, 'must be a list of limits'), v.maxLength(20, 'holds more than 20 limits')),
  ),
});

/** One case: cable, surroundings, supply and what is asked of the run. */
export type Scenario = v.InferOutput<typeof scenarioSchema>;
/** The cable part of a scenario. */
export type CableSpec = Scenario['cable'];
/** The surroundings part of a scenario. */
export type SurroundingsSpec = Scenario['surroundings'];
/** One step of the supply. */
export type SupplyStep = Scenario['supply'][number];
/** The device part of a scenario. */
export type DeviceSpec = NonNullable<Scenario['device']>;
/** The fault path of a scenario. */
export type FaultSpec = NonNullable<Scenario['fault']>;
/** A kind of contact in series with a lead. */
export type ContactKind = (typeof contactKinds)[number];
/** A device given by its maker's curve. */
export type OwnDevice = v.InferOutput<typeof ownDevice>;
/** A metal given by its values. */
export type MetalValues = v.InferOutput<typeof metalValues>;
/** An insulation given by its values. */
export type PlasticValues = v.InferOutput<typeof plasticValues>;

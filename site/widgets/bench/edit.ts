import {
  arrangements,
  awgSizes,
  type CableSpec,
  constructions,
  metals,
  type PlasticId,
  plastics,
  type Scenario,
  type SupplyStep,
  type SurroundingsSpec,
  standardSizes,
  type UsualContact,
  usualContacts,
} from '#engine';
import type { Option } from '../../controls/options.ts';

/** A cable that is a row of the construction table. */
export type TabledCable = Extract<CableSpec, { table: string }>;
/** A cable by its own values. */
export type OwnCable = Exclude<CableSpec, { table: string }>;
/** What is said of a conductor. */
export type ConductorPart = OwnCable['conductor'];
/** A metal that no table has, by its values. */
export type OwnMetal = Exclude<NonNullable<ConductorPart['metal']>, string>;

/** Whether a cable is a row of the table. */
export const isTabled = (cable: CableSpec): cable is TabledCable => 'table' in cable;

const tables = [...new Map(constructions.map((c) => [c.table, c])).values()];

/** Designations of the construction table. */
export const tableOptions: readonly Option<string>[] = tables.map(({ table, description }) => ({
  value: table,
  label: `${table}, ${description}`,
}));

/** Rows of one designation, as 'cores × size'. */
export function rowOptions(table: string): Option<string>[] {
  return constructions
    .filter((c) => c.table === table)
    .map((c) => ({ value: rowKey(c.cores, c.size), label: `${c.cores} × ${c.size} ${c.gauge ? 'AWG' : 'mm²'}` }));
}

const rowKey = (cores: number, size: number) => `${cores}/${size}`;

/** The key of the row a tabled cable names. */
export const keyOf = (cable: TabledCable) => rowKey(cable.cores, cable.size_AWG ?? cable.size_mm2 ?? 0);

/** A tabled cable moved to another row; as many cores stay loaded as the row allows. */
export function withRow(cable: TabledCable, table: string, key?: string): TabledCable {
  const rows = constructions.filter((c) => c.table === table);
  const wanted = key ?? keyOf(cable);
  const row = rows.find((c) => rowKey(c.cores, c.size) === wanted) ?? rows.find((c) => c.cores === 3) ?? rows[0];
  if (!row) return cable;
  const { conductor, loaded } = cable;
  const size = row.gauge ? { size_AWG: row.size } : { size_mm2: row.size };
  const count = typeof loaded === 'number' ? Math.min(loaded, row.cores) : Math.min(2, row.cores);
  return { table: row.table, cores: row.cores, ...size, loaded: count, ...(conductor ? { conductor } : {}) };
}

/** A lead by own values, for when the table has no such cable. */
export function ownLike(cable: CableSpec): OwnCable {
  if (!isTabled(cable)) return cable;
  const row = constructions.find(
    (c) => c.table === cable.table && c.cores === cable.cores && c.size === (cable.size_AWG ?? cable.size_mm2),
  );
  if (!row) return plainOwn;
  const size = row.gauge ? { size_AWG: row.size } : { size_mm2: row.size };
  return {
    layout: row.layout,
    cores: row.cores,
    loaded: cable.loaded ?? Math.min(2, row.cores),
    conductor: { ...cable.conductor, ...size },
    insulation: { material: row.insulation, thickness_mm: row.insulation_mm },
    sheath: row.sheath ? { material: row.sheath, thickness_mm: row.sheath_mm } : null,
  };
}

const plainOwn: OwnCable = {
  layout: 'round',
  cores: 3,
  loaded: 2,
  conductor: { size_mm2: 1 },
  insulation: { material: 'pvc70', thickness_mm: 0.6 },
  sheath: { material: 'pvc70', thickness_mm: 0.8 },
};

/** Metals by name, and one for values typed in by hand. */
export const metalOptions: readonly Option<string>[] = [
  ...Object.values(metals).map(({ id, name }) => ({ value: id as string, label: name })),
  { value: 'own', label: 'another metal, by its values' },
];

/** A metal by its values, begun from copper's. */
export const metalByValues: OwnMetal = {
  name: 'metal typed in',
  rho20_nOhmM: 30,
  alpha20_perK: 0.004,
  heatCapacity_MJPerM3K: 2.5,
  melting_degC: 650,
};

/** Insulations by name. */
export const plasticOptions: readonly Option<PlasticId>[] = (Object.keys(plastics) as PlasticId[]).map((id) => ({
  value: id,
  label: plastics[id].name,
}));

/** How the size of a conductor is told. */
export const sizeKinds = [
  { value: 'mm2', label: 'mm²' },
  { value: 'awg', label: 'AWG' },
  { value: 'strands', label: 'strands' },
] as const satisfies readonly Option<string>[];

/** Which of the size kinds a conductor uses. */
export function sizeKindOf(conductor: ConductorPart): (typeof sizeKinds)[number]['value'] {
  return conductor.strands ? 'strands' : conductor.size_AWG !== undefined ? 'awg' : 'mm2';
}

/** A conductor told in another way, at about the size it had. */
export function withSizeKind(conductor: ConductorPart, kind: string): ConductorPart {
  const { size_mm2, size_AWG, strands, area_mm2, ...rest } = conductor;
  if (kind === 'awg') return { ...rest, size_AWG: size_AWG ?? 16 };
  if (kind === 'strands')
    return {
      ...rest,
      ...(size_mm2 === undefined ? {} : { size_mm2 }),
      strands: strands ?? { count: 24, diameter_mm: 0.2 },
    };
  return { ...rest, size_mm2: size_mm2 ?? area_mm2 ?? 1 };
}

/** Standard sizes and gauges, for lists. */
export const squareMillimetres: readonly Option<number>[] = standardSizes.map(({ area_mm2 }) => ({
  value: area_mm2,
  label: `${area_mm2} mm²`,
}));
/** Gauges from thin to thick. */
export const gauges: readonly Option<number>[] = awgSizes.map((n) => ({ value: n, label: `${n} AWG` }));

/** Kinds of surroundings. */
export const placeOptions = [
  { value: 'stillAir', label: 'still air' },
  { value: 'draught', label: 'draught' },
  { value: 'lagged', label: 'lagged' },
  { value: 'clipped', label: 'on a wall' },
  { value: 'coiled', label: 'on a reel' },
] as const satisfies readonly Option<SurroundingsSpec['kind']>[];

/** Arrangements of IEC 60287-2-1 by name. */
export const arrangementOptions: readonly Option<string>[] = Object.entries(arrangements).map(([value, { name }]) => ({
  value,
  label: name,
}));

/** Surroundings of another kind at the same ambient. */
export function withPlace(spec: SurroundingsSpec, kind: SurroundingsSpec['kind']): SurroundingsSpec {
  const { ambient_degC } = spec;
  switch (kind) {
    case 'stillAir':
      return { kind, ambient_degC };
    case 'draught':
      return { kind, ambient_degC, speed_mPerS: 1 };
    case 'lagged':
      return { kind, ambient_degC, thickness_mm: 25, conductivity_WPerMK: 0.05 };
    case 'clipped':
      return { kind, ambient_degC, arrangement: 'clipped' };
    case 'coiled':
      return { kind, ambient_degC, drum_mm: 120, turns: 12 };
  }
}

/** Kinds of supply. */
export const supplyOptions = [
  { value: 'current', label: 'current held' },
  { value: 'voltage', label: 'voltage held' },
  { value: 'mains', label: 'mains and heater' },
  { value: 'power', label: 'constant-power load' },
  { value: 'off', label: 'off' },
] as const satisfies readonly Option<SupplyStep['kind']>[];

/** A supply step of another kind that lasts as long. */
export function withSupplyKind(step: SupplyStep, kind: SupplyStep['kind'], mains: number): SupplyStep {
  const timing = {
    ...(step.duration_s === undefined ? {} : { duration_s: step.duration_s }),
    ...(step.until === undefined ? {} : { until: step.until }),
  };
  switch (kind) {
    case 'current':
      return { kind, I_A: 13, ...timing };
    case 'voltage':
      return { kind, U_V: 6, ...timing };
    case 'mains':
      return { kind, U_V: mains, load_W: 2000, ...timing };
    case 'power':
      return { kind, U_V: mains, load_W: 1500, ...timing };
    case 'off':
      return { kind, ...timing };
  }
}

/** A scenario whose supply steps last as told; the run is as long as the steps together. */
export function withSupply(scenario: Scenario, supply: SupplyStep[]): Scenario {
  const timed = supply.map((step) => (step.duration_s === undefined ? { ...step, duration_s: 1800 } : step));
  const { run, ...rest } = scenario;
  const { duration_s, ...others } = run ?? {};
  return { ...rest, supply: timed, ...(Object.keys(others).length > 0 ? { run: others } : {}) };
}

/** The record with `key` set, or without it where `value` is undefined. */
export function withOr<T extends object, K extends keyof T>(of: T, key: K, value: T[K] | undefined): T {
  const { [key]: _, ...rest } = of;
  return (value === undefined ? rest : { ...rest, [key]: value }) as T;
}

/** One contact of a lead, as a scenario has it. */
export type ContactSpec = NonNullable<NonNullable<Scenario['lead']>['contacts']>[number];

/** What a contact of a kind usually has, sound and poor. */
export const usualOf = (kind: ContactSpec['kind']): UsualContact =>
  usualContacts.find((usual) => usual.kind === kind) ?? (usualContacts[0] as UsualContact);

/** Kinds of contact by name. */
export const contactKinds: readonly Option<ContactSpec['kind']>[] = [
  { value: 'pin', label: 'plug pin' },
  { value: 'terminal', label: 'screw terminal' },
  { value: 'joint', label: 'joint' },
  { value: 'fuse', label: 'fuse' },
];

/** A scenario with this list of contacts; an empty one is left out. */
export function withContacts(scenario: Scenario, contacts: ContactSpec[]): Scenario {
  return { ...scenario, lead: withOr(scenario.lead ?? {}, 'contacts', contacts.length > 0 ? contacts : undefined) };
}

import fc from 'fast-check';
import { constructions } from '#engine/cable/constructions.ts';
import { metals } from '#engine/material/metals.ts';
import { plastics } from '#engine/material/plastics.ts';
import { deviceFamilies } from '#engine/protection/devices.ts';
import { arrangements } from '#engine/surroundings/air-laws.ts';

const ids = (table: object) => fc.constantFrom(...Object.keys(table));

const parts = 1_000_000;
const share = fc.integer({ min: 0, max: parts }).map((i) => i / parts);
/** Four figures are enough, and stay within the bounds. */
const short = (x: number, least: number, most: number) => Math.min(most, Math.max(least, +x.toPrecision(4))) + 0;

/** A number from `least` to `most`, the ends among them; where it is never negative, small ones are as likely as great ones. */
function amount(least: number, most: number): fc.Arbitrary<number> {
  const ends = fc.constantFrom(least, most);
  if (least < 0) {
    const even = share.map((x) => short(least + x * (most - least), least, most));
    return fc.oneof({ weight: 8, arbitrary: even }, { weight: 1, arbitrary: fc.constantFrom(least, 0, most) });
  }
  const low = Math.max(least, most * 1e-9);
  const byRatio = share.map((x) => short(low * (most / low) ** x, least, most));
  return fc.oneof({ weight: 9, arbitrary: byRatio }, { weight: 1, arbitrary: ends });
}

/** A record some of whose entries may be left out. */
const record = <T extends Record<string, fc.Arbitrary<unknown>>>(
  always: T,
  sometimes: Record<string, fc.Arbitrary<unknown>> = {},
) => fc.record({ ...always, ...sometimes }, { requiredKeys: Object.keys(always) });

const text = (maxLength: number) => fc.string({ maxLength, unit: 'grapheme' }).filter((s) => s.length <= maxLength);
const degrees = fc.oneof(
  amount(-50, 3000),
  fc.tuple(amount(-50, 3000), amount(-50, 3000)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)]),
);

const metalValues = record(
  { rho20_nOhmM: amount(1, 1e5), alpha20_perK: amount(-0.01, 0.02), heatCapacity_MJPerM3K: amount(0.1, 20) },
  {
    name: text(60),
    beta20_perK2: amount(-1e-4, 1e-4),
    density_kgPerM3: amount(100, 30_000),
    melting_degC: amount(100, 4000),
    emissivity: amount(0, 1),
    magnetic: fc.boolean(),
  },
);
/** Metals as there are some: resistance rises, or falls a little. */
const tamerMetalValues = record(
  { rho20_nOhmM: amount(10, 1500), alpha20_perK: amount(0, 0.006), heatCapacity_MJPerM3K: amount(1, 5) },
  { beta20_perK2: amount(0, 1e-5), melting_degC: amount(300, 3000) },
);
const metal = fc.oneof(
  { weight: 3, arbitrary: ids(metals) },
  { weight: 2, arbitrary: tamerMetalValues },
  { weight: 1, arbitrary: metalValues },
);

const plasticValues = record(
  { rhoT_KmPerW: amount(0.05, 100), heatCapacity_MJPerM3K: amount(0.01, 20) },
  {
    name: text(60),
    emissivity: amount(0, 1),
    rating_degC: degrees,
    softening_degC: degrees,
    shortTime_degC: degrees,
    fumes_degC: degrees,
    ignition_degC: degrees,
    activationEnergy_kJPerMol: amount(10, 500),
    lifeAtRating_h: amount(1, 1e7),
  },
);
const plastic = fc.oneof({ weight: 3, arbitrary: ids(plastics) }, { weight: 1, arbitrary: plasticValues });

const conductor = {
  metal,
  law: fc.constantFrom('straight', 'curved'),
  class: fc.constantFrom(1, 2, 5, 6),
  R20_ohmPerKm: amount(1e-3, 1e5),
  lay: amount(1, 1.2),
};
const oddConductor = {
  strands: record({
    count: fc.integer({ min: 1, max: 5000 }),
    diameter_mm: fc.oneof(amount(0.05, 0.5), amount(0.01, 20)),
  }),
  area_mm2: amount(0.01, 1000),
};
const bundle = fc.oneof({ weight: 3, arbitrary: amount(20, 100) }, { weight: 1, arbitrary: amount(0.05, 100) });
const tradeSize = fc.constantFrom(0.5, 0.75, 1, 1.25, 1.5, 2.5, 4, 6, 10, 16, 25, 35);
const size = fc.oneof(
  { weight: 4, arbitrary: record({ size_mm2: tradeSize }) },
  { weight: 1, arbitrary: record({ size_mm2: amount(0.01, 1000) }) },
  { weight: 1, arbitrary: record({ size_AWG: amount(4, 40) }) },
);

/** Which cores are loaded: not said, so many, or by their numbers; now and then one that is not there. */
const loadedOf = (cores: number) =>
  fc.oneof(
    { weight: 3, arbitrary: fc.constant({}) },
    { weight: 3, arbitrary: fc.integer({ min: 1, max: cores }).map((loaded) => ({ loaded })) },
    {
      weight: 3,
      arbitrary: fc
        .shuffledSubarray(
          Array.from({ length: cores }, (_, i) => i),
          { minLength: 1 },
        )
        .map((loaded) => ({ loaded })),
    },
    {
      weight: 1,
      arbitrary: fc.array(fc.integer({ min: 0, max: 7 }), { minLength: 1, maxLength: 3 }).map((loaded) => ({ loaded })),
    },
  );
const overrides = fc.oneof(
  { weight: 5, arbitrary: record({}, conductor) },
  { weight: 1, arbitrary: record({}, { ...conductor, bundle_mm: bundle }) },
);
const tabled = fc.constantFrom(...constructions).chain((row) =>
  fc.tuple(loadedOf(row.cores), record({}, { conductor: overrides })).map(([loaded, extra]) => ({
    table: row.table,
    cores: row.cores,
    ...(row.gauge ? { size_AWG: row.size } : { size_mm2: row.size }),
    ...loaded,
    ...extra,
  })),
);

const wall = record({ material: plastic, thickness_mm: amount(0.01, 50) });
const usualWall = record({ material: plastic, thickness_mm: amount(0.3, 3) });
const walls = fc.oneof(
  { weight: 6, arbitrary: usualWall },
  { weight: 2, arbitrary: wall },
  { weight: 1, arbitrary: fc.constant(null) },
);
const shape = fc.oneof(
  record({ layout: fc.constant('single') }, { cores: fc.constant(1) }),
  record({ layout: fc.constant('round'), cores: fc.integer({ min: 1, max: 7 }) }),
  record({ layout: fc.constant('flat'), cores: fc.integer({ min: 2, max: 3 }) }),
);
const custom = fc.tuple(shape, walls).chain(([form, insulation]) => {
  const bareForm = insulation === null ? { layout: 'single' } : form;
  const cores = 'cores' in bareForm ? (bareForm.cores as number) : 1;
  return fc
    .tuple(
      loadedOf(cores),
      record({}, conductor),
      size,
      fc.option(record({}, { ...oddConductor, bundle_mm: bundle }), { freq: 5, nil: {} }),
      record({}, { sheath: fc.oneof(usualWall, fc.constant(null)), body_mm2: amount(0.01, 1e5) }),
    )
    .map(([loaded, own, area, odd, extra]) => ({
      ...bareForm,
      conductor: { ...own, ...area, ...odd },
      insulation,
      ...loaded,
      ...extra,
    }));
});
const cable = fc.oneof(tabled, custom);

const ambient = fc.oneof({ weight: 3, arbitrary: amount(-20, 50) }, { weight: 1, arbitrary: amount(-60, 200) });
const air = { emissivity: amount(0, 1), convection: fc.constantFrom('kuehnGoldstein', 'churchillChu') };
const kind = (name: string) => fc.constant(name);
const surroundings = fc.oneof(
  record({ kind: kind('stillAir'), ambient_degC: ambient }, air),
  record({ kind: kind('draught'), ambient_degC: ambient, speed_mPerS: amount(0, 60) }, air),
  record(
    {
      kind: kind('lagged'),
      ambient_degC: ambient,
      thickness_mm: amount(0.1, 1000),
      conductivity_WPerMK: amount(0.005, 10),
    },
    { ...air, heatCapacity_MJPerM3K: amount(1e-3, 20), speed_mPerS: amount(0, 60) },
  ),
  record(
    { kind: kind('clipped'), ambient_degC: ambient },
    { arrangement: fc.oneof(ids(arrangements), record({ Z: amount(0, 20), E: amount(0, 20), g: amount(0, 2) })) },
  ),
  record(
    {
      kind: kind('coiled'),
      ambient_degC: ambient,
      drum_mm: fc.oneof(amount(50, 1000), amount(1, 5000)),
      turns: amount(1, 1000),
    },
    {
      ...air,
      layers: amount(0.2, 50),
      wound_m: fc.oneof(amount(0.1, 20), amount(0.1, 5000)),
      conductivity_WPerMK: amount(0.03, 2),
      openFlanges: fc.boolean(),
    },
  ),
);

const place = fc.constantFrom('conductor', 'surface', 'outside');
const untilRising = record(
  { place, T_degC: fc.oneof(amount(20, 200), amount(-50, 3000)) },
  { falling: fc.constant(false) },
);
const untilFalling = record({ place, T_degC: fc.oneof(amount(20, 80), amount(-50, 3000)), falling: fc.constant(true) });
const until = fc.oneof({ weight: 3, arbitrary: untilRising }, { weight: 1, arbitrary: untilFalling });
const timing = { duration_s: fc.oneof(amount(1, 1e4), amount(1e-4, 1e7)), until };
const source = { source_ohm: amount(0, 1e4) };
const volts = fc.oneof(fc.constantFrom(12, 24, 48, 120, 230), amount(0, 1000));
const supplyStep = fc.oneof(
  {
    weight: 4,
    arbitrary: record(
      { kind: kind('current'), I_A: fc.oneof(amount(1, 100), amount(0, 1e5)) },
      { compliance_V: amount(0, 1e5), ...timing },
    ),
  },
  {
    weight: 1,
    arbitrary: record({ kind: kind('voltage'), U_V: fc.oneof(volts, amount(0, 1e5)) }, { ...source, ...timing }),
  },
  {
    weight: 1,
    arbitrary: record(
      { kind: kind('mains'), U_V: volts, load_W: fc.oneof(amount(50, 5000), amount(0.1, 1e6)) },
      { rated_V: amount(1, 1000), ...source, ...timing },
    ),
  },
  {
    weight: 1,
    arbitrary: record(
      { kind: kind('power'), U_V: volts, load_W: fc.oneof(amount(50, 5000), amount(0, 1e6)) },
      { ...source, ...timing },
    ),
  },
  { weight: 1, arbitrary: record({ kind: kind('off') }, timing) },
);

const extraLimit = record(
  { name: text(60), T_degC: degrees },
  {
    place,
    kind: fc.constantFrom('touch', 'rating', 'softening', 'shortTime', 'fumes', 'ignition', 'melting', 'other'),
    test: text(120),
    duration: text(60),
  },
);

const start = fc.oneof(
  record({}, { T_degC: fc.oneof(amount(-60, 200), amount(-60, 1000)) }),
  record(
    {},
    { steadyAt_A: fc.oneof({ weight: 4, arbitrary: amount(0.1, 20) }, { weight: 1, arbitrary: amount(0, 1e5) }) },
  ),
);

const curvePoints = fc
  .array(fc.tuple(amount(1, 1e4), amount(1e-3, 1e5)), { minLength: 1, maxLength: 6 })
  .map((points) => {
    const [I, t] = [points.map(([a]) => a).sort((a, b) => a - b), points.map(([, b]) => b).sort((a, b) => b - a)];
    return I.map((current, i) => [current, t[i]]);
  });
const tabledDevice = fc
  .constantFrom(...deviceFamilies)
  .chain(({ id, ratings }) => fc.record({ family: kind(id), rating_A: fc.constantFrom(...ratings) }));
const ownDevice = record(
  { rating_A: amount(0.5, 100), slow: curvePoints },
  { name: text(60), hold_A: amount(0.5, 200), breaker: fc.boolean(), fast: curvePoints },
);
const device = fc.oneof({ weight: 6, arbitrary: tabledDevice }, { weight: 1, arbitrary: ownDevice });

const contact = record(
  { kind: fc.constantFrom('pin', 'terminal', 'joint', 'fuse'), R_ohm: amount(0, 1e3) },
  { name: text(60) },
);
const fault = record(
  { Ze_ohm: amount(1e-3, 1e3) },
  { line_ohm: amount(0, 1e3), earth_ohm: amount(0, 1e3), U0_V: amount(1, 1000), T_degC: amount(-50, 300) },
);

/** Scenarios of the right shape, over the whole schema; some of them hold parts that do not fit each other. */
export const anyScenario = record(
  { cable, surroundings, supply: fc.array(supplyStep, { minLength: 1, maxLength: 5 }) },
  {
    version: fc.constant(1),
    title: text(120),
    practice: fc.constantFrom('iec', 'na'),
    lead: record(
      {},
      {
        length_m: amount(0.01, 5000),
        inSeries: fc.integer({ min: 1, max: 10 }),
        contact_ohm: amount(0, 1e3),
        contacts: fc.array(contact, { maxLength: 12 }),
      },
    ),
    cycles: fc.oneof(
      { weight: 9, arbitrary: fc.integer({ min: 1, max: 20 }) },
      { weight: 1, arbitrary: fc.integer({ min: 1, max: 400 }) },
    ),
    start,
    run: record(
      {},
      {
        duration_s: fc.oneof(amount(1, 1e5), amount(1e-3, 1e7)),
        cells: fc.integer({ min: 4, max: 200 }),
        tolerance_K: amount(1e-4, 1),
      },
    ),
    limits: fc.array(extraLimit, { maxLength: 4 }),
    device,
    fault,
  },
);

const everydayAir = amount(-20, 45);
const everydayPlace = fc.oneof(
  record({ kind: kind('stillAir'), ambient_degC: everydayAir }),
  record({ kind: kind('draught'), ambient_degC: everydayAir, speed_mPerS: amount(0.05, 15) }),
  record({
    kind: kind('lagged'),
    ambient_degC: everydayAir,
    thickness_mm: amount(5, 200),
    conductivity_WPerMK: amount(0.03, 0.1),
  }),
  record({ kind: kind('clipped'), ambient_degC: everydayAir }, { arrangement: ids(arrangements) }),
  record({ kind: kind('coiled'), ambient_degC: everydayAir, drum_mm: amount(100, 300), turns: amount(8, 30) }),
);
const everydayStep = fc.oneof(
  { weight: 4, arbitrary: record({ kind: kind('current'), I_A: amount(0.5, 60), duration_s: amount(5, 7200) }) },
  { weight: 1, arbitrary: record({ kind: kind('current'), I_A: amount(100, 5000), duration_s: amount(0.01, 5) }) },
  { weight: 1, arbitrary: record({ kind: kind('voltage'), U_V: amount(0.5, 20), duration_s: amount(5, 7200) }) },
  {
    weight: 1,
    arbitrary: record({
      kind: kind('mains'),
      U_V: fc.constant(230),
      load_W: amount(100, 7000),
      duration_s: amount(5, 7200),
    }),
  },
  { weight: 2, arbitrary: record({ kind: kind('off'), duration_s: amount(5, 7200) }) },
);

/** Cords and cables of the table as the trade meets them: in air, lagged, clipped or coiled, loaded up to short circuits. */
export const everydayScenario = record(
  {
    cable: fc.constantFrom(...constructions).map(({ table, cores, gauge, size: marked }) => ({
      table,
      cores,
      ...(gauge ? { size_AWG: marked } : { size_mm2: marked }),
    })),
    surroundings: everydayPlace,
    supply: fc.array(everydayStep, { minLength: 1, maxLength: 4 }),
    lead: record({ length_m: amount(1, 50) }),
  },
  { start: fc.oneof(record({ T_degC: amount(-25, 90) }), record({ steadyAt_A: amount(0.5, 15) })) },
);

// Textbook and standard examples that the engine's own parts can work: a conductor's warming through its layers, the critical
// radius, the time constant of a bare conductor. Where a book gives a constant film coefficient, it replaces the engine's law.
import { buildCase, leadReading, predict, runCase, steadyFlow, type ThermalCase } from '#engine';
import { scenarioOf, withFilm } from './cases.ts';
import { checkTable, num, type Row } from './table.ts';

/** A metal whose resistance does not change with temperature. */
const even = { rho20_nOhmM: 20, alpha20_perK: 0, heatCapacity_MJPerM3K: 3 };

interface Covered {
  readonly r1_mm: number;
  readonly thickness_mm: number;
  readonly k: number;
  readonly h: number;
}

/** A round conductor under a cover that sheds heat through a constant film. */
function covered({ r1_mm, thickness_mm, k, h }: Covered, R20_ohmPerKm = 1, length_m = 1): ThermalCase {
  const material = { rhoT_KmPerW: 1 / k, heatCapacity_MJPerM3K: 2 };
  const conductor = { metal: even, class: 1, area_mm2: Math.PI * r1_mm ** 2, R20_ohmPerKm };
  const insulation = thickness_mm > 0 ? { material, thickness_mm } : null;
  const of = buildCase(
    scenarioOf({
      cable: { layout: 'single', conductor, insulation },
      surroundings: { kind: 'stillAir', ambient_degC: 30 },
      lead: { length_m, inSeries: 1 },
      supply: [{ kind: 'current', I_A: 10 }],
    }),
  );
  return withFilm(of, h * 2 * Math.PI * of.cable.outerRadius);
}

/** Resistance from conductor to ambient [K·m/W]. */
const toAmbient = (of: ThermalCase) => 1 / steadyFlow(of, of.Ta + 1);

/** Outer radius [mm] at which the most heat is shed, by golden section over the cover's thickness. */
function criticalRadius(row: Row): number {
  const [r1_mm, k, h] = [num(row, 'r1_mm'), num(row, 'k_WPerMK'), num(row, 'h_WPerM2K')];
  const at = (thickness_mm: number) => toAmbient(covered({ r1_mm, thickness_mm, k, h }));
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [0.1, 40];
  while (b - a > 1e-3) {
    const [c, d] = [b - golden * (b - a), a + golden * (b - a)];
    if (at(c) < at(d)) b = d;
    else a = c;
  }
  return r1_mm + a;
}

/** The book's wire of 3 mm and 5 m: 10 A at 8 V, film 12 W/(m²·K) into 30 °C. */
const wire = (row: Row) => covered({ r1_mm: 1.5, thickness_mm: num(row, 'thickness_mm'), k: 0.15, h: 12 }, 160, 5);
const wireHeat = (row: Row) => leadReading(wire(row), 10, 300).heat;

function toAmbientOfRow(row: Row): number {
  const r1_mm = num(row, 'r1_mm');
  const thickness_mm = num(row, 'r_mm') - r1_mm;
  return toAmbient(covered({ r1_mm, thickness_mm, k: num(row, 'k_WPerMK'), h: num(row, 'h_WPerM2K') }));
}

/** Minutes to 63.2 % of the step from 800 A to 1200 A, 80 °C to 128 °C: an overhead conductor as IEEE 738 gives it. */
function stepTime(): number {
  const [R, capacity] = [2.86e-5 / 0.3048, 399 / 0.3048]; // Ω/m, J/(m·K)
  const film = (R * (1200 ** 2 - 800 ** 2)) / (128 - 80);
  const part_degC = 80 + (128 - 80) * (1 - Math.exp(-1));
  const metal = { ...even, heatCapacity_MJPerM3K: capacity / 100 };
  const scenario = scenarioOf({
    cable: { layout: 'single', conductor: { metal, class: 1, area_mm2: 100, R20_ohmPerKm: 1e3 * R } },
    surroundings: { kind: 'stillAir', ambient_degC: 80 - (R * 800 ** 2) / film },
    start: { T_degC: 80 },
    supply: [{ kind: 'current', I_A: 1200 }],
    limits: [{ name: '63.2 %', T_degC: part_degC }],
  });
  const { events } = runCase(withFilm(buildCase(scenario), film));
  return (events.find(({ limit }) => limit.name === '63.2 %')?.t ?? Number.NaN) / 60;
}

/** The book's steel wire: 3 mm, 1 m, 70 µΩ·cm, 200 A. */
function steelWire() {
  const metal = { rho20_nOhmM: 700, alpha20_perK: 0, heatCapacity_MJPerM3K: 3.8, melting_degC: 1400 };
  return predict(
    scenarioOf({
      cable: { layout: 'single', conductor: { metal, class: 1, area_mm2: (Math.PI / 4) * 9 } },
      surroundings: { kind: 'stillAir', ambient_degC: 110 },
      lead: { length_m: 1, inSeries: 1 },
      supply: [{ kind: 'current', I_A: 200 }],
      run: { duration_s: 0.1 },
    }),
  ).lead.end;
}

checkTable('worked-examples.csv', {
  'time to 63.2 % of a step': stepTime,
  'resistance of a steel wire': () => steelWire().R,
  'heat of a steel wire at 200 A': () => steelWire().heat / 1e3,
  'heat of a plastic-covered wire': wireHeat,
  'conductor under a plastic cover': (row) => 30 + (wireHeat(row) / 5) * toAmbient(wire(row)),
  'resistance of a plastic cover': (row) => wire(row).resistance / 5,
  'resistance beyond a plastic cover': (row) => (toAmbient(wire(row)) - wire(row).resistance) / 5,
  'critical radius': criticalRadius,
  'resistance to ambient': toAmbientOfRow,
});

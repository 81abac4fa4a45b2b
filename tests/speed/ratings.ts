// Steady ratings: with the geometry prepared, with G, and ten thousand mixed cases.
import { buildCase, constructions, ratingAt, type Scenario } from '#engine';
import { line, microseconds } from './clock.ts';

const places = [
  { kind: 'stillAir', ambient_degC: 30 },
  { kind: 'draught', ambient_degC: 25, speed_mPerS: 1 },
  { kind: 'clipped', ambient_degC: 30 },
  { kind: 'lagged', ambient_degC: 20, thickness_mm: 20, conductivity_WPerMK: 0.05 },
] as const satisfies readonly Scenario['surroundings'][];

function mixed(): Scenario[] {
  const round = constructions.filter(({ layout }) => layout !== 'flat');
  return Array.from({ length: 10_000 }, (_, i) => {
    const row = round[i % round.length] as (typeof round)[number];
    const size = row.gauge ? { size_AWG: row.size } : { size_mm2: row.size };
    return {
      cable: { table: row.table, cores: row.cores, ...size },
      surroundings: places[i % places.length] as Scenario['surroundings'],
      supply: [{ kind: 'current', I_A: 10 }],
    };
  });
}

/** Prints the figures. */
export function ratings(): void {
  const scenario: Scenario = {
    cable: { table: 'H05VV-F', cores: 3, size_mm2: 0.75, loaded: 2 },
    surroundings: { kind: 'stillAir', ambient_degC: 30 },
    supply: [{ kind: 'current', I_A: 13 }],
  };
  const of = buildCase(scenario);
  line(
    'one rating, geometry prepared (15 µs wanted)',
    `${microseconds(() => ratingAt(of, 343.15), 5000).toFixed(2)} µs`,
  );
  line(
    'one rating with G and geometry (60 µs wanted)',
    `${microseconds(() => ratingAt(buildCase(scenario), 343.15), 2000).toFixed(2)} µs`,
  );
  const many = mixed();
  const all = microseconds(() => many.map((s) => ratingAt(buildCase(s), 333.15)), 1, 5);
  line('ten thousand mixed ratings (0.3 s wanted)', `${(all / 1e6).toFixed(3)} s`);
}

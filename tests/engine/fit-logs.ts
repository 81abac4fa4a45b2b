// Logs for the tests of the fit: some made by the engine's model with noise, some by a simple lump model of its own.
import { type BenchLog, type FitValues, randomOf, type Scenario } from '#engine';
import { driveOf } from '#engine/bench/fit/drive.ts';
import { forwardOf } from '#engine/bench/fit/forward.ts';
import { valuesOf } from '#engine/bench/fit/parameters.ts';
import { buildCase } from '#engine/heating/thermal-case.ts';

/** Standard uncertainties of a good teaching bench. */
export const bench = { I: 0.005, U: 0.002, probe: 0.2, ambient: 0.2 } as const;

/** Our own invented lead: two-core, 0.75 mm², 6 m. */
export const lead: Scenario = {
  cable: { table: 'H05VV-F', cores: 2, size_mm2: 0.75 },
  lead: { length_m: 6 },
  surroundings: { kind: 'stillAir', ambient_degC: 21 },
  supply: [{ kind: 'off' }],
};

/** Normal deviates from a seed, by Box and Muller. */
export function noise(seed: string): () => number {
  const random = randomOf(seed);
  const even = () => (random.whole(0, 2 ** 30) + 0.5) / (2 ** 30 + 1);
  return () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
}

/** Currents held one after another, a row every `every` seconds; the air drifts by `drift` kelvin in all. */
export function ladder(currents: readonly number[], dwell: number, every: number, drift = 0.8) {
  const rows = Math.round((currents.length * dwell) / every);
  const t = Float64Array.from({ length: rows + 1 }, (_, k) => k * every);
  const end = rows * every;
  return {
    t,
    I: t.map((time) => (time === 0 ? 0 : currents[Math.min(currents.length - 1, Math.ceil(time / dwell - 1e-9) - 1)])),
    ambient: t.map((time) => 294.15 + (drift * time) / end),
  };
}

/** A log of `probes` sheath probes with nothing read yet. */
export function emptyLog({ t, I, ambient }: ReturnType<typeof ladder>, probes = 1): BenchLog {
  const read = () => new Float64Array(t.length);
  const names = Array.from({ length: probes }, (_, i) => `sheath ${i + 1}`);
  return {
    t,
    I,
    ambient,
    U: read(),
    probes: names.map((name) => ({ name, place: 'surface' as const, T: read() })),
    remarks: [],
    startedAt: null,
    simulated: true,
  };
}

/** What the engine's model makes of a ladder with these values of its parameters, and noise of the bench's size. */
export function engineLog(
  scenario: Scenario,
  log: BenchLog,
  values: Partial<FitValues>,
  seed: string,
  u: { I: number; U: number; probe: number; ambient: number } = bench,
): BenchLog {
  const drive = driveOf(log, u, 294.15, 0)!;
  const forward = forwardOf(scenario, drive);
  const { U, probes } = forward.readings(valuesOf(buildCase(scenario), values));
  const draw = noise(seed);
  const shaken = (column: Float64Array, size: number) => column.map((x) => x + size * draw());
  return {
    ...log,
    U: shaken(
      U.map((x) => (Number.isNaN(x) ? 0 : x)),
      u.U,
    ),
    probes: log.probes.map((probe, i) => ({ ...probe, T: shaken(probes[i], u.probe) })),
    I: shaken(log.I, u.I),
  };
}

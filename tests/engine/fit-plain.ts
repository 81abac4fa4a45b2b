// A bench run computed without the engine: one insulated wire cut into thin shells, marched in small explicit steps. All its
// numbers are typed in here; only still air's law is shared, with the second writing of the heat model.
import type { BenchLog, Scenario } from '#engine';
import { emptyLog, type ladder, noise } from './fit-logs.ts';
import { stillAirShed } from './oracle.ts';

/** The wire as the engine is told it: solid copper 1.5 mm², PVC of 0.7 mm, 5 m of it in series once. */
export const wire: Scenario = {
  cable: {
    layout: 'single',
    conductor: { size_mm2: 1.5, class: 1, R20_ohmPerKm: 12.1 },
    insulation: { material: 'pvc70', thickness_mm: 0.7 },
  },
  lead: { length_m: 5, inSeries: 1 },
  surroundings: { kind: 'stillAir', ambient_degC: 21 },
  supply: [{ kind: 'off' }],
};

/** What the made-up bench really has. */
export interface PlainTruth {
  /** Ω/m, Ω, factor on the heat shed, kelvins the probe reads too much, its time constant [s]. */
  readonly R20: number;
  readonly contact: number;
  readonly shed: number;
  readonly offset: number;
  readonly lag: number;
}

const shells = 10;
const rc = Math.sqrt(1.5e-6 / Math.PI);
const outer = rc + 0.7e-3;
const k = 0.2; // W/(m·K)
const edges = Array.from({ length: shells + 1 }, (_, i) => rc + ((outer - rc) * i) / shells);
const middles = edges.slice(1).map((r, i) => (r + edges[i]) / 2);
const held = [1.5e-6 * 3.45e6, ...edges.slice(1).map((r, i) => Math.PI * (r * r - edges[i] ** 2) * 1.7e6)]; // J/(m·K)
const between = (a: number, b: number) => Math.log(b / a) / (2 * Math.PI * k);

/** The log of such a wire under a ladder of currents. */
export function plainLog(rows: ReturnType<typeof ladder>, truth: PlainTruth, seed: string): BenchLog {
  const log = emptyLog(rows);
  const draw = noise(seed);
  const T = new Float64Array(shells + 1).fill(rows.ambient[0]);
  const away = new Float64Array(shells + 1);
  const dt = 0.01;
  let surface = rows.ambient[0];
  let felt = surface;
  for (let row = 0; row < rows.t.length; row++) {
    if (row > 0) {
      const span = rows.t[row] - rows.t[row - 1];
      const many = Math.round(span / dt);
      for (let s = 0; s < many; s++) {
        const part = (s + 0.5) / many;
        const I = rows.I[row - 1] + part * (rows.I[row] - rows.I[row - 1]);
        const Ta = rows.ambient[row - 1] + part * (rows.ambient[row] - rows.ambient[row - 1]);
        const made = I * I * truth.R20 * (1 + 0.00393 * (T[0] - 293.15));
        for (let i = 0; i < shells; i++)
          away[i] = (T[i] - T[i + 1]) / between(i === 0 ? rc : middles[i - 1], middles[i]);
        const film = (truth.shed * stillAirShed(2 * outer, 0.9, Ta, surface + 1e-6)) / (surface + 1e-6 - Ta); // W/(m·K)
        const edge = 1 / between(middles[shells - 1], outer);
        surface = (edge * T[shells] + film * Ta) / (edge + film);
        away[shells] = edge * (T[shells] - surface);
        for (let i = shells; i >= 0; i--) T[i] += (dt / held[i]) * ((i === 0 ? made : away[i - 1]) - away[i]);
        felt += (dt / truth.lag) * (surface - felt);
      }
    }
    const R = 5 * truth.R20 * (1 + 0.00393 * (T[0] - 293.15)) + truth.contact;
    log.U[row] = rows.I[row] * R + 0.002 * draw();
    log.probes[0].T[row] = felt + truth.offset + 0.2 * draw();
  }
  return log;
}

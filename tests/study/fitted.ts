// How well a fit to the early steps of a log foretells its last, on logs of leads that another model made.
import { type BenchLog, fitAndJudge, kelvin, type LogFit, type MetalId, type Scenario } from '#engine';
import { type BenchRow, type BenchSpec, runBench } from '../case-files/generator/bench.ts';
import { chanceOf } from './chance.ts';

interface Kind {
  readonly metal: MetalId;
  /** [Ω·m], [1/K], [W/(m·K)], [J/(m³·K)] as such wires vary little. */
  readonly rho: number;
  readonly alpha20: number;
  readonly k: number;
  readonly rhoC: number;
}

// numbers written here anew, as wires of commerce have them (handbooks, from memory)
const kinds: readonly Kind[] = [
  { metal: 'copper', rho: 1.73e-8, alpha20: 3.93e-3, k: 390, rhoC: 3.45e6 },
  { metal: 'aluminium', rho: 2.81e-8, alpha20: 4.04e-3, k: 234, rhoC: 2.46e6 },
  { metal: 'cca10', rho: 2.66e-8, alpha20: 4.02e-3, k: 250, rhoC: 2.54e6 },
];

/** A lead, its bench, and what a practitioner would write down of it. */
export interface Bench {
  readonly spec: BenchSpec;
  readonly scenario: Scenario;
}

/** One of the benches: leads of 4 to 10 m, three steps of ten minutes, hand-held meters, thermocouples of class 2. */
export function benchOf(seed: string): Bench {
  const by = chanceOf(seed);
  const kind = by.pick(kinds);
  const [strands, d] = by.pick([
    [24, 0.2],
    [32, 0.2],
    [30, 0.25],
  ] as const);
  const area = (strands * Math.PI * (d * 1e-3) ** 2) / 4;
  const R20 = (kind.rho / area) * by.even(1.0, 1.05);
  const walls = { insulation: by.even(0.6e-3, 0.9e-3), sheath: by.even(0.8e-3, 1e-3) };
  const length = by.even(4, 10);
  const Ta = by.even(14, 28);
  const top = Math.sqrt(by.even(2.2, 5) / (2 * R20)); // A, for a last step of 2 to 5 W/m
  const handheld = { gain: 0.003, noise: 0.001, digit: 0.001 };
  const spec: BenchSpec = {
    seed: Math.floor(by.even(1, 2 ** 31)),
    lead: {
      ...{ length, area, R20, alpha20: kind.alpha20, k: kind.k, rhoC: kind.rhoC, loaded: 2 },
      ...{ contact: by.even(0, 0.004), tapped: false, weak: null },
    },
    section: {
      bundleRadius: Math.sqrt(area / Math.PI) * by.even(1.1, 1.16),
      ...walls,
      ...{ k: by.even(0.175, 0.215), rhoC: by.even(1.6e6, 1.85e6), across: 22 },
    },
    air: { T: kelvin(Ta), wanders: 0.3, speed: by.even(0, 0.05), gusts: 0.02, emissivity: by.even(0.86, 0.94) },
    steps: [0.6, 0.8, 1].map((share) => [Number((top * share).toFixed(1)), 600] as const),
    every: 10,
    probes: [{ at: length / 2, lag: by.even(5, 30), off: 0.8 }],
    volts: handheld,
    amps: { gain: 0.005, noise: 0.003, digit: 0.01 },
  };
  const mm = (metres: number) => Number((metres * 1e3 * by.even(0.97, 1.03)).toFixed(2)); // a calliper on soft plastic
  const scenario: Scenario = {
    cable: {
      ...{ layout: 'round', cores: 3, loaded: 2 },
      conductor: {
        metal: kind.metal,
        strands: { count: strands, diameter_mm: d },
        R20_ohmPerKm: R20 * 1e3 * (1 + 0.006 * by.normal()),
      },
      insulation: { material: 'pvc70', thickness_mm: mm(walls.insulation) },
      sheath: { material: 'pvc70', thickness_mm: mm(walls.sheath) },
    },
    lead: { length_m: Number(length.toFixed(2)) },
    surroundings: { kind: 'stillAir', ambient_degC: Math.round(Ta) },
    supply: [{ kind: 'off' }],
  };
  return { spec, scenario };
}

/** Rows as a log. */
export function logOf(rows: readonly BenchRow[]): BenchLog {
  const column = (value: (row: BenchRow) => number) => Float64Array.from(rows, value);
  return {
    t: column(({ t }) => t),
    I: column(({ I }) => I),
    U: column(({ U }) => U),
    probes: [{ name: 'sheath', place: 'surface', T: column(({ probes }) => kelvin(probes[0] as number)) }],
    ambient: column(({ ambient }) => kelvin(ambient)),
    ...{ remarks: [], startedAt: null, simulated: true },
  };
}

/** What hand-held instruments are good for: what scatters from row to row, and gains and offsets that stay, rectangular. */
export const instruments = {
  ...{ I: 0.005, U: 0.0015, probe: 0.1, ambient: 0.1 },
  lasting: { gain: Math.hypot(0.003, 0.005) / Math.sqrt(3), probe: 0.8 / Math.sqrt(3), ambient: 0.1 },
} as const;

/** What became of a number of benches. */
export interface Foretold {
  readonly benches: number;
  /** Share of benches in which 90 % of the last step's readings lie in their bands, and mean share of readings inside. */
  readonly held: number;
  readonly inside: number;
  /** Share in which R'20 lies in its wide interval, and the median of its distance from the truth, relative. */
  readonly R20Held: number;
  readonly R20Error: number;
}

/** Fits resistance, surface and probe to the first two steps of each of `count` benches, and judges the third. */
export function foretell(count: number, seed: string): Foretold {
  const found = Array.from({ length: count }, (_, i) => one(benchOf(`${seed} ${i}`)));
  const share = (is: (of: (typeof found)[number]) => boolean) => found.filter(is).length / count;
  const errors = found.map(({ error }) => error).sort((a, b) => a - b);
  return {
    benches: count,
    held: share(({ inside }) => inside >= 0.9),
    inside: found.reduce((sum, { inside }) => sum + inside, 0) / count,
    R20Held: share(({ R20Held }) => R20Held),
    R20Error: errors[count >> 1] as number,
  };
}

function one({ spec, scenario }: Bench) {
  const log = logOf(runBench(spec));
  const judged = fitAndJudge({ scenario, log, u: instruments, free: ['R20', 'surface', 'probeOffset', 'probeLag'] });
  const fit = judged.fit as LogFit;
  const R20 = fit.parameters.find(({ id }) => id === 'R20');
  const [low, high] = R20?.wide ?? [Number.NaN, Number.NaN];
  const truth = spec.lead.R20;
  return {
    inside: judged.kind === 'judged' ? judged.inside : 0,
    R20Held: low <= truth && truth <= high,
    error: Math.abs((R20?.value ?? Number.NaN) / truth - 1),
  };
}

import type { Drive } from './drive.ts';
import type { Readings } from './forward.ts';

/** What is left of one observable when the model has said its part; arrays of one length, readings only. */
export interface Residuals {
  /** The volts, or a probe by its name. */
  readonly observable: string;
  readonly unit: 'V' | 'K';
  readonly t: Float64Array;
  /** Measured less predicted, and the standard uncertainty of a reading. */
  readonly value: Float64Array;
  readonly u: Float64Array;
  /** Mean and root mean square. */
  readonly bias: number;
  readonly rms: number;
  /** Correlation of each with the next; near 0 for noise. */
  readonly autocorrelation: number;
  /** Durbin and Watson's d: near 2 for noise, near 0 where neighbours agree. */
  readonly durbinWatson: number;
  /**
   * How many standard deviations fewer (negative) runs of one sign about the median there are than of noise (Wald and
   * Wolfowitz); null with too few readings to say.
   */
  readonly runsZ: number | null;
  /** True unless the runs are too few for noise at one in a hundred: a wrong model shows so. */
  readonly white: boolean;
}

/** Below this the runs are too few for noise: one chance in a hundred, one side of the normal distribution. */
const tooFew = -2.326;
const fewestReadings = 20;

/** One residual per reading, volts first, then each probe: the readings of a drive against the model's. */
export function residualsOf(drive: Drive, model: Readings): Residuals[] {
  return [
    residualsOfOne('volts', 'V', drive.t, drive.U, model.U, drive.uU),
    ...drive.probes.map(({ name, T, u }, i) =>
      residualsOfOne(name, 'K', drive.t, T, model.probes[i] as Float64Array, u),
    ),
  ];
}

function residualsOfOne(
  observable: string,
  unit: 'V' | 'K',
  t: Float64Array,
  measured: Float64Array,
  predicted: Float64Array,
  u: Float64Array,
): Residuals {
  const all = Float64Array.from(measured, (y, i) => y - predicted[i]);
  const kept = Array.from(all.keys()).filter((i) => Number.isFinite(all[i]));
  const pick = (values: Float64Array) => Float64Array.from(kept, (i) => values[i]);
  const value = pick(all);
  const runsZ = runsScore(value);
  return {
    observable,
    unit,
    t: pick(t),
    value,
    u: pick(u),
    ...moments(value),
    runsZ,
    white: runsZ === null || runsZ > tooFew,
  };
}

/** Mean, root mean square, lag-one correlation about the mean, and Σ(e_i − e_(i−1))²/Σe². */
function moments(e: Float64Array): Pick<Residuals, 'bias' | 'rms' | 'autocorrelation' | 'durbinWatson'> {
  const bias = e.reduce((sum, x) => sum + x, 0) / e.length;
  const squares = e.reduce((sum, x) => sum + x * x, 0);
  let products = 0;
  let steps = 0;
  for (let i = 1; i < e.length; i++) {
    products += (e[i] - bias) * (e[i - 1] - bias);
    steps += (e[i] - e[i - 1]) ** 2;
  }
  return {
    bias,
    rms: Math.sqrt(squares / e.length),
    autocorrelation: products / (squares - e.length * bias * bias),
    durbinWatson: steps / squares,
  };
}

/** (runs − expected)/deviation of the signs about the median. */
function runsScore(e: Float64Array): number | null {
  const sorted = Float64Array.from(e).sort();
  const median = sorted[sorted.length >> 1];
  const signs = Array.from(e)
    .filter((x) => x !== median)
    .map((x) => x > median);
  const above = signs.filter(Boolean).length;
  const below = signs.length - above;
  if (Math.min(above, below) < fewestReadings / 2) return null;
  const runs = 1 + signs.slice(1).filter((sign, i) => sign !== signs[i]).length;
  const n = above + below;
  const expected = 1 + (2 * above * below) / n;
  const variance = ((expected - 1) * (expected - 2)) / (n - 1);
  return (runs - expected) / Math.sqrt(variance);
}

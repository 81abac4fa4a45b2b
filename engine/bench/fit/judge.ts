import { buildCase, leadResistance } from '../../heating/thermal-case.ts';
import { resistanceRatio, T20 } from '../../material/resistivity.ts';
import type { BenchLog } from '../log.ts';
import { studentQuantile } from '../uncertainty/student.ts';
import { driveOf } from './drive.ts';
import { type FitProblem, fitLog } from './fit.ts';
import { type Forward, forwardOf } from './forward.ts';
import { type FitParameterId, fitParametersOf } from './parameters.ts';
import { withFree } from './readings.ts';
import type { FitProgress, LogFit } from './result.ts';
import { type StepSpan, stepsOfLog } from './steps.ts';

/** What the model itself may be off by beyond its parameters: this share of the rise over the air, one standard uncertainty; that of the law of still air. */
export const modelAllowance = 0.03;

/** Rows of the held-back step that are judged, at most about; longer logs are put into groups. */
const mostRows = 2000;

/** One observable at the held-back step; arrays of one length, readings only. */
export interface JudgedObservable {
  readonly observable: string;
  readonly unit: 'V' | 'K';
  readonly t: Float64Array;
  readonly measured: Float64Array;
  readonly predicted: Float64Array;
  /** Half of the band that should hold 95 of 100 readings, in the unit. */
  readonly half: Float64Array;
  /** Share (0 to 1) of the readings inside; NaN where there are none. */
  readonly inside: number;
}

/** A fit to the early steps, judged on the last. */
export interface HeldBack {
  readonly kind: 'judged';
  readonly fit: LogFit;
  readonly step: StepSpan;
  readonly allowance: number;
  readonly observables: readonly JudgedObservable[];
  /** Share of all readings inside their bands; 0.95 is what a right model gives at the least. */
  readonly inside: number;
}

/** A log that has no step to hold back, or an early part that cannot be fitted. */
export interface NotJudged {
  readonly kind: 'not judged';
  readonly why: 'fewer than two steps' | 'the early steps cannot be fitted';
  readonly fit: LogFit | null;
}

/**
 * Fits the early steps of a log and judges the fit on the last: the model goes on with the log's own current and air, and each
 * reading is asked whether it lies in the band of parameter covariance, the reading's own uncertainty and the model's
 * allowance, added in squares and multiplied by Student's t of 95 of 100.
 * @param steps in order of time; found by the current alone where none are handed in
 */
export function fitAndJudge(
  problem: FitProblem,
  steps: readonly StepSpan[] = stepsOfLog(problem.log, problem.u.I),
  onStep?: (progress: FitProgress) => boolean | undefined,
): HeldBack | NotJudged {
  const step = steps.at(-1);
  if (steps.length < 2 || !step) return { kind: 'not judged', why: 'fewer than two steps', fit: null };
  const fit = fitLog({ ...problem, log: until(problem.log, (t) => t < step.from) }, onStep);
  const forward = forwardTo(problem, step.to);
  if (fit.dof < 1 || !forward?.sound) return { kind: 'not judged', why: 'the early steps cannot be fitted', fit };
  const observables = bandsOf(forward, fit, step);
  const all = observables.filter(({ t }) => t.length > 0);
  const many = all.reduce((sum, { t }) => sum + t.length, 0);
  const inside = all.reduce((sum, one) => sum + one.inside * one.t.length, 0) / many;
  return { kind: 'judged', fit, step, allowance: modelAllowance, observables, inside };
}

function forwardTo({ scenario, log, u }: FitProblem, end: number): Forward | null {
  const of = buildCase(scenario);
  const drive = driveOf(
    until(log, (t) => t <= end),
    u,
    of.Ta,
    leadResistance(of, T20),
    mostRows,
  );
  return drive && forwardOf(scenario, drive);
}

/** The first rows of a log, as long as `keeps` holds of their time. */
function until(log: BenchLog, keeps: (t: number) => boolean): BenchLog {
  const end = log.t.findIndex((t) => !keeps(t));
  const cut = (column: Float64Array) => (end < 0 ? column : column.slice(0, end));
  return {
    ...log,
    t: cut(log.t),
    I: cut(log.I),
    U: cut(log.U),
    ambient: log.ambient && cut(log.ambient),
    probes: log.probes.map((probe) => ({ ...probe, T: cut(probe.T) })),
  };
}

/** The columns of a drive's readings and of what the model makes of them: volts first, then each probe. */
const columnsOf = ({ U, probes }: ReturnType<Forward['readings']>) => [U, ...probes];

function bandsOf(forward: Forward, fit: LogFit, step: StepSpan): JudgedObservable[] {
  const { drive } = forward;
  const model = columnsOf(forward.readings(fit.values));
  const slopes = fit.of.map((id) => slopeOf(forward, fit, id, model));
  const allowed = allowances(forward, fit);
  const t = studentQuantile(0.95, fit.dof);
  const measured = [
    { observable: 'volts', unit: 'V' as const, y: drive.U, u: drive.uU },
    ...drive.probes.map(({ name, T, u }) => ({ observable: name, unit: 'K' as const, y: T, u })),
  ];
  return measured.map(({ observable, unit, y, u }, c) => {
    const rows = Array.from(y.keys()).filter(
      (i) => Number.isFinite(y[i]) && drive.t[i] >= step.from && drive.t[i] <= step.to,
    );
    const half = Float64Array.from(rows, (i) => {
      const g = slopes.map((slope) => slope[c][i]);
      return t * Math.sqrt(quadratic(fit.covariance, g) + (u[i] * fit.widened) ** 2 + allowed[c][i] ** 2);
    });
    const pick = (values: Float64Array) => Float64Array.from(rows, (i) => values[i]);
    const within = rows.filter((i, n) => Math.abs(y[i] - model[c][i]) <= half[n]).length;
    return {
      observable,
      unit,
      t: pick(drive.t),
      measured: pick(y),
      predicted: pick(model[c]),
      half,
      inside: within / rows.length,
    };
  });
}

const quadratic = (matrix: readonly (readonly number[])[], g: readonly number[]) =>
  matrix.reduce((sum, row, i) => sum + g[i] * row.reduce((inner, x, j) => inner + x * g[j], 0), 0);

function slopeOf(forward: Forward, fit: LogFit, id: FitParameterId, at: readonly Float64Array[]): Float64Array[] {
  const { step } = fitParametersOf(forward.of)[id];
  const moved = columnsOf(
    forward.readings(
      withFree(
        fit.values,
        fit.of,
        fit.of.map((one) => fit.values[one] + (one === id ? step : 0)),
      ),
    ),
  );
  return moved.map((column, c) => column.map((f, i) => (f - at[c][i]) / step));
}

/** The model's allowance at each reading: on the rise of conductor or probe, in volts by the metal's own temperature coefficient. */
function allowances({ of, drive, trace }: Forward, { values }: LogFit): Float64Array[] {
  const T = trace(values);
  const { alpha20, beta20 } = of.cable.conductor;
  const rise = (where: Float64Array, k: number) => {
    const Ta = drive.ambient[Math.min(k, drive.ambient.length - 1)] + values.ambientOffset;
    return modelAllowance * Math.abs(where[k] - Ta);
  };
  const volts = Float64Array.from(drive.at, (k, i) => {
    const x = T.conductor[k] - T20;
    const relative = (alpha20 + 2 * beta20 * x) / resistanceRatio(alpha20, beta20, T.conductor[k]);
    return Math.abs(drive.U[i] * relative * rise(T.conductor, k));
  });
  return [volts, ...drive.probes.map(({ place }) => Float64Array.from(drive.at, (k) => rise(T[place], k)))];
}

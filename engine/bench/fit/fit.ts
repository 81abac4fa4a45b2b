import { buildCase, leadResistance } from '../../heating/thermal-case.ts';
import { T20 } from '../../material/resistivity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import type { BenchLog } from '../log.ts';
import { studentQuantile, withinStudent } from '../uncertainty/student.ts';
import { astray, type Covariance, covarianceOf } from './covariance.ts';
import { type ColumnUncertainty, type Drive, driveOf } from './drive.ts';
import { type Forward, forwardOf } from './forward.ts';
import { type FitParameterId, type FitValues, fitParametersOf, valuesOf } from './parameters.ts';
import { type Weighed, weighed, withFree } from './readings.ts';
import { residualsOf } from './residuals.ts';
import type { FitEnd, FitProgress, Fitted, LogFit, Untold } from './result.ts';
import { type SearchEnd, searching } from './search.ts';
import { atBounds, boundTogether, nextToHold, tellingOf } from './untold.ts';
import { fitWords } from './words.ts';

/** What is to be fitted to what. */
export interface FitProblem {
  /** The prediction's case: cable, surroundings, lead and start; its supply is not looked at. */
  readonly scenario: Scenario;
  readonly log: BenchLog;
  readonly u: ColumnUncertainty;
  readonly free: readonly FitParameterId[];
  /** Values to begin at, or to hold where they are not freed; the case's own where none is given. */
  readonly values?: Partial<FitValues>;
}

/** Groups of rows that a search looks at, about. */
const mostGroups = 400;
/** Probability beyond which a parameter's freedom is needed by a log. */
const needed = 0.99;
const share = 0.95;

const unknown = { u: null, interval: null, uModel: null, wide: null };
const noCovariance: Covariance = { matrix: [], correlation: [], conditioning: 1, weakest: [] };

/** Fits at once; `onStep` may look at the progress, and ends the fit by returning false. */
export function fitLog(problem: FitProblem, onStep?: (progress: FitProgress) => boolean | undefined): LogFit {
  const steps = fitting(problem);
  let next = steps.next();
  while (!next.done) next = steps.next(onStep?.(next.value));
  return next.value;
}

/**
 * Fits the heat model to a log, driven by the log's own current and air: yields its progress, and ends early when `false` comes
back. Minimises Σ((measured − model)/u)² over volts and sheath probes, by Levenberg and Marquardt. What the log does not
 * tell is held at its start and named. Of two bound together one is held where its interval would be too long to be of use,
 * unless the log needs both at one in a hundred. Poor data give a value too; only a scenario whose parts do not fit throws (`ScenarioFault`).
 */
export function* fitting(problem: FitProblem): Generator<FitProgress, LogFit, boolean | undefined> {
  const { scenario, log, u, free, values } = problem;
  const of = buildCase(scenario);
  const R = leadResistance(of, T20);
  const begin: FitValues = valuesOf(of, values);
  const drive = driveOf(log, u, of.Ta, R, mostGroups);
  if (drive === null) return nothing(problem, begin, null, 'too few readings');
  const forward = forwardOf(scenario, drive);
  if (!forward.sound) return nothing(problem, begin, forward, 'melts');
  const readings = weighed(forward, u.lasting);
  if (readings.many < free.length + 2) return nothing(problem, begin, forward, 'too few readings');
  if (!Number.isFinite(readings.chiSquare(begin))) return nothing(problem, begin, forward, 'melts');
  const found = yield* told(readings, free, begin);
  const rowDrive = drive.at.length === drive.rows ? drive : driveOf(log, u, of.Ta, R);
  return resultOf(problem, readings, begin, found, rowForward(scenario, rowDrive, forward));
}

/** The model on every row; on the groups where that cannot be. */
function rowForward(scenario: Scenario, drive: Drive | null, groups: Forward): Forward {
  if (drive === null || drive === groups.drive) return groups;
  const rows = forwardOf(scenario, drive);
  return rows.sound ? rows : groups;
}

interface Round {
  readonly values: FitValues;
  readonly chiSquare: number;
  readonly end: SearchEnd;
}

interface Told extends Round {
  readonly free: readonly FitParameterId[];
  readonly untold: readonly Untold[];
  readonly evaluations: number;
  readonly iterations: number;
}

/** Searches, holds what is not told, and searches again. */
function* told(
  readings: Weighed,
  asked: readonly FitParameterId[],
  begin: FitValues,
): Generator<FitProgress, Told, boolean | undefined> {
  const count = { evaluations: 0, iterations: 0, round: 0 };
  const untold: Untold[] = [];
  const kept: FitParameterId[][] = [];
  let free = [...asked];
  let now = yield* round(readings, free, begin, count);
  while (now.end !== 'stopped' && free.length > 0) {
    const { t, widened } = spread(readings, free, now.chiSquare);
    count.evaluations += free.length + 3;
    const telling = tellingOf(readings, free, now.values, t, widened);
    const found = nextToHold(telling, kept);
    if (!found) return { ...now, free, untold: [...untold, ...boundTogether(telling)], ...count };
    const rest = free.filter((id) => id !== found.held);
    const from = withFree(
      begin,
      rest,
      rest.map((id) => now.values[id]),
    );
    const held = yield* round(readings, rest, from, count);
    if (found.why === 'correlated' && held.end !== 'stopped' && isNeeded(readings, free, now, held)) {
      kept.push([found.held, ...found.from]);
      continue;
    }
    untold.push(found);
    free = rest;
    now = held;
  }
  return { ...now, free, untold, ...count };
}

/** F test of one parameter more: whether its freedom gains more than chance would in 99 of 100 logs. */
function isNeeded(readings: Weighed, free: readonly FitParameterId[], more: Round, less: Round): boolean {
  const dof = readings.many - free.length;
  const F = (less.chiSquare - more.chiSquare) / Math.max(1, more.chiSquare / dof);
  return withinStudent(Math.sqrt(Math.max(0, F)), dof) > needed;
}

function* round(
  readings: Weighed,
  free: readonly FitParameterId[],
  values: FitValues,
  count: { evaluations: number; iterations: number; round: number },
): Generator<FitProgress, Round, boolean | undefined> {
  count.round++;
  const search = searching(readings.search(free, values));
  let next = search.next();
  while (!next.done) {
    const { iteration, evaluations, chiSquare } = next.value;
    const go = yield { round: count.round, iteration, evaluations: count.evaluations + evaluations, chiSquare };
    next = search.next(go);
  }
  const { p, chiSquare, end, iteration, evaluations } = next.value;
  count.iterations += iteration;
  count.evaluations += evaluations;
  return { values: withFree(values, free, p), chiSquare, end };
}

/** Student's t of 95 of 100, and the widening √(χ²/dof) where that is above 1. */
function spread(readings: Weighed, free: readonly FitParameterId[], chiSquare: number) {
  const dof = readings.many - free.length;
  return { dof, t: studentQuantile(share, dof), widened: Math.sqrt(Math.max(1, chiSquare / dof)) };
}

function resultOf(problem: FitProblem, readings: Weighed, begin: FitValues, found: Told, rows: Forward): LogFit {
  const { values, free, untold, chiSquare, evaluations, iterations, end } = found;
  const { dof, t, widened } = spread(readings, free, chiSquare);
  const bound = atBounds(readings, free, values);
  const inner = free.filter((id) => !bound.includes(id));
  const slopes = readings.slopes(inner, values);
  const known = inner.length > 0 ? covarianceOf(slopes) : noCovariance;
  const { matrix, correlation } = known;
  const off = astray(slopes, known, inner.length > 0 ? readings.modelErrors(values) : []);
  const covariance = matrix.map((row) => row.map((x) => x * widened ** 2));
  const parameters = problem.free.map((id): Fitted => {
    const one = { ...readings.parameters[id], start: begin[id], value: values[id] };
    const j = inner.indexOf(id);
    if (j < 0) return { ...one, state: bound.includes(id) ? 'at bound' : 'held', ...unknown };
    const u = Math.sqrt(covariance[j][j]);
    const about = (half: number) => cutAt(one.bounds, one.value, half);
    return {
      ...one,
      state: 'fitted',
      u,
      interval: about(t * u),
      uModel: off[j],
      wide: about(t * Math.hypot(u, off[j])),
    };
  });
  const { drive } = readings.forward;
  const fit = {
    ended: end,
    evaluations,
    iterations,
    parameters,
    values,
    chiSquareBefore: readings.chiSquare(begin),
    chiSquare,
    readings: readings.many,
    dof,
    widened,
    of: inner,
    covariance,
    correlation,
    untold,
    residuals: residualsOf(rows.drive, rows.readings(values)),
    rows: drive.rows,
    groups: drive.at.length,
  };
  return { ...fit, words: fitWords(fit, readings.parameters) };
}

const cutAt = ([least, most]: readonly [number, number], value: number, half: number) =>
  [Math.max(least, value - half), Math.min(most, value + half)] as const;

/** A fit that could not begin. */
function nothing(problem: FitProblem, values: FitValues, forward: Forward | null, ended: FitEnd): LogFit {
  const readings = forward && weighed(forward);
  const names = fitParametersOf(buildCase(problem.scenario));
  const fit = {
    ended,
    evaluations: 0,
    iterations: 0,
    parameters: problem.free.map(
      (id): Fitted => ({ ...names[id], start: values[id], value: values[id], state: 'held', ...unknown }),
    ),
    values,
    chiSquareBefore: Number.NaN,
    chiSquare: Number.NaN,
    readings: readings?.many ?? 0,
    dof: 0,
    widened: 1,
    of: [],
    covariance: [],
    correlation: [],
    untold: [],
    residuals: [],
    rows: forward?.drive.rows ?? 0,
    groups: forward?.drive.at.length ?? 0,
  };
  return { ...fit, words: fitWords(fit, names) };
}

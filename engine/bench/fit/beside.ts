import { buildCase, leadResistance } from '../../heating/thermal-case.ts';
import { T20 } from '../../material/resistivity.ts';
import { byResistance, type CompareQuestion } from './compare.ts';
import { type Difference, explainDifference } from './difference.ts';
import { driveOf } from './drive.ts';
import { forwardOf } from './forward.ts';
import { valuesOf } from './parameters.ts';
import { plateauOf, type StepSpan, stepsOfLog } from './steps.ts';

/** One thermometer of a log beside its prediction; arrays of one length, readings only. Temperatures in K. */
export interface ThermometerBeside {
  /** 'conductor by resistance', or a probe by its name. */
  readonly thermometer: string;
  readonly place: 'conductor' | 'surface' | 'outside';
  readonly t: Float64Array;
  readonly measured: Float64Array;
  readonly predicted: Float64Array;
}

/** A log beside its prediction along the run. */
export interface LogBeside {
  /** Times [s], and what the model computes there, driven by the log's own current and air [K]. */
  readonly t: Float64Array;
  readonly conductor: Float64Array;
  readonly surface: Float64Array;
  readonly outside: Float64Array;
  readonly thermometers: readonly ThermometerBeside[];
  /** Rows of the log, and the groups whose means stand here. */
  readonly rows: number;
  readonly groups: number;
}

/**
 * Sets what a log read beside what the model computes at the same times, driven by the log's own current and air, for a figure of
 * about `most` points. Null where the log cannot drive the model, or the model melts the metal on its current.
 */
export function besideLog({ scenario, log, u, values }: CompareQuestion, most = 600): LogBeside | null {
  const of = buildCase(scenario);
  const drive = driveOf(log, u, of.Ta, leadResistance(of, T20), most);
  const forward = drive && forwardOf(scenario, drive);
  if (drive === null || !forward?.sound) return null;
  const all = valuesOf(of, values);
  const { conductor, surface, outside } = forward.trace(all);
  const model = forward.readings(all);
  const one = (thermometer: string, place: ThermometerBeside['place'], measured: Float64Array, from: Float64Array) => {
    const kept = Array.from(drive.t.keys()).filter((i) => Number.isFinite(measured[i]) && Number.isFinite(from[i]));
    const pick = (column: Float64Array) => Float64Array.from(kept, (i) => column[i] as number);
    return { thermometer, place, t: pick(drive.t), measured: pick(measured), predicted: pick(from) };
  };
  const byR = (U: Float64Array) => byResistance(of, drive, U, all);
  return {
    ...{ t: drive.nodes, conductor, surface, outside, rows: drive.rows, groups: drive.at.length },
    thermometers: [
      one('conductor by resistance', 'conductor', byR(drive.U), byR(model.U)),
      ...drive.probes.map(({ name, place, T }, i) => one(name, place, T, model.probes[i] as Float64Array)),
    ],
  };
}

/** Means over the plateau of one step; NaN where nothing was read. */
export interface PlateauMeans {
  readonly span: StepSpan;
  /** Current [A], volts across the lead [V], their power [W] and resistance [Ω]; air beside it [K]. */
  readonly I: number;
  readonly U: number;
  readonly P: number;
  readonly R: number;
  readonly ambient: number;
}

/** What current, volts and air were at the plateaus of a log, over the rows that have both current and volts. */
export function plateauMeans({
  log,
  u,
  steps = stepsOfLog(log, u.I),
}: Pick<CompareQuestion, 'log' | 'u' | 'steps'>): PlateauMeans[] {
  return steps.map(plateauOf).map((span) => {
    const rows = Array.from(log.t.keys()).filter((i) => {
      const t = log.t[i] as number;
      return t >= span.from && t <= span.to && Number.isFinite(log.I[i]);
    });
    const both = rows.filter((i) => Number.isFinite(log.U[i]));
    const mean = (of: readonly number[], value: (i: number) => number) =>
      of.reduce((sum, i) => sum + value(i), 0) / of.length;
    const [I, U] = [mean(rows, (i) => log.I[i] as number), mean(both, (i) => log.U[i] as number)];
    const told = both.map((i) => (log.U[i] as number) / (log.I[i] as number)).filter(Number.isFinite);
    const air = rows.map((i) => log.ambient?.[i] ?? Number.NaN).filter(Number.isFinite);
    return {
      ...{ span, I, U },
      P: mean(both, (i) => (log.U[i] as number) * (log.I[i] as number)),
      R: told.reduce((sum, R) => sum + R, 0) / told.length,
      ambient: air.reduce((sum, T) => sum + T, 0) / air.length,
    };
  });
}

/**
 * Why, at the last plateau that carries current, the mean by resistance and the first sheath probe differ. Null where the log has
 * no such plateau or no such probe.
 */
export function differenceAtLastPlateau(question: CompareQuestion): Difference | null {
  const { scenario, log, u, values } = question;
  const of = buildCase(scenario);
  const plateau = plateauMeans(question).findLast(({ I, R }) => I > 0 && R > 0);
  const index = log.probes.findIndex(({ place }) => place === 'surface');
  const probe = log.probes[index];
  if (!plateau || !probe) return null;
  const { span, I, R, ambient } = plateau;
  const read = probe.T.filter((T, i) => {
    const t = log.t[i] as number;
    return Number.isFinite(T) && t >= span.from && t <= span.to;
  });
  if (read.length === 0) return null;
  const { contact, probeOffset } = valuesOf(of, values);
  return explainDifference({
    scenario,
    I,
    R: R - contact + of.lead.contact,
    uR: Math.hypot(u.U, R * u.I) / I,
    probe: read.reduce((sum, T) => sum + T, 0) / read.length - probeOffset,
    uProbe: typeof u.probe === 'number' ? u.probe : (u.probe[index] ?? 0),
    ambient: Number.isNaN(ambient) ? of.Ta : ambient,
  });
}

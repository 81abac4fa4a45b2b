import { conductorByResistance } from '../../heating/by-resistance.ts';
import { buildCase, leadResistance, type ThermalCase } from '../../heating/thermal-case.ts';
import { T20 } from '../../material/resistivity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import type { BenchLog } from '../log.ts';
import { type CaseUncertainty, caseUncertainty } from './band.ts';
import { type ColumnUncertainty, type Drive, driveOf } from './drive.ts';
import { type CaseChange, forwardOf } from './forward.ts';
import { type FitValues, valuesOf } from './parameters.ts';
import { plateauOf, type StepSpan, stepsOfLog } from './steps.ts';

/** Prediction and log at one plateau. Temperatures in K. */
export interface PlateauAgreement {
  readonly span: StepSpan;
  /** Mean current [A]. */
  readonly I: number;
  readonly measured: number;
  readonly predicted: number;
  /** Measured less predicted, and its standard uncertainty √(u_pred² + u_meas²). */
  readonly difference: number;
  readonly u: number;
  readonly uPredicted: number;
  readonly uMeasured: number;
  /** Whether |difference| ≤ 2u. */
  readonly agrees: boolean;
}

/** Prediction and log for one thermometer: the conductor by its resistance, or a probe. */
export interface Agreement {
  readonly thermometer: string;
  readonly plateaus: readonly PlateauAgreement[];
  /** Mean difference over the plateaus [K]; NaN where there are none. */
  readonly bias: number;
  /** Root mean square difference over all rows, or groups of rows in a long log [K]. */
  readonly rms: number;
  readonly agrees: boolean;
}

/** What a comparison needs. */
export interface CompareQuestion {
  readonly scenario: Scenario;
  readonly log: BenchLog;
  readonly u: ColumnUncertainty;
  /** Steps in order of time; found by the current alone where none are handed in. */
  readonly steps?: readonly StepSpan[];
  /** Values that differ from the case's own, such as those of a refit. */
  readonly values?: Partial<FitValues>;
  /** What is known better, or worse, of the case than its records say. */
  readonly known?: Partial<CaseUncertainty>;
}

const mostRows = 2000;

/** A column of temperatures at the groups of a drive [K], measured or predicted; NaN where there is none. */
type Column = Float64Array;

/**
 * Sets a prediction beside a log, driven by the log's own current and air: bias at plateaus, RMS, and whether each plateau agrees,
 * |difference| ≤ 2u. The prediction's uncertainty is what resistance, emissivity, outer diameter, surface law and air move by
 * one standard uncertainty each, added in squares; all are taken as lasting, so that a mean over a plateau does not lessen them.
 * Null where the log cannot drive the model.
 */
export function compareWithLog(question: CompareQuestion): Agreement[] | null {
  const { scenario, log, u } = question;
  const of = buildCase(scenario);
  const drive = driveOf(log, u, of.Ta, leadResistance(of, T20), mostRows);
  if (drive === null) return null;
  const values = valuesOf(of, question.values);
  const base = columnsBy(of, drive, values, {});
  if (base === null) return null;
  const known = { ...caseUncertainty(of, log.ambient && u.ambient), ...question.known };
  const varied = variants(of, known, values).map(
    ([moved, change]) => columnsBy(of, drive, moved, change, values) ?? base,
  );
  const measured = [byResistance(of, drive, drive.U, values), ...drive.probes.map(({ T }) => T)];
  const spans = (question.steps ?? stepsOfLog(log, u.I)).map(plateauOf);
  const names = ['conductor by resistance', ...drive.probes.map(({ name }) => name)];
  return names.map((thermometer, c) => {
    const uMeasured = c === 0 ? resistanceUncertainty(of, drive, u) : drive.probes[c - 1].u.map(lasting(drive));
    const plateaus = spans.flatMap((span) =>
      atPlateau(
        drive,
        span,
        measured[c],
        base[c],
        varied.map((v) => v[c]),
        uMeasured,
      ),
    );
    const all = measured[c].map((y, i) => y - base[c][i]).filter(Number.isFinite);
    return {
      thermometer,
      plateaus,
      bias: plateaus.reduce((sum, { difference }) => sum + difference, 0) / plateaus.length,
      rms: Math.sqrt(all.reduce((sum, d) => sum + d * d, 0) / all.length),
      agrees: plateaus.length > 0 && plateaus.every(({ agrees }) => agrees),
    };
  });
}

/** A group's uncertainty back to that of one reading: an instrument's error does not average away. */
const lasting =
  ({ count }: Drive) =>
  (u: number, i: number) =>
    u * Math.sqrt(count[i]);

/** The case moved by one standard uncertainty of each thing it rests on. */
function variants(of: ThermalCase, known: CaseUncertainty, values: FitValues): (readonly [FitValues, CaseChange])[] {
  const emissivity = of.scenario.surroundings.kind === 'clipped' ? undefined : emissivityOf(of) + known.emissivity;
  return [
    [{ ...values, R20: values.R20 * (1 + known.R20) }, {}],
    [{ ...values, surface: values.surface * (1 + known.law) }, {}],
    [{ ...values, ambientOffset: values.ambientOffset + known.ambient }, {}],
    [values, { diameter: 1 + known.diameter }],
    [values, emissivity === undefined ? {} : { emissivity }],
  ];
}

function emissivityOf({ scenario, cable }: ThermalCase): number {
  const { surroundings } = scenario;
  const given = 'emissivity' in surroundings ? surroundings.emissivity : undefined;
  return given ?? (surroundings.kind === 'lagged' ? 0.9 : cable.emissivity);
}

/** What the thermometers would say; resistance is read as temperature by the values of `reader`. */
function columnsBy(
  of: ThermalCase,
  drive: Drive,
  values: FitValues,
  change: CaseChange,
  reader: FitValues = values,
): Column[] | null {
  const forward = forwardOf(of.scenario, drive, change);
  if (!forward.sound) return null;
  const { U, probes } = forward.readings(values);
  return [byResistance(of, drive, U, reader), ...probes];
}

/** The conductor's temperature by the resistance that volts and current tell, contacts taken off. */
export function byResistance(of: ThermalCase, { I }: Drive, U: Float64Array, { R20, contact }: FitValues): Column {
  const share = of.cable.conductor.R20 / R20;
  return U.map((volts, i) => conductorByResistance(of, (volts / I[i] - contact) * share) ?? Number.NaN);
}

/** Standard uncertainty of a temperature by resistance [K]: √(u_U² + (R u_I)²)/I over the resistance of one kelvin. */
function resistanceUncertainty(of: ThermalCase, drive: Drive, u: ColumnUncertainty): Column {
  const perKelvin = leadResistance(of, T20) * Math.abs(of.cable.conductor.alpha20);
  return drive.I.map((I, i) => Math.hypot(u.U, (drive.U[i] / I) * u.I) / I / perKelvin);
}

function atPlateau(
  { t, I }: Drive,
  span: StepSpan,
  measured: Column,
  predicted: Column,
  varied: readonly Column[],
  uMeasured: Column,
): PlateauAgreement[] {
  const rows = Array.from(t.keys()).filter(
    (i) => t[i] >= span.from && t[i] <= span.to && Number.isFinite(measured[i]) && Number.isFinite(predicted[i]),
  );
  if (rows.length === 0) return [];
  const mean = (column: Column) => rows.reduce((sum, i) => sum + column[i], 0) / rows.length;
  const [m, p] = [mean(measured), mean(predicted)];
  const uPredicted = Math.hypot(...varied.map((column) => mean(column) - p));
  const own = mean(uMeasured);
  const u = Math.hypot(uPredicted, own);
  const difference = m - p;
  return [
    {
      span,
      I: mean(I),
      measured: m,
      predicted: p,
      difference,
      u,
      uPredicted,
      uMeasured: own,
      agrees: Math.abs(difference) <= 2 * u,
    },
  ];
}

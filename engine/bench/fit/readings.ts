import type { Drive, LastingUncertainty } from './drive.ts';
import { type CaseChange, type Forward, forwardOf, type Readings } from './forward.ts';
import { type FitParameter, type FitParameterId, type FitValues, fitParametersOf, withValues } from './parameters.ts';
import { chiSquareOf, type Search, type Slopes, slopesOf } from './search.ts';

/** The readings of a drive, over their standard uncertainties, beside a model that may free any of the parameters. */
export interface Weighed {
  readonly forward: Forward;
  readonly parameters: Readonly<Record<FitParameterId, FitParameter>>;
  /** Readings there are, and where each begins: volts first, then each probe. */
  readonly many: number;
  /** The search in the parameters `free`, the others held at `values`. */
  search(free: readonly FitParameterId[], values: FitValues): Search;
  chiSquare(values: FitValues): number;
  /** ∂(reading/u)/∂(parameter) at `values`. */
  slopes(free: readonly FitParameterId[], values: FitValues): Slopes;
  /** What readings/u change by at `values` when each thing taken as known (plastics, instruments) is off by one standard uncertainty. */
  modelErrors(values: FitValues): readonly Float64Array[];
}

/** The readings that a log has, over their uncertainties. */
export function weighed(forward: Forward, lasting: LastingUncertainty = {}): Weighed {
  const { drive } = forward;
  const columns = [{ y: drive.U, u: drive.uU }, ...drive.probes.map(({ T, u }) => ({ y: T, u }))];
  const kept = columns.map(({ y }) => Array.from(y.keys()).filter((i) => Number.isFinite(y[i])));
  const over = (of: readonly Float64Array[]) =>
    Float64Array.from(kept.flatMap((rows, c) => rows.map((i) => of[c][i] / columns[c].u[i])));
  const measured = over(columns.map(({ y }) => y));
  const modelBy = (by: Forward, values: FitValues) => {
    const { U, probes }: Readings = by.readings(values);
    return over([U, ...probes]);
  };
  const model = (values: FitValues) => modelBy(forward, values);
  const parameters = fitParametersOf(forward.of);
  let off: readonly Forward[] | null = null;
  const search = (free: readonly FitParameterId[], values: FitValues): Search => ({
    measured,
    model: (p) => model(withFree(values, free, p)),
    start: free.map((id) => values[id]),
    bounds: free.map((id) => parameters[id].bounds),
    steps: free.map((id) => parameters[id].step),
  });
  return {
    forward,
    parameters,
    many: measured.length,
    search,
    chiSquare: (values) => chiSquareOf(measured, model(values)),
    slopes: (free, values) =>
      slopesOf(
        search(free, values),
        free.map((id) => values[id]),
        model(values),
      ),
    modelErrors: (values) => {
      off ??= plasticsOff(forward);
      const right = model(values);
      const from = (wrong: Float64Array) => wrong.map((f, i) => f - right[i]);
      const air = lasting.ambient ?? 0;
      return [
        ...off.map((wrong) => from(modelBy(wrong, values))),
        ...(air > 0 ? [from(model({ ...values, ambientOffset: values.ambientOffset + air }))] : []),
        ...instrumentsOff(lasting, columns).map(over),
      ].filter((e) => e.every(Number.isFinite));
    },
  };
}

/** What the readings are off by when an instrument is: volts by the gain, then each probe by its own error. */
function instrumentsOff(
  { gain = 0, probe = 0 }: LastingUncertainty,
  columns: readonly { y: Float64Array }[],
): Float64Array[][] {
  const off = (c: number, of: (y: Float64Array) => Float64Array) =>
    columns.map(({ y }, k) => (k === c ? of(y) : new Float64Array(y.length)));
  const volts = gain > 0 ? [off(0, (y) => y.map((U) => gain * U))] : [];
  const probes = probe > 0 ? columns.slice(1).map((_, k) => off(k + 1, (y) => y.map(() => probe))) : [];
  return [...volts, ...probes];
}

/** The model with the cable's plastics off by one standard uncertainty: their thermal resistivity, their heat capacity. */
function plasticsOff({ of, drive }: Forward): Forward[] {
  const { insulation } = of.cable;
  if (!insulation) return [];
  const share = ({ value, u }: { value: number; u: number }) => 1 + u / value;
  const changes: CaseChange[] = [{ rhoT: share(insulation.rhoT) }, { rhoC: share(insulation.heatCapacity) }];
  return changes.map((change) => forwardOf(of.scenario, drive, change));
}

/** Values with those of `free` put in, an area with the resistance it brings. */
export function withFree(values: FitValues, free: readonly FitParameterId[], p: readonly number[]): FitValues {
  return withValues(values, Object.fromEntries(free.map((id, j) => [id, p[j]])));
}

/** Whether a drive has any reading of a sheath probe. */
export const hasProbe = ({ probes }: Drive): boolean => probes.some(({ T }) => T.some(Number.isFinite));

import { type Agreement, celsius, type LogBeside, type PlateauMeans, type ThermometerBeside } from '#engine';
import type { DifferenceBand, DifferenceSeries } from '../../../charts/difference/types.ts';
import type { TableTwin } from '../../../charts/sheet.ts';
import type { Curve, Dot, MarkShape } from '../../../charts/types.ts';
import { clock, fixed, quantity, significant, thin } from '../../../lib/format.ts';

const shapes: readonly MarkShape[] = ['circle', 'square', 'diamond', 'triangle'];
/** Marks of one thermometer that a figure can hold. */
const mostMarks = 70;

/** A thermometer's mark and its words. */
export interface MarkOf {
  readonly name: string;
  readonly shape: MarkShape;
}

/** The thermometers of a log with their marks, in order. */
export const marksOf = ({ thermometers }: LogBeside): MarkOf[] =>
  thermometers.map(({ thermometer }, i) => ({ name: thermometer, shape: shapes[i % shapes.length] as MarkShape }));

/** Every so many readings, so that a figure is not full of marks; the first and the last among them. */
function few({ t }: ThermometerBeside): number[] {
  const every = Math.max(1, Math.ceil(t.length / mostMarks));
  return Array.from(t.keys()).filter((i) => i % every === 0 || i === t.length - 1);
}

/** The computed temperatures as curves, °C. */
export function computedCurves({ t, conductor, surface, outside }: LogBeside, covered: boolean): Curve[] {
  const curve = (id: 'conductor' | 'surface' | 'outside', name: string, T: Float64Array): Curve => {
    return { id, name, t, T: T.map(celsius), weight: id };
  };
  const all = [
    curve('conductor', 'conductor', conductor),
    curve('surface', covered ? 'cable surface' : 'surface', surface),
  ];
  return covered ? [...all, curve('outside', 'outside', outside)] : all;
}

/** The readings as marks, °C. */
export function readingDots(beside: LogBeside): Dot[] {
  return beside.thermometers.flatMap((one, n) =>
    few(one).map((i) => ({
      id: `${n} ${i}`,
      t: one.t[i] as number,
      T: celsius(one.measured[i] as number),
      shape: shapes[n % shapes.length] as MarkShape,
      size: 3,
    })),
  );
}

/** The differences, K. */
export function differencesOf(beside: LogBeside): DifferenceSeries[] {
  return beside.thermometers.map((one, n) => {
    const kept = few(one);
    return {
      id: one.thermometer,
      name: one.thermometer,
      shape: shapes[n % shapes.length] as MarkShape,
      t: kept.map((i) => one.t[i] as number),
      difference: kept.map((i) => (one.measured[i] as number) - (one.predicted[i] as number)),
    };
  });
}

/** Bands of ± two standard uncertainties at the plateaus. */
export function bandsOf(agreements: readonly Agreement[]): DifferenceBand[] {
  return agreements.flatMap(({ thermometer, plateaus }, n) =>
    plateaus.map(({ span, difference, u }) => ({
      id: `${thermometer} ${span.from}`,
      ...span,
      mean: difference,
      half: 2 * u,
      place: (n + 0.5) / agreements.length,
      shape: shapes[n % shapes.length] as MarkShape,
    })),
  );
}

const signed = (value: number): string => (Number.isFinite(value) ? `${value > 0 ? '+' : ''}${fixed(value, 1)}` : '–');
const degrees = (T: number): string => fixed(celsius(T), 1);

/** Each plateau with its readings, what was predicted, and whether they agree. */
export function plateauTable(plateaus: readonly PlateauMeans[], agreements: readonly Agreement[]): TableTwin {
  const rows = plateaus.flatMap(({ span, I, U, P, R }, i) => {
    const step = [
      `${i + 1}, at ${clock(span.to)}`,
      fixed(I, 2),
      significant(U, 4),
      significant(P, 3),
      significant(R * 1e3, 4),
    ];
    const compared = agreements.flatMap(({ thermometer, plateaus: all }) => {
      const one = all.find((plateau) => plateau.span.from === span.from);
      if (!one) return [];
      const difference = `${signed(one.difference)} ± ${fixed(2 * one.u, 1)}`;
      return [[thermometer, degrees(one.measured), degrees(one.predicted), difference, one.agrees ? 'yes' : 'no']];
    });
    return compared.length === 0
      ? [[...step, 'none', '–', '–', '–', '–']]
      : compared.map((cells, k) => [...(k === 0 ? step : [`${i + 1}`, '', '', '', '']), ...cells]);
  });
  return {
    caption:
      'The end of each step: what was read, what was computed, and whether they agree within ± two standard uncertainties',
    columns: ['Step', 'A', 'V', 'W', 'mΩ', 'Thermometer', 'Read, °C', 'Computed, °C', 'Difference, K', 'Agrees'],
    rows,
  };
}

/** The run as a table: about twenty times with what was computed and read. */
export function runTable(beside: LogBeside): TableTwin {
  const every = Math.max(1, Math.ceil(beside.t.length / 20));
  const rows = Array.from(beside.t).flatMap((t, k) => {
    if (k % every !== 0 && k !== beside.t.length - 1) return [];
    const read = beside.thermometers.map((one) => {
      const i = one.t.findIndex((time) => time >= t);
      return i < 0 ? '–' : degrees(one.measured[i] as number);
    });
    return [[clock(t), degrees(beside.conductor[k] as number), degrees(beside.surface[k] as number), ...read]];
  });
  return {
    caption: 'The run: computed temperatures, and the readings nearest after each time',
    columns: [
      'Time',
      'Conductor, computed, °C',
      'Surface, computed, °C',
      ...beside.thermometers.map(({ thermometer }) => `${thermometer}, read, °C`),
    ],
    rows,
  };
}

/** How one thermometer stands to the prediction, in a sentence. */
export function agreementWords({ thermometer, plateaus, bias, rms, agrees }: Agreement): string {
  const name = thermometer.charAt(0).toUpperCase() + thermometer.slice(1);
  if (plateaus.length === 0) return `${name}: no step lasts long enough to compare.`;
  const inside = plateaus.filter((one) => one.agrees).length;
  const told = agrees ? `agrees at all ${plateaus.length} steps` : `agrees at ${inside} of ${plateaus.length} steps`;
  return `${name} ${told}. Mean difference ${signed(bias)}${thin}K, over the run ${quantity(rms, 'K', 1)} (root mean square).`;
}

import {
  celsius,
  type DoubtId,
  type Measured,
  type PlannedStep,
  type PlanPrediction,
  type PredictedEvent,
} from '#engine';
import type { TableTwin } from '../../../charts/sheet.ts';
import { fixed, type Practice, quantity, temperature, thin, timeInWords } from '../../../lib/format.ts';

/** Two standard uncertainties, about 95 %. */
const wide = 2;

/** A value with its band: '6.38 ± 0.16 V'. */
export const withBand = ({ value, u }: Measured, unit: string, places: number): string =>
  `${fixed(value, places)} ± ${fixed(wide * u, places)}${thin}${unit}`;

/** A temperature with its band, whole degrees: '47 ± 3 °C'. */
export const degreesWithBand = ({ value, u }: Measured): string =>
  `${fixed(celsius(value), 0)} ± ${fixed(Math.max(0.5, wide * u), 0)}${thin}°C`;

const doubts: Readonly<Record<DoubtId, string>> = {
  R20: 'the resistance',
  surface: 'what the surface sheds',
  plastic: 'the plastic',
  capacity: 'what the lead holds',
  ambient: 'the air',
};

/** The table of a plan: what each step is expected to show at its end. */
export function planTable({ steps }: PlanPrediction): TableTwin {
  return {
    caption: 'What each step is expected to show at its end, ± two standard uncertainties',
    columns: ['Step', 'Set', 'Held', 'Volts', 'Watts', 'Conductor', 'Sheath', 'Least sure of'],
    rows: steps.map(({ number, I, dwell, end }) => [
      String(number),
      quantity(I, 'A', 1),
      timeInWords(dwell),
      withBand(end.U, 'V', 2),
      withBand(end.W, 'W', 1),
      degreesWithBand(end.conductor),
      degreesWithBand(end.surface),
      doubts[end.most],
    ]),
  };
}

/** When a limit is passed, in words with its band. */
export function eventWords({ event, t }: PredictedEvent, practice: Practice): string {
  const at = `${event.limit.name}, ${temperature(celsius(event.T), practice)} at the ${event.limit.place}`;
  if (event.already) return `${at}: passed before the start`;
  const band = Number.isFinite(t.u)
    ? `, give or take ${timeInWords(Math.max(1, wide * t.u))}`
    : ', or not at all: it depends on what is not known exactly';
  return `${at}: after ${timeInWords(t.value)}${band}`;
}

/** What is predicted, in one or two sentences. */
export function planSentence({ steps, stopsAt, abort }: PlanPrediction): string {
  const last = steps.at(-1) as PlannedStep | undefined;
  if (!last) return 'There is no step that carries a current.';
  const end = `After the last step, ${quantity(last.I, 'A', 1)}, the conductor is expected at ${degreesWithBand(last.end.conductor)}.`;
  const stop =
    stopsAt === null
      ? 'No abort limit is expected to be reached.'
      : `An abort limit (conductor ${fixed(celsius(abort.conductor), 0)}${thin}°C, sheath ${fixed(celsius(abort.sheath), 0)}${thin}°C) is expected after ${timeInWords(stopsAt)}: plan smaller steps, or expect to stop there.`;
  return `${end} ${stop}`;
}

/** What supply and meters must reach. */
export const rangeWords = ({ ranges }: PlanPrediction): string =>
  `Supply and meters must reach ${quantity(ranges.U, 'V', 1)} and ${quantity(ranges.I, 'A', 1)}.`;

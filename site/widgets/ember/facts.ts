import { celsius, momentAt, type Prediction, type Scenario, timeToShare } from '#engine';
import { clock, fixed, thin } from '../../lib/format.ts';

/** The share of the rise that the fourth fact is about, in hundredths. */
export const shareOfRise = 63;

/** Four facts that fix a warm-up curve. */
export interface Facts {
  /** Conductor at the start, after a minute and at the end of the on-time [°C]. */
  start: number;
  minute: number;
  end: number;
  /** Time to 63 % of the rise [s]. */
  share: number;
}

/** The facts by name, as they are asked for. */
export const factNames: readonly { key: keyof Facts; name: string; unit: '°C' | 'min:s' }[] = [
  { key: 'start', name: 'At the start', unit: '°C' },
  { key: 'minute', name: 'After 1 minute', unit: '°C' },
  { key: 'end', name: 'At the end of the on-time', unit: '°C' },
  { key: 'share', name: `Time to ${shareOfRise}${thin}% of the rise`, unit: 'min:s' },
];

/** The first on-time of a scenario [s]: its first supply step, or the whole run. */
export function onTime(scenario: Scenario): number {
  return scenario.supply[0]?.duration_s ?? scenario.run?.duration_s ?? Number.NaN;
}

/** The four facts as computed; the time is not a number where the share is not reached. */
export function factsOf(prediction: Prediction): Facts {
  const { curves, end } = prediction.run;
  const on = Math.min(end, onTime(prediction.scenario));
  const at = (t: number) => celsius(momentAt(curves, t).conductor);
  const last = momentAt(curves, on).conductor;
  return {
    start: at(0),
    minute: at(Math.min(60, on)),
    end: at(on),
    share: timeToShare(curves, shareOfRise / 100, last) ?? Number.NaN,
  };
}

/** The facts as points of the chart: time [s], temperature [°C]. */
export function factPoints(facts: Facts, on: number): { id: string; name: string; t: number; T: number }[] {
  const share = facts.start + (shareOfRise / 100) * (facts.end - facts.start);
  return [
    { id: 'start', name: 'start', t: 0, T: facts.start },
    { id: 'minute', name: '1 min', t: 60, T: facts.minute },
    { id: 'share', name: `${shareOfRise} %`, t: facts.share, T: share },
    { id: 'end', name: 'end', t: on, T: facts.end },
  ].toSorted((a, b) => a.t - b.t);
}

/** A fact in words of its unit: '38 °C', '3:27'. */
export function factWords(key: keyof Facts, value: number): string {
  if (!Number.isFinite(value)) return '–';
  return key === 'share' ? clock(value) : `${fixed(value, 0)}${thin}°C`;
}

/** What lies between a predicted and the computed fact: '7 K high', '1:20 late', 'the same'. */
export function factDifference(key: keyof Facts, yours: number, computed: number): string {
  if (!Number.isFinite(yours) || !Number.isFinite(computed)) return '–';
  if (factWords(key, yours) === factWords(key, computed)) return 'the same';
  const high = yours > computed;
  if (key === 'share') return `${clock(Math.abs(yours - computed))} ${high ? 'late' : 'early'}`;
  return `${fixed(Math.abs(Math.round(yours) - Math.round(computed)), 0)}${thin}K ${high ? 'high' : 'low'}`;
}

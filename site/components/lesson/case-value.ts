import {
  type AnswerKind,
  conductorResistance,
  cordRating,
  heatMade,
  hottestMoment,
  kelvin,
  leadReading,
  leadResistance,
  metals,
  momentAt,
  type Prediction,
  predict,
  timeToShare,
} from '#engine';
import { caseOf } from './case-of.ts';
import type { CaseNumber } from './num-props.ts';

/** What kind of amount each number of a case is. */
export const caseKinds = {
  conductor: 'temperature',
  surface: 'temperature',
  rise: 'temperature rise',
  settles: 'temperature',
  'settled surface': 'temperature',
  'time to share': 'time',
  'share of the rise': 'temperature',
  peak: 'temperature',
  'time to rating': 'time',
  'time to': 'time',
  rating: 'temperature',
  'rating current': 'current',
  'table rating': 'current',
  current: 'current',
  'cold current': 'current',
  heat: 'heat per metre',
  'cold heat': 'heat per metre',
  'total heat': 'power',
  volts: 'voltage',
  'cold resistance': 'resistance',
  resistance: 'resistance',
  'resistance per metre': 'resistance per metre',
  'runaway current': 'current',
  area: 'area',
  'copper area': 'area',
  diameter: 'length',
} as const satisfies Record<CaseNumber['of'], AnswerKind>;

const needed = <T>(value: T | undefined | null, otherwise: string): T => {
  if (value === undefined || value === null) throw new Error(otherwise);
  return value;
};

const room = kelvin(20);

/**
 * The number of `spec` as the engine computes it, in SI. Throws when the case has no such number, so that a page never prints
 * one that is not there.
 */
export function caseValue(spec: CaseNumber): number {
  const prediction = predict(caseOf(spec));
  const { run, thermal } = prediction;
  const { curves } = run;
  const on = Math.min(run.end, spec.on ?? run.end); // drawing: the end of the on-time on the axis
  const now = momentAt(curves, spec.at ?? on);
  const start = momentAt(curves, 0);
  const end = momentAt(curves, on);
  const share = () => needed(spec.share, 'this number needs share') / 100;
  switch (spec.of) {
    case 'conductor':
      return now.conductor;
    case 'surface':
      return now.surface;
    case 'rise':
      return now.conductor - start.conductor;
    case 'settles':
      return settled(prediction).conductor;
    case 'settled surface':
      return settled(prediction).surface;
    case 'peak':
      return hottestMoment(curves).conductor;
    case 'share of the rise':
      return start.conductor + share() * (end.conductor - start.conductor);
    case 'time to share':
      return timeNeeded(timeToShare(curves, share(), end.conductor));
    case 'time to rating':
      return timeNeeded(run.events.find(({ limit }) => limit.kind === 'rating')?.t ?? null);
    case 'time to':
      return timeNeeded(timeToTemperature(prediction, kelvin(needed(spec.to, 'this number needs to'))));
    case 'rating':
      return needed(
        thermal.limits.find(({ kind }) => kind === 'rating'),
        'this case has no rating',
      ).low;
    case 'rating current':
      return needed(prediction.rating, 'this case has no rating');
    case 'table rating':
      return needed(cordRating(thermal.cable), 'no table of ours rates this cord').I;
    case 'current':
      return now.I;
    case 'cold current':
      return start.I;
    case 'heat':
      return now.heat;
    case 'cold heat':
      return heatMade(thermal, needed(spec.amps, 'this number needs amps'), room);
    case 'total heat':
      return leadReading(thermal, now.I, now.conductor).heat;
    case 'volts':
      return leadReading(thermal, now.I, now.conductor).U;
    case 'cold resistance':
      return leadResistance(thermal, room);
    case 'resistance':
      return leadResistance(thermal, now.conductor);
    case 'resistance per metre':
      return conductorResistance(thermal, room);
    case 'runaway current':
      return needed(prediction.threshold.I, 'this case has no runaway current');
    case 'area':
      return thermal.cable.conductor.area;
    case 'copper area':
      return metals.copper.rho20.value / conductorResistance(thermal, room);
    case 'diameter':
      return 2 * thermal.cable.outerRadius;
  }
}

function settled({ steady }: Prediction): { conductor: number; surface: number } {
  if (steady.kind !== 'steady') throw new Error('this case does not settle');
  return steady.chain;
}

/** When the conductor first comes to `T` [K], straight between the samples of its curve; null when it never does. */
function timeToTemperature({ run: { curves } }: Prediction, T: number): number | null {
  const [start, top] = [curves.conductor[0] as number, hottestMoment(curves).conductor];
  return T > top ? null : timeToShare(curves, (T - start) / (top - start), top);
}

const timeNeeded = (t: number | null): number => needed(t, 'this case does not get there');

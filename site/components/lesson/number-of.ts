import {
  awgArea,
  awgDiameter,
  celsius,
  conductorResistance,
  heatMade,
  hottestMoment,
  kelvin,
  leadReading,
  leadResistance,
  metals,
  momentAt,
  type Prediction,
  plastics,
  predict,
  timeToShare,
  touchLimit,
} from '#engine';
import { type Practice, quantity, rise, significant, temperature, thin, three, timeInWords } from '../../lib/format.ts';
import { caseOf } from './case-of.ts';
import type { CaseNumber, NumProps } from './num-props.ts';

/**
 * A number of the prose in words with its unit, as the engine computes it: temperatures in whole degrees, times to two
 * figures, resistance, volts and watts to three. Throws when there is no such number, so that a page never prints one that
 * is not there. `practice` is the reader's: with `na`, °F stands beside °C.
 */
export function numberOf(spec: NumProps, practice: Practice = 'iec'): string {
  if ('value' in spec) return givenNumber(spec.value, spec.unit);
  if (spec.of === 'limit') return limitWords(spec, practice);
  if ('gauge' in spec)
    return spec.of === 'gauge area'
      ? three(awgArea(spec.gauge) * 1e6, 'mm²')
      : three(awgDiameter(spec.gauge) * 1e3, 'mm');
  if (!('cast' in spec)) return metalWords(spec);
  return caseNumber(spec, practice);
}

/** A number that the case is given by, not computed: '20 A', '3 min', '63 %'. */
function givenNumber(value: number, unit: string): string {
  const places = (String(value).split('.')[1] ?? '').length;
  return quantity(value, unit, places);
}

function limitWords({ kind, insulation = 'pvc70' }: Extract<NumProps, { of: 'limit' }>, practice: Practice): string {
  const limit = kind === 'touch' ? touchLimit : plastics[insulation].limits.find((one) => one.kind === kind);
  if (!limit) throw new Error(`${insulation} has no limit of the kind ${kind}`);
  const low = temperature(celsius(limit.low), practice);
  return limit.high > limit.low ? `${low} to ${temperature(celsius(limit.high), practice)}` : low;
}

function metalWords({ of, metal }: Extract<NumProps, { of: 'resistivity' | 'coefficient' | 'conductivity' }>): string {
  const { rho20, alpha20 } = metals[metal];
  if (of === 'resistivity') return three(rho20.value * 1e9, 'nΩ·m');
  if (of === 'coefficient') return `${significant(alpha20.value * 100, 3)}${thin}%`;
  return `${significant((100 * metals.copper.rho20.value) / rho20.value, 3)}${thin}%`;
}

/** A time to two figures, as estimates are told [s]. */
const roughly = (t: number): number => Number(significant(t, 2).replaceAll(thin, ''));

const needed = <T>(value: T | undefined | null, otherwise: string): T => {
  if (value === undefined || value === null) throw new Error(otherwise);
  return value;
};

const room = kelvin(20);

function caseNumber(spec: CaseNumber, practice: Practice): string {
  const prediction = predict(caseOf(spec));
  const degrees = (T: number) => temperature(celsius(T), practice);
  const { run, thermal } = prediction;
  const { curves } = run;
  const on = Math.min(run.end, spec.on ?? run.end); // drawing: the end of the on-time on the axis
  const now = momentAt(curves, spec.at ?? on);
  const start = momentAt(curves, 0);
  const end = momentAt(curves, on);
  const share = () => needed(spec.share, 'this number needs share') / 100;
  switch (spec.of) {
    case 'conductor':
      return degrees(now.conductor);
    case 'surface':
      return degrees(now.surface);
    case 'rise':
      return riseWords(now.conductor - start.conductor);
    case 'settles':
      return degrees(settled(prediction).conductor);
    case 'settled surface':
      return degrees(settled(prediction).surface);
    case 'peak':
      return degrees(hottestMoment(curves).conductor);
    case 'share of the rise':
      return degrees(start.conductor + share() * (end.conductor - start.conductor));
    case 'time to share':
      return timeWords(timeToShare(curves, share(), end.conductor));
    case 'time to rating':
      return timeWords(run.events.find(({ limit }) => limit.kind === 'rating')?.t ?? null);
    case 'time to':
      return timeWords(timeToTemperature(prediction, kelvin(needed(spec.to, 'this number needs to'))));
    case 'rating':
      return ratingWords(prediction);
    case 'rating current':
      return three(needed(prediction.rating, 'this case has no rating'), 'A');
    case 'current':
      return three(now.I, 'A');
    case 'cold current':
      return three(start.I, 'A');
    case 'heat':
      return three(now.heat, 'W/m');
    case 'cold heat':
      return three(heatMade(thermal, needed(spec.amps, 'this number needs amps'), room), 'W/m');
    case 'total heat':
      return three(leadReading(thermal, now.I, now.conductor).heat, 'W');
    case 'volts':
      return three(leadReading(thermal, now.I, now.conductor).U, 'V');
    case 'cold resistance':
      return ohms(leadResistance(thermal, room));
    case 'resistance':
      return ohms(leadResistance(thermal, now.conductor));
    case 'resistance per metre':
      return three(conductorResistance(thermal, room) * 1e3, 'mΩ/m');
    case 'runaway current':
      return quantity(needed(prediction.threshold.I, 'this case has no runaway current'), 'A', 0);
    case 'area':
      return three(thermal.cable.conductor.area * 1e6, 'mm²');
    case 'copper area':
      return three((metals.copper.rho20.value / conductorResistance(thermal, room)) * 1e6, 'mm²');
    case 'diameter':
      return three(2e3 * thermal.cable.outerRadius, 'mm');
  }
}

/** A rise in whole kelvin, or with a tenth where it is small enough for that to matter. */
const riseWords = (dT: number): string => rise(dT, dT < 9.5 ? 1 : 0);

const ohms = (R: number): string => (R < 1 ? three(R * 1e3, 'mΩ') : three(R, 'Ω'));

function settled({ steady }: Prediction): { conductor: number; surface: number } {
  if (steady.kind !== 'steady') throw new Error('this case does not settle');
  return steady.chain;
}

/** When the conductor first comes to `T` [K], straight between the samples of its curve; null when it never does. */
function timeToTemperature({ run: { curves } }: Prediction, T: number): number | null {
  const [start, top] = [curves.conductor[0] as number, hottestMoment(curves).conductor];
  return T > top ? null : timeToShare(curves, (T - start) / (top - start), top);
}

function timeWords(t: number | null): string {
  if (t === null) throw new Error('this case does not get there');
  return timeInWords(roughly(t));
}

/** The temperature that the insulation is rated for. */
function ratingWords({ thermal }: Prediction): string {
  const rating = thermal.limits.find(({ kind }) => kind === 'rating');
  return temperature(celsius(needed(rating, 'this case has no rating').low));
}

import { celsius, hottestMoment, momentAt, type Prediction, predict, timeToShare } from '#engine';
import { type Practice, quantity, rise, significant, temperature, thin, timeInWords } from '../../lib/format.ts';
import { caseOf, type LessonCase } from './case-of.ts';

/** What a number in the prose is of. */
export type NumberOf =
  | 'conductor'
  | 'surface'
  | 'rise'
  | 'settles'
  | 'time to share'
  | 'share of the rise'
  | 'peak'
  | 'time to rating'
  | 'rating';

/** A computed number of the prose: a case, what of it, and when. */
export interface NumberSpec extends LessonCase {
  of: NumberOf;
  /** When it is read [s]; at the end of the on-time unless given. */
  at?: number | undefined;
  /** The share [%], for a time to it or the temperature at it. */
  share?: number | undefined;
}

const given = (value: number | undefined, what: string): number => {
  if (value === undefined) throw new Error(`this number needs ${what}`);
  return value;
};

/** A time to two figures, as estimates are told [s]. */
const roughly = (t: number): number => Number(significant(t, 2).replaceAll(thin, ''));

/**
 * The number in words with its unit, as the engine computes it: temperatures in whole degrees, times to two figures.
 * Throws when the case has no such number, so that a page never prints one that is not there.
 */
export function numberOf(spec: NumberSpec): string {
  const prediction = predict(caseOf(spec));
  const practice: Practice = prediction.scenario.practice ?? 'iec';
  const degrees = (T: number) => temperature(celsius(T), practice);
  const { run, steady } = prediction;
  const { curves } = run;
  const on = Math.min(run.end, spec.on ?? run.end);
  const now = momentAt(curves, spec.at ?? on);
  const start = momentAt(curves, 0).conductor;
  const end = momentAt(curves, on).conductor;
  switch (spec.of) {
    case 'conductor':
      return degrees(now.conductor);
    case 'surface':
      return degrees(now.surface);
    case 'rise':
      return rise(now.conductor - start);
    case 'settles':
      if (steady.kind !== 'steady') throw new Error('this case does not settle');
      return degrees(steady.chain.conductor);
    case 'peak':
      return degrees(hottestMoment(curves).conductor);
    case 'share of the rise':
      return degrees(start + (given(spec.share, 'share') / 100) * (end - start));
    case 'time to share':
      return timeWords(timeToShare(curves, given(spec.share, 'share') / 100, end));
    case 'time to rating':
      return timeWords(ratingTime(prediction));
    case 'rating':
      return ratingWords(prediction);
  }
}

function timeWords(t: number | null): string {
  if (t === null) throw new Error('this case does not get there');
  return timeInWords(roughly(t));
}

function ratingTime({ run }: Prediction): number | null {
  return run.events.find(({ limit }) => limit.kind === 'rating')?.t ?? null;
}

/** The temperature that the insulation is rated for. */
function ratingWords({ thermal }: Prediction): string {
  const rating = thermal.limits.find(({ kind }) => kind === 'rating');
  if (!rating) throw new Error('this case has no rating');
  return temperature(celsius(rating.low));
}

/** A number that the case is given by, not computed: '20 A', '3 min', '63 %'. */
export function givenNumber(value: number, unit: string): string {
  const places = (String(value).split('.')[1] ?? '').length;
  return quantity(value, unit, places);
}

import { celsius, type PlaceCase, type PlaceKind } from '#engine';
import { fixed, type Practice, quantity, temperature, thin, timeInWords } from '../../lib/format.ts';
import { lengthWords } from '../figure/length-words.ts';

/** The surroundings in two or three words. */
export const placeNames: Readonly<Record<PlaceKind, string>> = {
  stillAir: 'free in still air',
  draught: 'in a draught',
  clipped: 'clipped to a board',
  touching: 'touching neighbours',
  lagged: 'lagged',
  coiled: 'on a reel',
};

/** Times at which conductors pass their rating [s]; null where one does not. */
export type PlaceTimes = ReadonlyMap<PlaceKind, number | null>;

/** What of its surroundings can be told in figures. `layers` on the reel. */
export function placeDetail(
  { scenario: { surroundings: spec } }: PlaceCase,
  layers: number,
  practice: Practice,
): string {
  switch (spec.kind) {
    case 'draught':
      return `${fixed(spec.speed_mPerS, 1)}${thin}m/s`;
    case 'lagged':
      return `${bare(spec.thickness_mm)}${thin}mm, k ${bare(spec.conductivity_WPerMK)}${thin}W/(m·K)`;
    case 'coiled':
      return `${lengthWords(spec.wound_m ?? 0, practice)} in ${fixed(layers, 1)} layers`;
    case 'clipped':
      return spec.arrangement === 'threeTouching' ? 'three side by side, loaded alike' : '';
    default:
      return '';
  }
}

const bare = (value: number): string => String(Number(value.toPrecision(3)));

/** A time no finer than the model: tens of seconds below ten minutes, whole minutes below an hour, then fives of minutes. */
export function aboutTime(t_s: number): string {
  const grain = t_s < 600 ? 10 : t_s < 3600 ? 60 : 300;
  return `about ${timeInWords(Math.max(grain, Math.round(t_s / grain) * grain))}`;
}

/** Where it settles: '46 °C', 'about 116 °C, from 92 to 137', 'no credible steady state'. */
export function settlesWords({ settled, estimate }: PlaceCase, practice: Practice, end: number): string {
  if (!settled) return 'no credible steady state';
  const T = temperature(celsius(settled.conductor), practice);
  if (!estimate) return T;
  const [low, high] = estimate;
  const ends = [low === null ? end : celsius(low), high === null ? end : celsius(high)] as const;
  return `about ${T}, ${fixed(ends[0], 0)} to ${high === null ? 'past ' : ''}${fixed(ends[1], 0)}`;
}

/** When it passes its rating: 'past 70 °C after about 12 min'; empty where it does not, or where the time is not known yet. */
export function passesWords(
  { overRating, ratedT }: PlaceCase,
  t: number | null | undefined,
  practice: Practice,
): string {
  if (!overRating || ratedT === null || t === undefined) return '';
  const limit = temperature(celsius(ratedT), practice);
  if (t === null) return `past ${limit} after half a day or more`;
  return t === 0 ? `past ${limit} from the start` : `past ${limit} after ${aboutTime(t)}`;
}

const listed = (list: readonly string[]): string =>
  list.length < 2 ? list.join('') : `${list.slice(0, -1).join(', ')} and ${list.at(-1)}`;

/** The places from coolest to hottest, those without a credible end, and that a reel is an estimate. */
export function placesSentence(
  places: readonly PlaceCase[],
  times: PlaceTimes | undefined,
  practice: Practice,
): string {
  const at = (one: PlaceCase): number => one.settled?.conductor ?? Number.POSITIVE_INFINITY;
  const order = [...places].sort((a, b) => at(a) - at(b));
  const told = order.flatMap(({ kind, settled }) =>
    settled ? [`${placeNames[kind]} ${temperature(celsius(settled.conductor), practice)}`] : [],
  );
  const first = told.length > 0 ? `Coolest first: ${listed(told)}.` : '';
  const none = order
    .filter(({ settled }) => !settled)
    .map((one) => {
      const passes = passesWords(one, times?.get(one.kind), practice);
      return ` ${capital(placeNames[one.kind])} there is no credible steady state${passes ? `: it goes ${passes}` : ''}.`;
    });
  const reel = places.some(({ kind }) => kind === 'coiled')
    ? ' The reel is an estimate: how well turns pass on heat is not well known.'
    : '';
  return `${first}${none.join('')}${reel}`.trim();
}

const capital = (text: string): string => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;

/** A steady current as a figure: '13.4 A', or why there is none. */
export function ampsWords(I: number | null): string {
  if (I === null) return '–';
  return I === 0 ? 'none' : quantity(I, 'A', 1);
}

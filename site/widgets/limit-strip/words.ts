import {
  ageingMeasuredTo,
  type Confidence,
  celsius,
  type HeldAt,
  type Limit,
  type LimitKind,
  type LimitStanding,
  type Place,
  type Plastic,
  shortTime,
  sources,
  temperatureForLife,
} from '#engine';
import type { LifeMark, ScaleLimit } from '../../charts/limits/scale-limit.ts';
import type { TableTwin } from '../../charts/sheet.ts';
import { fahrenheit, fixed, type Practice, rise, significant, temperature, thin } from '../../lib/format.ts';
import { shownLimit } from '../../lib/view-of.ts';

const hour = 3600; // s
const spans: readonly (readonly [seconds: number, name: string])[] = [
  [365.25 * 24 * hour, 'years'],
  [24 * hour, 'days'],
  [hour, 'h'],
  [60, 'min'],
];

/** A long time in words, to two figures: '2.3 years', '40 days', '5 h'. `t` in seconds. */
export function longTime(t: number): string {
  const [seconds, name] = spans.find(([least]) => t >= 1.5 * least) ?? [1, 's'];
  return `${significant(t / seconds, 2)}${thin}${name}`;
}

/** What the held temperature passes, in a few plain sentences. */
export function stripSentence(plastic: Plastic, held: HeldAt, time: string, practice: Practice): string {
  const at = `${plastic.name}, held at ${temperature(celsius(held.T), practice)} for ${time}`;
  const [lowest, ...hotter] = held.limits.filter(
    ({ limit, standing }) => standing !== 'below' && limit.kind !== 'touch',
  );
  const told = lowest ? [lowest, ...hotter.slice(-2)].map(reachedWords) : [];
  const first = told.length === 0 ? `${at}: below every limit of its own.` : `${at}: ${listed(told)}.`;
  const touch = held.limits.some(({ limit, standing }) => limit.kind === 'touch' && standing !== 'below');
  const slow = held.slow.filter(({ reached }) => reached).map(({ harm }) => slowWords[harm.id] ?? '');
  return [first, ...shortWords(held), ...slow, ...(touch ? ['A surface so hot is too hot to hold.'] : [])].join(' ');
}

function reachedWords({ limit, standing, over }: LimitStanding): string {
  if (limit.kind === 'rating') return over < 0.5 ? 'at its rating' : `${rise(over)} over its rating`;
  if (standing === 'within') return within[limit.kind] ?? `within its range of ${limit.name}`;
  return limit.high > limit.low ? `past its range of ${limit.name}` : `past its ${limit.name}`;
}

const within: Readonly<Partial<Record<LimitKind, string>>> = {
  softening: 'where it may soften',
  fumes: 'where fumes may begin',
  ignition: 'where it may catch fire',
};

/** What a short circuit's limit says to a temperature between it and the rating. */
function shortWords({ limits, tooLong, t }: HeldAt): string[] {
  const short = limits.find(({ limit }) => limit.kind === 'shortTime');
  const rating = limits.find(({ limit }) => limit.kind === 'rating');
  if (!short || !rating || short.over > 0 || rating.over < 0.5) return [];
  if (!tooLong && t <= shortTime) return ['A short circuit is allowed that, for five seconds at most.'];
  return ['Only a short circuit may go so high, and for five seconds at most.'];
}

/** Reports of slow harm as sentences, by their id. */
const slowWords: Readonly<Record<string, string>> = {
  fails: 'PVC wires held so for a month have failed.',
  chars: 'In such a time PVC has turned to char that conducts.',
};

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

/** How fast it ages, in words: by the measured law, and by the round rule of the trade. */
export function ageingWords({ ageing, roundRate, limits }: HeldAt, practice: Practice): string {
  const rule =
    roundRate === null
      ? 'The round rule of the trade, half the life for each 10 K, says nothing so far from the rating.'
      : `The round rule of the trade, half the life for each 10 K, makes it ${pace(roundRate)} (common practice, no source).`;
  if (!ageing) return `No life is known for this compound. The limits still hold. ${rule}`;
  const { rate, life, beyondData, overtaken } = ageing;
  if (overtaken) return 'So hot, slow ageing no longer matters: it softens, and then comes worse.';
  const rating = limits.find(({ limit }) => limit.kind === 'rating')?.limit.low ?? 0;
  const kept = `A life of ${hours(life * rate)} at ${temperature(celsius(rating), practice)} becomes ${hours(life)} here.`;
  const each = `Each 1000${thin}h at it use ${shareWords((1000 * hour) / life)}.`;
  const far = beyondData ? ' That is past the temperatures the law was measured at: an indication.' : '';
  return `It ages ${pace(rate)}. ${kept} ${each}${far} ${rule}`;
}
const pace = (rate: number): string =>
  Math.abs(rate - 1) < 0.05 ? 'as fast as at its rating' : `${significant(rate, 2)} times as fast as at its rating`;

/** A life in hours, to two figures: '7600 h'. `t` in seconds. */
const hours = (t: number): string => `${significant(t / hour, 2)}${thin}h`;

/** A part of a life in words: '13 % of that life', 'all of that life'. */
function shareWords(share: number): string {
  return share >= 1 ? 'all of that life' : `${significant(100 * share, 2)}${thin}% of that life`;
}

/** Lives that the scale beside the thermometer tells, as far as the law is measured. */
const marked = [100_000, 20_000, 10_000, 5000, 2000]; // h

/** At which temperature [°C] an insulation has each of those lives; none where no life is known. */
export function lifeMarks({ ageing }: Plastic): LifeMark[] {
  if (!ageing) return [];
  return marked
    .map((life) => ({ T: temperatureForLife(ageing, life * hour), text: `${fixed(life, 0)}${thin}h` }))
    .filter(({ T }) => T <= ageingMeasuredTo)
    .map(({ T, text }) => ({ T: celsius(T), text }));
}

/** The rows of the thermometer: limits and reports of slow harm, coolest first. */
export function scaleRows(held: HeldAt, practice: Practice): ScaleLimit[] {
  const told = (name: string, low: number, high: number) => ({
    name: `${capital(name)} ${range(low, high)}`,
    ...(practice === 'na' ? { also: `(${range(fahrenheit(low), fahrenheit(high))}${thin}°F)` } : {}),
    low,
    high,
  });
  const limits = held.limits.map(({ limit, standing }): ScaleLimit => {
    const { id, style, name } = shownLimit(limit);
    const words = told(name.replace(/ from$/, ''), celsius(limit.low), celsius(limit.high));
    return { id, ...words, more: limit.duration, style, reached: standing !== 'below' };
  });
  const slow = held.slow.map(({ harm, reached }): ScaleLimit => {
    const T = celsius(harm.T);
    return { id: harm.id, ...told(harm.name, T, T), more: harm.duration, style: 'report', reached };
  });
  return [...limits, ...slow].sort((a, b) => a.low - b.low);
}

const range = (low: number, high: number): string =>
  high > low ? `${fixed(low, 0)} to ${fixed(high, 0)}` : fixed(low, 0);

/** A range in words of the practice: '80 °C to 120 °C'. */
function rangeOf({ low, high }: Limit, practice: Practice): string {
  const from = temperature(celsius(low), practice);
  return high > low ? `${from} to ${temperature(celsius(high), practice)}` : from;
}

/** What is told of one row that was picked: what it is, where, for how long, and who says so. */
export function closerWords(
  held: HeldAt,
  id: string,
  practice: Practice,
): { title: string; facts: Fact[] } | undefined {
  const found = held.limits.find(({ limit }) => limit.id === id)?.limit;
  const harm = held.slow.find((one) => one.harm.id === id)?.harm;
  if (found)
    return {
      title: `${capital(found.name)}, ${rangeOf(found, practice)}`,
      facts: [
        { name: 'What it is', value: found.test },
        { name: 'For how long', value: found.duration },
        { name: 'Where', value: placeWords[found.place] },
        sourceOf(found),
      ],
    };
  return (
    harm && {
      title: `${capital(harm.name)}, about ${temperature(celsius(harm.T), practice)}`,
      facts: [
        { name: 'What it is', value: 'a report of what happened, not a limit' },
        { name: 'For how long', value: harm.duration },
        sourceOf(harm),
      ],
    }
  );
}

/** One fact of a row. */
export interface Fact {
  readonly name: string;
  readonly value: string;
}

const placeWords: Readonly<Record<Place, string>> = {
  conductor: 'at the conductor, where the insulation is hottest',
  surface: 'at the surface of the cable',
  outside: 'at whatever a hand can touch',
};
const capital = (text: string): string => text.replace(/^./, (letter) => letter.toUpperCase());
const sureWords: Readonly<Record<Confidence, string>> = {
  seen: 'as printed',
  computed: 'computed',
  'from memory': 'from memory, to be checked',
  'our choice': 'our own choice',
};
const sourceOf = ({ source, confidence }: Pick<Limit, 'source' | 'confidence'>): Fact => ({
  name: 'Source',
  value: `${sources[source].title} (${sureWords[confidence]})`,
});

/** Every limit with its range, place, duration, source and how sure we are. */
export function limitTable(plastic: Plastic, held: HeldAt, practice: Practice): TableTwin {
  const degrees = ({ low, high }: Limit, to: (T_degC: number) => number) => range(to(celsius(low)), to(celsius(high)));
  return {
    caption: `${plastic.name}: its limits`,
    columns: [
      'Limit',
      '°C',
      ...(practice === 'na' ? ['°F'] : []),
      'Where',
      'What it is',
      'How long',
      'Now',
      'Source',
      'How sure',
    ],
    rows: [
      ...held.limits.map(({ limit, standing }) => [
        limit.name,
        degrees(limit, (T) => T),
        ...(practice === 'na' ? [degrees(limit, fahrenheit)] : []),
        limit.place,
        limit.test,
        limit.duration,
        standing,
        sources[limit.source].title,
        limit.confidence,
      ]),
      ...held.slow.map(({ harm, reached }) => [
        harm.name,
        fixed(celsius(harm.T), 0),
        ...(practice === 'na' ? [fixed(fahrenheit(celsius(harm.T)), 0)] : []),
        'conductor',
        'a report, not a limit',
        harm.duration,
        reached ? 'reached' : 'not reached',
        sources[harm.source].title,
        harm.confidence,
      ]),
    ],
  };
}

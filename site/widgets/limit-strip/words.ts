import { celsius, type HeldAt, type Limit, type Plastic, sources } from '#engine';
import type { TableTwin } from '../../charts/sheet.ts';
import { fahrenheit, fixed, type Practice, rise, significant, temperature, thin } from '../../lib/format.ts';

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
  const at = `${plastic.name}, held at ${temperature(celsius(held.T), practice)} for ${time}:`;
  const reached = held.limits.filter(({ standing }) => standing !== 'below');
  if (reached.length === 0) return `${at} below every limit.`;
  const words = reached.map(({ limit, standing, over }) =>
    standing === 'within'
      ? `within its range of ${limit.name}`
      : limit.kind === 'rating'
        ? `${rise(over)} over its rating`
        : `past its ${limit.name}`,
  );
  return `${at} ${listed(words)}.${held.tooLong ? ' Only a short circuit may, and for five seconds at most.' : ''}`;
}

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

/** How fast it ages, in words; why that is not known, where it is not. */
export function ageingWords({ ageing }: HeldAt): string {
  if (!ageing) return 'No life is known for this compound. The limits still hold.';
  const { rate, life, beyondData } = ageing;
  const pace = rate >= 1.05 ? `${significant(rate, 2)} times as fast as at its rating` : 'no faster than at its rating';
  const far = beyondData ? ' That is beyond the temperatures the law was measured at: an indication.' : '';
  return `It ages ${pace}, and would last about ${longTime(life)}.${far}`;
}

/** Every limit with its range, place, duration, source and how sure we are. */
export function limitTable(plastic: Plastic, held: HeldAt, practice: Practice): TableTwin {
  const degrees = ({ low, high }: Limit, to: (T_degC: number) => number) =>
    high > low ? `${fixed(to(celsius(low)), 0)} to ${fixed(to(celsius(high)), 0)}` : fixed(to(celsius(low)), 0);
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
    rows: held.limits.map(({ limit, standing }) => [
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
  };
}

import type { Limit, Place } from '../material/limits.ts';
import { celsius, fahrenheit } from '../quantity.ts';
import { type HarmSet, spanKind } from './harm-set.ts';
import type { HarmSpan } from './harm-spans.ts';

/** An interval as it is told: currents [A] rounded outward; `to` null where its end is not found. */
export interface ToldSpan {
  readonly from: number;
  readonly to: number | null;
}

/** What a sentence of the verdict is about. */
export type HarmSentenceId =
  | 'load'
  | 'overload'
  | 'short circuit'
  | 'none'
  | 'not found'
  | 'assumed'
  | 'start'
  | 'melting'
  | 'borrowed limit';

/** One sentence of the verdict, with the intervals whose ends it names. */
export interface HarmSentence {
  readonly id: HarmSentenceId;
  readonly text: string;
  readonly spans: readonly ToldSpan[];
}

/** Gaps narrower than this ratio, less one, are told as one interval: nobody sets a current that finely. */
const narrow = 0.05;

/** Step of a told current [A]: about two figures. */
const stepOf = (I: number) => (I < 1 ? 0.01 : I < 10 ? 0.1 : I < 100 ? 0.5 : I < 1000 ? 1 : 10);
const rounded = (I: number, how: (x: number) => number) => +(how(I / stepOf(I)) * stepOf(I)).toFixed(2);
/** A current [A] rounded down to what is told, so that no harmful one is left out at its lower end; a round number stays. */
export const toldBelow = (I: number): number => rounded(I, (x) => Math.floor(x + 1e-6));
const up = (I: number) => rounded(I, (x) => Math.ceil(x - 1e-6));
const ampere = (I: number) => `${I}\u00A0A`;

/** Intervals of currents as they are told: those a narrow gap parts are one, ends rounded outward. */
export function toldSpans(spans: readonly HarmSpan[]): ToldSpan[] {
  const joined: HarmSpan[] = [];
  for (const span of spans) {
    const last = joined.at(-1);
    if (last && span.from.I <= last.to.I * (1 + narrow)) joined[joined.length - 1] = { from: last.from, to: span.to };
    else joined.push(span);
  }
  return joined.map(({ from, to }) => ({ from: toldBelow(from.I), to: to.evidence === 'not found' ? null : up(to.I) }));
}

const who: Record<Place, string> = {
  conductor: 'the conductor',
  surface: 'the surface of the cable',
  outside: 'the outside',
};
const sentence = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function degrees({ low }: Limit, practice: 'iec' | 'na'): string {
  const C = `${Math.round(celsius(low))}\u00A0°C`;
  return practice === 'na' ? `${C} (${Math.round(fahrenheit(low))}\u00A0°F)` : C;
}

const range = ({ from, to }: ToldSpan) =>
  to === null ? `from ${ampere(from)} up` : `from ${ampere(from)} to ${ampere(to)}`;
const list = (spans: readonly ToldSpan[]) => spans.map(range).join(' and ');

/** The verdict of a harm set in sentences, worked out from it; temperatures in °C, with °F where `practice` is `na`. */
export function harmWords(set: HarmSet, practice: 'iec' | 'na' = 'iec'): HarmSentence[] {
  const { device, limit, prospective, spans } = set;
  const T = degrees(limit, practice);
  const it = who[limit.place];
  const load = +(set.Ib ?? 0).toPrecision(3);
  const overload = toldSpans(spans.filter((span) => spanKind(device, span) !== 'fault'));
  const fault = toldSpans(spans.filter((span) => spanKind(device, span) === 'fault'));
  const open = device.kind === 'fuse' ? 'opened' : 'tripped';
  const endless = [...overload, ...fault].some(({ to }) => to === null);
  const say = (id: HarmSentenceId, when: boolean, text: string, told: readonly ToldSpan[] = []): HarmSentence[] =>
    when ? [{ id, text: sentence(text), spans: told }] : [];
  return [
    ...say('load', set.loadHarms, `the load of ${ampere(load)} alone takes ${it} past ${T}.`),
    ...overload.flatMap((span, i) =>
      say(
        'overload',
        true,
        i === 0
          ? `${range(span)}, ${it} can pass ${T} while the ${device.name} may still hold.`
          : `the same holds ${range(span)}.`,
        [span],
      ),
    ),
    ...fault.flatMap((span) =>
      say(
        'short circuit',
        true,
        `in a short circuit ${range(span)}, ${it} can pass ${T} before the device is sure to act.`,
        [span],
      ),
    ),
    ...say(
      'none',
      spans.length === 0,
      `up to ${ampere(toldBelow(prospective))}, no current takes ${it} past ${T} before the ${device.name} must have ${open}.`,
    ),
    ...say('not found', endless, `the upper end was not found. ${device.silent}`),
    ...assumedWords(set, say),
    ...say('start', set.loaded !== null, `the cable carries ${ampere(load)} before.`),
    ...say(
      'melting',
      limit.place !== 'conductor' && spans.length > 0,
      'where the metal would melt before that, melting counts.',
    ),
    ...say('borrowed limit', set.borrowed, `${T} is a limit for ${limit.duration}, taken here for longer.`),
  ];
}

type Say = (id: HarmSentenceId, when: boolean, text: string, told?: readonly ToldSpan[]) => HarmSentence[];

/** What a straight curve between the points would make of the set, where that is another answer; two intervals a sentence. */
function assumedWords({ spans, assumed }: HarmSet, say: Say): HarmSentence[] {
  const told = toldSpans(assumed);
  if (JSON.stringify(told) === JSON.stringify(toldSpans(spans))) return [];
  const straight = 'if the curve is straight between its points';
  if (told.length === 0) return say('assumed', true, `${straight}, no current does so.`);
  const pairs = told.filter((_, i) => i % 2 === 0).map((span, i) => [span, ...told.slice(2 * i + 1, 2 * i + 2)]);
  return pairs.flatMap((pair, i) =>
    say('assumed', true, i === 0 ? `${straight}, it is ${list(pair)}.` : `it is also ${list(pair)}.`, pair),
  );
}

/** The verdict as one text. */
export const harmText = (set: HarmSet, practice: 'iec' | 'na' = 'iec'): string =>
  harmWords(set, practice)
    .map(({ text }) => text)
    .join(' ');

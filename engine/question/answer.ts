import { type NumberReading, scanNumber, type TypedNumber } from './typed-number.ts';
import { readClock, readParts } from './typed-time.ts';
import { type AnswerKind, kindWords, type Unit, unitOf } from './units.ts';
import { unitSpace } from './words.ts';

export type { AnswerKind } from './units.ts';

/** An amount that was read. */
export interface Amount {
  /** SI: temperatures in K, ratios as parts of one, gauges by their number. */
  readonly value: number;
  /** Figures that were typed for certain. */
  readonly figures: number;
  /** Worth of one unit in the last place typed [SI]. */
  readonly place: number;
  /** The amount as we write it: '20.8 A'. */
  readonly told: string;
  /** 'read as 20.8 A'. */
  readonly readAs: string;
}

/** How a typed answer was read. Only 'read' has a value; the others say in words what is missing. */
export type AnswerReading =
  | { readonly status: 'empty' }
  | (Amount & {
      readonly status: 'read';
      /** The unit it was typed in: '°C'. */
      readonly unit: string;
      /** The other reading of an unclear comma, as in `1,234`. */
      readonly otherwise?: Amount;
    })
  | { readonly status: 'unit missing'; readonly readAs: string; readonly says: string }
  | { readonly status: 'wrong kind'; readonly kind: AnswerKind; readonly readAs: string; readonly says: string }
  | { readonly status: 'unreadable'; readonly readAs: string; readonly says: string };

const longest = 120;

/**
 * Reads an answer as people type it: `23.7 W`, `0,024 kW`, `1.5e3 mΩ`, `2·3 Ω`, `62 degC`, `12 AWG`, `1 min 35 s`, `3:55`.
 * `expected` is what the question asks for: it settles `m` and `K`, takes degrees as a difference where a rise is asked for,
 * and an amount of another kind comes back as such.
 * Any text is taken; nothing throws.
 */
export function readAnswer(typed: string, expected: AnswerKind): AnswerReading {
  if (typed.length > longest) return unreadable('That is too long for an answer. Give one number with its unit.');
  const text = tidied(typed);
  if (text === '') return { status: 'empty' };
  const gauge = /^(?:awg|#|no\.?|gauge) ?(?=\d)/i.exec(text);
  if (gauge) return gaugeNumber(text.slice(gauge[0].length), expected);
  const clock = readClock(text);
  if (clock) return 'fault' in clock ? unreadable(clock.fault) : timeRead(clock, expected);
  const number = scanNumber(text, 0);
  if (number === undefined) return unreadable(`No number was found in ‘${short(text)}’.`);
  if ('fault' in number) return unreadable(number.fault);
  return withUnit(number, text, expected);
}

function withUnit(number: TypedNumber, text: string, expected: AnswerKind): AnswerReading {
  const rest = text.slice(number.end).trim();
  if (rest === '' && expected !== 'ratio') return unitMissing(number.shown, expected);
  const unit = unitOf(rest);
  if (unit) return asKind(number, asDifference(unit, expected), expected);
  if (/^(?:°|degs?|degrees?)$/i.test(rest))
    return unitMissing(number.shown, expected, 'Degrees on which scale: °C or °F?');
  const parts = readParts(text);
  if (parts) return 'fault' in parts ? unreadable(parts.fault) : timeRead(parts, expected);
  if (/\d/.test(rest)) return unreadable('It reads as more than one number. Give one, with its unit.');
  return unreadable(`We read ${number.shown}, but not the unit ‘${short(rest)}’.`);
}

/** Degrees are a difference where a rise is asked for: as many kelvin in °C, five ninths of that in °F. */
function asDifference(unit: Unit, expected: AnswerKind): Unit {
  const rise = expected === 'temperature rise' && unit.kind === 'temperature';
  return rise ? { ...unit, kind: expected, offset: 0 } : unit;
}

/** The amount as what was asked for, or handed back as what it is. */
function asKind(number: TypedNumber, unit: Unit, expected: AnswerKind): AnswerReading {
  // kelvin may be a temperature as well: below 200 K nobody means one
  const absolute = unit.symbol === 'K' && expected === 'temperature' && number.value >= 200;
  if (unit.kind !== expected && !absolute) return wrongKind(amountOf(number, unit).readAs, unit, expected);
  const first = amountOf(number, unit);
  const read = { status: 'read', ...first, unit: unit.symbol } as const;
  if (number.otherwise === undefined) return read;
  const readAs = `${first.readAs}, the comma as a decimal point`;
  return { ...read, readAs, otherwise: amountOf(number.otherwise, unit) };
}

function amountOf({ value, figures, place, shown }: NumberReading, { symbol, kind, factor, offset }: Unit): Amount {
  const told = symbol === '' ? shown : shown + unitSpace + symbol;
  const difference = kind === 'temperature rise' && symbol !== 'K';
  return {
    value: value * factor + offset,
    figures,
    place: place * factor,
    told,
    readAs: `read as ${difference ? 'a difference of ' : ''}${told}`,
  };
}

function timeRead(time: Amount & { kind: 'time' | 'length' }, expected: AnswerKind): AnswerReading {
  const { kind, ...amount } = time;
  const unit: Unit = { symbol: kind === 'time' ? 's' : 'm', kind, factor: 1, offset: 0 };
  if (kind !== expected) return wrongKind(amount.readAs, unit, expected);
  return { status: 'read', ...amount, unit: unit.symbol };
}

function gaugeNumber(text: string, expected: AnswerKind): AnswerReading {
  const number = /^(\d{1,2}) ?(?:awg|ga|gauge)?$/i.exec(text)?.[1];
  if (number === undefined) return unreadable(`The gauge ‘${short(text)}’ was not understood. Write it like 12 AWG.`);
  const value = Number(number);
  const told = `${value}${unitSpace}AWG`;
  const readAs = `read as ${told}`;
  const unit: Unit = { symbol: 'AWG', kind: 'gauge', factor: 1, offset: 0 };
  if (expected !== 'gauge') return wrongKind(readAs, unit, expected);
  return { status: 'read', value, figures: number.length, place: 1, told, readAs, unit: 'AWG' };
}

function wrongKind(readAs: string, unit: Unit, expected: AnswerKind): AnswerReading {
  const wanted = kindWords[expected];
  const minutes = expected === 'time' && unit.symbol === 'm' ? ' Minutes are written min.' : '';
  const says = `${unit.symbol || 'That'} is for ${kindWords[unit.kind].name}.${minutes} The question asks for ${wanted.name}, ${wanted.units}.`;
  return { status: 'wrong kind', kind: unit.kind, readAs, says };
}

function unitMissing(shown: string, expected: AnswerKind, says?: string): AnswerReading {
  const { name, units } = kindWords[expected];
  const asked = says ?? `The number needs its unit: the question asks for ${name}, ${units}.`;
  return { status: 'unit missing', readAs: `${shown} of what?`, says: asked };
}

function unreadable(says: string): AnswerReading {
  return { status: 'unreadable', readAs: 'not read', says };
}

const short = (text: string) => (text.length > 24 ? `${text.slice(0, 23)}…` : text);

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const fractions: Record<string, string> = { '½': '.5', '¼': '.25', '¾': '.75' };

/** One spelling for what looks alike: spaces, minus signs, raised dots, degree signs, raised digits; lead words are left out. */
function tidied(typed: string): string {
  const plain = typed
    .replace(/[º˚]/g, '°')
    .replace(/(\d) ?([½¼¾])/g, (_, digit: string, part: string) => digit + fractions[part])
    .replace(/[½¼¾]/g, (part) => `0${fractions[part]}`)
    .replace(/10([⁺⁻]?)([⁰¹²³⁴⁵⁶⁷⁸⁹]{1,3})/g, (_, sign: string, digits: string) => {
      return `10^${sign === '⁻' ? '-' : ''}${[...digits].map((digit) => raised.indexOf(digit)).join('')}`;
    })
    .normalize('NFKC')
    .replace(/[\u200B-\u200F\u2060\uFEFF\u00AD]/g, '')
    .replace(/\s+/g, ' ')
    .replace(/[−‐‑‒–—]/g, '-')
    .replace(/[⋅∙•‧・]/g, '·')
    .replace(/[′’‘`]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .trim();
  return plain
    .replace(/^[a-zθτδ]{1,8}\d{0,2} ?[=≈] ?/i, '')
    .replace(/^(?:[≈~=×] ?|x ?(?=[\d.,])|(?:about|approx(?:imately)?|roughly|around|circa|ca)\b\.? ?)/i, '')
    .replace(/[;!?]+$|(?<=[^\d])\.$/, '')
    .trim();
}

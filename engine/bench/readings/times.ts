import type { DateOrder } from './types.ts';

const day = 86_400;

/** Days from 1970-01-01 to a date of the Gregorian calendar; NaN where there is no such date. */
export function dayNumber(year: number, month: number, date: number): number {
  if (!(month >= 1 && month <= 12 && date >= 1 && date <= monthLength(year, month))) return Number.NaN;
  const y = month > 2 ? year : year - 1; // years that begin with March, so that the leap day comes last
  const inYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + date - 1;
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + inYear - 719_468;
}

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

const monthLength = (year: number, month: number): number =>
  month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;

/** A date and time of day: seconds since 1970-01-01 as its own clock shows, and what to take off for UTC; no zone is null. */
export interface Stamp {
  /** Days since 1970-01-01. */
  readonly days: number;
  /** Seconds into that day, by UTC where a zone is given: may lie outside the day. */
  readonly seconds: number;
  readonly zone: number | null;
}

const digit = (text: string, at: number): number => text.charCodeAt(at) - 48;
const isDigit = (x: number): boolean => x >= 0 && x <= 9;
const two = (text: string, at: number): number => {
  const [a, b] = [digit(text, at), digit(text, at + 1)];
  return isDigit(a) && isDigit(b) ? 10 * a + b : Number.NaN;
};

/**
 * Seconds from the day `from` [days since 1970] to a date-time as ISO 8601 has it, `2026-03-02T09:30:00.25+01:00`, with a space
 * for the T, without zone, or without seconds. NaN where it is written otherwise. The usual way, so it makes few strings.
 */
export function isoSeconds(text: string, from: number): number {
  const mark = text.charCodeAt(10);
  if (text.charCodeAt(4) !== 45 || text.charCodeAt(7) !== 45 || text.charCodeAt(13) !== 58) return Number.NaN;
  if (mark !== 84 && mark !== 32 && mark !== 116) return Number.NaN;
  const days = dayNumber(100 * two(text, 0) + two(text, 2), two(text, 5), two(text, 8));
  const hours = two(text, 11);
  const minutes = two(text, 14);
  if (!(hours <= 24 && minutes < 60)) return Number.NaN;
  const base = (days - from) * day + hours * 3600 + minutes * 60;
  if (text.length === 16) return base;
  const whole = text.charCodeAt(16) === 58 ? two(text, 17) : Number.NaN;
  if (text.length === 19 && whole <= 60) return base + whole;
  return base + isoEnd(text, whole);
}

/** Seconds with the decimals that follow them, less the zone; NaN where anything else stands there. */
function isoEnd(text: string, whole: number): number {
  let at = 19;
  let figure = whole;
  let place = 1;
  if (text.charCodeAt(at) === 46 || text.charCodeAt(at) === 44)
    for (at += 1; isDigit(digit(text, at)) && place < 1e9; at++) {
      figure = 10 * figure + digit(text, at);
      place *= 10;
    }
  const seconds = figure / place;
  const left = text.length - at;
  const mark = text.charCodeAt(at);
  if (left === 0 || (left === 1 && (mark === 90 || mark === 122))) return seconds;
  if (left !== 6 || text.charCodeAt(at + 3) !== 58 || (mark !== 43 && mark !== 45)) return Number.NaN;
  const zone = two(text, at + 1) * 3600 + two(text, at + 4) * 60;
  return mark === 43 ? seconds - zone : seconds + zone;
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const clockWords = String.raw`(\d{1,2})[:.h](\d{2})(?:[:.](\d{2})(?:[.,:](\d{1,9}))?)?\s*([ap]\.?\s?m\.?)?`;
const zoneWords = String.raw`\s*(Z|UTC|GMT|[+-]\d{2}:?(?:\d{2})?)?`;
const clockAlone = new RegExp(`^${clockWords}${zoneWords}$`, 'i');
const dateAlone =
  /^(?:(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,?\s+)?(\d{1,4})\s?([-/.])\s?(\d{1,2})\s?\2\s?(\d{1,4})\.?$/i;
const namedDate = /^(\d{1,4})[-/. ]\s?([a-z]{3,9})\.?[-/. ]\s?(\d{2,4})$/i;
const monthFirst = /^([a-z]{3,9})\.?\s(\d{1,2}),?\s(\d{4})$/i;
const basic = /^(\d{4})(\d{2})(\d{2})(?:T?(\d{2})(\d{2})(\d{2})?(?:[.,](\d+))?)?(Z|[+-]\d{2}:?\d{2})?$/i;

/** Reads a date with a time of day, in any order of day and month; undefined where it is none. */
export function stampOf(text: string, order: DateOrder): Stamp | undefined {
  if (text.length > 48) return undefined;
  const plain = text.trim();
  const at = /[T\s,;]+(?=\d{1,2}[:.h]\d{2})/i.exec(plain);
  if (!at) return basicStamp(plain);
  const days = daysOf(plain.slice(0, at.index), order);
  const clock = clockOf(plain.slice(at.index + at[0].length));
  return clock && !Number.isNaN(days) ? { days, ...clock } : undefined;
}

function basicStamp(plain: string): Stamp | undefined {
  const [, y, m, d, hours, minutes, seconds = '0', part = '0', zone] = basic.exec(plain) ?? [];
  if (hours === undefined) return undefined;
  const clock = clockOf(`${hours}:${minutes}:${seconds.padStart(2, '0')}.${part}${zone ?? ''}`);
  const days = dayNumber(Number(y), Number(m), Number(d));
  return clock && !Number.isNaN(days) ? { days, ...clock } : undefined;
}

/** Days since 1970 of a date alone; NaN where it is none. */
export function daysOf(text: string, order: DateOrder): number {
  const numbers = dateNumbers(text);
  if (numbers) {
    const [a, b, c] = numbers;
    if (a > 31 || order === 'ymd') return dayNumber(fullYear(a), b, c);
    return order === 'dmy' ? dayNumber(fullYear(c), b, a) : dayNumber(fullYear(c), a, b);
  }
  const plain = text.trim();
  const [, first, name, last] = namedDate.exec(plain) ?? [];
  if (first !== undefined) {
    const [date, year] = first.length === 4 ? [last, first] : [first, last];
    return dayNumber(fullYear(Number(year)), monthOf(name as string), Number(date));
  }
  const [, month, date, year] = monthFirst.exec(plain) ?? [];
  return month === undefined ? Number.NaN : dayNumber(Number(year), monthOf(month), Number(date));
}

/** The three numbers of a date written in numbers, in their order; undefined where it is not one. */
export function dateNumbers(text: string): readonly [number, number, number] | undefined {
  if (text.length > 40) return undefined;
  const [, a, , b, c] = dateAlone.exec(text.trim()) ?? [];
  return a === undefined ? undefined : [Number(a), Number(b), Number(c)];
}

const monthOf = (name: string): number => months.indexOf(name.slice(0, 3).toLowerCase()) + 1;

/** Two digits mean the years 1970 to 2069, our choice. */
const fullYear = (year: number): number => (year >= 100 ? year : year < 70 ? 2000 + year : 1900 + year);

/** Reads a time of day; undefined where it is none. */
export function clockOf(text: string): { seconds: number; zone: number | null } | undefined {
  if (text.length > 32) return undefined;
  const [, h, m, s, part = '0', half, zoned] = clockAlone.exec(text.trim()) ?? [];
  if (h === undefined) return undefined;
  if (s === undefined && !/[:h]/i.test(text)) return undefined; // 5.25 is a figure
  const noon = half === undefined ? null : half[0]?.toLowerCase() === 'p';
  const hours = noon === null ? Number(h) : (Number(h) % 12) + (noon ? 12 : 0);
  if (hours > 24 || Number(m) > 59 || Number(s ?? 0) > 60 || (noon !== null && (Number(h) > 12 || Number(h) === 0)))
    return undefined;
  const zone = zoneOf(zoned);
  return { seconds: hours * 3600 + Number(m) * 60 + Number(`${s ?? 0}.${part}`) - (zone ?? 0), zone };
}

function zoneOf(text: string | undefined): number | null {
  if (text === undefined) return null;
  const [, sign, hours, minutes = '0'] = /^([+-])(\d{2}):?(\d{2})?$/.exec(text) ?? [];
  return sign === undefined ? 0 : (sign === '-' ? -60 : 60) * (60 * Number(hours) + Number(minutes));
}

/** Seconds of a time of day alone; NaN where it is none. */
export function clockSeconds(text: string): number {
  if (text.length === 8 && text.charCodeAt(2) === 58 && text.charCodeAt(5) === 58) {
    const [h, m, s] = [two(text, 0), two(text, 3), two(text, 6)];
    if (h <= 24 && m < 60 && s <= 60) return h * 3600 + m * 60 + s;
  }
  return clockOf(text)?.seconds ?? Number.NaN;
}

const spanWords = /^(-)?(?:(\d+)\s?(?:d\s?|\.|\s))?(\d+):(\d{2})(?::(\d{2}))?(?:[.,](\d{1,9}))?$/;

/** Seconds of a span `h:mm:ss`, `m:ss.fff` or `1d 02:03:04`; NaN where it is none. */
export function spanSeconds(text: string): number {
  if (text.length > 32) return Number.NaN;
  const [, minus, days = '0', a, b, c, part = '0'] = spanWords.exec(text.trim()) ?? [];
  if (a === undefined) return Number.NaN;
  const whole = c === undefined ? Number(a) * 60 + Number(b) : Number(a) * 3600 + Number(b) * 60 + Number(c);
  const size = Number(days) * day + whole + Number(`0.${part}`);
  return minus ? -size : size;
}

const pad = (x: number, to = 2): string => String(x).padStart(to, '0');

/** ISO 8601 of a moment, `days` since 1970 and `seconds` into that day by UTC, shown in its `zone` [s]; null shows none. */
export function isoOf(days: number, seconds: number, zone: number | null): string {
  const micro = Math.round((seconds + (zone ?? 0)) * 1e6);
  const whole = days + Math.floor(micro / (day * 1e6));
  const left = micro - Math.floor(micro / (day * 1e6)) * day * 1e6;
  const [year, month, date] = dateOf(whole);
  const second = Math.floor(left / 1e6);
  const part = String(left % 1e6)
    .padStart(6, '0')
    .replace(/0+$/, '');
  const clock = `${pad(Math.floor(second / 3600))}:${pad(Math.floor(second / 60) % 60)}:${pad(second % 60)}`;
  const decimals = part === '' ? '' : `.${part.padEnd(3, '0')}`;
  return `${pad(year, 4)}-${pad(month)}-${pad(date)}T${clock}${decimals}${zoneText(zone)}`;
}

function zoneText(zone: number | null): string {
  if (zone === null) return '';
  const minutes = Math.abs(Math.round(zone / 60));
  return minutes === 0 ? 'Z' : `${zone < 0 ? '-' : '+'}${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`;
}

/** The date of a day number: the inverse of `dayNumber`. */
function dateOf(days: number): [number, number, number] {
  let year = 1970 + Math.floor(days / 365.2425);
  while (dayNumber(year + 1, 1, 1) <= days) year += 1;
  while (dayNumber(year, 1, 1) > days) year -= 1;
  let month = 1;
  while (month < 12 && dayNumber(year, month + 1, 1) <= days) month += 1;
  return [year, month, days - dayNumber(year, month, 1) + 1];
}

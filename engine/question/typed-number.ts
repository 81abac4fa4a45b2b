import { plainNumber, spaced } from './figures.ts';

/** One way to read the digits of a number. */
export interface NumberReading {
  readonly value: number;
  /** Figures that were typed for certain: zeros that only fill up a whole number do not count. */
  readonly figures: number;
  /** Worth of one unit in the last place that may have been rounded; a whole number keeps two figures at least. */
  readonly place: number;
  /** The number as we would write it, with a decimal point. */
  readonly shown: string;
}

/** A number found in a text. */
export interface TypedNumber extends NumberReading {
  /** Index behind its last character. */
  readonly end: number;
  /** The other reading of `1,234`, where a single comma stands before exactly three digits. */
  readonly otherwise?: NumberReading;
}

/** Digits that look like a number but cannot be one, with the reason. */
export interface NumberFault {
  readonly fault: string;
}

// Each alternative begins with a character of its own, so a match takes one pass. Groups after a space have three digits.
const run = /[.,·]?\d+(?:[.,·](?!10\^)\d+|[ ']\d{3}(?!\d))*[.,]?/y;
const exponent = /(?: ?[eE]| ?[x×*·] ?10\^ ?)([+-]?\d{1,3})(?!\d)/y;
const longest = 40;

/**
 * Reads the number that begins at `at`, or undefined when none does. Decimal point, comma or raised dot; thousands by spaces,
 * apostrophes, or the mark that is not the decimal one; exponent as e3 or × 10^3.
 */
export function scanNumber(text: string, at: number): TypedNumber | NumberFault | undefined {
  const sign = text[at] === '-' ? -1 : 1;
  run.lastIndex = text[at] === '-' || text[at] === '+' ? at + 1 : at;
  const digits = run.exec(text)?.[0];
  if (digits === undefined) return undefined;
  if (digits.length > longest) return { fault: 'The number has more digits than we read.' };
  let end = run.lastIndex;
  exponent.lastIndex = end;
  const power = exponent.exec(text)?.[1];
  if (power !== undefined) end = exponent.lastIndex;
  const parts = splitDigits(digits);
  if ('fault' in parts) return parts;
  const reading = (whole: string, part: string) => readingOf(sign, whole, part, power);
  const first = reading(parts.whole, parts.part);
  if (!Number.isFinite(first.value)) return { fault: 'The exponent is larger than we read.' };
  const grouped = parts.ambiguous ? { otherwise: reading(parts.whole + parts.part, '') } : {};
  return { ...first, end, ...grouped };
}

interface Split {
  readonly whole: string;
  readonly part: string;
  readonly ambiguous: boolean;
}

const twoNumbers: NumberFault = { fault: 'It reads as two numbers. Give one, with its unit.' };
const unclearMarks: NumberFault = { fault: 'The points and commas do not make a number. Write it like 1234.5.' };

/** Decides which of the marks is the decimal one. */
function splitDigits(typed: string): Split | NumberFault {
  const digits = /\d[.,]$/.test(typed) ? typed.slice(0, -1) : typed;
  const marks = digits.match(/[.,·]/g) ?? [];
  const last = marks.at(-1);
  const lastAt = last === undefined ? -1 : digits.lastIndexOf(last);
  const grouping = marks.length > 1 && marks.every((mark) => mark === last);
  if (last === undefined || grouping) return wholeOf(digits, last === '·' ? undefined : last, '');
  const whole = digits.slice(0, lastAt);
  const part = digits.slice(lastAt + 1);
  if (/[ ']/.test(part) && !/^\d{3}(?:[ ']\d{3})*$/.test(part)) return twoNumbers;
  const split = wholeOf(whole, marks.length > 1 ? marks[0] : undefined, part.replace(/[ ']/g, ''));
  const unclear = last === ',' && /^[1-9]\d{0,2},\d{3}$/.test(digits);
  return 'fault' in split ? split : { ...split, ambiguous: unclear };
}

/** The whole part without its thousands marks, which must stand before groups of three. */
function wholeOf(text: string, mark: string | undefined, part: string): Split | NumberFault {
  const groups = text.split(/[ '.,·]/);
  const used = text.match(/[ '.,·]/g) ?? [];
  const fair = used.every((sep) => sep === mark || (mark === undefined && (sep === ' ' || sep === "'")));
  const even = groups.every((group, i) => (i === 0 ? group.length <= 3 : group.length === 3));
  if (groups.length > 1 && !(fair && even)) return used.every((sep) => sep === ' ') ? twoNumbers : unclearMarks;
  return { whole: groups.join(''), part, ambiguous: false };
}

function readingOf(sign: number, whole: string, part: string, power: string | undefined): NumberReading {
  const scale = power === undefined ? 1 : 10 ** Number(power);
  const value = sign * Number(`${whole || '0'}.${part || '0'}e${power ?? 0}`);
  const significant = (whole + part).replace(/^0+/, '');
  const kept = part === '' ? significant.replace(/0+$/, '') : significant;
  const filling = part === '' ? Math.min(significant.length - kept.length, Math.max(0, significant.length - 2)) : 0;
  const place = scale * 10 ** (part === '' ? filling : -part.length);
  const figures = Math.max(1, kept.length);
  const minus = sign < 0 ? '−' : '';
  const shown =
    power === undefined
      ? minus + (part === '' ? spaced(whole || '0') : `${spaced(whole || '0')}.${part}`)
      : plainNumber(value, figures);
  return { value, figures, place, shown };
}

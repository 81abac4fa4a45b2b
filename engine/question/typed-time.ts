import { plainNumber } from './figures.ts';
import { type NumberFault, scanNumber } from './typed-number.ts';
import { unitOf } from './units.ts';
import { unitSpace } from './words.ts';

/** A time or a length put together from parts. SI. */
export interface PartsReading {
  readonly kind: 'time' | 'length';
  readonly value: number;
  readonly figures: number;
  readonly place: number;
  readonly told: string;
  readonly readAs: string;
}

const clockForm = /^(\d{1,3}):(\d{1,2})(?::(\d{1,2}))?(?:[.,](\d{1,3}))? ?(h|hr|hrs|hours|min|mins|minutes|m|s|sec)?$/i;

/** A time as a clock shows it: 3:55 is minutes and seconds, 1:05:30 or 1:05 h has hours. */
export function readClock(text: string): PartsReading | NumberFault | undefined {
  if (!text.includes(':')) return undefined;
  const found = clockForm.exec(text);
  if (!found) return { fault: 'The time was not understood. Write it like 3:55 or 3 min 55 s.' };
  const [, a, b, c, part, unit] = found;
  const hours = c !== undefined || /^h/i.test(unit ?? '');
  if (Number(b) > 59 || Number(c ?? 0) > 59) return { fault: 'Minutes and seconds behind a colon go up to 59.' };
  const [h, min, s] = hours ? [a, b, c ?? '0'] : ['0', a, b];
  const parts: Part[] = [
    { amount: Number(h), unit: 'h', factor: 3600, place: 3600 },
    { amount: Number(min), unit: 'min', factor: 60, place: 60 },
    { amount: Number(`${s}.${part ?? 0}`), unit: 's', factor: 1, place: part ? 10 ** -part.length : 1 },
  ];
  const last = hours && c === undefined ? 2 : 3;
  return summed('time', parts.slice(0, last));
}

interface Part {
  readonly amount: number;
  readonly unit: string;
  readonly factor: number;
  /** Worth of its last place [SI]. */
  readonly place: number;
}

/** The sum of parts, told by those that are not nothing. */
function summed(kind: 'time' | 'length', parts: readonly Part[]): PartsReading {
  const value = parts.reduce((sum, { amount, factor }) => sum + amount * factor, 0);
  const finest = Math.min(...parts.map((part) => part.place));
  const even = (parts.at(-1) as Part).amount % 10 === 0 && value >= 100 * finest;
  const place = even ? 10 * finest : finest; // 3:40 may have been rounded to tens, as 220 s may
  const told = parts.filter(({ amount }, i) => amount !== 0 || (value === 0 && i === parts.length - 1));
  const words = told.map(
    ({ amount, unit }) =>
      `${plainNumber(amount, 6)
        .replace(/(\.\d*?)0+$/, '$1')
        .replace(/\.$/, '')}${unitSpace}${unit}`,
  );
  const figures = value === 0 ? 1 : Math.max(1, Math.floor(Math.log10(value / place) + 1e-9) + 1);
  const text = words.join(' ');
  return { kind, value, figures, place, told: text, readAs: `read as ${text}` };
}

const order = ['h', 'min', 's'];
const unitLetters = /^ ?([a-z]+|'|")\.?(?: ?, ?| and )? ?/i;

/** `1 min 35 s`, `1h05`, `1m35`, `5 ft 6 in`: parts from large to small; the last may go without its unit behind h or min. */
export function readParts(text: string): PartsReading | NumberFault | undefined {
  const parts: Part[] = [];
  let at = 0;
  while (at < text.length && parts.length < 3) {
    const number = scanNumber(text, at);
    if (number === undefined || 'fault' in number || number.value < 0)
      return number && 'fault' in number ? number : undefined;
    const rest = text.slice(number.end);
    const letters = unitLetters.exec(rest);
    const unit = partUnit(letters?.[1], parts.at(-1)?.unit);
    if (!unit) return undefined;
    const { symbol, factor } = unit;
    parts.push({
      amount: number.value,
      unit: symbol,
      factor,
      place: Math.min(1, number.place) * factor,
    });
    at = number.end + (letters?.[0].length ?? 0);
  }
  if (parts.length < 2 || at < text.length) return undefined;
  return inOrder(parts);
}

/** The unit of a part: `m` is minutes here, and a bare last number follows the unit before it. */
function partUnit(typed: string | undefined, before: string | undefined) {
  if (typed === undefined) {
    const next = before === undefined ? undefined : order[order.indexOf(before) + 1];
    return order.includes(before ?? '') && next ? unitOf(next) : undefined;
  }
  return unitOf(/^m$/i.test(typed) && before !== 'ft' ? 'min' : typed);
}

function inOrder(parts: readonly Part[]): PartsReading | NumberFault | undefined {
  const units = parts.map(({ unit }) => unit);
  const falling = parts.every(({ factor }, i) => i === 0 || factor < (parts[i - 1] as Part).factor);
  const isTime = units.every((unit) => order.includes(unit));
  const isLength = units.every((unit) => unit === 'ft' || unit === 'in');
  if (!isTime && !isLength) return undefined;
  if (!falling) return { fault: 'The parts do not follow from large to small. Write it like 3 min 55 s.' };
  return summed(isTime ? 'time' : 'length', parts);
}

import type { GapKind } from './types.ts';
import { type LogUnit, unitOf } from './units.ts';

export type Decimal = '.' | ',';

/** Figures of this size stand for overload: SCPI-1999 writes 9.9E37 for infinity and 9.91E37 for no number (from memory). */
export const beyondReading = 9e36;

/**
 * A cell that is a plain number, digits with at most one decimal mark and an exponent; NaN where it is anything else. This is
 * the way most cells go, so it makes no string but where a decimal comma must be turned.
 */
export function plainNumber(cell: string, decimal: Decimal): number {
  const first = cell.charCodeAt(0);
  if (!((first >= 48 && first <= 57) || first === 45 || first === 46 || first === 43 || first === 44))
    return Number.NaN;
  const letter = cell.charCodeAt(1) | 32; // 0x, 0b, 0o are not how an instrument writes
  if (letter === 120 || letter === 98 || letter === 111) return Number.NaN;
  if (decimal === '.') return +cell;
  const comma = cell.indexOf(',');
  if (cell.indexOf('.') >= 0) return Number.NaN;
  return comma < 0 ? +cell : +`${cell.slice(0, comma)}.${cell.slice(comma + 1)}`;
}

/** What a cell that is no plain number holds: a figure with, perhaps, a unit of its own; the kind of its gap; or nothing known. */
export type CellReading = { readonly value: number; readonly unit: LogUnit | undefined } | GapKind | undefined;

const written = /^([+-]?)((?:\d|[.,](?=\d))[\d.,\s'’]*?)(?:[eE]([+-]?\d{1,3}))?\s*([^\d\s.,'’+-][^\d]{0,16})?$/;

/** Reads a cell with all that loggers put into one: groups of three, spaces, a unit, words for overload, dashes for nothing. */
export function readCell(cell: string, decimal: Decimal): CellReading {
  if (cell.length > 60) return undefined;
  const text = cell.trim().replaceAll('−', '-');
  const gap = gapOf(text);
  if (gap) return gap;
  const [, sign, body, exponent, suffix] = written.exec(text) ?? [];
  if (body === undefined) return undefined;
  const size = ungrouped(body.trim(), decimal);
  const unit = suffix ? unitOf(suffix) : undefined;
  if (size === undefined || (suffix && !unit)) return undefined;
  const value = Number(`${sign}${size}${exponent ? `e${exponent}` : ''}`);
  return Math.abs(value) >= beyondReading ? 'overload' : { value, unit };
}

const overload =
  /^[+-]?(?:[0O]?[.,]?[0O][.,]?L(?:D|OAD|\.)?|OVLD|OVFL|OVER(?:[ -]?(?:LOAD|RANGE|FLOW))?|OUT OF RANGE|INF(?:INITY)?|∞)\.?$/;
const notNumber = /^(?:[+-]?NAN|#?N\/?A|NULL|NONE|NIL|NO (?:DATA|READING|VALUE))$/;
const error =
  /^(?:#\S{2,8}[!?]|#NAME\?|ERR(?:OR)?\.?(?:[ :-]?\d+)?|FAIL(?:ED)?|FAULT|OPEN|BURN-?OUT|INVALID|BAD|\?+|\*+|#+|X+)$/;

/** The kind of gap that a trimmed cell stands for, if it is one. */
export function gapOf(text: string): GapKind | undefined {
  if (text === '') return 'empty';
  if (/^(?:[-–—_.:]+|- -( -)*)$/.test(text)) return 'dashes';
  const capitals = text.toUpperCase();
  if (overload.test(capitals)) return 'overload';
  if (notNumber.test(capitals)) return 'not a number';
  return error.test(capitals) ? 'error' : undefined;
}

/** Digits with a decimal point, of digits grouped in threes or not; undefined where the groups do not hold. */
function ungrouped(body: string, decimal: Decimal): string | undefined {
  const at = body.indexOf(decimal);
  const whole = at < 0 ? body : body.slice(0, at);
  const part = at < 0 ? '' : body.slice(at + 1);
  const digits = /^\d*$/.test(whole) ? whole : groups(whole, decimal);
  const decimals = /^\d*$/.test(part)
    ? part
    : /^\d{3}(?:\s\d{3})*\s\d{1,3}$/.test(part)
      ? part.replace(/\s/g, '')
      : undefined;
  if (digits === undefined || decimals === undefined || digits + decimals === '') return undefined;
  return `${digits || '0'}.${decimals || '0'}`;
}

function groups(whole: string, decimal: Decimal): string | undefined {
  const mark = /[^\d]/.exec(whole)?.[0] ?? '';
  const parts = whole.split(mark);
  const threes = parts.length > 1 && parts.every((part, i) => (i === 0 ? /^\d{1,3}$/ : /^\d{3}$/).test(part));
  return mark !== decimal && threes ? parts.join('') : undefined;
}

/** What a cell says about the decimal mark of its file: a mark for sure, a mark or a group of three, or nothing. */
export type DecimalEvidence = '.' | ',' | '.?' | ',?' | undefined;

const marked = /^[+-]?(\d*)([.,])([\d.,]*)(?:[eE][+-]?\d+|\s*[^\d\s.,][^\d]{0,16})?$/;

/** Judges one cell: both marks in it, or one where no group of three could stand, are sure. */
export function decimalEvidence(cell: string): DecimalEvidence {
  if (cell.length > 40) return undefined;
  const text = cell.trim().replace(/(?<=\d)[\s'’](?=\d{3})/g, '');
  const [, whole, mark, rest] = marked.exec(text) ?? [];
  if (whole === undefined || mark === undefined || rest === undefined || whole + rest === '') return undefined;
  const other = mark === '.' ? ',' : '.';
  const parts = rest.split(/[.,]/);
  if (rest.includes(other)) return parts.slice(0, -1).every((part) => part.length === 3) ? other : undefined;
  if (parts.length > 1) return parts.every((part) => part.length === 3) && /^\d{1,3}$/.test(whole) ? other : undefined;
  const couldGroup = rest.length === 3 && /^[1-9]\d{0,2}$/.test(whole) && !/[eE][+-]?\d+$/.test(text);
  return couldGroup ? `${mark as Decimal}?` : (mark as Decimal);
}

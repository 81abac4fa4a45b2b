import { type AnswerKind, celsius, kelvin, readAnswer } from '#engine';

/** How a typed amount was read: its value in the field's own unit, or what is missing. */
export interface AmountReading {
  value?: number;
  /** 'read as 38 °C', or what is missing; empty while nothing is typed. */
  says: string;
}

/** Units that a field may name, and the kind of amount that each is of. */
const kinds = {
  '°C': 'temperature',
  K: 'temperature rise',
  A: 'current',
  V: 'voltage',
  W: 'power',
  'W/m': 'heat per metre',
  Ω: 'resistance',
  mΩ: 'resistance',
  'mΩ/m': 'resistance per metre',
  m: 'length',
  mm: 'length',
  'mm²': 'area',
  s: 'time',
  min: 'time',
  h: 'time',
  'min:s': 'time',
  '%': 'ratio',
  '×': 'ratio',
} as const satisfies Record<string, AnswerKind>;

/** A unit that a field may name. */
export type FieldUnit = keyof typeof kinds;

/** The units that a field may name, for those who check what a lesson writes. */
export const fieldUnits = Object.keys(kinds) as FieldUnit[];

const finest = 6; // decimals: more is rounding of the change of units

/**
 * Reads an amount as it was typed into a field that names its `unit`: a bare number is taken in that unit, another unit of the
 * same kind is turned into it. A field in min:s asks which of the two a bare number is.
 */
export function readAmount(typed: string, unit: FieldUnit): AmountReading {
  const kind = kinds[unit];
  const clock = unit === 'min:s';
  const first = readAnswer(typed, kind);
  const bare = first.status === 'unit missing' || (unit === '%' && first.status === 'read' && first.unit === '');
  const reading = bare && !clock ? readAnswer(`${typed} ${unit}`, kind) : first;
  switch (reading.status) {
    case 'empty':
      return { says: '' };
    case 'read':
      return { value: inUnit(reading.value, unit), says: reading.readAs };
    case 'unit missing':
      return { says: clock ? 'Minutes or seconds? Write it like 3:30 or 210 s.' : reading.says };
    default:
      return { says: reading.says };
  }
}

/** An amount in SI as a field in `unit` has it. */
export function inUnit(value: number, unit: FieldUnit): number {
  if (unit === '°C') return Number(celsius(value).toFixed(finest));
  return Number((value / worthOf(unit)).toPrecision(12));
}

/** An amount of a field in `unit` in SI. */
export function ofUnit(value: number, unit: FieldUnit): number {
  return unit === '°C' ? kelvin(value) : value * worthOf(unit);
}

/** One of a unit in SI, as the engine reads it. */
function worthOf(unit: FieldUnit): number {
  if (unit === 'min:s' || unit === '×') return 1;
  const one = readAnswer(`1 ${unit}`, kinds[unit]);
  return one.status === 'read' ? one.value : 1;
}

/** What kind of amount a unit is of. */
export const kindOfUnit = (unit: FieldUnit): AnswerKind => kinds[unit];

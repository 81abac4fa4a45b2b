import { fahrenheit, zeroCelsius } from '../../quantity.ts';

/** What a unit measures. */
export type UnitKind = 'current' | 'voltage' | 'resistance' | 'power' | 'temperature' | 'time';

/** A unit: a figure x in it is `scale`·x + `offset` in SI. */
export interface LogUnit {
  readonly kind: UnitKind;
  /** As it is printed. */
  readonly symbol: string;
  readonly scale: number;
  readonly offset: number;
}

const prefixes: readonly (readonly [string, string, number])[] = [
  ['', '', 1],
  ['n', 'nano', 1e-9],
  ['μ', 'micro', 1e-6],
  ['u', 'micro', 1e-6],
  ['m', 'milli', 1e-3],
  ['k', 'kilo', 1e3],
  ['M', 'mega', 1e6],
];

/** Kind, printed symbol, symbols as written, words as written; each may carry a prefix. */
const electrical: readonly (readonly [UnitKind, string, readonly string[], readonly string[]])[] = [
  ['current', 'A', ['A'], ['amp', 'amps', 'ampere', 'amperes']],
  ['voltage', 'V', ['V'], ['volt', 'volts']],
  ['resistance', 'Ω', ['Ω', 'ohm', 'Ohm', 'ohms', 'Ohms', 'OHM'], ['ohm', 'ohms']],
  ['power', 'W', ['W'], ['watt', 'watts']],
];

/** Spellings without prefixes: kind, printed symbol, scale, offset, as written (words in lower case). */
const others: readonly (readonly [UnitKind, string, number, number, readonly string[]])[] = [
  [
    'temperature',
    '°C',
    1,
    zeroCelsius,
    ['°C', 'C', '�C', '?C', '°c', 'degc', 'deg.c', 'deg_c', 'celsius', 'degreesc', 'degreescelsius', 'degcelsius'],
  ],
  [
    'temperature',
    '°F',
    5 / 9,
    zeroCelsius - (fahrenheit(zeroCelsius) * 5) / 9,
    [
      '°F',
      'F',
      '�F',
      '?F',
      '°f',
      'degf',
      'deg.f',
      'deg_f',
      'fahrenheit',
      'degreesf',
      'degreesfahrenheit',
      'degfahrenheit',
    ],
  ],
  ['temperature', 'K', 1, 0, ['K', 'kelvin', 'kelvins', 'degk']],
  ['time', 'µs', 1e-6, 0, ['μs', 'us', 'usec', 'microseconds']],
  ['time', 'ms', 1e-3, 0, ['ms', 'msec', 'millis', 'milliseconds', 'millisecond']],
  ['time', 's', 1, 0, ['s', 'S', 'sec', 'secs', 'second', 'seconds', 'sekunden', 'secondes', 'segundos']],
  ['time', 'min', 60, 0, ['min', 'mins', 'minute', 'minutes', 'minuten', 'minutos']],
  ['time', 'h', 3600, 0, ['h', 'hr', 'hrs', 'hour', 'hours', 'std', 'stunden', 'heures', 'horas']],
  ['time', 'd', 86_400, 0, ['days', 'day']],
];

const spellings = new Map<string, LogUnit>();
for (const [kind, base, symbols, words] of electrical)
  for (const [letter, word, scale] of prefixes) {
    const unit = { kind, symbol: `${letter === 'u' || letter === 'μ' ? 'µ' : letter}${base}`, scale, offset: 0 };
    for (const symbol of symbols) spellings.set(letter + symbol, unit);
    for (const name of words) spellings.set(word + name, unit);
  }
for (const [kind, symbol, scale, offset, written] of others)
  for (const spelling of written) spellings.set(spelling, { kind, symbol, scale, offset });

/**
 * The unit of a spelling: 'mA', 'V DC', 'Ohm', 'degC', '℃', 'Minutes'. Letters decide between milli and mega; words may be in
 * capitals. Undefined where it is none.
 */
export function unitOf(text: string): LogUnit | undefined {
  if (text.length > 24) return undefined;
  const plain = text.replace(/[º˚]/g, '°').normalize('NFKC').replace(/[\s]/g, '').replace(/\.$/, '');
  return spelled(plain) ?? spelled(plain.replace(/_?(?:t?rms|dc|ac|AC|DC|RMS|TRMS|eff)$/, ''));
}

function spelled(plain: string): LogUnit | undefined {
  const known = spellings.get(plain);
  if (known || plain.length < 3) return known;
  return /^[µmkM]?ohms?$/i.test(plain) ? undefined : spellings.get(plain.toLowerCase());
}

/** The figure `x` of a column or unit in SI; a scale below 1 divides, which rounds once. */
export const inSI = (x: number, { scale, offset }: { scale: number; offset: number }): number =>
  (scale < 1 && scale > 0 ? x / (1 / scale) : x * scale) + offset;

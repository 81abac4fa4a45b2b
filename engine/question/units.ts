import { foot, inch, zeroCelsius } from '../quantity.ts';

/** What an answer may be an amount of. */
export type AnswerKind =
  | 'current'
  | 'voltage'
  | 'power'
  | 'heat per metre'
  | 'resistance'
  | 'resistance per metre'
  | 'resistivity'
  | 'temperature'
  | 'temperature rise'
  | 'time'
  | 'length'
  | 'area'
  | 'gauge'
  | 'ratio'
  | 'energy';

/** A unit: its kind, and SI = number · factor + offset. */
export interface Unit {
  readonly symbol: string;
  readonly kind: AnswerKind;
  readonly factor: number;
  readonly offset: number;
}

/** Of each kind: with its article, and the units to ask for. */
export const kindWords: Record<AnswerKind, { readonly name: string; readonly units: string }> = {
  current: { name: 'a current', units: 'A' },
  voltage: { name: 'a voltage', units: 'V' },
  power: { name: 'a power', units: 'W' },
  'heat per metre': { name: 'heat for each metre', units: 'W/m' },
  resistance: { name: 'a resistance', units: 'Ω' },
  'resistance per metre': { name: 'a resistance for each metre', units: 'mΩ/m' },
  resistivity: { name: 'a resistivity', units: 'nΩ·m' },
  temperature: { name: 'a temperature', units: '°C or °F' },
  'temperature rise': { name: 'a temperature rise', units: 'K' },
  time: { name: 'a time', units: 's or min' },
  length: { name: 'a length', units: 'm' },
  area: { name: 'an area', units: 'mm²' },
  gauge: { name: 'a gauge', units: 'AWG' },
  ratio: { name: 'a ratio', units: '%' },
  energy: { name: 'an energy', units: 'J' },
};

const exact = new Map<string, Unit>();
const folded = new Map<string, Unit | null>();

/** Registers a unit under its spellings; a spelling without regard to case is kept only while one unit claims it. */
function unit(symbol: string, kind: AnswerKind, factor: number, spellings: readonly string[], offset = 0): void {
  const of: Unit = { symbol, kind, factor, offset };
  for (const spelling of [symbol, ...spellings]) {
    if (!exact.has(spelling)) exact.set(spelling, of);
    const low = spelling.toLowerCase();
    const known = folded.get(low);
    folded.set(low, known === undefined || known?.symbol === symbol ? of : null);
  }
}

const prefixes: readonly (readonly [
  symbol: string,
  factor: number,
  others: readonly string[],
  names: readonly string[],
])[] = [
  ['', 1, [], ['']],
  ['m', 1e-3, [], ['milli']],
  ['k', 1e3, ['K'], ['kilo']],
  ['M', 1e6, [], ['mega', 'meg']],
  ['μ', 1e-6, ['u'], ['micro']],
  ['n', 1e-9, [], ['nano']],
];

/** A unit with its decimal prefixes: symbols for the short form, names for the long one, each with every tail; the first tail is shown. */
function scaled(
  base: string,
  kind: AnswerKind,
  symbols: readonly string[],
  names: readonly string[],
  tails: readonly string[] = [''],
): void {
  for (const [prefix, factor, others, longPrefixes] of prefixes) {
    const short = [prefix, ...others].flatMap((p) => [base, ...symbols].map((s) => p + s));
    const long = longPrefixes.flatMap((p) => names.map((name) => p + name));
    const spellings = [...short, ...long].flatMap((head) => tails.map((tail) => head + tail));
    unit(prefix + base + tails[0], kind, factor, spellings);
  }
}

const ohms = ['ohm', 'ohms'];
const watts = ['watt', 'watts'];
const eachMetre = ['/m', '/metre', '/meter'];
scaled('A', 'current', ['a', 'amp', 'amps'], ['amp', 'amps', 'ampere', 'amperes']);
scaled('V', 'voltage', ['v'], ['volt', 'volts']);
scaled('W', 'power', ['w'], watts);
scaled('W', 'heat per metre', ['w'], watts, eachMetre);
scaled('Ω', 'resistance', ['ω', 'R', 'Ohm', 'Ohms', ...ohms], ohms);
scaled('Ω', 'resistance per metre', ['ω', ...ohms], ohms, eachMetre);
scaled('J', 'energy', ['j'], ['joule', 'joules']);
const ohmSpellings = (head: string, tails: readonly string[]) =>
  ['Ω', 'ω', 'ohm', 'ohms'].flatMap((name) => tails.map((tail) => `${head}${name}/${tail}`));
unit('Ω/km', 'resistance per metre', 1e-3, ohmSpellings('', ['km', 'kilometre', 'kilometer', '1000m']));
unit('mΩ/km', 'resistance per metre', 1e-6, ohmSpellings('m', ['km']));
unit('Ω/kft', 'resistance per metre', 1e-3 / foot, ohmSpellings('', ['kft', '1000ft', '1000feet']));
unit('mΩ/ft', 'resistance per metre', 1e-3 / foot, ohmSpellings('m', ['ft', 'foot']));
unit('Ω/ft', 'resistance per metre', 1 / foot, ohmSpellings('', ['ft', 'foot']));
const ohmMetres = (prefix: string) =>
  ['Ω', 'ω', 'ohm', 'ohms'].flatMap((name) =>
    ['·m', '*m', 'm', '-m', 'metre', 'meter'].map((tail) => prefix + name + tail),
  );
unit('nΩ·m', 'resistivity', 1e-9, ohmMetres('n'));
unit('μΩ·m', 'resistivity', 1e-6, [...ohmMetres('u'), ...ohmMetres('μ')]);
unit('Ω·m', 'resistivity', 1, ohmMetres(''));
unit(
  'Ω·mm²/m',
  'resistivity',
  1e-6,
  ['Ω', 'ω', 'ohm'].flatMap((name) => [`${name}·mm2/m`, `${name}mm2/m`, `${name}*mm2/m`]),
);
unit('W/ft', 'heat per metre', 1 / foot, ['w/ft', 'watts/foot', 'watt/foot', 'W/foot']);

unit('Wh', 'energy', 3600, ['wh', 'watthours', 'watthour']);
unit('kWh', 'energy', 3.6e6, ['kwh', 'KWh', 'KWH', 'kilowatthours', 'kilowatthour']);

const degrees = (letter: string, name: string) => [
  `°${letter}`,
  `deg${letter}`,
  `degs${letter}`,
  `degree${letter}`,
  `degrees${letter}`,
  `${letter}°`,
  letter,
  name,
  `deg${name}`,
  `degree${name}`,
  `degrees${name}`,
];
unit('°C', 'temperature', 1, [...degrees('C', 'celsius'), ...degrees('c', 'centigrade')], zeroCelsius);
unit('°F', 'temperature', 5 / 9, [...degrees('F', 'fahrenheit'), ...degrees('f', 'fahrenheit')], zeroCelsius - 160 / 9);
unit('K', 'temperature rise', 1, ['kelvin', 'kelvins', 'degK', '°K', 'k']);

unit('s', 'time', 1, ['sec', 'secs', 'second', 'seconds']);
unit('ms', 'time', 1e-3, ['millisecond', 'milliseconds', 'msec']);
unit('min', 'time', 60, ['mins', 'minute', 'minutes']);
unit('h', 'time', 3600, ['hr', 'hrs', 'hour', 'hours']);

unit('m', 'length', 1, ['metre', 'metres', 'meter', 'meters']);
unit('mm', 'length', 1e-3, ['millimetre', 'millimetres', 'millimeter', 'millimeters']);
unit('cm', 'length', 1e-2, ['centimetre', 'centimetres', 'centimeter', 'centimeters']);
unit('km', 'length', 1e3, ['kilometre', 'kilometres', 'kilometer', 'kilometers']);
unit('ft', 'length', foot, ['foot', 'feet', "'"]);
unit('in', 'length', inch, ['inch', 'inches', '"']);

const squares = (of: string) => [`${of}2`, `${of}^2`, `sq${of}`, `square${of}`];
unit('mm²', 'area', 1e-6, [...squares('mm'), 'squaremillimetres', 'squaremillimeters', 'mmsq', 'mmsquared']);
unit('cm²', 'area', 1e-4, squares('cm'));
unit('m²', 'area', 1, [...squares('m'), 'squaremetres', 'squaremeters']);
unit('kcmil', 'area', (Math.PI / 4) * inch * inch * 1e-3, ['mcm', 'MCM']);
unit('AWG', 'gauge', 1, ['ga', 'gauge', 'awg']);
unit('%', 'ratio', 1e-2, ['percent', 'pc', 'pct']);
unit('', 'ratio', 1, ['times', '×', 'x', 'fold']);

/** The unit of a spelling, or undefined. Spaces and full stops in it do not matter; case only where two units differ by it. */
export function unitOf(typed: string): Unit | undefined {
  const key = typed
    .replace(/ ?\bper\b(?! ?cent) ?/i, '/')
    .replace(/[ .]/g, '')
    .replace(/²/g, '2');
  return exact.get(key) ?? folded.get(key.toLowerCase()) ?? undefined;
}

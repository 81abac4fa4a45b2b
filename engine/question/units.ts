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
  | 'resistance times mass'
  | 'temperature'
  | 'temperature rise'
  | 'time'
  | 'length'
  | 'area'
  | 'gauge'
  | 'ratio'
  | 'energy'
  | 'let-through';

/** A unit: its kind, and SI = number · factor + offset. */
export interface Unit {
  readonly symbol: string;
  readonly kind: AnswerKind;
  readonly factor: number;
  readonly offset: number;
}

/** Of each kind: with its article, and how to give it. */
export const kindWords: Record<AnswerKind, { readonly name: string; readonly units: string }> = {
  current: { name: 'a current', units: 'in A' },
  voltage: { name: 'a voltage', units: 'in V' },
  power: { name: 'a power', units: 'in W' },
  'heat per metre': { name: 'heat for each length', units: 'in W/m or W/ft' },
  resistance: { name: 'a resistance', units: 'in Ω' },
  'resistance per metre': { name: 'a resistance for each length', units: 'in mΩ/m or mΩ/ft' },
  resistivity: { name: 'a resistivity', units: 'in nΩ·m' },
  'resistance times mass': { name: 'ohms times grams for each length', units: 'in mΩ·g/m² or mΩ·g/ft²' },
  temperature: { name: 'a temperature', units: 'in °C or °F' },
  'temperature rise': { name: 'a temperature rise', units: 'in K' },
  time: { name: 'a time', units: 'in s or min' },
  length: { name: 'a length', units: 'in m or ft' },
  area: { name: 'an area', units: 'in mm²' },
  gauge: { name: 'a gauge', units: 'in AWG' },
  ratio: { name: 'a ratio', units: 'as a plain number or in %' },
  energy: { name: 'an energy', units: 'in J' },
  'let-through': { name: 'a let-through energy', units: 'in A²s' },
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
const over = (names: readonly string[], tails: readonly string[]) =>
  names.flatMap((name) => tails.map((tail) => `${name}/${tail}`));
const feet = ['ft', 'foot', "'"];
const kilofeet = ['kft', 'Kft', '1000ft', '1000feet', "1000'", 'Mft'];
const kilometres = ['km', 'kilometre', 'kilometer', '1000m', '1000metres', '1000meters'];
const wholeOhms = ['Ω', 'ω', ...ohms];
const milliohms = ['mΩ', 'mω', 'milliohm', 'milliohms', ...ohms.map((name) => `m${name}`)];
const microhms = ['μΩ', 'μω', 'uΩ', 'uω', 'microohm', 'microohms', ...ohms.flatMap((name) => [`u${name}`, `μ${name}`])];
unit('Ω/km', 'resistance per metre', 1e-3, over(wholeOhms, kilometres));
unit('mΩ/km', 'resistance per metre', 1e-6, over(milliohms, kilometres));
unit('Ω/kft', 'resistance per metre', 1e-3 / foot, over(wholeOhms, kilofeet));
unit('mΩ/kft', 'resistance per metre', 1e-6 / foot, over(milliohms, kilofeet));
unit('Ω/ft', 'resistance per metre', 1 / foot, over(wholeOhms, feet));
unit('mΩ/ft', 'resistance per metre', 1e-3 / foot, over(milliohms, feet));
unit('μΩ/ft', 'resistance per metre', 1e-6 / foot, over(microhms, feet));
unit('μΩ/m', 'resistance per metre', 1e-6, over(microhms, ['m', 'metre', 'meter']));
const metres = ['m', 'metre', 'metres', 'meter', 'meters'];
const ohmMetres = (...heads: readonly string[]) =>
  heads.flatMap((head) => metres.flatMap((metre) => ['·', '*', '-', ''].map((sign) => head + sign + metre)));
unit('nΩ·m', 'resistivity', 1e-9, ohmMetres('nΩ', 'nω', 'nohm', 'nohms', 'nanoohm', 'nanoohms'));
unit('μΩ·m', 'resistivity', 1e-6, ohmMetres('μΩ', 'μω', 'uΩ', 'uω', 'μohm', 'uohm', 'microohm', 'microohms'));
unit('Ω·m', 'resistivity', 1, ohmMetres('Ω', 'ω', 'ohm', 'ohms'));
unit(
  'Ω·mm²/m',
  'resistivity',
  1e-6,
  ['Ω', 'ω', 'ohm'].flatMap((name) => ['·mm2/m', '*mm2/m', '-mm2/m', 'mm2/m'].map((tail) => name + tail)),
);
// resistance by the length times mass by the length, which is resistivity times density
const perSquare = (names: readonly string[]) => names.flatMap((of) => [`${of}2`, `${of}^2`, `${of}/${of}`]);
const ohmGrams = (heads: readonly string[], over: readonly string[], grams: readonly string[]) =>
  heads.flatMap((head) =>
    ['·', '*', '-', ''].flatMap((sign) => grams.flatMap((g) => over.map((tail) => `${head}${sign}${g}/${tail}`))),
  );
const [squareMetre, squareFoot] = [perSquare(['m', 'metre', 'meter']), perSquare(['ft', 'foot'])];
unit('mΩ·g/m²', 'resistance times mass', 1e-6, ohmGrams(milliohms, squareMetre, ['g', 'gram', 'grams']));
unit('Ω·g/m²', 'resistance times mass', 1e-3, ohmGrams(wholeOhms, squareMetre, ['g', 'gram', 'grams']));
unit('Ω·kg/m²', 'resistance times mass', 1, ohmGrams(wholeOhms, squareMetre, ['kg']));
unit('mΩ·g/ft²', 'resistance times mass', 1e-6 / foot ** 2, ohmGrams(milliohms, squareFoot, ['g', 'gram', 'grams']));
const wholeWatts = ['W', 'w', ...watts];
const milliwatts = ['mW', 'mw', 'milliwatt', 'milliwatts'];
unit('W/ft', 'heat per metre', 1 / foot, over(wholeWatts, feet));
unit('mW/ft', 'heat per metre', 1e-3 / foot, over(milliwatts, feet));
unit('W/kft', 'heat per metre', 1e-3 / foot, over(wholeWatts, kilofeet));
unit('W/km', 'heat per metre', 1e-3, over(wholeWatts, kilometres));
unit('kW/km', 'heat per metre', 1, over(['kW', 'kw', 'KW', 'kilowatt', 'kilowatts'], kilometres));

unit('Wh', 'energy', 3600, ['wh', 'watthours', 'watthour']);
unit('A²s', 'let-through', 1, ['A^2s', 'A2·s', 'A^2·s', 'A2*s', 'A^2*s', 'I2t']);
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
const circularMil = (Math.PI / 4) * (1e-3 * inch) ** 2;
unit('kcmil', 'area', 1e3 * circularMil, ['mcm', 'MCM', 'kcm', 'kilocircularmils']);
unit('cmil', 'area', circularMil, ['cmils', 'circularmil', 'circularmils']);
unit('AWG', 'gauge', 1, ['ga', 'gauge', 'awg']);
unit('%', 'ratio', 1e-2, ['percent', 'pc', 'pct']);
unit('', 'ratio', 1, ['times', '×', 'x', 'fold', '-fold', 'timesasmuch', 'timestheheat', 'timesmore']);

/** The unit of a spelling, or undefined. Spaces and full stops in it do not matter; case only where two units differ by it. */
export function unitOf(typed: string): Unit | undefined {
  const key = typed
    .replace(/ ?\bper\b(?! ?cent) ?/i, '/')
    .replace(/[ .]/g, '')
    .replace(/²/g, '2');
  return exact.get(key) ?? folded.get(key.toLowerCase()) ?? undefined;
}
